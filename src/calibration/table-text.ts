import { ReadingError } from "./reading-error.js";

/** One row of a file, as text. */
export interface TextRow {
  /** Line of the file, counted from 1. */
  readonly row: number;
  readonly cells: readonly string[];
}

/** A file of readings as text, before anything is understood. */
export interface TextTable {
  readonly header: TextRow;
  readonly rows: readonly TextRow[];
  /** Sign that stands for the decimal point with certainty; absent where both may. */
  readonly decimal?: "," | ".";
}

/** Most readings of a file. */
export const mostReadings = 1_000_000;

/** A file without a single reading. */
export function emptyFile(row: number, value: string): ReadingError {
  return new ReadingError({
    row,
    column: "whole file",
    value,
    allowed: "a first row with the names of the columns, then one row a reading",
    advice: "Begin with: line,load [N],haul [N],ease [N],resolution [N],wet",
  });
}

/** A file with more readings than are taken. */
export function tooMany(row: number): ReadingError {
  return new ReadingError({
    row,
    column: "whole file",
    value: `more than ${mostReadings} rows`,
    allowed: `at most ${mostReadings} readings`,
    advice: "Split the file by line, or thin out the log of the scale.",
  });
}
