import { whole } from "./sobol-sequence.js";

/** A count out of a number of trials. */
export interface CountInput {
  readonly count: number;
  readonly of: number;
  /** How sure the interval is; 0.95 when absent. */
  readonly confidence?: number;
}

/** A share with the ends of its exact interval. */
export interface ShareInterval {
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Share of a count with its exact binomial interval.
 *
 *     low: P(X ≥ count | p) = (1 − confidence) / 2,   high: P(X ≤ count | p) = (1 − confidence) / 2
 *
 * @param count  how many of them [-], 0 to `of`
 * @param of  trials [-], 1 or more
 * @param confidence  [-], above 0 and below 1; 0.95 when absent
 * @returns share and interval [-]
 * @throws ValueError for counts that are no whole numbers in range
 * Valid for trials that do not depend on each other.
 * Source: clopper-pearson-1934. Example: binomialInterval({ count: 4, of: 10 }).low → 0.1216
 */
export function binomialInterval({ count, of, confidence = 0.95 }: CountInput): ShareInterval {
  whole("trials", of, 1, 100_000);
  whole("count of trials", count, 0, of);
  const tail = (1 - confidence) / 2;
  return {
    share: count / of,
    low: count === 0 ? 0 : crossing((p) => upperTail(count, of, p) - tail),
    high: count === of ? 1 : crossing((p) => tail - (1 - upperTail(count + 1, of, p))),
  };
}

/** Where a rising function of a probability crosses zero, by halving. */
function crossing(excess: (p: number) => number): number {
  let [low, high] = [0, 1];
  for (let turn = 0; turn < 60; turn++) {
    const middle = (low + high) / 2;
    if (excess(middle) > 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** P(X ≥ count). */
function upperTail(count: number, of: number, p: number): number {
  let logChoose = 0;
  let sum = 0;
  const add = (k: number) => {
    sum += Math.exp(logChoose + k * Math.log(p) + (of - k) * Math.log1p(-p));
  };
  for (let k = 1; k <= of; k++) {
    logChoose += Math.log((of - k + 1) / k);
    if (k >= count) add(k);
  }
  if (count === 0) sum += (1 - p) ** of;
  return Math.min(1, sum);
}
