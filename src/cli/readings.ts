import { resolve } from "node:path";
import type { Reading } from "../calibration/reading.js";
import { ReadingError } from "../calibration/reading-error.js";
import { type ReadingsFile, readingsFormat, readReadings } from "../calibration/readings.js";
import { shownPath } from "./folders.js";
import type { Surroundings } from "./surroundings.js";

/** A file of readings in which every row can be read. */
export interface GivenReadings {
  readonly path: string;
  /** The path as a message shows it. */
  readonly shown: string;
  readonly readings: readonly Reading[];
}

const mostNamed = 20;

/** Lines under a sentence, the first of them when there are many. */
export function listed(lines: readonly string[]): string {
  const more = lines.length > mostNamed ? [`… and ${lines.length - mostNamed} more.`] : [];
  return [...lines.slice(0, mostNamed), ...more].map((line) => `  ${line}\n`).join("");
}

/**
 * Reads a file of readings, or says why it cannot be read.
 *
 * @param file  as it was typed
 * @param undone  sentence that says what was left undone, such as `Nothing was built.`
 * @returns the readings, or nothing after the reasons were written
 * Example: await givenReadings("readings.csv", "Nothing was built.", surroundings)
 */
export async function givenReadings(
  file: string,
  undone: string,
  { currentFolder, disk, err }: Pick<Surroundings, "currentFolder" | "disk" | "err">,
): Promise<GivenReadings | undefined> {
  const path = resolve(currentFolder, file);
  const shown = shownPath(path, currentFolder);
  const text = await disk.read(path);
  if (text === undefined) {
    err(`There is no file ${shown}. Write one as the sheet says: haulbook worksheet\n`);
    return undefined;
  }
  const { readings, refusals } = readAll(text, file);
  if (refusals.length === 0) return { path, shown, readings };
  err(`${shown}: ${refusals.length} ${refusals.length === 1 ? "row" : "rows"} cannot be read. ${undone}\n`);
  err(listed(refusals.map(({ message }) => message)));
  return undefined;
}

/** A file of which nothing can be read has one refusal. */
function readAll(text: string, file: string): ReadingsFile {
  try {
    return readReadings(text, readingsFormat(file));
  } catch (error) {
    if (error instanceof ReadingError) return { readings: [], refusals: [error] };
    throw error;
  }
}
