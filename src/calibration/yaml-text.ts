import { isMap, isScalar, isSeq, LineCounter, type Node, type Pair, parseDocument } from "yaml";
import { quoted, ReadingError } from "./reading-error.js";
import { emptyFile, type TextRow, type TextTable } from "./table-text.js";

/** Longest YAML text [characters]: a large log belongs in a CSV file. */
const longestText = 2_000_000;

/**
 * Splits a YAML text into cells: a list of readings, each with the names of the columns as keys, alone or under `readings`.
 *
 * @param text  YAML
 * @returns cells as text, the rows by the line on which a reading begins
 * @throws ReadingError for an empty file, a text that is no YAML, a list of something else
 */
export function yamlTable(text: string): TextTable {
  if (text.length > longestText) {
    throw whole(1, `${text.length} characters`, `at most ${longestText} in YAML`, "Write a large log as CSV.");
  }
  const lines = new LineCounter();
  const document = parseDocument(text.replace(/^\ufeff/u, ""), { schema: "failsafe", lineCounter: lines });
  const [error] = document.errors;
  if (error) {
    const row = error.linePos?.[0].line ?? 1;
    throw whole(
      row,
      quoted(error.message.split("\n")[0] ?? ""),
      "YAML",
      "Begin each reading with a dash and indent its keys evenly.",
    );
  }
  const { contents } = document;
  const list: unknown = isMap(contents) ? contents.get("readings", true) : contents;
  if (contents === null) throw emptyFile(1, "an empty file");
  if (!isSeq(list))
    throw whole(1, "no list of readings", "a list, alone or under the key readings", "Begin each reading with a dash.");
  if (list.items.length === 0) throw emptyFile(1, "a list without readings");
  const rowOf = (node: unknown) => lines.linePos((node as Node).range?.[0] ?? 0).line;
  const header: string[] = [];
  const rows = list.items.map((item): TextRow => {
    const row = rowOf(item);
    if (!isMap(item))
      throw whole(
        row,
        "something without keys",
        "a reading with keys such as line and load",
        "Write - line: mainsheet and go on below it.",
      );
    const cells: string[] = [];
    for (const { key, value } of item.items as Pair[]) {
      const name = isScalar(key) ? String(key.value) : "";
      if (value !== null && !isScalar(value)) {
        throw new ReadingError({
          row,
          column: `key ${quoted(name)}`,
          value: "a list or a group",
          allowed: "a single value",
          advice: `Write it like ${name}: 12 kgf.`,
        });
      }
      if (!header.includes(name)) header.push(name);
      cells[header.indexOf(name)] = value === null ? "" : String(value.value ?? "").trim();
    }
    return { row, cells };
  });
  const filled = rows.map(({ row, cells }) => ({ row, cells: header.map((_, index) => cells[index] ?? "") }));
  return { header: { row: filled[0]!.row, cells: header }, rows: filled };
}

function whole(row: number, value: string, allowed: string, advice: string): ReadingError {
  return new ReadingError({ row, column: "whole file", value, allowed, advice });
}
