import { checkedBoat } from "./checked-boat.js";
import { limitWords, meets, printBound } from "./limit.js";
import { type Goal, optimum, usualGoal } from "./optimum.js";
import type { MeasureLimit, PlanLimit, PlannedBoat } from "./planned-boat.js";
import type { Solver } from "./solver.js";
import { lessBy, printTotal, roundedUp, totalOf } from "./total.js";
import type { TotalName } from "./total-name.js";

/** What a limit costs: how much better the plan gets without it. */
export interface LimitPrice {
  readonly limit: PlanLimit;
  /** The total that the price is counted in. */
  readonly total: TotalName;
  /** The same limit a step looser; absent where a step lets nothing new in. */
  readonly loosened?: { readonly limit: PlanLimit; readonly saved: number };
  /** Saved when the limit is left out, in the unit of the total. */
  readonly saved: number;
  /** Such as `mainsheet: pull at most 250 N costs 140 g`. */
  readonly words: string;
}

/**
 * What each limit of a plan costs, found by planning again with the limit a step looser, and without it.
 *
 *     price = least total with the limit − least total without it
 *
 * A step of a measure goes to the nearest option that the limit shuts out; a step of a total is 10 g, 1 euro, 1 N, one
 * splice or a quarter of an hour.
 *
 * @param solver  from `loadSolver()`
 * @param boat  lines with options, limits that can be met together
 * @param goal  its first total is what prices are counted in
 * @returns a price for each limit, in their order; none when no choice meets the limits
 * @throws PlanError or ValueError for a boat that cannot be planned
 */
export function limitPrices(solver: Solver, boat: PlannedBoat, goal: Goal = usualGoal): LimitPrice[] {
  const { limits } = checkedBoat(boat);
  const [total] = goal;
  const least = (some: readonly PlanLimit[]) => optimum(solver, { ...boat, limits: some }, [total])?.totals[total];
  const now = least(limits);
  if (now === undefined) return [];
  return limits.map((limit, index) => {
    const saved = lessBy(total, now, least(limits.toSpliced(index, 1))!);
    const looser = loosened(limit, boat);
    const step = looser && {
      limit: looser,
      saved: saved === 0 ? 0 : lessBy(total, now, least(limits.with(index, looser))!),
    };
    return { limit, total, saved, ...(step && { loosened: step }), words: priceWords(limit, total, saved, step) };
  });
}

function priceWords(limit: PlanLimit, total: TotalName, saved: number, step: LimitPrice["loosened"]): string {
  if (saved <= 0) return `${limitWords(limit)} costs nothing: the best plan meets it anyway`;
  const price = `${limitWords(limit)} costs ${printTotal(total, saved)} of ${totalOf(total).words}`;
  return step && step.saved > 0
    ? `${price}; ${boundOf(step.limit)} would save ${printTotal(total, step.saved)}`
    : price;
}

const boundOf = (limit: PlanLimit) =>
  limit.kind === "total" ? printTotal(limit.total, limit.atMost, 6) : printBound(limit, limit.bound);

/** The limit a step looser. */
function loosened(limit: PlanLimit, boat: PlannedBoat): PlanLimit | undefined {
  if (limit.kind === "total") return { ...limit, atMost: limit.atMost + totalOf(limit.total).step };
  const [bound] = boundsBeyond(limit, boat);
  return bound === undefined ? undefined : { ...limit, bound };
}

/** Values of the options that a limit shuts out, nearest first. */
function boundsBeyond(limit: MeasureLimit, { lines }: PlannedBoat): number[] {
  const options = lines.find(({ name }) => name === limit.line)!.options;
  const shut = options.filter((option) => !meets(option, limit)).map(({ measures }) => measures[limit.measure]!);
  const away = (value: number) => Math.abs(value - limit.bound);
  return [...new Set(shut)].sort((a, b) => away(a) - away(b));
}

/** A limit loosened alone until the whole plan is possible, the others as they are; `undefined` when that is not enough. */
export function nearestThatPasses(solver: Solver, boat: PlannedBoat, index: number): PlanLimit | undefined {
  const limit = boat.limits[index]!;
  const limits = boat.limits.toSpliced(index, 1);
  if (limit.kind === "total") {
    const best = optimum(solver, { ...boat, limits }, [limit.total]);
    return best && { ...limit, atMost: roundedUp(limit.total, best.totals[limit.total]) };
  }
  for (const bound of boundsBeyond(limit, boat)) {
    if (optimum(solver, { ...boat, limits: [...limits, { ...limit, bound }] }, ["dry"]))
      return { ...limit, bound: roundedOutward(limit, bound) };
  }
  return undefined;
}

/** To four figures, to the side that lets the value pass. */
function roundedOutward({ sense }: MeasureLimit, bound: number): number {
  if (bound === 0 || !Number.isFinite(bound)) return bound;
  const unit = 10 ** (Math.floor(Math.log10(Math.abs(bound))) - 3);
  const rounded = (sense === "at most" ? Math.ceil(bound / unit - 1e-9) : Math.floor(bound / unit + 1e-9)) * unit;
  const short = Number(rounded.toPrecision(4));
  return (sense === "at most" ? short >= bound : short <= bound) ? short : bound;
}
