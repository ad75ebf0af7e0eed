import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BentMaterial, bendCurveOf, bendCurves } from "../../src/materials/bend-strength.js";
import { ValueError } from "../../src/quantity/errors.js";
import { bendStrength, leastBendRatio } from "../../src/rope/bend-strength.js";
import { evenly } from "../numerics/evenly.js";

const materials = Object.keys(bendCurveOf) as BentMaterial[];
const material = fc.constantFrom(...materials);

describe("strength at a bend", () => {
  it("is half where its record says so, and nearly all round a very large sheave", () => {
    for (const name of materials) {
      const half = bendCurveOf[name].halfRatio.value;
      expect(bendStrength({ diameterRatio: half, material: name }).value).toBeCloseTo(0.5, 12);
      expect(bendStrength({ diameterRatio: 1000, material: name }).low).toBeGreaterThan(0.99);
    }
  });

  it("stays between nothing and all, its range round its middle", () => {
    fc.assert(
      fc.property(material, evenly(0.1, 1000), (name, diameterRatio) => {
        const { value, low, high } = bendStrength({ diameterRatio, material: name });
        expect(low).toBeGreaterThan(0);
        expect(value).toBeGreaterThanOrEqual(low);
        expect(high).toBeGreaterThanOrEqual(value);
        expect(value).toBeLessThan(1);
      }),
      { seed: 7 },
    );
  });

  it("rises with the sheave, at the middle and at both ends of its range", () => {
    fc.assert(
      fc.property(material, evenly(0.5, 60), evenly(0.01, 5), (name, ratio, step) => {
        const small = bendStrength({ diameterRatio: ratio, material: name });
        const large = bendStrength({ diameterRatio: ratio + step, material: name });
        expect(large.value).toBeGreaterThan(small.value);
        expect(large.low).toBeGreaterThan(small.low);
        expect(large.high).toBeGreaterThan(small.high);
      }),
      { seed: 7 },
    );
  });

  it("does not pass the strength of the straight rope, even at the good end", () => {
    fc.assert(
      fc.property(material, evenly(0.1, 1000), (name, diameterRatio) => {
        expect(bendStrength({ diameterRatio, material: name }).high).toBeLessThan(1);
      }),
      { seed: 7 },
    );
  });

  it("asks for a larger sheave from aramid, LCP and PBO", () => {
    for (const stiff of ["aramid", "lcp", "pbo"] as const)
      expect(bendStrength({ diameterRatio: 5, material: stiff }).value).toBeLessThan(
        bendStrength({ diameterRatio: 5, material: "polyester" }).value,
      );
  });

  it("lies within what sling practice remembers: half at 1, 0.75 to 0.85 at 3, 0.90 to 0.95 at 8", () => {
    const at = (diameterRatio: number) => bendStrength({ diameterRatio, material: "polyester" }).value;
    expect(at(1)).toBeCloseTo(0.5, 12);
    expect(at(3) > 0.75 && at(3) < 0.85).toBe(true);
    expect(at(8) > 0.9 && at(8) < 0.95).toBe(true);
    const wire = bendStrength({ diameterRatio: 40, material: "wire" });
    expect(wire.value).toBeGreaterThan(0.949);
    expect(bendCurves.wire.halfRatio.value).toBe(1);
  });

  it("refuses a ratio that cannot be", () => {
    expect(() => bendStrength({ diameterRatio: 0, material: "wire" })).toThrow(ValueError);
    expect(() => bendStrength({ diameterRatio: Number.NaN, material: "wire" })).toThrow(/sheave ratio/u);
  });
});

describe("least sheave for a wanted strength", () => {
  it("turns the curve round", () => {
    fc.assert(
      fc.property(material, evenly(0.06, 0.98), (name, retainedStrength) => {
        const { value } = leastBendRatio({ retainedStrength, material: name });
        if (value < 0.1) return;
        expect(bendStrength({ diameterRatio: value, material: name }).value).toBeCloseTo(retainedStrength, 10);
      }),
      { seed: 7 },
    );
  });

  it("refuses all of the strength: no sheave leaves that", () => {
    expect(() => leastBendRatio({ retainedStrength: 1, material: "hmpe" })).toThrow(ValueError);
  });
});
