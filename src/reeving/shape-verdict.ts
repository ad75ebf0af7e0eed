import { figures } from "../quantity/print.js";
import { type Outcome, outcomeOf, type Verdict } from "../quantity/verdict.js";
import type { Band } from "../sources/band.js";
import { type Change, nearestChange } from "./hold.js";

/** What a set line loses, against what the sail may lose. */
export interface ShapeCase {
  /** Movement at the sail, with its range [m]. */
  readonly lost: Band;
  /** Movement at the sail that is still right [m]. */
  readonly allowed: number;
}

/** A change to the rope, the cleat or the load. */
export type ShapeChange = Change<ShapeCase>;

/**
 * Judges whether a set shape stays within what the sail may lose, and finds the nearest change with which it does.
 *
 *     middle = allowed / lost,   worst = allowed / lost_high
 *
 * @param subject  what is judged
 * @param lost  movement at the sail with its range [m]
 * @param allowed  movement that is still right [m]
 * @param changes  to try in order, each worked out by the model [m]
 * @returns verdict with reason, and the first change that holds over the whole range
 * Source: common practice: a mark on the line decides. Example: shapeVerdict({ subject: "halyard", lost: { value: 0.01, low: 0.005, high: 0.03 }, allowed: 0.02, changes: [] }).outcome → "can't tell"
 */
export function shapeVerdict({
  subject,
  changes,
  ...now
}: ShapeCase & { readonly subject: string; readonly changes: readonly ShapeChange[] }): Verdict {
  return nearestChange({ subject, now, changes, judge: { outcome: shapeOutcome, reason: reasonOf } });
}

function shapeOutcome({ lost, allowed }: ShapeCase): Outcome {
  const margin = (loss: number) => allowed / Math.max(loss, 1e-9);
  return outcomeOf({ middle: margin(lost.value), worst: margin(lost.high) });
}

function reasonOf({ lost, allowed }: ShapeCase): string {
  const millimetres = (length: number) => `${figures(1000 * length)} mm`;
  return `moves ${millimetres(lost.value)}, at worst ${millimetres(lost.high)}; ${millimetres(allowed)} are allowed`;
}
