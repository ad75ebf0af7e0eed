import { checkedBoat } from "./checked-boat.js";
import { limitWords } from "./limit.js";
import { nearestThatPasses } from "./limit-price.js";
import type { LineConflict, PlanLimit, PlannedBoat } from "./planned-boat.js";
import { fewestToGiveUp, smallestHittingSet } from "./relaxation.js";
import type { Solver } from "./solver.js";

/** Limits that no choice meets together, as few as there are: without any one of them the rest of these can be met. */
export interface Conflict {
  readonly limits: readonly PlanLimit[];
  /** For each of them, the nearest bound that makes the whole plan possible, others as they are; absent where none does. */
  readonly changes: readonly (PlanLimit | undefined)[];
  readonly words: string;
}

/**
 * Finds the smallest set of limits that no choice meets together.
 *
 *     a conflict shares a limit with every set whose giving up makes the rest possible: the smallest set that does so with
 *     all such sets found, and is impossible itself, is the smallest conflict
 *
 * @param solver  from `loadSolver()`
 * @param boat  lines with options, limits
 * @returns limits in conflict, changes and words; `undefined` when all limits can be met together
 * @throws PlanError or ValueError for a boat that cannot be planned
 */
export function smallestConflict(solver: Solver, boat: PlannedBoat): Conflict | undefined {
  checkedBoat(boat);
  const givenUp: number[][] = [];
  for (;;) {
    const kept = smallestHittingSet(solver, givenUp);
    const few = fewestToGiveUp(solver, boat, new Set(kept));
    if (few === undefined) return conflictOf(solver, boat, kept);
    if (few.length === 0) return undefined;
    givenUp.push(few);
  }
}

function conflictOf(solver: Solver, boat: PlannedBoat, indices: readonly number[]): Conflict {
  const limits = indices.map((index) => boat.limits[index]!);
  const changes = indices.map((index) => nearestThatPasses(solver, boat, index));
  const words = (limit: PlanLimit) => limitWords(limit, boat.currency);
  const listed = limits.map(words).join("; ");
  const head =
    limits.length === 1
      ? `No option meets this limit: ${listed}.`
      : `No choice meets these limits together: ${listed}.`;
  const ways = changes.flatMap((change) => (change ? [words(change)] : []));
  const tail =
    ways.length > 0
      ? `Possible with ${ways.join("; or with ")}.`
      : "Loosening one of these alone is not enough: further limits are in conflict.";
  return { limits, changes, words: `${head} ${tail}` };
}

/**
 * What nothing in the catalogue keeps of the limits of one line, in words.
 *
 * @param conflict  from `plannedBoatOf`
 * @returns sentence that says what became of the line
 * Example: lineConflictWords({ line: "vang", limits: [{ kind: "measure", line: "vang", measure: "hauling", sense: "at most", bound: 200, unit: "N" }], planned: true }) → "Nothing in the catalogue keeps vang: hauling at most 200 N. The vang is planned as near to it as it gets."
 */
export function lineConflictWords({ line, limits, planned }: LineConflict): string {
  const listed = limits.map((limit) => limitWords(limit)).join("; ");
  const then = planned
    ? `The ${line} is planned as near to it as it gets.`
    : `The ${line} stays as it is and is not planned: somebody could be hurt.`;
  return `Nothing in the catalogue keeps ${listed}. ${then}`;
}
