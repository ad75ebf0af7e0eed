import { type Candidate, type Caps, candidatesOf, capsOf } from "./candidates.js";
import { checkedBoat } from "./checked-boat.js";
import { type Goal, type Optimum, optimumUnder, usualGoal } from "./optimum.js";
import type { PlannedBoat } from "./planned-boat.js";
import type { Solver } from "./solver.js";
import { countsOf } from "./total.js";
import type { TotalName } from "./total-name.js";

/** Plans of which none beats another: to better one total, another must get worse. */
export interface Front {
  readonly goal: Goal;
  /** Each proven optimal under its caps, by rising first total. */
  readonly points: readonly Optimum[];
  /** True when these are all such plans of the boat. */
  readonly complete: boolean;
}

/** What is wanted of a front. */
export interface FrontWishes {
  readonly goal?: Goal;
  /** Points wanted [-]. */
  readonly atLeast?: number;
  /** Hears how many points there are, before each search. */
  readonly progress?: (found: number, wanted: number) => void;
}

/** The most that the totals after the first may be, in whole counts. */
type Zone = readonly number[];

/** Points found so far; a zone inside a searched one whose best point lies in it needs no search. */
class Searcher {
  readonly points = new Map<string, { readonly optimum: Optimum; readonly at: readonly number[] }>();
  readonly #searched: { readonly zone: Zone; readonly at: readonly number[] | undefined }[] = [];

  constructor(
    readonly solver: Solver,
    readonly candidates: readonly Candidate[],
    readonly goal: Goal,
    readonly caps: Caps,
    readonly progress: (found: number) => void,
  ) {}

  /** Counts of the best point inside a zone. */
  best(zone: Zone): readonly number[] | undefined {
    const known = this.#searched.find((one) => inside(zone, one.zone) && (!one.at || inside(one.at.slice(1), zone)));
    if (known) return known.at;
    this.progress(this.points.size);
    const caps = { ...this.caps, ...Object.fromEntries(this.goal.slice(1).map((name, i) => [name, zone[i]!])) };
    const optimum = optimumUnder({ ...this.#search(), goal: this.goal, caps });
    const at = optimum && this.goal.map((name) => countsOf(name, optimum.choice));
    this.#searched.push({ zone, at });
    if (optimum && at && !this.points.has(at.join())) this.points.set(at.join(), { optimum, at });
    return at;
  }

  /** Smallest that a total can be with nothing else asked for, in counts. */
  least(name: TotalName): number | undefined {
    const goal = [name, ...this.goal.filter((other) => other !== name)] as unknown as Goal;
    const optimum = optimumUnder({ ...this.#search(), goal, caps: this.caps });
    return optimum && countsOf(name, optimum.choice);
  }

  #search() {
    return { solver: this.solver, candidates: this.candidates };
  }
}

const inside = (inner: readonly number[], outer: readonly number[]) => inner.every((cap, i) => cap <= outer[i]!);

/**
 * Finds plans that trade mass, hand force and cost against each other, each proven.
 *
 *     minimise the first total under caps on the others; of equals the one with the least of the others, in order
 *
 * Caps are first spread evenly between the best and the worst that pay; then zones are searched one by one until there
 * are enough points, or until there is no further one.
 *
 * @param solver  from `loadSolver()`
 * @param boat  lines with options, limits
 * @param goal  two or three totals
 * @param atLeast  points wanted [-]: there may be more; fewer only where the front has no more
 * @param progress  hears before each search how many points there are, and how many are wanted [-]
 * @returns points with proofs; none when no choice meets the limits
 * @throws PlanError or ValueError for a boat that cannot be planned
 */
export function front(
  solver: Solver,
  boat: PlannedBoat,
  { goal = usualGoal, atLeast = 25, progress }: FrontWishes = {},
): Front {
  checkedBoat(boat);
  const searcher = new Searcher(solver, candidatesOf(boat, goal), goal, capsOf(boat.limits), (found) =>
    progress?.(found, atLeast),
  );
  const open: Zone = goal.slice(1).map((name) => searcher.caps[name]);
  const first = searcher.best(open);
  if (first === undefined) return { goal, points: [], complete: true };
  spread(searcher, first, atLeast);
  const complete = searchZones(searcher, open, atLeast);
  const points = [...searcher.points.values()].sort((a, b) => compare(a.at, b.at)).map(({ optimum }) => optimum);
  return { goal, points, complete };
}

function compare(a: readonly number[], b: readonly number[]): number {
  const index = a.findIndex((value, i) => value !== b[i]);
  return index < 0 ? 0 : a[index]! - b[index]!;
}

/** A grid of caps, finer until it has given enough points or nothing new. */
function spread(searcher: Searcher, first: readonly number[], atLeast: number): void {
  const others = searcher.goal.slice(1);
  const ideal = others.map((name) => searcher.least(name)!);
  const reach = others.map((_, i) => Math.max(first[i + 1]!, ...dearest(searcher, ideal, i)));
  for (let steps = Math.ceil(atLeast ** (1 / Math.max(1, others.length))); steps <= 4 * atLeast; steps *= 2) {
    const before = searcher.points.size;
    for (const zone of grid(ideal, reach, steps)) {
      if (searcher.points.size >= atLeast) return;
      searcher.best(zone);
    }
    if (searcher.points.size === before) return;
  }
}

/** How much of one total is met where another is at its least. */
function dearest(searcher: Searcher, ideal: readonly number[], index: number): number[] {
  return ideal.flatMap((least, other) => {
    if (other === index) return [];
    const zone = ideal.map((_, i) => (i === other ? least : Number.POSITIVE_INFINITY));
    const at = searcher.best(zone.map((cap, i) => Math.min(cap, searcher.caps[searcher.goal[i + 1]!])));
    return at ? [at[index + 1]!] : [];
  });
}

/** Caps at equal steps from ideal to reach, every combination, in an order that leaves no corner for last. */
function grid(ideal: readonly number[], reach: readonly number[], steps: number): Zone[] {
  const zones = ideal.reduce<number[][]>(
    (zones, least, i) => {
      const caps = Array.from({ length: steps }, (_, k) =>
        Math.floor(reach[i]! - ((reach[i]! - least) * k) / Math.max(1, steps - 1)),
      );
      return zones.flatMap((zone) => caps.map((cap) => [...zone, cap]));
    },
    [[]],
  );
  const turn = (index: number) => (index * goldenShare) % 1;
  return zones
    .map((zone, index) => ({ zone, at: turn(index) }))
    .sort((a, b) => a.at - b.at)
    .map(({ zone }) => zone);
}

/** Multiples of it, without their whole part, fill the range from 0 to 1 evenly. */
const goldenShare = (Math.sqrt(5) - 1) / 2;

/** From the whole zone downward: below each point found, once for each total. True when nothing is left to search. */
function searchZones(searcher: Searcher, open: Zone, atLeast: number): boolean {
  const waiting: Zone[] = [open];
  const seen = new Set<string>();
  for (let zone = waiting.pop(); zone !== undefined; zone = waiting.pop()) {
    if (seen.has(zone.join())) continue;
    if (searcher.points.size >= atLeast) return false;
    seen.add(zone.join());
    const at = searcher.best(zone);
    if (at === undefined) continue;
    for (const i of zone.keys()) waiting.push(zone.map((cap, j) => (i === j ? at[i + 1]! - 1 : cap)));
  }
  return true;
}
