import type { PlanList } from "./list.js";

/**
 * A list as comma-separated values, safe to open in a spreadsheet.
 *
 * Lines end in CR LF; cells with a comma, a quote or a line end stand in quotes, quotes doubled. Text that a spreadsheet
 * would run as a formula gets an apostrophe before it; numbers stay numbers.
 *
 * @param list  columns and rows
 * @returns text
 * Valid for readers that follow RFC 4180. Example: listCsv({ columns: ["a"], rows: [["=1+1"], [-2]] }) → "a\r\n'=1+1\r\n-2\r\n"
 */
export function listCsv({ columns, rows }: PlanList): string {
  return [columns, ...rows].map((row) => `${row.map(cell).join(",")}\r\n`).join("");
}

function cell(value: string | number): string {
  if (typeof value === "number") return Number.isFinite(value) ? String(value) : "";
  const harmless = /^\s*[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]/u.test(value) ? `'${value}` : value;
  return /[",\r\n]/u.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
