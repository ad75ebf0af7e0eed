import type { Band } from "../sources/band.js";

/** Standard deviations from the middle of a normal distribution to the ends of its 95 % and its 90 % interval. */
const endOf = { interval: 1.959963984540054, band: 1.6448536269514722 } as const;

/** A fitted number with its error. */
export interface Estimate {
  readonly value: number;
  /** One standard deviation; of the logarithm for a ratio. */
  readonly standardError: number;
  /** Ends of the 95 % interval. */
  readonly low: number;
  readonly high: number;
}

/** A number whose error is normal. */
export function normalEstimate(value: number, standardError: number): Estimate {
  const half = endOf.interval * standardError;
  return { value, standardError, low: value - half, high: value + half };
}

/** A ratio from its logarithm, whose error is normal. */
export function ratioEstimate(logRatio: number, standardError: number): Estimate {
  const half = endOf.interval * standardError;
  return {
    value: Math.exp(logRatio),
    standardError,
    low: Math.exp(logRatio - half),
    high: Math.exp(logRatio + half),
  };
}

/** The 5th and 95th percentile round a value whose error is normal, cut at zero, which no force goes below. */
export function forceBand(value: number, standardError: number): Band {
  const half = endOf.band * standardError;
  return { value: Math.max(0, value), low: Math.max(0, value - half), high: Math.max(0, value + half) };
}

/** Standard deviation of a normal distribution with these percentiles. */
export function sigmaOfBand({ low, high }: Pick<Band, "low" | "high">): number {
  return (high - low) / (2 * endOf.band);
}
