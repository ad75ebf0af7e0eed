import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandOf } from "../../src/sources/band.js";
import { balanced } from "../../src/working/balance.js";
import { formulas } from "../../src/working/catalogue.js";
import { formula } from "../../src/working/formula.js";
import { worked } from "../../src/working/worked.js";
import { workingRange } from "../../src/working/working-range.js";

const friction = { value: 0.2, low: 0.15, high: 0.3 };
const wrap = { value: 3, low: 2.5, high: 3.2 };
const hold = worked(formulas.capstan, { frictionCoefficient: friction, wrapAngle: wrap });

const two = {
  one: { quantity: "tension", sign: "A", words: "one" },
  other: { quantity: "tension", sign: "B", words: "the other" },
} as const;

const difference = formula({
  id: "difference",
  title: "One less the other",
  text: "one - other",
  symbols: two,
  result: "tension",
  source: "statics",
  valid: "always",
});

/** A block that hangs in two parts of a rope which gets heavier as it is pulled: no straight line. */
const balanceOf = (load: { value: number; low: number; high: number }) =>
  balanced({
    id: "curved",
    title: "A pull that is squared",
    equations: [{ words: "the block", left: "pull * pull / unit", right: "load" }],
    symbols: { pull: "tension", unit: { quantity: "tension", sign: "U", words: "unit" }, load: "loadTension" },
    values: { pull: Math.sqrt(load.value), unit: 1, load },
    answer: "pull",
    source: "statics",
    valid: "at rest",
  });

describe("the range of a worked number", () => {
  it("is the one that its model has", () => {
    const own = bandOf({ friction, wrap }, (one) => Math.exp(one.friction * one.wrap));
    const { band } = workingRange(hold)!;
    expect(band.low).toBeCloseTo(own.low, 12);
    expect(band.high).toBeCloseTo(own.high, 12);
  });

  it("names what each number does alone, the strongest first", () => {
    const { influences } = workingRange(hold)!;
    expect(influences.map(({ words }) => words)).toEqual(["friction coefficient", "wrap angle"]);
    expect(influences[0]!.low).toBeCloseTo(Math.exp(0.45), 12);
    expect(influences[0]!.high).toBeCloseTo(Math.exp(0.9), 12);
    expect(influences[1]!.high).toBeCloseTo(Math.exp(0.64), 12);
  });

  it("lets the same record move in all places at once, and others apart", () => {
    const load = { value: 80, low: 70, high: 95, unit: "N", status: "invented for the demo", place: "a load" } as const;
    expect(workingRange(worked(difference, { one: load, other: load }))!.band).toEqual({ value: 0, low: 0, high: 0 });
    const apart = worked(difference, { one: load, other: { ...load, place: "another load" } });
    const { band, influences } = workingRange(apart)!;
    expect(influences).toHaveLength(2);
    expect(band.high).toBeCloseTo(Math.hypot(15, 10), 12);
  });

  it("goes through the steps before", () => {
    const whole = worked(difference, {
      one: 500,
      other: worked(difference, { one: { value: 80, low: 70, high: 95 }, other: 30 }),
    });
    const ends = (place?: number) => {
      const { low, high } = workingRange(whole, place)!.band;
      return [low, high].map((end) => Number(end.toFixed(9)));
    };
    expect(ends()).toEqual([435, 460]);
    expect(ends(0)).toEqual([40, 65]);
  });

  it("solves balances again", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e4, noNaN: true }),
        fc.double({ min: 0.1, max: 0.95, noNaN: true }),
        (value, part) => {
          const load = { value, low: part * value, high: value / part };
          const { band } = workingRange(balanceOf(load))!;
          expect(band.low / Math.sqrt(load.low)).toBeCloseTo(1, 8);
          expect(band.high / Math.sqrt(load.high)).toBeCloseTo(1, 8);
        },
      ),
      { seed: 7, numRuns: 50 },
    );
  });

  it("is none where no given number has one", () => {
    expect(workingRange(worked(formulas.capstan, { frictionCoefficient: 0.2, wrapAngle: 3 }))).toBeUndefined();
  });

  it("is none where the steps have no answer at an end", () => {
    expect(workingRange(balanceOf({ value: 4, low: -4, high: 9 }))).toBeUndefined();
    const root = formula({
      id: "root",
      title: "A root",
      text: "sqrt(one * other)",
      symbols: two,
      result: "tension",
      source: "statics",
      valid: "above zero",
    });
    expect(workingRange(worked(root, { one: { value: 4, low: -4, high: 9 }, other: 1 }))).toBeUndefined();
  });
});
