import { ReevingError } from "../quantity/errors.js";
import { prepareLine } from "../reeving/line.js";
import { whole } from "../reeving/whole.js";
import { equalTurns, type Rove } from "./equal-turns.js";
import { type Estimate, normalEstimate, ratioEstimate } from "./estimate.js";
import { withFactors } from "./line-factors.js";
import type { MeasuredLaw } from "./measured-law.js";
import { roveLaw } from "./rove-law.js";

/** Ratio and drag of one of the equal turns of a line. */
export interface TurnShare {
  readonly turns: number;
  /** κ [-] */
  readonly ratio: Estimate;
  /** d [N] */
  readonly drag: Estimate;
}

/** Step of ln k over which slopes are taken. */
const step = 1e-5;
const anyLoad = 1000;

/**
 * Loss of one turn of a line that has several equal turns, from the hauling law of the whole line.
 *
 *     in a row  κ = k^(1/n),   d = c / (1 + κ + … + κ^(n−1));   in a tackle both by its balance of forces
 *
 * @param law  measured ratio and drag of the line
 * @param rove  turns [-], whole number 1 to 40, and purchase [-]
 * @returns ratio and drag of one turn, with their 95 % intervals
 * @throws ReevingError when the count is not whole, or does not tell how the line is rove
 * Source: statics, equal losses. Example: turnShare({ ratio: { value: 1.21, standardError: 0, low: 1.21, high: 1.21 }, drag: { value: 2.1, standardError: 0, low: 2.1, high: 2.1 }, correlation: 0 }, { turns: 2 }).drag.value → 1
 */
export function turnShare(law: MeasuredLaw, rove: Rove & { readonly turns: number }): TurnShare {
  const { turns, purchase = 1 } = rove;
  whole({ quantity: "turns of the line", value: turns, least: 1, most: 40 });
  const equal = equalTurns(rove);
  if (equal === undefined) throw unlikeTurns(turns, purchase);
  const termsAt = roveLaw(equal.line, anyLoad);
  const turnAt = (logRatio: number) => {
    const { factor, rest } = termsAt(logRatio);
    const haulDrag = rest * prepareLine(withFactors(equal.line, factor, 1)).handForce(0, "hauling");
    // Below no friction, which only an error of reading goes to, each turn has its share of the missing ratio.
    const logTurn = Math.log1p(factor * (equal.ratio - 1)) + Math.log(rest) / turns;
    return { logTurn, dragShare: equal.drag / haulDrag };
  };
  const middle = Math.log(law.ratio.value);
  const [here, beside] = [turnAt(middle), turnAt(middle + step)];
  const slopes = {
    logTurn: (beside.logTurn - here.logTurn) / step,
    drag: (law.drag.value * (beside.dragShare - here.dragShare)) / step,
  };
  const [one, other] = [slopes.drag * law.ratio.standardError, here.dragShare * law.drag.standardError];
  const variance = one * one + other * other + 2 * law.correlation * one * other;
  return {
    turns,
    ratio: ratioEstimate(here.logTurn, slopes.logTurn * law.ratio.standardError),
    drag: normalEstimate(here.dragShare * law.drag.value, Math.sqrt(Math.max(0, variance))),
  };
}

function unlikeTurns(turns: number, purchase: number): ReevingError {
  return new ReevingError({
    quantity: "turns of the line",
    value: `${turns} for a purchase of ${purchase}`,
    allowed: "turns in a row, a tackle of 2 to 12 parts with up to 8 leads, or whips one upon the other",
    advice: "Count the sheaves that the rope passes, leads included.",
  });
}
