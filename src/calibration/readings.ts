import { csvTable } from "./csv-text.js";
import { forceOf, newtonsPerUnit } from "./force-text.js";
import type { Reading } from "./reading.js";
import { quoted, ReadingError } from "./reading-error.js";
import type { TextRow, TextTable } from "./table-text.js";
import { yamlTable } from "./yaml-text.js";

/** What a file of readings came to. */
export interface ReadingsFile {
  readonly readings: readonly Reading[];
  /** Rows that cannot be read, each with what to do; nothing of them is among the readings. */
  readonly refusals: readonly ReadingError[];
}

const forceColumns = ["load", "haul", "ease", "resolution"] as const;
const columnNames = ["line", ...forceColumns, "wet", "turns", "purchase", "note"] as const;
type ColumnName = (typeof columnNames)[number];

interface Column {
  readonly at: number;
  readonly unit?: string;
}

/** Refusals after which the rest of the file is left unread. */
const mostRefusals = 100;
const longestName = 80;

/** Format of a file of readings, by the end of its name. */
export function readingsFormat(file: string): "csv" | "yaml" {
  return /\.ya?ml$/iu.test(file) ? "yaml" : "csv";
}

/**
 * Reads a file of readings: line, load, haul, ease, resolution, wet, and where they were noted turns, purchase and note.
 *
 * @param text  the file: CSV with comma, semicolon or tab, or a YAML list
 * @param format  csv or yaml
 * @returns readings [N], and a refusal for each row that cannot be read
 * @throws ReadingError when nothing of the file can be read: it is empty, has no head, or is no text
 * Example: readReadings("line,load [N],haul [N],ease [N],resolution [N]\nlead,100,110,91,1").readings[0].haul → 110
 */
export function readReadings(text: string, format: "csv" | "yaml" = "csv"): ReadingsFile {
  refuseNoText(text);
  const table = format === "yaml" ? yamlTable(text) : csvTable(text);
  const columns = columnsOf(table.header);
  const readings: Reading[] = [];
  const refusals: ReadingError[] = [];
  const lines = new Map<string, Reading>();
  for (const row of table.rows) {
    try {
      readings.push(agreeing(readingOf(row, columns, table), lines));
    } catch (error) {
      if (!(error instanceof ReadingError)) throw error;
      refusals.push(error);
      if (refusals.length === mostRefusals) break;
    }
  }
  return { readings, refusals };
}

function refuseNoText(text: string): void {
  const head = text.slice(0, 4096);
  if (!head.includes("\u0000") && !head.includes("\ufffd")) return;
  throw new ReadingError({
    row: 1,
    column: "whole file",
    value: "something that is no text in UTF-8",
    allowed: "a CSV or YAML file in UTF-8",
    advice: "Save the sheet again as CSV UTF-8; a spreadsheet file itself cannot be read.",
  });
}

function columnsOf({ row, cells }: TextRow): ReadonlyMap<ColumnName, Column> {
  const columns = new Map<ColumnName, Column>();
  cells.forEach((cell, at) => {
    if (cell === "") return;
    const match = /^(\p{L}+)\s*(?:[[(]\s*(.*?)\s*[\])]|\s(\S+))?$/u.exec(cell);
    const name = columnNames.find((known) => known === match?.[1]?.toLowerCase());
    if (name === undefined) {
      throw head(
        row,
        quoted(cell),
        `the columns ${columnNames.join(", ")}`,
        "Rename or remove it; remarks go under note.",
      );
    }
    if (columns.has(name)) throw head(row, `${name} twice`, "each column once", "Remove one of the two.");
    const unit = match?.[2] ?? match?.[3];
    if (unit !== undefined && (forceColumns as readonly string[]).includes(name))
      newtonsPerUnit(unit, { row, column: name });
    columns.set(name, unit === undefined ? { at } : { at, unit });
  });
  const missing = (["line", "load", "resolution"] as const).filter((name) => !columns.has(name));
  if (!columns.has("haul") && !columns.has("ease"))
    throw head(row, "neither haul nor ease", "at least one of the two", "Name the column with the pulls.");
  if (missing.length > 0) {
    throw head(
      row,
      `no column ${missing.join(", ")}`,
      "line, load, resolution, and haul or ease",
      "Put the names of the columns in the first row.",
    );
  }
  return columns;
}

function head(row: number, value: string, allowed: string, advice: string): ReadingError {
  return new ReadingError({ row, column: "head of the table", value, allowed, advice });
}

