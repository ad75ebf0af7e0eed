import type { SourceId } from "../sources/bibliography.js";
import type { Evidence, Status } from "../sources/status.js";

/** Subjects of checks, in the order of the reports that show them. */
export const topics = [
  "wind",
  "purchase",
  "turn",
  "grip",
  "cleat",
  "strength",
  "taper",
  "size",
  "heat",
  "crew",
  "motion",
  "bands",
  "calibration",
] as const;

/** Subject of a set of checks: decides on which report it is shown. */
export type Topic = (typeof topics)[number];

/** One expected value and the model call that must reproduce it. */
export interface CheckRow {
  /** Short, unique, lower case with hyphens. */
  readonly id: string;
  /** What is compared, in words a reader understands. */
  readonly quantity: string;
  /** The value as it is printed in the source: its digits set the allowed deviation. */
  readonly printed: string;
  /** Unit of the printed value; "1" for a pure number. */
  readonly unit: string;
  /** Calls the model; answers in the unit of the printed value. */
  readonly compute: () => number;
  /** Stated reading error in the unit, where it is not half the last printed digit. */
  readonly readingError?: number;
  readonly evidence: Evidence;
  readonly status: Status;
  /** Absent exactly when nobody printed the value: common practice, memory, invention. */
  readonly source?: SourceId;
  /** Page, table or paragraph; without a source what the value says. */
  readonly place: string;
}

/** Rows of one source on one topic. */
export interface CheckSet {
  readonly topic: Topic;
  readonly rows: readonly CheckRow[];
}

/** A row after the comparison, as it is shown and stored. */
export interface CheckResult {
  readonly id: string;
  readonly quantity: string;
  readonly computed: number;
  readonly expected: number;
  readonly unit: string;
  readonly allowed: number;
  /** Computed less expected, in the unit. */
  readonly deviation: number;
  readonly holds: boolean;
  readonly evidence: Evidence;
  readonly status: Status;
  readonly source?: SourceId;
  readonly place: string;
}
