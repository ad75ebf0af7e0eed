import type { Result, Table } from "../notebook/output.js";
import { figures } from "../quantity/print.js";
import { type Content, html, type Markup } from "./html.js";

/** A table in a box of its own, so that a wide one scrolls there and not the page. */
export function tableBox({
  caption,
  columns,
  rows,
}: {
  readonly caption: Content;
  readonly columns: readonly Content[];
  readonly rows: readonly (readonly Content[])[];
}): Markup {
  const numeric = columns.map((_, column) => rows.length > 0 && rows.every((row) => isNumeric(row[column])));
  const allNumbers = !numeric.includes(false);
  const kind = (column: number) => (numeric[column] && !allNumbers ? html` class="number"` : undefined);
  return html`<div class="scroll" role="group" aria-label="Table" tabindex="0"><table${allNumbers && html` class="all-numbers"`}>
<caption>${caption}</caption>
<thead><tr>${columns.map((title, column) => html`<th scope="col"${kind(column)}>${title}</th>`)}</tr></thead>
<tbody>
${rows.map(
  (row) => html`<tr>${row.map((cell, column) =>
    column === 0 && !numeric[0]
      ? html`<th scope="row">${cell}</th>`
      : html`<td${kind(column)}>${typeof cell === "number" ? figures(cell) : cell}</td>`,
  )}</tr>
`,
)}</tbody>
</table></div>
`;
}

function isNumeric(cell: Content): boolean {
  return typeof cell === "number" || (typeof cell === "string" && /^(?:[−-]?\d[\d\s.,]*|[–-])$/u.test(cell));
}

/** A table that a notebook shows. */
export function shownTable(table: Table): Markup {
  return html`<div class="wide">${tableBox(table)}</div>`;
}

/** Numbers that a notebook shows one after the other. */
export function shownResults(results: readonly Pick<Result, "label" | "text" | "range">[]): Markup {
  return html`<dl class="results">
${results.map(
  ({ label, text, range }) =>
    html`<div><dt>${label}</dt><dd><b>${text}</b>${range !== undefined && html` <span class="range">${range}</span>`}</dd></div>
`,
)}</dl>
`;
}
