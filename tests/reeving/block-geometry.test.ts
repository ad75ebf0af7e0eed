import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blockRules, type SheaveRule, sheaveRules, stockShells } from "../../src/materials/block-rules.js";
import { demoBlocks, demoRings, massLaws } from "../../src/materials/block-sizes.js";
import { ReevingError, ValueError } from "../../src/quantity/errors.js";
import {
  leastBendRadius,
  leastGroove,
  leastSheave,
  nextInStock,
  pitchDiameter,
  sheaveByCircumference,
  shellLength,
} from "../../src/reeving/block-geometry.js";
import { blockMass, massAt } from "../../src/reeving/block-mass.js";
import { groovePressure, loadOfGroovePressure } from "../../src/reeving/groove-pressure.js";
import { sheaveWraps } from "../../src/reeving/sheave-wraps.js";
import { num, seed } from "./builders.js";

const rules = Object.keys(sheaveRules) as SheaveRule[];

describe("rules for the size of a block", () => {
  it("grow in step with the rope", () => {
    fc.assert(
      fc.property(num(0.002, 0.02), num(1.1, 3), fc.constantFrom(...rules), (d, times, rule) => {
        const one = leastSheave({ ropeDiameter: d, rule });
        const other = leastSheave({ ropeDiameter: times * d, rule });
        expect(other.value).toBeCloseTo(times * one.value, 12);
        expect(one.low <= one.value && one.value <= one.high).toBe(true);
        expect(shellLength(times * d)).toBeCloseTo(times * shellLength(d), 12);
        expect(leastBendRadius(times * d)).toBeCloseTo(times * leastBendRadius(d), 12);
      }),
      seed,
    );
  });

  it("order themselves: dock work below braided below twisted below stiff fibres", () => {
    const at = (rule: SheaveRule) => leastSheave({ ropeDiameter: 0.01, rule }).value;
    expect(at("dockWork")).toBeLessThan(at("braided"));
    expect(at("braided")).toBeLessThan(at("twisted"));
    expect(at("twisted")).toBeLessThan(at("stiffFibre"));
  });

  it("give a shell that holds the sheave of the other rule with room for the rope on both sides", () => {
    expect(shellLength(0.01)).toBeGreaterThan(sheaveByCircumference(0.01) + 2 * 0.01);
  });

  it("ask relatively more groove of a thin rope than of a thick one", () => {
    const ratio = (d: number) => leastGroove(d).width / d;
    expect(ratio(0.006)).toBeGreaterThan(ratio(0.012));
    expect(leastGroove(0.006).depth).toBeCloseTo(0.002, 12);
    expect(leastGroove(0.006).radius - 0.003).toBeCloseTo(blockRules.grooveMargin.value, 12);
  });

  it("refuse a rope that cannot be", () => {
    expect(() => leastSheave({ ropeDiameter: 0, rule: "wire" })).toThrow(ValueError);
    expect(() => leastGroove(Number.NaN)).toThrow(ValueError);
    expect(() => shellLength(-0.01)).toThrow(/rope diameter/u);
  });

  it("take the next size in stock, and refuse what no stock holds", () => {
    expect(nextInStock(10, stockShells)).toBe(10);
    expect(nextInStock(10.01, stockShells)).toBe(12);
    expect(() => nextInStock(15, stockShells)).toThrow(ValueError);
    expect(() => nextInStock(1, [])).toThrow(/thinner rope/u);
  });

  it("measure a sheave to the middle of its rope", () => {
    expect(pitchDiameter({ sheaveDiameter: 0.04, ropeDiameter: 0.006 })).toBeCloseTo(0.046, 15);
  });
});

describe("pressure in the groove", () => {
  it("balances the load on the sheave", () => {
    fc.assert(
      fc.property(num(1, 5000), num(0.002, 0.02), num(0.01, 0.2), (tension, ropeDiameter, sheaveDiameter) => {
        const pressure = groovePressure({ tension, ropeDiameter, sheaveDiameter });
        const load = loadOfGroovePressure({ groovePressure: pressure, ropeDiameter, sheaveDiameter });
        expect(load / (2 * tension)).toBeCloseTo(1, 12);
        const twice = groovePressure({ tension, ropeDiameter, sheaveDiameter: 2 * sheaveDiameter });
        expect(pressure / twice).toBeCloseTo(2, 12);
      }),
      seed,
    );
    expect(() => groovePressure({ tension: -1, ropeDiameter: 0.006, sheaveDiameter: 0.04 })).toThrow(ValueError);
  });
});

describe("wraps on two sheaves", () => {
  it("are half a turn on equal sheaves with an open line", () => {
    const { large, small } = sheaveWraps({ largeDiameter: 0.04, smallDiameter: 0.04, distance: 1 });
    expect([large, small]).toEqual([Math.PI, Math.PI]);
  });

  it("add up to a turn when open, and are one and the same when crossed", () => {
    fc.assert(
      fc.property(num(0.01, 0.2), num(0.1, 1), num(1.01, 20), (largeDiameter, share, times) => {
        const smallDiameter = share * largeDiameter;
        const pair = { largeDiameter, smallDiameter, distance: (times * (largeDiameter + smallDiameter)) / 2 };
        const open = sheaveWraps(pair);
        expect(open.large + open.small).toBeCloseTo(2 * Math.PI, 12);
        expect(open.large).toBeGreaterThanOrEqual(open.small);
        const crossed = sheaveWraps({ ...pair, crossed: true });
        expect(crossed.large).toBe(crossed.small);
        expect(crossed.large).toBeGreaterThan(open.large);
      }),
      seed,
    );
  });

  it("refuse sheaves that touch, and a small one that is the larger", () => {
    expect(() => sheaveWraps({ largeDiameter: 0.1, smallDiameter: 0.1, distance: 0.1 })).toThrow(ReevingError);
    expect(() => sheaveWraps({ largeDiameter: 0.1, smallDiameter: 0.2, distance: 1 })).toThrow(ValueError);
  });
});

describe("mass of a block", () => {
  it("is that of the reference at its size, and grows faster than the sheave", () => {
    for (const law of Object.values(massLaws)) {
      const mass = blockMass(law, law.referenceDiameter);
      expect(mass).toEqual({
        value: law.referenceMass.value,
        low: expect.closeTo(law.referenceMass.low, 12),
        high: expect.closeTo(law.referenceMass.high, 12),
      });
      const ratio = blockMass(law, 2 * law.referenceDiameter).value / mass.value;
      expect(ratio).toBeGreaterThan(2 ** 1.8);
      expect(ratio).toBeLessThan(2 ** 3);
    }
  });

  it("by one set of values is the middle of the range", () => {
    const law = massLaws.block;
    const values = { referenceMass: law.referenceMass.value, exponent: law.exponent.value };
    expect(massAt(law, 0.063, values)).toBeCloseTo(blockMass(law, 0.063).value, 15);
    expect(() => blockMass(law, 0)).toThrow(ValueError);
  });

  it("of the invented blocks and rings lies in the range of the law", () => {
    for (const [law, fittings] of [
      [massLaws.block, demoBlocks],
      [massLaws.ring, demoRings],
    ] as const)
      for (const { diameter, mass } of fittings) {
        const { low, high } = blockMass(law, diameter);
        expect(mass >= low && mass <= high).toBe(true);
      }
  });
});
