/** How what is there stands against what is asked. */
export type Outcome = "enough" | "can't tell" | "not enough";

/** Outcomes, the best first. */
export const outcomes: readonly Outcome[] = ["enough", "can't tell", "not enough"];

/** A judgement about one thing, with its reason and the nearest change that passes. */
export interface Verdict {
  /** What is judged, such as `3 mm HMPE round the masthead sheave`. */
  readonly subject: string;
  readonly outcome: Outcome;
  /** What was found, what is asked for, in words with numbers. */
  readonly reason: string;
  /** Nearest change that passes; absent when there is enough, or when none of the changes that were tried passes. */
  readonly change?: string;
}

/** How much there is over how much is asked for, at the middle and at the bad end of the range. */
export interface Margins {
  readonly middle: number;
  readonly worst: number;
}

/** Rounding of a few steps: a groove of 6.6 mm is 1.1 times a rope of 6 mm, whatever the machine makes of it. */
const rounding = 1e-9;

/**
 * How a demand stands, from its margins.
 *
 *     not enough when middle < 1, whatever the range does; enough when also worst ≥ least; can't tell in between
 *
 * @param margins  what there is over what is asked for [-]: at the middle, and at the bad end of the range
 * @param least  what the bad end has to reach [-]; 1 when left out
 * @returns outcome
 * Example: outcomeOf({ middle: 1.4, worst: 0.9 }) → "can't tell"
 */
export function outcomeOf({ middle, worst }: Margins, least = 1): Outcome {
  if (!(middle >= 1 - rounding)) return "not enough";
  return worst >= least * (1 - rounding) ? "enough" : "can't tell";
}

/**
 * Above zero when the first outcome is the worse one.
 *
 * @param one  outcome
 * @param other  outcome
 * @returns difference of their places [-]
 * Example: worseBy("not enough", "enough") → 2
 */
export function worseBy(one: Outcome, other: Outcome): number {
  return outcomes.indexOf(one) - outcomes.indexOf(other);
}
