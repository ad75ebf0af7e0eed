import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { smallestConflict } from "../../src/plan/conflict.js";
import { limitPrices } from "../../src/plan/limit-price.js";
import { optimum } from "../../src/plan/optimum.js";
import type { PlanLimit, PlannedBoat } from "../../src/plan/planned-boat.js";
import { loadSolver, type Solver } from "../../src/plan/solver.js";
import { allowed, amountsOf, everyChoice, keeps, lineOf, wholeBoat } from "./whole-boat.js";

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

/** Fewest limits that no choice keeps together, by trying every set. */
function fewestInConflict({ lines, limits }: PlannedBoat): number {
  const choices = everyChoice(lines);
  const kept = choices.map((choice) => limits.map((limit) => keeps(choice, limit)));
  const sizes = Array.from({ length: 2 ** limits.length }, (_, set) =>
    limits.flatMap((__, i) => ((set >> i) & 1 ? [i] : [])),
  )
    .filter((set) => !kept.some((one) => set.every((index) => one[index])))
    .map(({ length }) => length);
  return Math.min(...sizes);
}

describe("limits in conflict", () => {
  it("are none exactly where some choice keeps all, and as few as trying every set gives", () => {
    const sizes: number[] = [];
    fc.assert(
      fc.property(wholeBoat, (boat) => {
        const found = smallestConflict(solver, boat);
        if (allowed(boat).length > 0) {
          expect(found).toBeUndefined();
          return;
        }
        expect(found!.limits).toHaveLength(fewestInConflict(boat));
        expect(allowed({ ...boat, limits: found!.limits })).toEqual([]);
        for (const left of found!.limits)
          expect(allowed({ ...boat, limits: found!.limits.filter((limit) => limit !== left) })).not.toEqual([]);
        sizes.push(found!.limits.length);
      }),
      { seed: 7, numRuns: 120 },
    );
    expect(new Set(sizes)).toEqual(new Set([1, 2]));
  });

  it("may be three of which any two can be kept", () => {
    const only = (milligrams: number, cents: number, millinewtons: number) => ({
      milligrams,
      cents,
      millinewtons,
      reach: 0,
    });
    const lines = [lineOf("sheet", [only(9000, 100, 9000), only(9000, 900, 1000), only(90_000, 100, 1000)])];
    const limits: PlanLimit[] = [
      { kind: "total", total: "splices", atMost: 9 },
      { kind: "total", total: "dry", atMost: 0.01 },
      { kind: "total", total: "cost", atMost: 200 },
      { kind: "total", total: "handForce", atMost: 2 },
      { kind: "total", total: "minutes", atMost: 90 },
    ];
    expect(smallestConflict(solver, { lines, limits })!.limits).toEqual(limits.slice(1, 4));
  });

  it("come with a change that makes the plan possible, and only as far as it has to go", () => {
    fc.assert(
      fc.property(wholeBoat, (boat) => {
        const found = smallestConflict(solver, boat);
        found?.limits.forEach((limit, index) => {
          const at = boat.limits.indexOf(limit);
          const change = found.changes[index];
          const without = allowed({ ...boat, limits: boat.limits.toSpliced(at, 1) });
          expect(change === undefined).toBe(without.length === 0);
          if (change) expect(allowed({ ...boat, limits: boat.limits.with(at, change) })).not.toEqual([]);
          if (change?.kind !== "total" || change.total !== "dry") return;
          const lightest = Math.min(...without.map((choice) => amountsOf(choice)[0])) / 1e6;
          expect(change.atMost - lightest).toBeLessThan(0.001 + 1e-9);
        });
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it("are told in words with numbers", () => {
    const lines = [
      lineOf("mainsheet", [
        { milligrams: 100_000, cents: 2000, millinewtons: 200_000, reach: 5 },
        { milligrams: 250_000, cents: 6000, millinewtons: 90_000, reach: 3 },
      ]),
    ];
    const limits: PlanLimit[] = [
      { kind: "measure", line: "mainsheet", measure: "reach", sense: "at most", bound: 4, unit: "m" },
      { kind: "total", total: "minutes", atMost: 600 },
      { kind: "total", total: "dry", atMost: 0.2 },
    ];
    expect(smallestConflict(solver, { lines, limits })!.words).toBe(
      "No choice meets these limits together: mainsheet: reach at most 4 m; dry mass at most 200 g. " +
        "Possible with mainsheet: reach at most 5 m; or with dry mass at most 250 g.",
    );
    const alone: PlanLimit[] = [{ kind: "total", total: "cost", atMost: 1999 }];
    expect(smallestConflict(solver, { lines, limits: alone })!.words).toBe(
      "No option meets this limit: cost at most 19.99. Possible with cost at most 20.",
    );
    expect(smallestConflict(solver, { lines, limits: alone, currency: "shells" })!.words).toBe(
      "No option meets this limit: cost at most 19.99 shells. Possible with cost at most 20 shells.",
    );
  });
});

describe("the price of a limit", () => {
  it("is the least mass with it less the least mass without it, by trying every choice", () => {
    fc.assert(
      fc.property(wholeBoat, (boat) => {
        const least = (limits: readonly PlanLimit[]) =>
          Math.min(...allowed({ ...boat, limits }).map((choice) => amountsOf(choice)[0]));
        const prices = limitPrices(solver, boat, ["dry"]);
        const now = least(boat.limits);
        expect(prices).toHaveLength(Number.isFinite(now) ? boat.limits.length : 0);
        prices.forEach(({ saved, loosened }, index) => {
          expect(saved).toBe((now - least(boat.limits.toSpliced(index, 1))) / 1e6);
          if (!loosened) return;
          expect(loosened.saved).toBe((now - least(boat.limits.with(index, loosened.limit))) / 1e6);
          expect(loosened.saved).toBeLessThanOrEqual(saved);
        });
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it("is told in grams", () => {
    const lines = [
      lineOf("mainsheet", [
        { milligrams: 110_000, cents: 2000, millinewtons: 200_000, reach: 5 },
        { milligrams: 250_000, cents: 6000, millinewtons: 90_000, reach: 3 },
      ]),
    ];
    const limits: PlanLimit[] = [
      { kind: "total", total: "handForce", atMost: 199.5 },
      { kind: "total", total: "cost", atMost: 7000 },
    ];
    expect(limitPrices(solver, { lines, limits, currency: "EUR" }).map(({ words }) => words)).toEqual([
      "hand force of all lines at most 199.5 N costs 140 g of dry mass; a limit of 200.5 N instead of 199.5 N would save 140 g",
      "cost at most 70 EUR costs nothing: the best plan meets it anyway",
    ]);
    expect(optimum(solver, { lines, limits })!.totals.dry).toBe(0.25);
  });

  it("is told for the nearest limit that saves something, rounded to what can be printed", () => {
    const at = (milligrams: number, reach: number) => ({ milligrams, cents: 100, millinewtons: 1000, reach });
    const lines = [lineOf("sheet", [at(90_000, 1), at(95_000, 0.97654), at(40_000, 0.81239), at(30_000, 0.4)])];
    const limit = { kind: "measure", line: "sheet", measure: "reach", sense: "at least", bound: 1 } as const;
    const [price] = limitPrices(solver, { lines, limits: [limit] });
    expect(price!.words).toBe(
      "sheet: reach at least 1 costs 60 g of dry mass; a limit of 0.812 instead of 1 would save 50 g",
    );
  });

  it("counts a value that only rounding keeps from its bound as meeting it", () => {
    const near = { milligrams: 40_000, cents: 100, millinewtons: 1000, reach: 1 - 1e-12 };
    const lines = [lineOf("sheet", [{ ...near, milligrams: 90_000, reach: 2 }, near])];
    const limit = { kind: "measure", line: "sheet", measure: "reach", sense: "at least", bound: 1 } as const;
    expect(limitPrices(solver, { lines, limits: [limit] })[0]!.saved).toBe(0);
  });
});
