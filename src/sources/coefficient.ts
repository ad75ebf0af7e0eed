import { ValueError } from "../quantity/errors.js";
import { type SourceId, sourceOf } from "./bibliography.js";
import type { Status } from "./status.js";

/** A number from the world, with how far it may be off and where it comes from. */
export interface Coefficient {
  readonly value: number;
  /** SI unit; "1" for a pure number. */
  readonly unit: string;
  /** 5th and 95th percentile of what a user may meet, in the same unit. */
  readonly low: number;
  readonly high: number;
  readonly status: Status;
  /** Source in the bibliography; absent for common practice, memory and invention. */
  readonly source?: SourceId;
  /** Page, table or paragraph in the source, or the reason for the spread. */
  readonly place: string;
}

/**
 * Makes a coefficient record and refuses one that contradicts itself.
 *
 *     low ≤ value ≤ high, and a source exactly when the status is `published`
 *
 * @param record  value [SI], unit, low and high [SI], status, source and place
 * @returns the same record [SI]
 * @throws ValueError when the spread does not hold the value, or when source and status do not fit
 * Example: coefficient({ value: 0.15, unit: "1", low: 0.1, high: 0.2, status: "from memory", place: "range of handbooks" }).value → 0.15
 */
export function coefficient(record: Coefficient): Coefficient {
  const { value, low, high, status, source } = record;
  if (!(low <= value && value <= high && Number.isFinite(low) && Number.isFinite(high))) {
    throw new ValueError({
      quantity: "coefficient",
      value: `${value} with spread ${low} to ${high}`,
      allowed: "low ≤ value ≤ high, all finite",
      advice: "Give the 5th and 95th percentile around the value.",
    });
  }
  if ((status === "published") !== (source !== undefined)) {
    throw new ValueError({
      quantity: "coefficient",
      value: `status "${status}" with ${source === undefined ? "no source" : `source "${source}"`}`,
      allowed: "a source exactly when the status is published",
      advice: "Name the source of a published value, and only of that.",
    });
  }
  return record;
}

/**
 * Words that say where a coefficient comes from, for a table cell.
 *
 * @param record  coefficient
 * @returns text such as `Wire Rope Users Manual, p. 87` or `common practice`
 * Example: origin({ value: 1, unit: "1", low: 1, high: 1, status: "common practice", place: "" }) → "common practice"
 */
export function origin(record: Pick<Coefficient, "status" | "source" | "place">): string {
  const words = record.source === undefined ? record.status : sourceOf(record.source).title;
  return record.place === "" ? words : `${words}: ${record.place}`;
}
