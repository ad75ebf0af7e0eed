import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkBoat } from "../../src/boat/check.js";
import { boatOf } from "../../src/boat/read.js";
import { lineStanding } from "../../src/boat/standing.js";
import { boatAsPlanned, plannedBoatOf } from "../../src/plan/boat-plan.js";
import { front } from "../../src/plan/front.js";
import { meets } from "../../src/plan/limit.js";
import { waysOf } from "../../src/plan/line-ways.js";
import { optimum } from "../../src/plan/optimum.js";
import type { PlanOption } from "../../src/plan/plan-option.js";
import type { MeasureLimit, PlanLimit, PlannedBoat } from "../../src/plan/planned-boat.js";
import { loadSolver } from "../../src/plan/solver.js";
import { totalsOf } from "../../src/plan/total.js";
import { demoNames, demoPlace, demoText, here, smallBoat } from "../boat/small-boat.js";
import { long } from "../long.js";
import { everyChoice } from "./whole-boat.js";

const boat = boatOf(smallBoat, here);
const planned = plannedBoatOf(boat);
const solver = await loadSolver();

/** The small boat with a few of its real options a line, and a limit on its hand force. */
const someBoat: fc.Arbitrary<PlannedBoat> = fc
  .record({
    picks: fc.array(fc.uniqueArray(fc.nat(39), { minLength: 1, maxLength: 6 }), { minLength: 3, maxLength: 3 }),
    pull: fc.integer({ min: 450, max: 900 }),
  })
  .map(({ picks, pull }) => ({
    lines: planned.lines.map((line, at) => {
      const own = [...new Set(picks[at]!.map((pick) => pick % line.options.length))];
      return { ...line, options: own.map((pick) => line.options[pick]!) };
    }),
    limits: [...planned.limits, { kind: "total", total: "handForce", atMost: pull }],
  }));

const least = (one: PlannedBoat) => optimum(solver, one, ["dry"])?.totals.dry ?? Number.POSITIVE_INFINITY;

/** Least mass by trying every choice, told without the solver. */
function byHand({ lines, limits }: PlannedBoat): number {
  const own = (at: number) =>
    limits.filter((limit): limit is MeasureLimit => limit.kind === "measure" && limit.line === lines[at]!.name);
  const keeps = (choice: readonly PlanOption[]) =>
    choice.every((option, at) => own(at).every((limit) => meets(option, limit))) &&
    limits.every((limit) => {
      if (limit.kind === "measure") return true;
      const totals = totalsOf(choice.map((option, at) => ({ line: lines[at]!, option })));
      return totals[limit.total] <= limit.atMost;
    });
  const masses = everyChoice(lines)
    .filter(keeps)
    .map((choice) => totalsOf(choice.map((option, at) => ({ line: lines[at]!, option }))).dry);
  return Math.min(Number.POSITIVE_INFINITY, ...masses);
}

describe("plans with the options of a boat file", () => {
  it("are those of trying every choice, on 200 boats", () => {
    let possible = 0;
    fc.assert(
      fc.property(someBoat, (one) => {
        const found = least(one);
        expect(found).toBe(byHand(one));
        if (Number.isFinite(found)) possible += 1;
      }),
      { seed: 7, numRuns: 200 },
    );
    expect(possible).toBeGreaterThan(20);
    expect(possible).toBeLessThan(200);
  });

  it("are never heavier with any limit loosened, or an option added", () => {
    fc.assert(
      fc.property(someBoat, fc.nat(), fc.nat(), fc.integer({ min: 0, max: 30 }), (one, pick, add, percent) => {
        const index = pick % one.limits.length;
        const limit = one.limits[index]!;
        const more = percent / 100;
        const looser: PlanLimit =
          limit.kind === "total"
            ? { ...limit, atMost: limit.atMost * (1 + more) }
            : { ...limit, bound: limit.bound * (limit.sense === "at most" ? 1 + more : 1 - more) };
        expect(least({ ...one, limits: one.limits.with(index, looser) })).toBeLessThanOrEqual(least(one));
        const at = add % one.lines.length;
        const all = planned.lines[at]!.options;
        const line = one.lines[at]!;
        const extra = all[add % all.length]!;
        if (line.options.includes(extra)) return;
        const wider = { ...line, options: [...line.options, extra] };
        expect(least({ ...one, lines: one.lines.with(at, wider) })).toBeLessThanOrEqual(least(one));
      }),
      { seed: 7, numRuns: 150 },
    );
  });
});

