import { Refusal, type RefusalDetail } from "../quantity/errors.js";

/** Where in a file of readings something was refused, and why. */
export interface ReadingErrorDetail extends Omit<RefusalDetail, "quantity"> {
  /** Line of the file, counted from 1. */
  readonly row: number;
  /** Name of the column, or of what stands there. */
  readonly column: string;
}

/** A cell, a row or a whole file of readings that cannot be read. */
export class ReadingError extends Refusal {
  readonly row: number;
  readonly column: string;

  constructor({ row, column, ...detail }: ReadingErrorDetail) {
    super({ quantity: `row ${row}, ${column}`, ...detail });
    this.row = row;
    this.column = column;
  }
}

const longest = 60;

/** Text of a file as a message shows it: in quotes, cut when long, with signs that a terminal would obey spelled out. */
export function quoted(text: string): string {
  const cut = text.length > longest ? `${text.slice(0, longest)}…` : text;
  return JSON.stringify(cut).replaceAll(
    /[\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/gu,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}
