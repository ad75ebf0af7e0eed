import type { Outcome } from "../quantity/verdict.js";
import type { Boat } from "./boat.js";
import { type BoatCheck, checkBoat, type LineCheck } from "./check.js";
import { type Aspect, aspects, worseBy } from "./judgement.js";

/** Two versions of one line side by side. */
export interface LineComparison {
  readonly name: string;
  /** Absent: the boat has no such line. */
  readonly before?: LineCheck;
  readonly after?: LineCheck;
  /** Aspects whose outcome changed, with both outcomes. */
  readonly changed: readonly { readonly aspect: Aspect; readonly before: Outcome; readonly after: Outcome }[];
}

/** Two boats, or two versions of one, line by line. */
export interface BoatComparison {
  readonly before: BoatCheck;
  readonly after: BoatCheck;
  /** Lines of the first boat in their order, then those that only the second has. */
  readonly lines: readonly LineComparison[];
}

/**
 * Compares two boats, or two versions of one boat, line by line.
 *
 * @param before  one boat
 * @param after  the other
 * @returns both checks, and every line side by side
 */
export function compareBoats(before: Boat, after: Boat): BoatComparison {
  const checks = { before: checkBoat(before), after: checkBoat(after) };
  const names = [...new Set([...Object.keys(before.lines), ...Object.keys(after.lines)])];
  const lineIn = (check: BoatCheck, name: string) => check.lines.find((line) => line.name === name);
  const lines = names.map((name): LineComparison => {
    const one = lineIn(checks.before, name);
    const other = lineIn(checks.after, name);
    return {
      name,
      ...(one !== undefined && { before: one }),
      ...(other !== undefined && { after: other }),
      changed: one === undefined || other === undefined ? [] : changes(one, other),
    };
  });
  return { ...checks, lines };
}

/**
 * The worst outcome of a line in one aspect.
 *
 * @param line  check of a line
 * @param aspect  what is asked of it
 * @returns outcome, or nothing where the aspect is not asked of this line
 */
export function worstOutcome(line: Pick<LineCheck, "judgements">, aspect: Aspect): Outcome | undefined {
  return line.judgements
    .filter((one) => one.aspect === aspect)
    .map(({ outcome }) => outcome)
    .reduce<Outcome | undefined>(
      (worst, outcome) => (worst === undefined || worseBy(outcome, worst) > 0 ? outcome : worst),
      undefined,
    );
}

function changes(one: LineCheck, other: LineCheck): LineComparison["changed"] {
  return aspects.flatMap((aspect) => {
    const before = worstOutcome(one, aspect);
    const after = worstOutcome(other, aspect);
    return before === undefined || after === undefined || before === after ? [] : [{ aspect, before, after }];
  });
}
