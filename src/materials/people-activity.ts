import { coefficient } from "../sources/coefficient.js";

function trimming(low: number, value: number, high: number, unit: string, what: string) {
  return coefficient({
    value,
    unit,
    low,
    high,
    status: "published",
    source: "legg-1999",
    place: `${what}; means of four classes of dinghies, 19 sailors; the middle is that of the range`,
  });
}

/** How much of a leg sailors trim a sheet, in how many spells, and how long the longest lasts: a sheet in the hand is no steady hold. */
export const trimmingSpells = {
  shareUpwind: trimming(0.29, 0.475, 0.66, "1", "hiking upright while trimming, share of an upwind leg"),
  shareOffWind: trimming(0.29, 0.42, 0.55, "1", "sitting upright while trimming, share of a leg off the wind"),
  spellsUpwind: trimming(15.8, 19.85, 23.9, "1", "spells of an upwind leg"),
  spellsOffWind: trimming(3.5, 5.45, 7.4, "1", "spells of a leg off the wind"),
  longestUpwind: trimming(9, 13.5, 18, "s", "longest unbroken spell upwind"),
} as const;

function ruled(value: number, place: string) {
  return coefficient({
    value,
    unit: "1",
    low: 0.93 * value,
    high: 1.07 * value,
    status: "from memory",
    place: `${place}; nobody looked it up, the range is its printed error of 7 % of maximum`,
  });
}

/** Terms of two rules of work design for efforts that come back through a day of eight hours. */
export const effortLimits = {
  exponent: ruled(0.24, "exponent of the largest acceptable effort, 2012"),
  once: ruled(1 / 28_800, "one second of a day of eight hours"),
  offset: ruled(0.066, "limit of local fatigue of the upper limb, 2016: at an effort without pause"),
  slope: ruled(0.143, "the same: over the logarithm of the duty cycle"),
} as const;
