import { whole } from "../reeving/whole.js";
import { type Estimate, normalEstimate, ratioEstimate } from "./estimate.js";
import type { MeasuredLaw } from "./measured-law.js";

/** Ratio and drag of one of the equal turns of a line. */
export interface TurnShare {
  readonly turns: number;
  /** κ [-] */
  readonly ratio: Estimate;
  /** d [N] */
  readonly drag: Estimate;
}

/**
 * Loss of one turn of a line that has several equal turns, from the law of the whole line.
 *
 *     κ = k^(1/n),   d = c / (1 + κ + … + κ^(n−1))
 *
 * @param law  measured ratio and drag of the line
 * @param turns  n [-], whole number 1 to 40
 * @returns ratio and drag of one turn, with their 95 % intervals
 * @throws ReevingError when the count is not whole
 * Source: statics, equal losses in series. Example: turnShare({ ratio: { value: 1.21, standardError: 0, low: 1.21, high: 1.21 }, drag: { value: 2.1, standardError: 0, low: 2.1, high: 2.1 }, correlation: 0 }, 2).drag.value → 1
 */
export function turnShare(law: MeasuredLaw, turns: number): TurnShare {
  const n = whole({ quantity: "turns of the line", value: turns, least: 1, most: 40 });
  const logTurn = Math.log(law.ratio.value) / n;
  let sum = 0;
  let slope = 0;
  for (let turn = 0; turn < n; turn++) {
    sum += Math.exp(turn * logTurn);
    slope += turn * Math.exp(turn * logTurn);
  }
  const drag = law.drag.value / sum;
  const byLogRatio = (-drag * slope) / (sum * n);
  const [one, other] = [byLogRatio * law.ratio.standardError, law.drag.standardError / sum];
  const variance = one * one + other * other + 2 * law.correlation * one * other;
  return {
    turns: n,
    ratio: ratioEstimate(logTurn, law.ratio.standardError / n),
    drag: normalEstimate(drag, Math.sqrt(Math.max(0, variance))),
  };
}
