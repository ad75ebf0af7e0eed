import { printForce } from "../quantity/print.js";
import { type Outcome, outcomeOf, type Verdict } from "../quantity/verdict.js";
import type { Band } from "../sources/band.js";

/** What holds against what pulls. */
export interface HoldCase {
  /** Load at which the cleat slips, with its range [N]. */
  readonly slipLoad: Band;
  /** Load that comes on it, with its range [N]. */
  readonly load: Band;
}

/** A change to try, nearest first. */
export interface Change<Case> {
  /** Words such as `one more turn`. */
  readonly words: string;
  /** Works the case out again with the change. */
  readonly retry: () => Case;
}

/** A change to the cleat, the rope or the load. */
export type HoldChange = Change<HoldCase>;

/** A cleat to be judged, and changes to try. */
export interface HoldInput extends HoldCase {
  readonly subject: string;
  readonly changes: readonly HoldChange[];
}

/**
 * Judges whether a cleat holds, and finds the nearest change with which it does.
 *
 *     middle = T_hold / T,   worst = T_hold,low / T_high
 *
 * @param subject  what is judged
 * @param slipLoad  T_hold with its range [N]
 * @param load  T with its range [N]
 * @param changes  to try in order, each worked out by the model [N]
 * @returns verdict with reason, and the first change that holds over the whole range
 * Source: common practice: what slips first decides. Example: holdVerdict({ subject: "outhaul", slipLoad: { value: 500, low: 400, high: 600 }, load: { value: 200, low: 100, high: 300 }, changes: [] }).outcome → "enough"
 */
export function holdVerdict({ subject, changes, ...now }: HoldInput): Verdict {
  return nearestChange({ subject, now, changes, judge: { outcome: holdOutcome, reason: reasonOf } });
}

/**
 * How a cleat stands against a load: it holds over the whole range, only at its middle, or not even there.
 *
 *     holds when T_hold,low ≥ T_high, doubtful when T_hold ≥ T
 *
 * @param slipLoad  T_hold with its range [N]
 * @param load  T with its range [N]
 * @returns outcome
 * Source: common practice: what slips first decides. Example: holdOutcome({ slipLoad: { value: 500, low: 100, high: 600 }, load: { value: 200, low: 150, high: 300 } }) → "can't tell"
 */
export function holdOutcome({ slipLoad, load }: HoldCase): Outcome {
  return outcomeOf({
    middle: slipLoad.value / Math.max(load.value, 1e-9),
    worst: slipLoad.low / Math.max(load.high, 1e-9),
  });
}

function reasonOf({ slipLoad, load }: HoldCase): string {
  return `slips at ${printForce(slipLoad.value)}, at worst ${printForce(slipLoad.low)}; the load is ${printForce(load.value)}, up to ${printForce(load.high)}`;
}

/** A case to be judged, the changes to try, and how a case is judged. */
interface Trial<Case> {
  readonly subject: string;
  readonly now: Case;
  readonly changes: readonly Change<Case>[];
  readonly judge: { readonly outcome: (one: Case) => Outcome; readonly reason: (one: Case) => string };
}

/** Judges a case; where it does not hold, tries the changes in order until one does. */
export function nearestChange<Case>({ subject, now, changes, judge }: Trial<Case>): Verdict {
  const outcome = judge.outcome(now);
  const verdict = { subject, outcome, reason: judge.reason(now) };
  if (outcome === "enough") return verdict;
  for (const { words, retry } of changes) {
    const then = retry();
    if (judge.outcome(then) === "enough") return { ...verdict, change: `${words}: ${judge.reason(then)}` };
  }
  return verdict;
}
