import { figures } from "../quantity/print.js";
import type { Chosen, PlanLine, PlanOption } from "./plan-option.js";
import type { TotalName } from "./total-name.js";

/** A total of the whole boat: what a plan can limit and make small. */
interface Total {
  readonly words: string;
  readonly unit: string;
  /** Totals are counted in whole numbers of this, so that sums are exact. */
  readonly count: number;
  /** By how much a limit is loosened to find its price. */
  readonly step: number;
  readonly of: (option: PlanOption, line: PlanLine) => number;
  /** The largest of all lines instead of the sum. */
  readonly worst?: true;
}

const pull = ({ handForce }: PlanOption, { weight = 1 }: PlanLine) => weight * handForce;

/** The totals, by name. */
export const totals = {
  dry: { words: "dry mass", unit: "kg", count: 1e-6, step: 0.01, of: ({ mass }) => mass.dry },
  wet: { words: "wet mass", unit: "kg", count: 1e-6, step: 0.01, of: ({ mass }) => mass.wet },
  aloft: { words: "mass aloft", unit: "kg", count: 1e-6, step: 0.01, of: ({ mass }) => mass.aloft },
  cost: { words: "cost", unit: "cent", count: 1, step: 100, of: ({ cost }) => cost },
  handForce: { words: "hand force of all lines", unit: "N", count: 1e-3, step: 1, of: pull },
  worstHandForce: { words: "largest hand force", unit: "N", count: 1e-3, step: 1, of: pull, worst: true },
  splices: { words: "splices", unit: "", count: 1, step: 1, of: ({ splices }) => splices },
  minutes: { words: "time to make", unit: "min", count: 1e-2, step: 15, of: ({ minutes }) => minutes },
} as const satisfies Record<TotalName, Total>;

/** All totals of a choice, each in its unit. */
export type Totals = Readonly<Record<TotalName, number>>;

/** Names of all totals, in order. */
export const totalNames = Object.keys(totals) as TotalName[];

/** A total with its optional members. */
export function totalOf(name: TotalName): Total {
  return totals[name];
}

/** What an option adds to a total, in whole counts of it. */
export function countOf(name: TotalName, line: PlanLine, option: PlanOption): number {
  const { of, count } = totalOf(name);
  return Math.round(of(option, line) / count);
}

/** Most whole counts that a limit allows. */
export function countsWithin(name: TotalName, atMost: number): number {
  return Math.floor(atMost / totalOf(name).count + 1e-6);
}

/** Whole counts as a number in the unit of the total; a decimal fraction comes out as it would be typed. */
export function fromCounts(name: TotalName, counts: number): number {
  return counts / Math.round(1 / totalOf(name).count);
}

/** First less second, exact in whole counts, in the unit of the total. */
export function lessBy(name: TotalName, first: number, second: number): number {
  const { count } = totalOf(name);
  return fromCounts(name, Math.round(first / count) - Math.round(second / count));
}

/** The next larger number that prints short: whole grams, ten cents, tenths of a newton. */
export function roundedUp(name: TotalName, value: number): number {
  const { step } = totalOf(name);
  const whole = name === "splices" ? step : step / 10;
  return whole >= 1 ? Math.ceil(value / whole - 1e-9) * whole : Math.ceil(value / whole - 1e-9) / Math.round(1 / whole);
}

/** Total of a choice in whole counts. */
export function countsOf(name: TotalName, choice: readonly Chosen[]): number {
  const counts = choice.map(({ line, option }) => countOf(name, line, option));
  return totalOf(name).worst ? Math.max(0, ...counts) : counts.reduce((sum, count) => sum + count, 0);
}

/**
 * Adds up a choice: one option for each line.
 *
 *     total = Σ over lines, in whole milligrams, cents, millinewtons; the largest hand force = max over lines
 *
 * @param choice  option of each line
 * @returns totals by name [kg, cent, N, -, min]
 * Example: totalsOf([]).dry → 0
 */
export function totalsOf(choice: readonly Chosen[]): Totals {
  const entries = totalNames.map((name) => [name, fromCounts(name, countsOf(name, choice))] as const);
  return Object.fromEntries(entries) as Record<TotalName, number>;
}

/**
 * A total, or a difference of totals, as a reader expects it.
 *
 * @param name  of the total
 * @param value  in the unit of the total [kg, cent, N, -, min]
 * @param digits  significant figures [-], by default 3
 * @param currency  word for what things cost in; none when absent
 * @returns text such as `140 g`, `12.5 EUR`, `86 N`
 * Example: printTotal("dry", 0.14) → "140 g" Example: printTotal("cost", 1250, 3, "EUR") → "12.5 EUR"
 */
export function printTotal(name: TotalName, value: number, digits = 3, currency = ""): string {
  const { unit } = totalOf(name);
  if (unit === "kg") return Math.abs(value) < 1 ? `${figures(1000 * value, digits)} g` : `${figures(value, digits)} kg`;
  if (unit === "cent") return `${figures(value / 100, digits)} ${currency}`.trim();
  return unit === "" ? figures(value, digits) : `${figures(value, digits)} ${unit}`;
}
