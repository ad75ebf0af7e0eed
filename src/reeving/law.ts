import { within } from "../quantity/guard.js";

/**
 * Loss at one turn for one direction of motion: the tension on the pulled side grows by a ratio and a constant.
 *
 *     T_pulled = ratio · T_other + drag
 */
export interface Law {
  /** k [-], at least 1. */
  readonly ratio: number;
  /** c [N], at least 0. */
  readonly drag: number;
}

/** The turn that costs nothing. */
export const noLoss: Law = { ratio: 1, drag: 0 };

/** Loss at one turn for both directions, with the grip of a ratchet where there is one. */
export interface TurnLaw {
  /** Law while the line comes in. */
  readonly haul: Law;
  /** Law while the line goes out. */
  readonly ease: Law;
  /** A load-sensing ratchet: above this block load [N] the law `ease` is replaced by `gripped`. */
  readonly grip?: { readonly engageLoad: number; readonly gripped: Law };
}

/**
 * Checks a law and returns it.
 *
 * @param law  ratio [-], 1 to 1e12, and drag [N], 0 to 1e6
 * @returns the same law [-, N]
 * @throws ValueError outside these ranges
 * Example: checkedLaw({ ratio: 1.09, drag: 0 }).ratio → 1.09
 */
export function checkedLaw(law: Law): Law {
  within("tensionRatio", law.ratio);
  within("constantDrag", law.drag);
  return law;
}

/**
 * Two losses one after the other at the same turn.
 *
 *     k = k_1 · k_2,   c = k_2 · c_1 + c_2
 *
 * @param first  law met first, going from load to hand [-, N]
 * @param second  law met after it [-, N]
 * @returns the law of both [-, N]
 * Example: inSeries({ ratio: 1.1, drag: 1 }, { ratio: 1.2, drag: 2 }).ratio → 1.32
 */
export function inSeries(first: Law, second: Law): Law {
  return { ratio: first.ratio * second.ratio, drag: second.ratio * first.drag + second.drag };
}

/**
 * Tension at the pulled side from the tension at the other side.
 *
 *     T_pulled = k · T + c
 *
 * @param law  ratio [-] and drag [N]
 * @param tension  tension on the side that is not pulled [N]
 * @returns tension on the pulled side [N]
 * Example: pulledSide({ ratio: 1.1, drag: 2 }, 100) → 112
 */
export function pulledSide(law: Law, tension: number): number {
  return law.ratio * tension + law.drag;
}

/**
 * Tension at the yielding side from the tension at the pulled side; below zero means that the line does not move by itself.
 *
 *     T = (T_pulled − c) / k
 *
 * @param law  ratio [-] and drag [N]
 * @param tension  tension on the pulled side [N]
 * @returns tension on the other side [N], below zero when the pull does not overcome the drag
 * Example: yieldingSide({ ratio: 1.1, drag: 2 }, 112) → 100
 */
export function yieldingSide(law: Law, tension: number): number {
  return (tension - law.drag) / law.ratio;
}
