import { suggestion } from "../quantity/suggestion.js";
import type { Reading } from "./reading.js";

/** Lines that the pages ask for. */
export const pageLines: readonly string[] = ["mainsheet", "jib sheet", "gennaker sheet", "halyard", "outhaul"];

/** Names in readings, and whether a page asks for them. */
export interface ReadLines {
  readonly known: readonly string[];
  /** What no page asks for, with the name that was probably meant. */
  readonly unknown: readonly { readonly name: string; readonly meant?: string }[];
}

/**
 * Which of the lines that were read a page asks for.
 *
 * @param readings  readings of any number of lines
 * @param lines  names that pages ask for
 * @returns names that are known and names that are not, each once, in the order of the file
 * Example: readLines([{ row: 2, line: "main sheet", load: 100, haul: 110, resolution: 1, wet: false }]).unknown[0].meant → "mainsheet"
 */
export function readLines(readings: readonly Reading[], lines: readonly string[] = pageLines): ReadLines {
  const names = [...new Set(readings.map(({ line }) => line))];
  return {
    known: names.filter((name) => lines.includes(name)),
    unknown: names
      .filter((name) => !lines.includes(name))
      .map((name) => {
        const meant = suggestion(name, lines);
        return meant === undefined ? { name } : { name, meant };
      }),
  };
}