describe("the ways of a line", () => {
  it("have more and fewer parts, each with its rope, blocks and line to haul", () => {
    const line = planned.lines[0]!;
    const parts = (option: PlanOption) => option.parts.find(({ part }) => part === "block 63")?.count;
    const [now, four] = [line.options[0]!, line.options.find(({ id }) => id === "4 parts instead of 3 (tackle)")!];
    expect([parts(now), parts(four)]).toEqual([3, 4]);
    expect(four.pieces[0]!.length).toBeGreaterThan(now.pieces[0]!.length);
    expect(four.handForce).toBeLessThan(now.handForce);
    expect([now, four].map(({ measures }) => measures["line to haul a metre"])).toEqual([3, 4]);
    expect(four.cost).toBeGreaterThan(now.cost);
    const { budget } = lineStanding(boatAsPlanned(boat, [{ line, option: four }]), "mainsheet");
    expect(four.mass.dry).toBe(budget.dry.value);
  });

  it("never take the cover from a hand that has one, where the limits are kept", () => {
    const covers = planned.limits.filter((limit) => limit.kind === "measure" && limit.measure.startsWith("covers"));
    expect(covers.map((limit) => limit.kind === "measure" && limit.line)).toEqual(["mainsheet", "halyard"]);
    const bare = planned.lines[0]!.options.filter(({ pieces }) => pieces[0]!.rope === "braid 4");
    for (const { measures } of bare) expect(measures["covers where it is held"]).toBe(0);
  });

  it("keep the diameter in the hand as a limit in millimetres, of the file where it names one", () => {
    const of = (one: PlannedBoat) =>
      one.limits.find(
        (limit): limit is MeasureLimit => limit.kind === "measure" && limit.measure.startsWith("diameter"),
      )!;
    expect(of(planned)).toMatchObject({ line: "mainsheet", sense: "at least", bound: 7, unit: "mm" });
    const thin = { ...boat, limits: { ...boat.limits, leastDiameter: 0.004 } };
    expect(of(plannedBoatOf(thin)).bound).toBe(4);
  });

  it("keep sheaves that are built in where they are, and sheets in cams", () => {
    const skiff = boatOf(demoText("demo-skiff.yaml"), demoPlace("demo-skiff"));
    const builtIn = (name: string) => skiff.catalogue.blocks[name]?.builtIn === true;
    for (const line of Object.values(skiff.lines))
      for (const way of waysOf(skiff, line))
        way.line.path.forEach((station, at) => {
          const now = line.path[at]!;
          if (station.kind === "block" && now.kind === "block") expect(builtIn(station.block)).toBe(builtIn(now.block));
          if (station.kind === "cleat" && line.kind === "sheet") expect(station.cleat).toBe("cam cleat");
        });
  });

  it("make a halyard thin where it runs, covered in cleat and hand", () => {
    const skiff = boatOf(demoText("demo-skiff.yaml"), demoPlace("demo-skiff"));
    const line = skiff.lines["main halyard"]!;
    const tapered = waysOf(skiff, line).filter((way) => way.line.rope.length === 2);
    expect(tapered.length).toBeGreaterThan(0);
    for (const { line: one } of tapered) {
      expect(one.rope[0]!.rope).toMatch(/^braid/u);
      expect(one.rope[0]!.length + one.rope[1]!.length).toBeCloseTo(15, 9);
      expect(one.rope[0]!.length).toBeLessThan(0.2 + 6.8 + 0.5);
    }
  });
});

describe.each(demoNames.filter((name) => long(name === "demo-keelboat", true)))("the plan of %s", (name) => {
  const demo = boatOf(demoText(`${name}.yaml`), demoPlace(name));

  it.each([false, true])("with limits at the bad end: %s, exists, is proven at 25 points, and is safe", (robust) => {
    const one = plannedBoatOf(demo, { robust });
    for (const { options } of one.lines) expect(options.length).toBeLessThanOrEqual(40);
    const { points } = front(solver, one);
    expect(points.length).toBeGreaterThanOrEqual(25);
    for (const { proofs } of points)
      for (const { gap, status } of proofs) expect([gap, status]).toEqual([0, "proven optimal"]);
    expect(checkBoat(boatAsPlanned(demo, points[0]!.choice)).safe).toBe(true);
  });
});
