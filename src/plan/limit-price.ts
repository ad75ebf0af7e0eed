import { checkedBoat } from "./checked-boat.js";
import { allowedOptions, boundWords, limitWords, meets } from "./limit.js";
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
  /** The nearest looser limit that saves something, as it can be printed; absent where only giving it up does. */
  readonly loosened?: { readonly limit: PlanLimit; readonly saved: number };
  /** Saved when the limit is left out, in the unit of the total. */
  readonly saved: number;
  /** Such as `mainsheet: pull at most 250 N costs 140 g of dry mass; a limit of 260 N instead of 250 N would save 60 g`. */
  readonly words: string;
}

/**
 * What each limit of a plan costs, found by planning again with the limit a step looser, and without it.
 *
 *     price = least total with the limit − least total without it
 *
 * A limit on a measure is loosened to the nearest option that it shuts out and that saves something, rounded to what can be
 * printed; a limit on a total by 10 g, a unit of the currency, 1 N, one splice or a quarter of an hour.
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
    const without = limits.toSpliced(index, 1);
    const saved = shutsNothing(limit, without, boat) ? 0 : lessBy(total, now, least(without)!);
    const saving = (looser: PlanLimit) => lessBy(total, now, least(limits.with(index, looser))!);
    const step = saved > 0 ? firstThatSaves(looserLimits(limit, boat), saving) : undefined;
    return {
      limit,
      total,
      saved,
      ...(step && { loosened: step }),
      words: priceWords({ limit, total, saved, ...(step && { loosened: step }) }, boat.currency),
    };
  });
}

/** True for a limit of a line that shuts out nothing but what its other limits shut out as well: it costs nothing. */
function shutsNothing(limit: PlanLimit, others: readonly PlanLimit[], { lines }: PlannedBoat): boolean {
  if (limit.kind === "total") return false;
  const line = lines.find(({ name }) => name === limit.line)!;
  return allowedOptions(line, others).every((option) => meets(option, limit));
}

function priceWords({ limit, total, saved, loosened }: Omit<LimitPrice, "words">, currency?: string): string {
  if (saved <= 0) return `${limitWords(limit, currency)} costs nothing: the best plan meets it anyway`;
  const amount = (value: number) => `${printTotal(total, value, 3, currency)} of ${totalOf(total).words}`;
  const price = `${limitWords(limit, currency)} costs ${amount(saved)}`;
  if (loosened === undefined) return price;
  const [other, own] = [boundWords(loosened.limit, currency), boundWords(limit, currency)];
  return `${price}; a limit of ${other} instead of ${own} would save ${printTotal(total, loosened.saved, 3, currency)}`;
}

/** Looser forms of a limit, nearest first; each lets in what the one before it does. */
function looserLimits(limit: PlanLimit, boat: PlannedBoat): PlanLimit[] {
  if (limit.kind === "total") return [{ ...limit, atMost: limit.atMost + totalOf(limit.total).step }];
  return boundsBeyond(limit, boat).map((bound) => ({ ...limit, bound: roundedOutward(limit, bound, 3) }));
}

/** The nearest looser limit that saves something: what is saved only grows, so it is found by halving. */
function firstThatSaves(looser: readonly PlanLimit[], saving: (limit: PlanLimit) => number): LimitPrice["loosened"] {
  let found: LimitPrice["loosened"];
  let [low, high] = [0, looser.length - 1];
  while (low <= high) {
    const middle = Math.floor((low + high) / 2);
    const saved = saving(looser[middle]!);
    if (saved > 0) found = { limit: looser[middle]!, saved };
    if (saved > 0) high = middle - 1;
    else low = middle + 1;
  }
  return found;
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

/** To a few figures, to the side that lets the value pass. */
function roundedOutward({ sense }: MeasureLimit, bound: number, digits = 4): number {
  if (bound === 0 || !Number.isFinite(bound)) return bound;
  const unit = 10 ** (Math.floor(Math.log10(Math.abs(bound))) - digits + 1);
  const rounded = (sense === "at most" ? Math.ceil(bound / unit - 1e-9) : Math.floor(bound / unit + 1e-9)) * unit;
  const short = Number(rounded.toPrecision(digits));
  return (sense === "at most" ? short >= bound : short <= bound) ? short : bound;
}
