import { type Candidate, countsOfOption } from "./candidates.js";
import { amounts, firstColumns, oneEach } from "./least-total.js";
import { meets } from "./limit.js";
import type { PlanLimit, PlannedBoat } from "./planned-boat.js";
import type { Row, Solver } from "./solver.js";
import { countsWithin, totalOf } from "./total.js";

/** Lines with all their options, for programs in which each limit may be given up. */
function unlimited({ lines }: PlannedBoat): Candidate[] {
  return lines.map((line) => ({
    line,
    options: line.options,
    counts: line.options.map((option) => countsOfOption(line, option)),
  }));
}

/** Rows of one limit; the given column at 1 gives it up. */
function limitRows(limit: PlanLimit, candidates: readonly Candidate[], column: number): Row[] {
  const first = firstColumns(candidates);
  const lower = Number.NEGATIVE_INFINITY;
  if (limit.kind === "total" && totalOf(limit.total).worst !== true) {
    const values = amounts(candidates, limit.total);
    const cap = countsWithin(limit.total, limit.atMost);
    const most = candidates.reduce((sum, { counts }) => sum + Math.max(...counts.map((one) => one[limit.total])), 0);
    const room = Math.max(0, most - cap);
    return [{ columns: [...values.keys(), column], values: [...values, -room], lower, upper: cap + 0.5 }];
  }
  const breaks = (one: Candidate, index: number) =>
    limit.kind === "total"
      ? one.counts[index]!.worstHandForce > countsWithin("worstHandForce", limit.atMost)
      : one.line.name === limit.line && !meets(one.options[index]!, limit);
  return candidates.flatMap((one, line) => {
    const shut = one.options.flatMap((_, index) => (breaks(one, index) ? [first[line]! + index] : []));
    if (shut.length === 0) return [];
    return [{ columns: [...shut, column], values: [...shut.map(() => 1), -1], lower, upper: 0 }];
  });
}

/**
 * The fewest limits to give up so that the others can be met together.
 *
 * @param solver  solver
 * @param boat  lines and limits
 * @param kept  limits that must stay, by index
 * @returns limits to give up, by index; `undefined` when those that must stay cannot be met together
 */
export function fewestToGiveUp(solver: Solver, boat: PlannedBoat, kept: ReadonlySet<number>): number[] | undefined {
  const candidates = unlimited(boat);
  const choices = candidates.reduce((sum, { options }) => sum + options.length, 0);
  const open = boat.limits.map((_, index) => index).filter((index) => !kept.has(index));
  const rows = boat.limits.flatMap((limit, index) => {
    const column = kept.has(index) ? choices + open.length : choices + open.indexOf(index);
    return limitRows(limit, candidates, column);
  });
  const never: Row = { columns: [choices + open.length], values: [1], lower: 0, upper: 0 };
  const costs = [...Array.from({ length: choices }, () => 0), ...open.map(() => 1), 0];
  const solution = solver.solve({ costs, rows: [...oneEach(candidates), ...rows, never], free: 0 });
  return solution && open.filter((_, index) => solution.values[choices + index]! > 0.5);
}

/** A smallest set of indices that meets every one of the given sets. */
export function smallestHittingSet(solver: Solver, sets: readonly (readonly number[])[]): number[] {
  if (sets.length === 0) return [];
  const count = 1 + Math.max(...sets.flat());
  const rows = sets.map((set): Row => {
    return { columns: set, values: set.map(() => 1), lower: 1, upper: Number.POSITIVE_INFINITY };
  });
  const { values } = solver.solve({ costs: Array.from({ length: count }, () => 1), rows, free: 0 })!;
  return values.flatMap((value, index) => (value > 0.5 ? [index] : []));
}
