import { type Content, html, type Markup } from "./html.js";
import { unparted } from "./unparted.js";

/** A number with its label; its value may be marked up. */
interface ResultRow {
  readonly label: string;
  readonly value: Content;
  readonly range?: string | undefined;
}

/** Numbers one below the other, each with its label and range. */
export function resultList(rows: readonly ResultRow[]): Markup {
  return html`<dl class="results">
${rows.map(
  ({ label, value, range }) =>
    html`<div><dt>${unparted(label)}</dt><dd><b>${value}</b>${range !== undefined && html` <span class="range">${unparted(range)}</span>`}</dd></div>
`,
)}</dl>
`;
}
