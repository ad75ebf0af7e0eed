import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalQuantile, normalShare } from "../../src/numerics/normal.js";
import { bandAt, spreadPoints } from "../../src/numerics/spread-points.js";
import { ValueError } from "../../src/quantity/errors.js";
import { evenly } from "./evenly.js";

describe("the normal distribution", () => {
  it("meets values printed in every table", () => {
    // Standard normal tables: 1 deviation 0.8413, 1.96 deviations 0.9750, 3.09 deviations 0.9990
    expect(normalShare(0)).toBe(0.5);
    expect(normalShare(1)).toBeCloseTo(0.8413, 4);
    expect(normalShare(1.96)).toBeCloseTo(0.975, 4);
    expect(normalShare(3.09)).toBeCloseTo(0.999, 5);
    expect(normalQuantile(0.95)).toBeCloseTo(1.645, 3);
    expect(normalShare(Number.POSITIVE_INFINITY)).toBe(1);
    expect(normalShare(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(normalShare(Number.NaN)).toBeNaN();
  });

  it("is the same on both sides where series and fraction meet", () => {
    expect(normalShare(3 + 1e-12) / normalShare(3 - 1e-12)).toBeCloseTo(1, 12);
    expect(normalShare(-3 - 1e-12) / normalShare(-3 + 1e-12)).toBeCloseTo(1, 10);
  });

  it("is symmetric, rises, and is undone by its quantile", () => {
    fc.assert(
      fc.property(evenly(-6, 6), evenly(0.001, 1), (z, more) => {
        expect(normalShare(z) + normalShare(-z)).toBeCloseTo(1, 14);
        expect(normalShare(z + more)).toBeGreaterThan(normalShare(z));
        expect(normalQuantile(normalShare(z))).toBeCloseTo(z, z > 4 ? 5 : 8);
      }),
      { seed: 7 },
    );
  });

  it.each([0, 1, -0.1, Number.NaN])("has no quantile for a share of %s", (share) => {
    expect(() => normalQuantile(share)).toThrow(ValueError);
  });
});

describe("points that fill a cube", () => {
  it("are the same for the same seed, others for another", () => {
    const one = spreadPoints({ count: 50, dimensions: 3, seed: 4 });
    expect(spreadPoints({ count: 50, dimensions: 3, seed: 4 })).toEqual(one);
    expect(spreadPoints({ count: 50, dimensions: 3, seed: 5 })).not.toEqual(one);
  });

  it("lie closer to even than chance: a thousand points in three dimensions", () => {
    const [x, y, z] = spreadPoints({ count: 1000, dimensions: 3, seed: 1 }) as [
      Float64Array,
      Float64Array,
      Float64Array,
    ];
    let inside = 0;
    let product = 0;
    for (let i = 0; i < x.length; i++) {
      expect(x[i]! > 0 && x[i]! < 1).toBe(true);
      if (x[i]! < 0.5 && y[i]! < 0.5 && z[i]! < 0.5) inside++;
      product += x[i]! * y[i]! * z[i]!;
    }
    // Chance alone would miss 125 by about 10, and 1/8 by about 0.004.
    expect(Math.abs(inside - 125)).toBeLessThan(8);
    expect(Math.abs(product / 1000 - 0.125)).toBeLessThan(0.002);
  });

  it.each([
    { count: 0, dimensions: 1, seed: 0 },
    { count: 2.5, dimensions: 1, seed: 0 },
    { count: 2, dimensions: 65, seed: 0 },
    { count: 2, dimensions: 1, seed: Number.NaN },
  ])("refuse %o", (input) => {
    expect(() => spreadPoints(input)).toThrow(ValueError);
  });
});

describe("a value of a band", () => {
  it("meets its ends and its middle", () => {
    for (const band of [
      { value: 2, low: 1, high: 5 },
      { value: 2, low: -1, high: 5 },
      { value: 2, low: 0, high: 5 },
    ]) {
      expect(bandAt(band, 0.05)).toBeCloseTo(band.low, 9);
      expect(bandAt(band, 0.5)).toBeCloseTo(band.value, 9);
      expect(bandAt(band, 0.95)).toBeCloseTo(band.high, 9);
    }
  });

  it("rises with the share, and stays above zero where the band does", () => {
    fc.assert(
      fc.property(evenly(0.001, 0.99), evenly(0.0001, 0.009), evenly(0, 1), (share, more, low) => {
        const band = { value: 1, low, high: 3 };
        expect(bandAt(band, share)).toBeGreaterThanOrEqual(0);
        expect(bandAt(band, share + more)).toBeGreaterThanOrEqual(bandAt(band, share));
      }),
      { seed: 7 },
    );
  });
});
