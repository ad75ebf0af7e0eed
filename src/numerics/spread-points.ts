import { ValueError } from "../quantity/errors.js";
import type { Band } from "../sources/band.js";
import { normalQuantile } from "./normal.js";

/** How many points, in how many dimensions. */
export interface SpreadInput {
  readonly count: number;
  readonly dimensions: number;
  /** Another seed shifts all points; the same seed gives the same points. */
  readonly seed: number;
}

/**
 * Points that fill a unit cube evenly, the same ones for the same seed.
 *
 *     u_j(n) = frac(s_j + n · g^−j),   g the root above 1 of g^(dimensions + 1) = g + 1
 *
 * @param count  points [-], 1 or more
 * @param dimensions  columns [-], 1 to 64
 * @param seed  whole number [-]
 * @returns one column of numbers from 0 to 1, ends left out, for each dimension [-]
 * @throws ValueError for a count, a number of dimensions or a seed that is no whole number in range
 * Valid for averages and percentiles of smooth results; neighbouring columns are not random.
 * Source: common practice, additive recurrence (Kronecker sequence) of the textbooks.
 * Example: spreadPoints({ count: 2, dimensions: 1, seed: 0 }).length → 1
 */
export function spreadPoints({ count, dimensions, seed }: SpreadInput): Float64Array[] {
  const whole = [count, dimensions, seed].every(Number.isSafeInteger);
  if (!whole || count < 1 || dimensions < 1 || dimensions > 64) {
    throw new ValueError({
      quantity: "points of a sample",
      value: `${count} points in ${dimensions} dimensions, seed ${seed}`,
      allowed: "whole numbers; 1 point or more, 1 to 64 dimensions",
      advice: "Give count, dimensions and seed as whole numbers.",
    });
  }
  const root = growthRoot(dimensions);
  const golden = growthRoot(1);
  return Array.from({ length: dimensions }, (_, column) => {
    const step = root ** -(column + 1);
    const shift = 0.5 + (seed * (column + 1)) / golden;
    return Float64Array.from({ length: count }, (_, n) => insideUnit(shift + (n + 1) * step));
  });
}

/** The root above 1 of g^(d + 1) = g + 1, by repeated roots. */
function growthRoot(dimensions: number): number {
  let root = 2;
  for (let i = 0; i < 64; i++) root = (1 + root) ** (1 / (dimensions + 1));
  return root;
}

function insideUnit(value: number): number {
  const part = value - Math.floor(value);
  return Math.min(Math.max(part, 2 ** -40), 1 - 2 ** -40);
}

/** Deviations from the middle to the 95th percentile. */
const ninetyFive = normalQuantile(0.95);

/**
 * Value of a band below which a share of cases lies.
 *
 *     value · (end / value)^(|z| / 1.645) with z = Φ⁻¹(share); the low end below the middle, the high end above it
 *
 * A band that reaches zero has no logarithm: it is spread along straight halves, never below zero where its low end is not.
 *
 * @param band  middle, 5th and 95th percentile [any unit]
 * @param share  share of cases below [-], above 0, below 1
 * @returns value [unit of the band]
 * @throws ValueError for a share that is not between 0 and 1
 * Valid as a judgement: two half log-normal curves through the three numbers.
 * Source: common practice, log-normal spread of a positive coefficient.
 * Example: bandAt({ value: 2, low: 1, high: 4 }, 0.5) → 2
 */
export function bandAt({ value, low, high }: Band, share: number): number {
  const z = normalQuantile(share);
  const end = z < 0 ? low : high;
  const part = Math.abs(z) / ninetyFive;
  if (low > 0) return value * (end / value) ** part;
  const straight = value + (end - value) * part;
  return low < 0 ? straight : Math.max(0, straight);
}
