import { type Margins, type Outcome, outcomeOf, worseBy } from "../quantity/verdict.js";
import type { Band } from "../sources/band.js";

/**
 * What follows when a demand is not met, the gravest first: somebody can be hurt or the rig be lost; the boat is slow or its gear
 * ruined; it is against custom, or feels or looks wrong.
 */
export const consequences = ["injury", "race", "comfort"] as const;

/** One of them. */
export type Consequence = (typeof consequences)[number];

/** What a demand rests on: published values or own measurement, or a rule of thumb. */
export type Ground = "computed" | "custom";

/** One thing that is asked of a line, and how it stands. */
export interface Demand {
  /** What is asked for, such as `cleat in a gust`; tells the demands of a line apart. */
  readonly subject: string;
  readonly consequence: Consequence;
  readonly ground: Ground;
  readonly outcome: Outcome;
  /** What there is over what is asked for [-]. */
  readonly margins: Margins;
  /** What the bad end of the range has to reach [-]. */
  readonly least: number;
  /** The range reaches further than a factor of three from its middle: it tells little, and no advice begins with it. */
  readonly wide: boolean;
  /** What is there, what is asked for, in words with numbers. */
  readonly reason: string;
  /** The measurement that settles it; there where one does. */
  readonly settle?: string;
}

/** What makes a demand. */
export interface Asked {
  readonly subject: string;
  readonly consequence: Consequence;
  /** Computed when left out. */
  readonly ground?: Ground;
  /** What there is over what is asked for, with its range [-]. */
  readonly margin: Band;
  /** What the bad end has to reach [-]; 1 when left out. */
  readonly least?: number;
  readonly reason: string;
  readonly settle?: string;
}

/** A range is wide when one of its ends is so many times from its middle [-]. */
const wideFactor = 3;

/** A demand whose outcome follows from its margin. A rule of thumb knows no doubt: its middle alone is looked at. */
export function demand({ margin, ground = "computed", least = 1, ...asked }: Asked): Demand {
  const { value: middle, low, high } = margin;
  const margins = { middle, worst: ground === "custom" ? middle : low };
  const wide = ground === "computed" && (middle > wideFactor * low || high > wideFactor * middle);
  return { ...asked, ground, least, margins, wide, outcome: outcomeOf(margins, least) };
}

/**
 * The lower of both margins, each over what it has to reach: 1 is just enough.
 *
 * @param demand  of a line
 * @returns rating [-]
 */
export function ratingOf({ margins: { middle, worst }, least }: Demand): number {
  return Math.min(middle, worst / least);
}

/** Whether a demand is not met, and matters: comfort and custom are notes. */
export function isOpen({ consequence, outcome }: Demand): boolean {
  return consequence !== "comfort" && outcome !== "enough";
}

/**
 * The order of all advice: consequence, then outcome, what tells little behind what tells much, then shortfall.
 *
 * @param one  demand
 * @param other  demand
 * @returns below zero when the first comes first [-]
 */
export function byNeed(one: Demand, other: Demand): number {
  return (
    consequences.indexOf(one.consequence) - consequences.indexOf(other.consequence) ||
    worseBy(other.outcome, one.outcome) ||
    Number(one.wide) - Number(other.wide) ||
    ratingOf(one) - ratingOf(other)
  );
}

/** The worst outcome of all that matters. */
export function worstOf(demands: readonly Demand[]): Outcome {
  return demands
    .filter(isOpen)
    .reduce<Outcome>((worst, { outcome }) => (worseBy(outcome, worst) > 0 ? outcome : worst), "enough");
}

/** What there is over the range of what is asked for [-]; over nothing it is as good as endless. */
export function marginOver(there: number, { value, low, high }: Band): Band {
  const over = (asked: number) => there / Math.max(asked, 1e-9);
  return { value: over(value), low: over(high), high: over(low) };
}

/** A margin that is known. */
export function exactly(margin: number): Band {
  return { value: margin, low: margin, high: margin };
}
