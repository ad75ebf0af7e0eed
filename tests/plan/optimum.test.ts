import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { optimum } from "../../src/plan/optimum.js";
import type { PlanLimit, PlannedBoat } from "../../src/plan/planned-boat.js";
import { robustBoat } from "../../src/plan/robust.js";
import { loadSolver, type Solver } from "../../src/plan/solver.js";
import { allowed, amountsOf, everyChoice, inOrder, lineOf, optionOf, wholeBoat, wholeLines } from "./whole-boat.js";

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const runs = { seed: 7, numRuns: 200 };
/** A busy machine may be slow; nothing here is about time. */
const least = (boat: PlannedBoat) => optimum(solver, boat, ["dry"])?.totals.dry ?? Number.POSITIVE_INFINITY;

describe("the best choice", () => {
  it("is that of trying every choice, on 200 small boats, to the last milligram, millinewton and cent", () => {
    let possible = 0;
    fc.assert(
      fc.property(wholeBoat, (boat) => {
        const best = allowed(boat).map(amountsOf).sort(inOrder)[0];
        const found = optimum(solver, boat);
        expect(found && amountsOf(found.choice.map(({ option }) => option))).toEqual(best);
        if (!found) return;
        possible += 1;
        expect(found.proofs.map(({ gap, status }) => [gap, status])).toEqual([
          [0, "proven optimal"],
          [0, "proven optimal"],
          [0, "proven optimal"],
        ]);
        expect(found.proofs[0]!.bound).toBe(found.totals.dry);
      }),
      runs,
    );
    expect(possible).toBeGreaterThan(60);
    expect(possible).toBeLessThan(195);
  });

  it("makes the largest hand force as small as trying every choice does", () => {
    fc.assert(
      fc.property(wholeBoat, (boat) => {
        const worst = allowed(boat).map((choice) => Math.max(...choice.map(({ handForce }) => handForce)));
        const found = optimum(solver, boat, ["worstHandForce"]);
        expect(found?.totals.worstHandForce ?? Number.POSITIVE_INFINITY).toBe(Math.min(...worst));
      }),
      { ...runs, numRuns: 60 },
    );
  });

  it("is never worse with a limit loosened", () => {
    fc.assert(
      fc.property(wholeBoat, fc.nat(), fc.integer({ min: 0, max: 50 }), (boat, pick, more) => {
        if (boat.limits.length === 0) return;
        const index = pick % boat.limits.length;
        const limit = boat.limits[index]!;
        const looser: PlanLimit =
          limit.kind === "measure"
            ? { ...limit, bound: limit.bound - more }
            : { ...limit, atMost: limit.atMost * (1 + more / 50) };
        expect(least({ ...boat, limits: boat.limits.with(index, looser) })).toBeLessThanOrEqual(least(boat));
      }),
      runs,
    );
  });

  it("is never worse with an option added", () => {
    const option = fc.record({
      milligrams: fc.integer({ min: 1000, max: 200_000 }),
      cents: fc.integer({ min: 100, max: 9000 }),
      millinewtons: fc.integer({ min: 1000, max: 300_000 }),
      reach: fc.integer({ min: 0, max: 10 }),
    });
    fc.assert(
      fc.property(wholeBoat, option, (boat, added) => {
        const [first, ...others] = boat.lines;
        const wider = { ...first!, options: [...first!.options, optionOf(added, 9)] };
        expect(least({ ...boat, lines: [wider, ...others] })).toBeLessThanOrEqual(least(boat));
      }),
      runs,
    );
  });

  it("takes the lightest of each line when nothing limits it", () => {
    fc.assert(
      fc.property(wholeLines, (lines) => {
        const best = optimum(solver, { lines, limits: [] }, ["dry"])!;
        for (const { line, option } of best.choice)
          expect(option.mass.dry).toBe(Math.min(...line.options.map(({ mass }) => mass.dry)));
      }),
      { ...runs, numRuns: 30 },
    );
  });

  it("does not depend on how many choices there are: 30 lines of 8 options", () => {
    const lines = Array.from({ length: 30 }, (_, i) =>
      lineOf(
        `line ${i}`,
        Array.from({ length: 8 }, (__, j) => ({
          milligrams: 1000 * (20 + ((i * 7 + j * 13) % 60)),
          cents: 500 + 97 * ((i * 5 + j * 11) % 23),
          millinewtons: 1000 * (10 + ((i * 3 + j * 17) % 41)),
          reach: j,
        })),
      ),
    );
    const free = optimum(solver, { lines, limits: [] }, ["dry"])!;
    const atMost = Math.round(0.7 * free.totals.handForce);
    const best = optimum(solver, { lines, limits: [{ kind: "total", total: "handForce", atMost }] })!;
    expect(best.totals.handForce).toBeLessThanOrEqual(atMost);
    expect(best.totals.dry).toBeGreaterThan(free.totals.dry);
    expect(best.proofs.every(({ gap }) => gap === 0)).toBe(true);
  });

  it("counts the weight of a line in its hand force", () => {
    const lines = [
      { ...lineOf("often", [{ milligrams: 9000, cents: 1, millinewtons: 40_000, reach: 0 }]), weight: 3 },
      lineOf("rarely", [{ milligrams: 9000, cents: 1, millinewtons: 50_000, reach: 0 }]),
    ];
    expect(optimum(solver, { lines, limits: [] })!.totals).toMatchObject({ handForce: 170, worstHandForce: 120 });
  });
});

describe("the plan for the bad end of the friction band", () => {
  it("is that of trying every choice with the values of the 95th percentile", () => {
    fc.assert(
      fc.property(wholeBoat, (boat) => {
        const robust = robustBoat(boat);
        const best = everyChoice(boat.lines)
          .filter((choice) =>
            boat.limits.every((limit) => {
              if (limit.kind === "measure") return choice[0]!.measuresRobust!.reach! >= limit.bound;
              const pulls = choice.map(({ handForceRobust }) => handForceRobust!);
              if (limit.total === "worstHandForce") return Math.max(...pulls) <= limit.atMost;
              if (limit.total === "handForce") return pulls.reduce((a, b) => a + b, 0) <= limit.atMost + 1e-9;
              const [mass, , cost] = amountsOf(choice);
              return limit.total === "dry" ? mass <= Math.round(1e6 * limit.atMost) : cost <= limit.atMost;
            }),
          )
          .map((choice) => amountsOf(choice)[0])
          .sort((a, b) => a - b)[0];
        expect(least(robust)).toBe(best === undefined ? Number.POSITIVE_INFINITY : best / 1e6);
        expect(least(robust)).toBeGreaterThanOrEqual(least(boat));
      }),
      { ...runs, numRuns: 60 },
    );
  });
});
