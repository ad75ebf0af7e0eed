import { CsvError, parse } from "csv-parse/sync";
import { quoted, ReadingError } from "./reading-error.js";
import { emptyFile, mostReadings, type TextRow, type TextTable, tooMany } from "./table-text.js";

/** Records that are read at most: every reading, and remarks and empty rows between them. */
const mostRecords = mostReadings + 10_000;

const lineEnds = ["\r\n", "\n", "\r"];

/** Sign that separates the columns: the one that the first row with content has most of. */
function delimiterOf(text: string): string {
  const first = text.split(/\r\n|\n|\r/u, 50).find((line) => line.trim() !== "" && !line.startsWith("#")) ?? "";
  const outside = first.replaceAll(/"[^"]*"/gu, "");
  const count = (sign: string) => outside.split(sign).length;
  return [";", "\t", ","].reduce((best, sign) => (count(sign) > count(best) ? sign : best), ",");
}

/**
 * Splits a CSV text into cells: comma, semicolon or tab; any line ends; a byte-order mark; rows that begin with # are remarks.
 *
 * @param text  CSV
 * @returns cells as text; nothing in them is ever worked out, not even what begins with =
 * @throws ReadingError for an empty file, a quotation that is not closed, or more rows than are taken
 */
export function csvTable(text: string): TextTable {
  const delimiter = delimiterOf(text);
  const remark = (cells: readonly string[]) => cells[0]!.startsWith("#");
  const blank = (cells: readonly string[]) => cells.every((cell) => cell === "");
  const rows: TextRow[] = [];
  let row = 1;
  const records = recordsOf(text, delimiter);
  if (records.length === mostRecords) throw tooMany(mostRecords);
  for (const cells of records) {
    if (!remark(cells) && !blank(cells)) {
      if (rows.length > mostReadings) throw tooMany(row);
      rows.push({ row, cells });
    }
    row += 1 + cells.reduce((ends, cell) => (cell.includes("\n") ? ends + cell.split("\n").length - 1 : ends), 0);
  }
  const [header] = rows;
  if (header === undefined) throw emptyFile(1, "an empty file");
  if (rows.length === 1) throw emptyFile(header.row, "one row and no reading below it");
  return { header, rows: rows.slice(1), ...(delimiter !== "\t" && { decimal: delimiter === "," ? "." : "," }) };
}

function recordsOf(text: string, delimiter: string): string[][] {
  try {
    return parse(text, {
      bom: true,
      delimiter,
      record_delimiter: lineEnds,
      relax_column_count: true,
      relax_quotes: true,
      trim: true,
      skip_empty_lines: false,
      to: mostRecords,
    });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    throw new ReadingError({
      row: Number(error.lines ?? 1),
      column: "quotation marks",
      value: quoted(error.message),
      allowed: "a second quotation mark for each first one",
      advice: "Close the quotation mark, or take it away.",
    });
  }
}
