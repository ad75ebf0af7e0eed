import { runningRopeHold } from "../materials/people-running.js";
import { normalShare } from "../numerics/normal.js";
import { ninetyFifth } from "../numerics/normal-quantile.js";
import { within } from "../quantity/guard.js";
import type { Band } from "../sources/band.js";

/**
 * Most that a hand keeps on a rope that runs through it.
 *
 *     T = least of the printed hold of a running rope and what the same hand holds on a still one, end by end
 *
 * @param stillHold  largest tension that the hand holds on this rope while it is still, with its range [N]; no limit when absent
 * @returns tension [N] with the range of the persons tested
 * @throws ValueError for an impossible tension
 * Valid for rescue rope; a thin, wet or gloved one was not measured, and the range stands until somebody does.
 * Source: mauthner-grip. Example: runningHold().value → 209
 */
export function runningHold(stillHold?: Band): Band {
  const { value, low, high } = runningRopeHold;
  if (stillHold === undefined) return { value, low, high };
  const least = (running: number, still: number) => Math.min(running, within("handTension", still));
  return { value: least(value, stillHold.value), low: least(low, stillHold.low), high: least(high, stillHold.high) };
}

/**
 * Share of people who keep a tension on a rope that runs.
 *
 *     1 − Φ(1.645 · ln(T / middle) / |ln(end / middle)|),   end: the high one above the middle, the low one below
 *
 * @param tension  T in the running rope at the hand [N], 0 or more
 * @returns share [-], 0 to 1
 * @throws ValueError for an impossible tension
 * Valid as an order of size: a printed least, mean and most are taken as the ends and the middle of a range.
 * Source: mauthner-grip; the spread between its three numbers is judged. Example: runningHolders({ tension: 209 }) → 0.5
 */
export function runningHolders({ tension }: { readonly tension: number }): number {
  const T = within("handTension", tension);
  if (T === 0) return 1;
  const { value, low, high } = runningRopeHold;
  const end = T > value ? high : low;
  return 1 - normalShare((ninetyFifth * Math.log(T / value)) / Math.abs(Math.log(end / value)));
}
