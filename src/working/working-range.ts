import { solveLinear } from "../numerics/linear.js";
import { type Band, bandOfTrials, trialsOf } from "../sources/band.js";
import { readExpression, valueAt } from "./expression.js";
import type { BalanceStep, WorkedSymbol, Working, WorkingStep } from "./working.js";

/** What one given number does to a result, while all others stay at their middle. */
export interface Influence {
  readonly words: string;
  /** Result at the ends of that number's range, the smaller first [unit of the result]. */
  readonly low: number;
  readonly high: number;
}

/** How the range of a worked number comes about. */
export interface WorkingRange {
  /** Added up in squares [unit of the result]. */
  readonly band: Band;
  /** Each given number that has a range, the one that moves the result most first. */
  readonly influences: readonly Influence[];
}

/** A given number with a range, in all places where it stands. */
interface Given extends Band {
  readonly words: string;
}

/** The same record, wherever it stands; ranges without a record are told apart by their words. */
function keyOf({ value, origin, words }: WorkedSymbol): string {
  return JSON.stringify([value, origin, origin?.place === undefined ? words : ""]);
}

function hasRange({ origin, solved }: WorkedSymbol): boolean {
  return origin !== undefined && origin.low < origin.high && solved !== true;
}

/** Places of the steps behind one, itself last. */
function stepsBehind(steps: readonly WorkingStep[], place: number): number[] {
  const before = steps[place]!.symbols.flatMap(({ step }) => (step === undefined ? [] : stepsBehind(steps, step)));
  return [...new Set([...before, place])];
}

type Numbers = Readonly<Record<string, number>>;

/** Solution of a balance with other numbers, by Newton's rule from the one that it had; not finite where there is none. */
function solvedAgain({ equations, symbols, result }: BalanceStep, numbers: Numbers): number {
  const unknown = symbols.filter(({ solved }) => solved === true);
  const answer = unknown.findIndex(({ words, value }) => words === result.words && value === result.value);
  if (answer < 0 || unknown.length !== equations.length) return Number.NaN;
  const sides = equations.map(({ left, right }) => [readExpression(left), readExpression(right)] as const);
  const missing = (values: readonly number[]) => {
    const all = { ...numbers, ...Object.fromEntries(unknown.map(({ name }, index) => [name, values[index]!])) };
    return sides.map(([left, right]) => valueAt(left, all) - valueAt(right, all));
  };
  let values = unknown.map(({ value }) => value);
  for (let turn = 0; turn < mostTurns; turn += 1) {
    const now = missing(values);
    const slopes = values.map((value, index) => {
      const step = 1e-6 * Math.max(Math.abs(value), 1e-6);
      return missing(values.with(index, value + step)).map((then, row) => (then - now[row]!) / step);
    });
    const matrix = Float64Array.from(now.flatMap((_, row) => slopes.map((slope) => slope[row]!)));
    const change = Float64Array.from(now);
    if (!solveLinear(now.length, matrix, change)) return Number.NaN;
    values = values.map((value, index) => value - change[index]!);
    if (values.every((value, index) => Math.abs(change[index]!) <= 1e-9 * Math.abs(value))) return values[answer]!;
  }
  return Number.NaN;
}

const mostTurns = 30;
/** How near the steps must come to their own number at the middle [-]: balances hold to their rounding. */
const nearness = 1e-4;

/** Result of a step with other given numbers; not finite where there is none. */
function workedAgain(steps: readonly WorkingStep[], places: readonly number[], changed: Numbers): number {
  const results = new Map<number, number>();
  for (const place of places) {
    const step = steps[place]!;
    const numbers = Object.fromEntries(
      step.symbols.map((symbol) => [
        symbol.name,
        symbol.step === undefined ? (changed[keyOf(symbol)] ?? symbol.value) : results.get(symbol.step)!,
      ]),
    );
    const value = step.kind === "formula" ? valueAt(readExpression(step.text), numbers) : solvedAgain(step, numbers);
    results.set(place, value);
  }
  return results.get(places.at(-1)!)!;
}

/**
 * How the range of a worked number comes about: each given number alone goes to the ends of its range, and the shifts are added in squares.
 *
 *     as by bandOf, with the formulas of the working; balances are solved again
 *
 * @param working  a working
 * @param place  of its step, from 0; the last when absent
 * @returns the range and what each given number does to it [unit of the result]; nothing where no given number has a range, or the steps have no answer at its ends
 * Valid for given numbers that do not depend on each other. Source: statics.
 * Example: workingRange(worked(formulas.deadBand, { haulingForce: { value: 90, low: 80, high: 95 }, easingForce: 4 })).band.low → 76
 */
export function workingRange({ steps }: Pick<Working, "steps">, place = steps.length - 1): WorkingRange | undefined {
  const places = stepsBehind(steps, place);
  const given: Record<string, Given> = {};
  for (const symbol of places.flatMap((at) => steps[at]!.symbols)) {
    const { value, words, origin } = symbol;
    if (hasRange(symbol)) given[keyOf(symbol)] ??= { value, words, low: origin!.low, high: origin!.high };
  }
  if (Object.keys(given).length === 0) return undefined;
  const trials = trialsOf(given, (numbers) => workedAgain(steps, places, numbers));
  const known = Math.abs(trials.middle - steps[place]!.result.value) <= nearness * Math.abs(trials.middle);
  if (!known || !trials.ends.flat().every(Number.isFinite)) return undefined;
  const influences = Object.values(given).map(({ words }, index) => {
    const ends = trials.ends[index]!;
    return { words, low: Math.min(trials.middle, ...ends), high: Math.max(trials.middle, ...ends) };
  });
  return {
    band: bandOfTrials(trials, (value) => value),
    influences: influences.toSorted((one, other) => other.high - other.low - (one.high - one.low)),
  };
}
