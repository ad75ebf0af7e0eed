import { type Margins, type Outcome, outcomeOf } from "../quantity/verdict.js";

/** What is asked of every line: it holds, can be hauled, runs out, stays where it was set, lasts, is strong, light and cheap enough. */
export const aspects = ["holds", "hauls", "runs", "stays", "lasts", "strong", "weighs", "costs"] as const;

/** One of them. */
export type Aspect = (typeof aspects)[number];

/** Aspects whose failure can hurt somebody: the line breaks, or gets away. */
const safetyAspects: ReadonlySet<Aspect> = new Set<Aspect>(["holds", "strong"]);

/** How one thing about a line stands. */
export interface Judgement {
  readonly aspect: Aspect;
  /** What is judged, such as `bend at the masthead sheave`; tells the judgements of a line apart. */
  readonly subject: string;
  readonly outcome: Outcome;
  /** What there is over what is asked for [-]. */
  readonly margins: Margins;
  readonly reason: string;
  /** Nearest single change of the line that passes; absent when it holds, or when none of those tried does. */
  readonly change?: string;
  /** Whether its failure can hurt somebody; as its aspect has it when absent. */
  readonly danger?: boolean;
}

/** A judgement whose outcome follows from its margins. */
export function judged(aspect: Aspect, subject: string, margins: Margins, reason: string): Judgement {
  return { aspect, subject, outcome: outcomeOf(margins), margins, reason };
}

/** False when it fails and can hurt somebody. */
export function isSafe({ aspect, outcome, danger = safetyAspects.has(aspect) }: Judgement): boolean {
  return outcome !== "fails" || !danger;
}

const severity: Readonly<Record<Outcome, number>> = { holds: 0, doubtful: 1, fails: 2 };

/** Above zero when the first outcome is the worse one. */
export function worseBy(one: Outcome, other: Outcome): number {
  return severity[one] - severity[other];
}

/** Worst first: by outcome, then by margin. */
export function byNeed(one: Judgement, other: Judgement): number {
  return (
    worseBy(other.outcome, one.outcome) ||
    one.margins.middle - other.margins.middle ||
    one.margins.worst - other.margins.worst
  );
}
