import { within } from "../quantity/guard.js";
import type { Band } from "../sources/band.js";
import { equalTurns } from "./equal-turns.js";
import { withFactors } from "./line-factors.js";
import { lineLaw } from "./line-law.js";
import type { LawBands } from "./measured-law.js";
import { calibrationRecords } from "./records.js";

/** Load at which the law of turns is taken [N]: it does not depend on it. */
const anyLoad = 1000;

/**
 * What is known of a line of which nothing is known but perhaps the count of its turns and its purchase.
 *
 *     k = κ^n in a row, by the balance of the tackle otherwise; all turns of one make, so that they are off together
 *
 * @param turns  n [-], 1 to 40; absent where nobody counted
 * @param purchase  metres hauled for each metre that the load moves [-]; 1 when absent
 * @returns bands of ratio [-] and drag [N] of the whole line
 * Source: common practice. Example: unknownLine(2).ratio.value → 1.1881
 */
export function unknownLine(turns?: number, purchase = 1): LawBands {
  const { turnRatio, lineRatio, lineDrag } = calibrationRecords;
  if (turns !== undefined) within("turnCount", turns, 1, 40);
  const rove = equalTurns({ turns, purchase });
  if (rove === undefined) return { ratio: lineRatio, drag: lineDrag };
  const ratioAt = (one: number) =>
    purchase === 1
      ? one ** rove.turns
      : lineLaw(withFactors(rove.line, (one - 1) / (rove.ratio - 1), 0), anyLoad).ratio;
  const ratio: Band = {
    value: ratioAt(turnRatio.value),
    low: ratioAt(turnRatio.low),
    high: ratioAt(turnRatio.high),
  };
  return { ratio, drag: lineDrag };
}
