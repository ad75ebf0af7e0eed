import type { Worksheet } from "../calibration/worksheet.js";
import { cautionsInShort } from "./cautions.js";
import { documentHtml, mainId } from "./document.js";
import { type Content, html, type Markup } from "./html.js";

const description = "What to hang, where to pull, and a table to fill in.";

function part(id: string, title: string, body: Content): Markup {
  return html`<section class="part full" aria-labelledby="${id}">
<h2 id="${id}">${title}</h2>
<div class="body">
${body}</div></section>
`;
}

const items = (texts: readonly string[]) => texts.map((text) => html`<li>${text}</li>\n`);
const paragraphs = (texts: readonly string[]) => texts.map((text) => html`<p>${text}</p>\n`);

/**
 * The sheet to print and fill in, as a page that carries everything itself.
 *
 * @param sheet  what it says
 * @returns HTML text, the same for the same sheet
 * Example: worksheetHtml(worksheet([{ name: "mainsheet" }]))
 */
export function worksheetHtml(sheet: Worksheet): string {
  const body = html`<header class="top"><span>haulbook</span></header>
<main id="${mainId}" tabindex="-1">
<div class="opening">
<h1>${sheet.title}</h1>
<p>Boat: ______________________ Date: ______________ Scale reads to: __________</p>
</div>
${part("need", "You need", html`<ul>\n${items(sheet.need)}</ul>\n`)}${part(
  "care",
  "Take care",
  html`<ul class="cautions">\n${items(sheet.care)}</ul>\n${cautionsInShort()}`,
)}${part("steps", "How to read", html`<ol>\n${items(sheet.steps)}</ol>\n`)}${part(
  "readings",
  "Readings",
  html`<div class="scroll"><table class="sheet">
<thead><tr>${sheet.columns.map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>
<tbody>
${sheet.rows.map((row) => html`<tr>${row.map((cell) => html`<td>${cell}</td>`)}</tr>\n`)}</tbody>
</table></div>
`,
)}${part("typing", "How to type it in", html`${paragraphs(sheet.typing)}<pre>${sheet.example.join("\n")}</pre>\n`)}</main>`;
  return documentHtml({ title: `haulbook: ${sheet.title}`, description, body, charts: false, inline: true });
}
