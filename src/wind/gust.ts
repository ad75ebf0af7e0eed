import { within } from "../quantity/guard.js";
import { coefficient } from "../sources/coefficient.js";
import { insideModel } from "./validity.js";

/** Speed of a gust over the mean wind, for a breeze on the water. */
export const gustFactors = {
  /** Gust of 3 s over the mean of 10 min, open sea. */
  atSea: coefficient({
    value: 1.23,
    unit: "1",
    low: 1.05,
    high: 1.38,
    status: "from memory",
    place: "guideline for tropical cyclones, at sea, 3 s over 10 min; spread to its neighbours in the table",
  }),
  /** Gust of 3 s over the mean of 10 min, wind from the sea at the shore. */
  offSea: coefficient({
    value: 1.38,
    unit: "1",
    low: 1.23,
    high: 1.52,
    status: "from memory",
    place: "guideline for tropical cyclones, off-sea, 3 s over 10 min; spread to its neighbours in the table",
  }),
  /** Highest gust over the forecast mean on an average day. */
  forecast: coefficient({
    value: 4 / 3,
    unit: "1",
    low: 1,
    high: 4 / 3,
    status: "published",
    source: "weather-handbook",
    place: "gusts of up to a third above the forecast mean: an upper bound",
  }),
} as const;

/** Input of the gust's effect on loads. */
export interface GustInput {
  /** Speed of the gust over the mean wind [-]. */
  readonly gustFactor: number;
}

/**
 * Load in a gust over load in the mean wind, nothing eased.
 *
 *     F_gust / F_mean = G²
 *
 * @param gustFactor  G, gust speed over mean speed [-], 1 to 3
 * @returns ratio of loads [-]
 * Valid while angle, trim and shape stay as they are: an upper bound for a crew that eases.
 * Source: asce-7, pressure grows with the square of speed.
 * Example: gustLoadFactor({ gustFactor: 1.2 }) → 1.44
 */
export function gustLoadFactor({ gustFactor }: GustInput): number {
  const g = insideModel({
    quantity: "gust factor",
    value: within("gustFactor", gustFactor),
    unit: "1",
    minimum: 1,
    maximum: 3,
    advice: "A gust is faster than the mean: published factors lie between 1.05 and 1.7.",
  });
  return g * g;
}
