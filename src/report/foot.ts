import { html, type Markup } from "./html.js";

const origin = "This report is computed from the notebook";

/** Whether a text is a report of ours: it may be replaced by a newer one. */
export function isReport(text: string): boolean {
  return text.includes(origin);
}

/** Foot of a report: where it comes from and what it gives way to. */
export function reportFoot(notebookFile: string): Markup {
  return html`<footer class="foot">
<p>haulbook: what the hand feels on a sheet, from wind load to hand. ${origin} ${notebookFile}.</p>
<p>It helps to learn and to compare. It gives way to the rated strength of every part, to class rules and local codes, and to a qualified rigger or engineer.</p>
</footer>`;
}
