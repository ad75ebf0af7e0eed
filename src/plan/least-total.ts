import type { Candidate, Caps } from "./candidates.js";
import { PlanError } from "./plan-error.js";
import type { Chosen } from "./plan-option.js";
import type { Row, Solver } from "./solver.js";
import { countsOf, totalNames, totalOf } from "./total.js";
import type { TotalName } from "./total-name.js";

/** A choice whose total is as small as can be, in whole counts, with the bound that proves it. */
export interface LeastTotal {
  readonly choice: readonly Chosen[];
  readonly counts: number;
  readonly bound: number;
  readonly nodes: number;
}

/** Room between two whole numbers: no rounding inside the solver can step over it. */
const half = 0.5;

/**
 * Finds the choice that makes one total as small as it can be under caps on others.
 *
 *     minimise Σ c_ij x_ij,  Σ_j x_ij = 1 for each line i,  Σ a_ij x_ij ≤ cap,  x_ij 0 or 1
 *
 * @param search  solver, candidates, total, caps in whole counts
 * @returns choice with proof, or `undefined` when provably no choice meets the caps
 * @throws PlanError when the solver's answer does not stand up to exact sums
 */
export function leastTotal(search: {
  readonly solver: Solver;
  readonly candidates: readonly Candidate[];
  readonly minimise: TotalName;
  readonly caps: Caps;
}): LeastTotal | undefined {
  const { solver, minimise, caps } = search;
  const candidates = search.candidates.map((one) => underCap(one, caps.worstHandForce));
  if (candidates.some(({ options }) => options.length === 0)) return undefined;
  const worst = totalOf(minimise).worst === true;
  const costs = candidates.flatMap(({ counts }) => counts.map((count) => (worst ? 0 : count[minimise])));
  const rows = [...oneEach(candidates), ...capRows(candidates, caps), ...(worst ? worstRows(candidates, costs) : [])];
  const solution = solver.solve({ costs: worst ? [...costs, 1] : costs, rows, free: worst ? 1 : 0 });
  if (solution === undefined) return undefined;
  const choice = choiceOf(candidates, solution.values);
  const counts = countsOf(minimise, choice);
  const bound = Math.min(counts, Math.ceil(solution.bound - half / 10));
  if (bound < counts || totalNames.some((name) => countsOf(name, choice) > caps[name])) refuseProof(minimise);
  return { choice, counts, bound, nodes: solution.nodes };
}

function underCap({ line, options, counts }: Candidate, cap: number): Candidate {
  const kept = options.map((_, index) => counts[index]!.worstHandForce <= cap);
  return { line, options: options.filter((_, i) => kept[i]), counts: counts.filter((_, i) => kept[i]) };
}

/** First column of each line. */
export function firstColumns(candidates: readonly Candidate[]): number[] {
  let next = 0;
  return candidates.map(({ options }) => {
    const first = next;
    next += options.length;
    return first;
  });
}

/** One option for each line. */
export function oneEach(candidates: readonly Candidate[]): Row[] {
  const first = firstColumns(candidates);
  return candidates.map(({ options }, line) => ({
    columns: options.map((_, index) => first[line]! + index),
    values: options.map(() => 1),
    lower: 1,
    upper: 1,
  }));
}

/** What each column adds to a total. */
export function amounts(candidates: readonly Candidate[], name: TotalName): number[] {
  return candidates.flatMap(({ counts }) => counts.map((count) => count[name]));
}

function capRows(candidates: readonly Candidate[], caps: Caps): Row[] {
  return totalNames
    .filter((name) => Number.isFinite(caps[name]) && totalOf(name).worst !== true)
    .map((name) => {
      const values = amounts(candidates, name);
      return { columns: values.map((_, index) => index), values, lower: 0, upper: caps[name] + half };
    });
}

/** The last column is at least the hand force of every line. */
function worstRows(candidates: readonly Candidate[], { length }: readonly number[]): Row[] {
  const first = firstColumns(candidates);
  return candidates.map(({ counts }, line) => ({
    columns: [...counts.map((_, index) => first[line]! + index), length],
    values: [...counts.map((count) => -count.worstHandForce), 1],
    lower: 0,
    upper: Number.POSITIVE_INFINITY,
  }));
}

/** Option of each line: the column nearest to one. */
function choiceOf(candidates: readonly Candidate[], values: readonly number[]): Chosen[] {
  const first = firstColumns(candidates);
  return candidates.map(({ line, options }, index) => {
    const own = values.slice(first[index]!, first[index]! + options.length);
    return { line, option: options[own.indexOf(Math.max(...own))]! };
  });
}

function refuseProof(name: TotalName): never {
  throw new PlanError({
    quantity: `least ${totalOf(name).words}`,
    value: "an answer that exact sums do not confirm",
    allowed: "an optimum proven to the last count",
    advice: "Look for masses or prices of very different size among the options; report the boat with this message.",
  });
}
