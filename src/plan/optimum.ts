import { type Candidate, type Caps, candidatesOf, capsOf } from "./candidates.js";
import { checkedBoat } from "./checked-boat.js";
import { leastTotal } from "./least-total.js";
import type { Chosen } from "./plan-option.js";
import type { PlannedBoat } from "./planned-boat.js";
import type { Solver } from "./solver.js";
import { fromCounts, type Totals, totalsOf } from "./total.js";
import type { TotalName } from "./total-name.js";

/** What is made small: the first total, then, among equals, the next, and so on. */
export type Goal = readonly [TotalName, ...TotalName[]];

/** Mass, then hand force, then cost. */
export const usualGoal: Goal = ["dry", "handForce", "cost"];

/** That a total cannot be smaller: no choice at all stays below the bound. */
export interface Proof {
  readonly minimised: TotalName;
  /** What was reached, in the unit of the total. */
  readonly value: number;
  /** What nothing can be below, in the unit of the total. */
  readonly bound: number;
  /** Value less bound; 0 proves the optimum. */
  readonly gap: number;
  readonly status: "proven optimal";
  /** Branches that the search looked at. */
  readonly nodes: number;
}

/** The best choice, with what it adds up to and its proofs, one for each total of the goal. */
export interface Optimum {
  readonly choice: readonly Chosen[];
  readonly totals: Totals;
  readonly proofs: readonly Proof[];
}

/** Best choice under caps: one search for each total of the goal, each total held where the search before left it. */
export function optimumUnder(search: {
  readonly solver: Solver;
  readonly candidates: readonly Candidate[];
  readonly goal: Goal;
  readonly caps: Caps;
}): Optimum | undefined {
  let caps = search.caps;
  let choice: readonly Chosen[] = [];
  const proofs: Proof[] = [];
  for (const minimise of search.goal) {
    const least = leastTotal({ ...search, minimise, caps });
    if (least === undefined) return undefined;
    const { counts, bound, nodes } = least;
    choice = least.choice;
    caps = { ...caps, [minimise]: counts };
    const [value, proven] = [fromCounts(minimise, counts), fromCounts(minimise, bound)];
    proofs.push({ minimised: minimise, value, bound: proven, gap: value - proven, status: "proven optimal", nodes });
  }
  return { choice, totals: totalsOf(choice), proofs };
}

/**
 * Finds the best choice of one option for each line of a boat, and proves that there is none better.
 *
 * @param solver  from `loadSolver()`
 * @param boat  lines with options, limits
 * @param goal  totals to make small, in order of weight: the next only decides among equals
 * @returns choice, totals and proofs; `undefined` when no choice meets all limits: ask `smallestConflict` why
 * @throws PlanError or ValueError for a boat that cannot be planned
 * Valid for totals that add up over the lines; counted in whole milligrams, cents and millinewtons, so that sums are exact.
 */
export function optimum(solver: Solver, boat: PlannedBoat, goal: Goal = usualGoal): Optimum | undefined {
  checkedBoat(boat);
  return optimumUnder({ solver, candidates: candidatesOf(boat, goal), goal, caps: capsOf(boat.limits) });
}
