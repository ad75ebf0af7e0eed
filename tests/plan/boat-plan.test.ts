import { describe, expect, it } from "vitest";
import type { Boat } from "../../src/boat/boat.js";
import { checkBoat } from "../../src/boat/check.js";
import { boatOf } from "../../src/boat/read.js";
import { lineStanding } from "../../src/boat/standing.js";
import { boatAsPlanned, choiceNow, plannedBoatOf } from "../../src/plan/boat-plan.js";
import { optimum } from "../../src/plan/optimum.js";
import { loadSolver } from "../../src/plan/solver.js";
import { totalsOf } from "../../src/plan/total.js";
import { here, smallBoat } from "../boat/small-boat.js";

const boat: Boat = boatOf(smallBoat, here);
const planned = plannedBoatOf(boat);
const solver = await loadSolver();

describe("the options of a boat file", () => {
  it("begin with each line as it is, at most 40 a line, every name once", () => {
    expect(planned.lines.map(({ name }) => name)).toEqual(Object.keys(boat.lines));
    for (const { options } of planned.lines) {
      expect(options[0]!.id).toBe("as it is");
      expect(options.length).toBeGreaterThan(1);
      expect(options.length).toBeLessThanOrEqual(40);
      expect(new Set(options.map(({ id }) => id)).size).toBe(options.length);
    }
  });

  it("feel, weigh and cost what the check of the changed boat says", () => {
    for (const line of planned.lines)
      for (const option of line.options.filter((_, index) => index % 5 === 0)) {
        const { feel, budget } = lineStanding(boatAsPlanned(boat, [{ line, option }]), line.name);
        expect(option.handForce).toBe(feel.hauling.value);
        expect(option.handForceRobust).toBe(feel.hauling.high);
        expect(option.measures.holding).toBe(feel.easing.value);
        expect(option.mass.dry).toBe(budget.dry.value);
        expect(option.cost).toBe(Math.round(100 * budget.cost));
      }
  });

  it("take ropes that go through their blocks, and count each block of a purchase", () => {
    const mainsheet = planned.lines[0]!;
    for (const { pieces, parts } of mainsheet.options) {
      const { diameter } = boat.catalogue.ropes[pieces[0]!.rope]!;
      for (const { part } of parts)
        if (mainsheet.options[0]!.pieces[0]!.rope !== pieces[0]!.rope)
          expect(boat.catalogue.blocks[part]!.groove).toBeGreaterThanOrEqual(diameter);
    }
    expect(mainsheet.options[0]!.parts).toEqual([
      { part: "block 63", count: 3 },
      { part: "ratchet 63", count: 1 },
    ]);
  });

  it("have something aloft on halyards only, and never more than the whole line", () => {
    for (const { name, options } of planned.lines)
      for (const { mass } of options) {
        if (name === "halyard") expect(mass.aloft).toBeGreaterThan(0);
        else expect(mass.aloft).toBe(0);
        expect(mass.aloft).toBeLessThan(mass.dry);
        expect(mass.wet).toBeGreaterThanOrEqual(mass.dry);
      }
  });

  it("are no better at the bad end of the range than in its middle", () => {
    for (const { options } of planned.lines)
      for (const { handForce, handForceRobust, measures, measuresRobust } of options) {
        expect(handForceRobust).toBeGreaterThanOrEqual(handForce);
        for (const [name, value] of Object.entries(measures)) {
          if (name.endsWith("margin")) expect(measuresRobust![name]!).toBeLessThanOrEqual(value);
        }
      }
  });
});

describe("the limits of a boat file", () => {
  it("become limits of the plan", () => {
    const hold = (limits: Partial<Boat["limits"]>) =>
      plannedBoatOf({ ...boat, limits: { ...boat.limits, ...limits } }).limits;
    expect(hold({})).toContainEqual(
      expect.objectContaining({ line: "mainsheet", measure: "holding", bound: boat.crew.helm!.hold }),
    );
    expect(hold({ handForce: 20 })).toContainEqual(expect.objectContaining({ measure: "holding", bound: 20 }));
    expect(hold({ mass: 2.5 })).toContainEqual({ kind: "total", total: "dry", atMost: 2.5 });
    expect(hold({ cost: { amount: 300, currency: "EUR" } })).toContainEqual({
      kind: "total",
      total: "cost",
      atMost: 30_000,
    });
  });

  it("tighten the strength margin as the safety factor grows", () => {
    const margin = (safetyFactor: number) =>
      plannedBoatOf({ ...boat, limits: { ...boat.limits, safetyFactor } }).lines[0]!.options[0]!.measures[
        "strength of the rope"
      ]!;
    expect(margin(50)).toBeCloseTo(margin(100) * 2, 6);
  });

  it("conflict where nothing of the catalogue is strong enough", () => {
    const weak = plannedBoatOf({ ...boat, limits: { ...boat.limits, safetyFactor: 100 } });
    expect(weak.conflicts!.map(({ line, planned: is }) => [line, is])).toEqual(
      Object.keys(boat.lines).map((name) => [name, false]),
    );
    expect(weak.conflicts!.flatMap(({ limits }) => limits.map(({ measure }) => measure))).toContain(
      "strength of the rope",
    );
    for (const { option } of optimum(solver, weak)!.choice) expect(option.id).toBe("as it is");
  });
});

describe("the plan of a boat file", () => {
  it("adds up to what the check of the planned boat says, and is no heavier than the boat where that keeps the limits", () => {
    const best = optimum(solver, planned)!;
    const check = checkBoat(boatAsPlanned(boat, best.choice));
    expect(best.totals.dry).toBeCloseTo(check.dry.value, 5);
    expect(best.totals.cost / 100).toBeCloseTo(check.cost, 1);
    expect(best.totals.dry).toBeLessThanOrEqual(totalsOf(choiceNow(planned)).dry);
    expect(check.safe).toBe(true);
    for (const { demands } of check.lines)
      for (const { consequence, outcome } of demands) if (consequence === "injury") expect(outcome).toBe("enough");
  });

  it("leaves a line alone that nothing makes safe, and plans the others", () => {
    const heavy: Boat = { ...boat, lines: { ...boat.lines, outhaul: { ...boat.lines.outhaul!, safetyFactor: 100 } } };
    const { conflicts, lines } = plannedBoatOf(heavy);
    expect(conflicts!.map(({ line }) => line)).toEqual(["outhaul"]);
    expect(lines.map(({ options }) => options.length > 1)).toEqual([true, true, false]);
    const best = optimum(solver, plannedBoatOf(heavy))!;
    expect(best.choice.map(({ line: { name }, option }) => [name, option.id === "as it is"])).toContainEqual([
      "outhaul",
      true,
    ]);
    expect(best.choice.some(({ option }) => option.id !== "as it is")).toBe(true);
  });

  it("is no easier at the bad end of the range", () => {
    const robust = plannedBoatOf(boat, { robust: true });
    expect(totalsOf(choiceNow(robust)).handForce).toBeGreaterThanOrEqual(totalsOf(choiceNow(planned)).handForce);
    expect(totalsOf(choiceNow(robust)).dry).toBe(totalsOf(choiceNow(planned)).dry);
  });
});
