import { enduranceTime } from "../crew/endurance.js";
import { enduranceLaws } from "../materials/people-fatigue.js";
import { type Band, bandOf } from "../sources/band.js";
import type { MeasuredPoint } from "../uncertainty/coverage.js";
import { point } from "./loss-bands.js";

const { factor, exponent } = enduranceLaws.hand;
const minute = 60;

/** Endurance time of a grip with the spread of people and of the law's exponent [s]. */
const heldFor = (share: number): Band =>
  bandOf(
    { factor, exponent },
    (law) => ((enduranceTime({ share }) * law.factor) / factor.value) * share ** (exponent.value - law.exponent),
  );

const held = (share: number, seconds: number, halfStep: number, who: string): MeasuredPoint =>
  point(`time [s] held at ${100 * share} % of maximum, ${who}`, seconds, halfStep, heldFor(share));

/** Sustained grip of three groups of athletes. */
export const athletes = (): MeasuredPoint[] => [
  held(0.4, 56, 0.5, "endurance athletes"),
  held(0.4, 62, 0.5, "strength athletes"),
  held(0.4, 87, 0.5, "rock climbers"),
];

/** Long grips of ten women at two thresholds. */
export const longHolds = (): MeasuredPoint[] => [
  held(0.189, 10.1 * minute, 0.05 * minute, "ten women"),
  held(0.195, 11.6 * minute, 0.05 * minute, "ten women"),
];

/** A grip of half of maximum, thirty people; told to about ten seconds. */
export const halfOfMaximum = (): MeasuredPoint[] => [held(0.5, 60, 5, "thirty people")];
