import { ninetyFifth, normalQuantile } from "../numerics/normal-quantile.js";
import { ValueError } from "../quantity/errors.js";
import { type QuantityName, vocabulary } from "../quantity/vocabulary.js";
import type { Band } from "../sources/band.js";

/** Where a number cannot go beyond, whatever its spread says. */
export interface Bounds {
  readonly minimum?: number;
  readonly maximum?: number;
}

/**
 * Bounds of a quantity, as the vocabulary knows them.
 *
 * @param name  quantity of the vocabulary
 * @returns least and largest value that can exist [SI]
 * Example: boundsOf("efficiency").maximum → 1
 */
export function boundsOf(name: QuantityName): Bounds {
  const { minimum, maximum } = vocabulary[name];
  return { minimum, maximum };
}

/**
 * Value of a record at a probability.
 *
 *     above zero:  x = value · (high / value)^(z / 1.645) for z ≥ 0, with low for z < 0
 *     otherwise:   x = value + (high − value) · z / 1.645, with low for z < 0;   z = Φ⁻¹(p)
 *
 * Two halves of (log-)normal distributions that meet in the middle: the record's value is the median, its low and high
 * are the 5th and 95th percentile. What would lie beyond a bound lies on it.
 *
 * @param band  value, low and high [any unit]
 * @param p  probability [-], above 0 and below 1
 * @param bounds  least and largest possible value [same unit]
 * @returns the value [unit of the band]
 * @throws ValueError for a band that is not in order, or a probability outside
 * Source: common practice. Example: quantileOf({ value: 2, low: 1, high: 8 }, 0.95) → 8
 */
export function quantileOf(band: Band, p: number, bounds: Bounds = {}): number {
  checkBand(band);
  const z = normalQuantile(p);
  if (Number.isNaN(z)) {
    throw new ValueError({
      quantity: "probability",
      value: String(p),
      allowed: "above 0 and below 1",
      advice: "Take 0.5 for the middle.",
    });
  }
  return drawer(band, bounds)(z);
}

/** Refuses a band that is not finite or not in order. */
function checkBand({ value, low, high }: Band): void {
  if (low <= value && value <= high && Number.isFinite(low) && Number.isFinite(high)) return;
  throw new ValueError({
    quantity: "band",
    value: `${value} with spread ${low} to ${high}`,
    allowed: "low ≤ value ≤ high, all finite",
    advice: "Give the 5th and 95th percentile around the value.",
  });
}

/**
 * Makes a band ready to turn standard normal deviates into values.
 *
 * @param band  value, low and high [any unit]
 * @param bounds  least and largest possible value [same unit]
 * @returns function from a deviate to a value [unit of the band]
 */
export function drawer(band: Band, { minimum = -Infinity, maximum = Infinity }: Bounds = {}): (z: number) => number {
  checkBand(band);
  const { value, low, high } = band;
  const bounded = (x: number) => Math.min(maximum, Math.max(minimum, x));
  if (low > 0) {
    const down = Math.log(value / low) / ninetyFifth;
    const up = Math.log(high / value) / ninetyFifth;
    return (z) => bounded(value * Math.exp(z * (z < 0 ? down : up)));
  }
  const down = (value - low) / ninetyFifth;
  const up = (high - value) / ninetyFifth;
  return (z) => bounded(value + z * (z < 0 ? down : up));
}
