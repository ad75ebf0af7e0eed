import { readFileSync } from "node:fs";
import { basename } from "node:path";
import type { Reading } from "../calibration/reading.js";
import { readingsFormat, readReadings } from "../calibration/readings.js";
import { type LineRequest, type StandingLine, standingLine } from "../calibration/standing-line.js";
import { ValueError } from "../quantity/errors.js";
import { result } from "./display.js";
import { readingsVariable } from "./input.js";
import type { Result } from "./output.js";

/** Where readings of somebody's own boat are looked for. */
export interface OwnReadings {
  /** Path of the file; by default what the environment says, none when that says nothing. */
  readonly file?: string | undefined;
  /** Gives the text of a file; by default it is read from the disk. */
  readonly read?: (path: string) => string;
}

/** The readings of the boat that the pages are built for; none without a file. */
function ownReadings(options: OwnReadings): readonly Reading[] {
  const { file = process.env[readingsVariable], read = (path: string) => readFileSync(path, "utf8") } = options;
  if (file === undefined || file === "") return [];
  const { readings, refusals } = readReadings(read(file), readingsFormat(file));
  const [refusal] = refusals;
  if (refusal === undefined) return readings;
  throw new ValueError({
    quantity: `readings in ${basename(file)}`,
    value: `${refusals.length} ${refusals.length === 1 ? "row" : "rows"} that cannot be read`,
    allowed: "rows that can all be read",
    advice: refusal.message,
  });
}

/**
 * The line that a page computes with: calibrated where the readings of the boat hold it, that of the catalogue otherwise.
 *
 * @param request  name, line [m, rad, N], uncertain inputs, load [N]
 * @param options  file of readings; by default the one that the build was given
 * @returns the line that stands, its uncertain inputs, and the words that the page shows
 * @throws ReadingError or ValueError for a file that cannot be read
 * Source: statics. Example: ownLine({ name: "lead", line: { rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [] }, uncertainInputs: [], load: 100 }, { file: "" }).measured → false
 */
export function ownLine(request: LineRequest, options: OwnReadings = {}): StandingLine {
  return standingLine(request, ownReadings(options));
}

const label = "Friction of the lines on this page";
const howTo = "Measure yours: see the page “How do I measure my own boat?”.";

/**
 * What a page says of where the friction of its lines comes from.
 *
 * @param lines  lines that it computes with, as they stand; none for a page without any
 * @param note  what else is to be said; needed where there are no lines
 * @returns a result to be shown near the top
 * @throws ValueError without lines and without a note
 * Example: lineSource([], "Nothing here runs over a block.").range → "Nothing here runs over a block."
 */
export function lineSource(lines: readonly StandingLine[], note = ""): Result {
  const joined = (...parts: readonly string[]) => parts.filter((part) => part !== "").join(" ");
  if (lines.length === 0) return result({ label, text: "your readings do not enter", range: note });
  const measured = lines.filter((line) => line.measured);
  const names = (some: readonly StandingLine[]) =>
    some.map(({ name, wet }) => (wet ? `${name}, wet` : name)).join("; ");
  if (measured.length === 0) {
    const told = lines.filter(({ unfit }) => unfit).map(({ words }) => words);
    return result({
      label,
      text: "catalogue values",
      range: joined(`No line of this page was measured on your boat (${names(lines)}).`, ...told, howTo, note),
    });
  }
  return result({
    label,
    text: `measured: ${names(measured)}`,
    range: joined(...lines.map(({ words }) => words), note),
  });
}
