import { within } from "../quantity/guard.js";
import type { Band } from "../sources/band.js";
import type { LawBands } from "./measured-law.js";
import { calibrationRecords } from "./records.js";

/**
 * What is known of a line of which nothing is known but perhaps the count of its turns.
 *
 *     k = κ^n, all turns of one make, so that they are off together
 *
 * @param turns  n [-], 1 to 40; absent where nobody counted
 * @returns bands of ratio [-] and drag [N]
 * Source: common practice. Example: unknownLine(2).ratio.value → 1.1881
 */
export function unknownLine(turns?: number): LawBands {
  const { turnRatio, lineRatio, lineDrag } = calibrationRecords;
  return {
    ratio: turns === undefined ? lineRatio : powerOf(turnRatio, within("turnCount", turns, 1, 40)),
    drag: lineDrag,
  };
}

function powerOf({ value, low, high }: Band, power: number): Band {
  return { value: value ** power, low: low ** power, high: high ** power };
}
