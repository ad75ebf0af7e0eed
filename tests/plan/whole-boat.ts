import fc from "fast-check";
import type { PlanLine, PlanOption } from "../../src/plan/plan-option.js";
import type { PlanLimit, PlannedBoat } from "../../src/plan/planned-boat.js";

/** An option in whole milligrams, cents and millinewtons, so that sums by hand are exact. */
export interface WholeOption {
  readonly milligrams: number;
  readonly cents: number;
  readonly millinewtons: number;
  readonly reach: number;
}

export function optionOf({ milligrams, cents, millinewtons, reach }: WholeOption, index: number): PlanOption {
  const dry = milligrams / 1e6;
  return {
    id: `way ${index + 1}`,
    words: `way ${index + 1}`,
    mass: { dry, wet: 1.25 * dry, aloft: dry / 2 },
    cost: cents,
    handForce: millinewtons / 1000,
    handForceRobust: (1.5 * millinewtons) / 1000,
    measures: { reach },
    measuresRobust: { reach: reach - 2 },
    splices: index % 3,
    minutes: 15 * (index % 3),
    pieces: [{ rope: `rope ${index % 2}`, length: 4 + index }],
    parts: [{ part: "block", count: index % 4 }],
  };
}

export const lineOf = (name: string, options: readonly WholeOption[]): PlanLine => ({
  name,
  options: options.map(optionOf),
});

const wholeOption = fc.record({
  milligrams: fc.integer({ min: 5000, max: 400_000 }),
  cents: fc.integer({ min: 100, max: 9000 }),
  millinewtons: fc.integer({ min: 1000, max: 300_000 }),
  reach: fc.integer({ min: 0, max: 10 }),
});

/** Two to five lines with one to five options each. */
export const wholeLines = fc
  .array(fc.array(wholeOption, { minLength: 1, maxLength: 5 }), { minLength: 2, maxLength: 5 })
  .map((lines) => lines.map((options, index) => lineOf(`line ${index + 1}`, options)));

/** Limits somewhere between easy and impossible. */
export const wholeBoat: fc.Arbitrary<PlannedBoat> = fc
  .record({
    lines: wholeLines,
    grams: fc.integer({ min: 100, max: 400 }),
    cents: fc.integer({ min: 2000, max: 9000 }),
    newtons: fc.integer({ min: 50, max: 300 }),
    worst: fc.integer({ min: 40, max: 300 }),
    reach: fc.integer({ min: 0, max: 6 }),
    used: fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }),
  })
  .map(({ lines, grams, cents, newtons, worst, reach, used }) => {
    const share = lines.length;
    const limits: PlanLimit[] = [
      { kind: "total", total: "dry", atMost: (grams * share) / 1000 },
      { kind: "total", total: "cost", atMost: cents * share },
      { kind: "total", total: "handForce", atMost: newtons * share },
      { kind: "total", total: "worstHandForce", atMost: worst },
      { kind: "measure", line: "line 1", measure: "reach", sense: "at least", bound: reach },
    ];
    return { lines, limits: limits.filter((_, index) => used[index]) };
  });

/** All choices, one option a line. */
export function everyChoice(lines: readonly PlanLine[]): PlanOption[][] {
  return lines.reduce<PlanOption[][]>(
    (choices, { options }) => choices.flatMap((choice) => options.map((option) => [...choice, option])),
    [[]],
  );
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Mass [mg], hand force [mN], cost [cent] of a choice. */
export function amountsOf(choice: readonly PlanOption[]): [number, number, number] {
  return [
    sum(choice.map(({ mass }) => Math.round(1e6 * mass.dry))),
    sum(choice.map(({ handForce }) => Math.round(1000 * handForce))),
    sum(choice.map(({ cost }) => cost)),
  ];
}

/** Whether a choice keeps a limit, told without the planner. */
export function keeps(choice: readonly PlanOption[], limit: PlanLimit): boolean {
  const [mass, force, cost] = amountsOf(choice);
  if (limit.kind === "measure") return choice[0]!.measures.reach! >= limit.bound;
  if (limit.total === "dry") return mass <= Math.round(1e6 * limit.atMost);
  if (limit.total === "cost") return cost <= limit.atMost;
  if (limit.total === "handForce") return force <= 1000 * limit.atMost;
  return choice.every(({ handForce }) => handForce <= limit.atMost);
}

/** Choices that keep all limits. */
export function allowed({ lines, limits }: PlannedBoat): PlanOption[][] {
  return everyChoice(lines).filter((choice) => limits.every((limit) => keeps(choice, limit)));
}

/** Smaller in the first place where they differ. */
export function inOrder(a: readonly number[], b: readonly number[]): number {
  const index = a.findIndex((value, i) => value !== b[i]);
  return index < 0 ? 0 : a[index]! - b[index]!;
}