function readingOf(
  { row, cells }: TextRow,
  columns: ReadonlyMap<ColumnName, Column>,
  { decimal, header }: TextTable,
): Reading {
  if (cells.length > header.cells.length && cells.slice(header.cells.length).some((cell) => cell !== "")) {
    throw new ReadingError({
      row,
      column: "whole row",
      value: `${cells.length} cells under ${header.cells.length} names`,
      allowed: "a name above every cell",
      advice:
        "A decimal comma in a file with commas between the columns splits a number: use points, or semicolons between the columns.",
    });
  }
  const textOf = (name: ColumnName) => {
    const column = columns.get(name);
    return column === undefined ? "" : (cells[column.at] ?? "");
  };
  const force = (name: (typeof forceColumns)[number]) => {
    const text = textOf(name);
    return text === "" ? undefined : forceOf({ row, column: name, text, unit: columns.get(name)?.unit, decimal });
  };
  const refuse = (column: ColumnName, allowed: string, advice: string): never => {
    throw new ReadingError({
      row,
      column,
      value: textOf(column) === "" ? "nothing" : quoted(textOf(column)),
      allowed,
      advice,
    });
  };
  const line = textOf("line");
  if (line === "" || line.length > longestName || /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u.test(line))
    refuse(
      "line",
      `a name of 1 to ${longestName} letters, without line breaks or hidden signs`,
      "Name the line, such as mainsheet.",
    );
  const load = force("load") ?? refuse("load", "a force", "Write what hung at the far end, such as 10 kgf.");
  const resolution =
    force("resolution") ?? refuse("resolution", "a force above 0", "Write the step of the scale, such as 0.1 kgf.");
  if (!(resolution > 0)) refuse("resolution", "a force above 0", "Write the step of the scale, such as 0.1 kgf.");
  const [haul, ease] = [force("haul"), force("ease")];
  if (haul === undefined && ease === undefined)
    refuse(
      columns.has("haul") ? "haul" : "ease",
      "a pull to haul, a pull to ease, or both",
      "Remove the row, or read it again.",
    );
  const turns =
    countOf(textOf("turns"), 1, 40, true) ??
    (textOf("turns") === ""
      ? undefined
      : refuse("turns", "a whole number from 1 to 40", "Count the turns of the line."));
  const purchase =
    countOf(textOf("purchase"), 0.1, 100, false) ??
    (textOf("purchase") === ""
      ? undefined
      : refuse("purchase", "a number from 0.1 to 100", "Write 4 for a purchase of 4:1."));
  const wet = wetOf(textOf("wet")) ?? refuse("wet", "yes, no, or nothing for dry", "Write yes for a wet line.");
  return {
    row,
    line,
    load,
    ...(haul !== undefined && { haul }),
    ...(ease !== undefined && { ease }),
    resolution,
    wet,
    ...(turns !== undefined && { turns }),
    ...(purchase !== undefined && { purchase }),
  };
}

const wetWords: Readonly<Record<string, boolean>> = {
  "": false,
  ...Object.fromEntries(["no", "dry", "false", "0"].map((word) => [word, false])),
  ...Object.fromEntries(["yes", "wet", "true", "1"].map((word) => [word, true])),
};

function wetOf(text: string): boolean | undefined {
  return Object.hasOwn(wetWords, text.toLowerCase()) ? wetWords[text.toLowerCase()] : undefined;
}

function countOf(text: string, least: number, most: number, isWhole: boolean): number | undefined {
  if (!/^\d+(?:[.,]\d+)?(?::1)?$/u.test(text)) return undefined;
  const value = Number(text.replace(":1", "").replace(",", "."));
  return value >= least && value <= most && (!isWhole || Number.isInteger(value)) ? value : undefined;
}

/** Turns and purchase belong to the line: they cannot change from one reading of it to the next. */
function agreeing(reading: Reading, lines: Map<string, Reading>): Reading {
  const first = lines.get(reading.line);
  if (first === undefined) lines.set(reading.line, reading);
  else {
    for (const column of ["turns", "purchase"] as const) {
      if (first[column] === reading[column]) continue;
      throw new ReadingError({
        row: reading.row,
        column,
        value: `${reading[column] ?? "nothing"} for ${quoted(reading.line)}`,
        allowed: `${first[column] ?? "nothing"}, as in row ${first.row}`,
        advice: "Give a line that was rigged otherwise a name of its own.",
      });
    }
  }
  return reading;
}
