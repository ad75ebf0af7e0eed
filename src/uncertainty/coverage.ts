import { binomialInterval, type ShareInterval } from "../numerics/binomial.js";
import type { Band } from "../sources/band.js";

/** Something that was measured, with the band that was foretold for it. */
export interface MeasuredPoint {
  readonly name: string;
  readonly measured: number;
  /** How far the reading may be off: half of its last step, in the unit of the measured value. */
  readonly halfStep: number;
  /** Foretold without looking at this point. */
  readonly band: Band;
}

/** How many points a band holds. */
export interface Coverage extends ShareInterval {
  readonly inside: number;
  readonly of: number;
}

/**
 * Whether a measured point lies inside its band.
 *
 *     measured + half step ≥ low and measured − half step ≤ high
 *
 * @param point  measured value, half step of the reading and band
 * @returns whether any value that reads like this lies in the band
 * Source: common practice. Example: isInside({ name: "pull", measured: 1.1, halfStep: 0.05, band: { value: 1.3, low: 1.14, high: 1.5 } }) → true
 */
export function isInside({ measured, halfStep, band }: MeasuredPoint): boolean {
  return measured + halfStep >= band.low && measured - halfStep <= band.high;
}

/**
 * How many of the measured points the bands hold, with the exact binomial interval of that share.
 *
 * @param points  at least one
 * @returns counts, share and its 95 % interval [-]
 * @throws ValueError without points
 * Valid as an interval for points that do not depend on each other; points of one rope on one wheel do, and then say less.
 * Source: clopper-pearson-1934. Example: coverageOf([{ name: "pull", measured: 1, halfStep: 0, band: { value: 1, low: 0.9, high: 1.1 } }]).share → 1
 */
export function coverageOf(points: readonly MeasuredPoint[]): Coverage {
  const inside = points.filter(isInside).length;
  return { inside, of: points.length, ...binomialInterval({ count: inside, of: points.length }) };
}
