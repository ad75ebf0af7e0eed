import { plainMarked } from "../notebook/marker.js";
import type { Result, Table } from "../notebook/output.js";
import { figures } from "../quantity/print.js";
import { type Content, html, type Markup } from "./html.js";
import { resultList } from "./results.js";
import { numberColumn } from "./style/tables.js";
import { unparted } from "./unparted.js";
import type { WorkedNumbers } from "./worked-numbers.js";

/** A table in a box of its own, so that a wide one scrolls there and not the page. Cells and rows end where the next begin. */
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
  const isNumber = (cell: Content, column: number) => isNumeric(cell) || (column > 0 && isRange(cell));
  const numeric = columns.map((_, column) => texts.length > 0 && texts.every((row) => isNumber(row[column], column)));
  const allNumbers = !numeric.includes(false);
  return html`<div class="scroll" role="group" aria-label="Table" tabindex="0"><table${tableClass(numeric)}>
<caption>${caption}</caption>
<thead><tr>${columns.map(
    (title, column) =>
      html`<th scope="col"${column > 0 && isWordy(title, texts, column) && html` class="wordy"`}>${title}`,
  )}
<tbody>
${rows.map(
  (row) => html`<tr>${row.map((cell, column) =>
    column === 0 && !allNumbers && !numeric[0] ? html`<th scope="row">${cell}` : html`<td>${cellText(cell)}`,
  )}
`,
)}</table></div>
`;
}

function cellText(cell: Content): Content {
  return typeof cell === "number" ? figures(cell) : cell;
}

/** Cells and titles from these lengths on need room for a few words on a line. */
const wordyLength = 24;
const wordyTitle = 32;

/** Whether a column holds more than a number or a word or two, or its title would be a tower of words. */
function isWordy(title: Content, texts: readonly (readonly Content[])[], column: number): boolean {
  if (typeof title === "string" && title.length >= wordyTitle) return true;
  return texts.some(({ [column]: cell }) => typeof cell === "string" && cell.length >= wordyLength && !isNumeric(cell));
}

/** Says once which columns hold numbers, and not in each cell. */
function tableClass(numeric: readonly boolean[]): Content {
  if (!numeric.includes(false)) return html` class="all-numbers"`;
  const columns = numeric.flatMap((is, column) => (is ? [numberColumn(column)] : []));
  return columns.length > 0 && html` class="${columns.join(" ")}"`;
}

/** A number, with its range behind it or without, or a dash for none. */
const numberText = /^(?:[−-]?\d[\d\s.,]*(?: \(.* to .*\))?|[–-])$/u;
const rangeText = /^[−-]?\d[\d\s.,]* to [−-]?\d[\d\s.,]*$/u;

function isNumeric(cell: Content): boolean {
  return typeof cell === "number" || (typeof cell === "string" && numberText.test(cell));
}

function isRange(cell: Content): boolean {
  return typeof cell === "string" && rangeText.test(cell);
}

/** Whether a table has one column, or one more that counts its rows. */
function isList({ columns, rows }: Table): boolean {
  if (columns.length === 1) return true;
  return columns.length === 2 && rows.length > 1 && rows.every(([place], row) => place === String(row + 1));
}

/** The last column of a table as a list, with numbers where the rows are counted. */
function listed(caption: string, rows: readonly (readonly Content[])[]): Markup {
  const items = rows.map((row) => html`<li>${cellText(row[row.length - 1])}\n`);
  const list = rows[0]?.length === 2 ? html`<ol>\n${items}</ol>` : html`<ul>\n${items}</ul>`;
  return html`<p><strong>${unparted(caption)}</strong></p>\n${list}\n`;
}

/** A table that a notebook shows; a list where it has no more than one column of words. */
export function shownTable(table: Table, numbers: WorkedNumbers): Markup {
  const { caption, columns, rows } = table;
  const cells = rows.map((row) => row.map((cell) => (typeof cell === "string" ? numbers.cell(cell) : cell)));
  if (isList(table)) return html`${listed(caption, cells)}${numbers.panels()}`;
  const texts = rows.map((row) => row.map((cell) => (typeof cell === "string" ? plainMarked(cell) : cell)));
  return html`<div class="wide">${tableBox({ caption: unparted(caption), columns, rows: cells, texts })}</div>${numbers.panels()}`;
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
