import { ReevingError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";

/** Two sheaves in one plane with a line that runs round both. */
export interface SheavePair {
  readonly largeDiameter: number;
  readonly smallDiameter: number;
  /** From pin to pin [m]. */
  readonly distance: number;
  /** True when the line crosses between them. */
  readonly crossed?: boolean;
}

/** Angle over which the line lies on each sheave [rad]. */
export interface PairWraps {
  readonly large: number;
  readonly small: number;
}

/**
 * How far a line lies on two sheaves of different size that face each other.
 *
 *     open     θ = π ± 2 asin((R − r) / a)
 *     crossed  θ = π + 2 asin((R + r) / a) on both
 *
 * @param largeDiameter  2 R [m], above 0
 * @param smallDiameter  2 r [m], above 0, not above 2 R
 * @param distance  a, pin to pin [m], more than R + r
 * @param crossed  whether the line crosses; open when absent
 * @returns wrap angle on both [rad]
 * @throws ValueError for impossible sizes, ReevingError for sheaves that touch
 * Source: tayal-mechanics, examples 7.1 and 7.2. Example: sheaveWraps({ largeDiameter: 0.24, smallDiameter: 0.12, distance: 0.3 }).large → 3.5443
 */
export function sheaveWraps({ largeDiameter, smallDiameter, distance, crossed = false }: SheavePair): PairWraps {
  const R = within("sheaveDiameter", largeDiameter) / 2;
  const r = within("sheaveDiameter", smallDiameter, undefined, largeDiameter) / 2;
  const a = within("lineLength", distance);
  if (a <= R + r) {
    throw new ReevingError({
      quantity: "distance from pin to pin",
      value: `${distance} m`,
      allowed: `more than ${R + r} m, so that the sheaves do not touch`,
      advice: "Give the distance between the pins, in metres.",
    });
  }
  if (crossed) {
    const both = Math.PI + 2 * Math.asin((R + r) / a);
    return { large: both, small: both };
  }
  const more = 2 * Math.asin((R - r) / a);
  return { large: Math.PI + more, small: Math.PI - more };
}
