import type { Outcome } from "../quantity/verdict.js";
import type { Boat } from "./boat.js";
import { type BoatCheck, checkBoat } from "./check.js";
import { byNeed, type Demand } from "./demand.js";
import type { LineCheck } from "./line-check.js";

/** A demand whose outcome changed. */
export interface OutcomeChange {
  /** As it is after; a demand that is asked no more, as it was. */
  readonly demand: Demand;
  /** Absent: it was not asked. */
  readonly before?: Outcome;
  readonly after?: Outcome;
}

/** Two versions of one line side by side. */
export interface LineComparison {
  readonly name: string;
  /** Absent: the boat has no such line. */
  readonly before?: LineCheck;
  readonly after?: LineCheck;
  /** What changed in outcome and matters, in the order of all advice. */
  readonly changed: readonly OutcomeChange[];
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
      changed: one === undefined || other === undefined ? [] : changesOf(one, other),
    };
  });
  return { ...checks, lines };
}

function changesOf(one: LineCheck, other: LineCheck): OutcomeChange[] {
  const was = new Map(one.demands.map((demand) => [demand.subject, demand]));
  const is = new Map(other.demands.map((demand) => [demand.subject, demand]));
  return [...new Set([...was.keys(), ...is.keys()])]
    .flatMap((subject): OutcomeChange[] => {
      const [then, now] = [was.get(subject), is.get(subject)];
      const demand = (now ?? then)!;
      const open = [then, now].some((each) => each !== undefined && each.outcome !== "enough");
      if (demand.consequence === "comfort" || !open || then?.outcome === now?.outcome) return [];
      return [{ demand, ...(then && { before: then.outcome }), ...(now && { after: now.outcome }) }];
    })
    .sort((first, second) => byNeed(first.demand, second.demand));
}
