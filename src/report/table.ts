import { plainMarked } from "../notebook/marker.js";
import type { Result, Table } from "../notebook/output.js";
import { figures } from "../quantity/print.js";
import { type Content, html, type Markup } from "./html.js";
import { resultList } from "./results.js";
import type { WorkedNumbers } from "./worked-numbers.js";

/** A table in a box of its own, so that a wide one scrolls there and not the page. */
export function tableBox({
  caption,
  columns,
  rows,
  texts = rows,
}: {
  readonly caption: Content;
  readonly columns: readonly Content[];
  readonly rows: readonly (readonly Content[])[];
  /** The cells without markup, by which a column of numbers is known. */
  readonly texts?: readonly (readonly Content[])[];
}): Markup {
  const numeric = columns.map((_, column) => texts.length > 0 && texts.every((row) => isNumeric(row[column])));
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
export function shownTable(table: Table, numbers: WorkedNumbers): Markup {
  const { caption, columns, rows } = table;
  const cells = rows.map((row) => row.map((cell) => (typeof cell === "string" ? numbers.text(cell) : cell)));
  const texts = rows.map((row) => row.map((cell) => (typeof cell === "string" ? plainMarked(cell) : cell)));
  return html`<div class="wide">${tableBox({ caption, columns, rows: cells, texts })}</div>${numbers.panels()}`;
}

/** Numbers that a notebook shows one after the other. */
export function shownResults(results: readonly Result[], numbers: WorkedNumbers): Markup {
  const rows = results.map(({ label, text, range, working }) => ({
    label,
    value: working === undefined ? text : numbers.own(label, text, working),
    range,
  }));
  return html`${resultList(rows)}${numbers.panels()}`;
}
