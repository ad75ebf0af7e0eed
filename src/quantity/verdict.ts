/** How a limit stands: it holds over the whole range, only at its middle, or not even there. */
export type Outcome = "holds" | "doubtful" | "fails";

/** A judgement about one thing, with its reason and the nearest change that passes. */
export interface Verdict {
  /** What is judged, such as `3 mm HMPE round the masthead sheave`. */
  readonly subject: string;
  readonly outcome: Outcome;
  /** What was found, what is asked for, in words with numbers. */
  readonly reason: string;
  /** Nearest change that passes; absent when the thing holds, or when none of the changes that were tried passes. */
  readonly change?: string;
}

/** How much there is over how much is asked for, at the middle and at the bad end of the range. */
export interface Margins {
  readonly middle: number;
  readonly worst: number;
}

/**
 * How a limit stands, from its margins.
 *
 *     holds when worst ≥ 1, doubtful when middle ≥ 1, otherwise fails
 *
 * @param margins  what there is over what is asked for [-]: at the middle, and at the bad end of the range
 * @returns outcome
 * Example: outcomeOf({ middle: 1.4, worst: 0.9 }) → "doubtful"
 */
export function outcomeOf({ middle, worst }: Margins): Outcome {
  if (worst >= 1) return "holds";
  return middle >= 1 ? "doubtful" : "fails";
}
