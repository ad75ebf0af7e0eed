import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { binomialInterval } from "../../src/numerics/binomial.js";
import { erfc } from "../../src/numerics/error-function.js";
import { ninetyFifth, normalDeviate, normalQuantile } from "../../src/numerics/normal-quantile.js";
import { quantilesInPlace } from "../../src/numerics/order-statistics.js";
import { ValueError } from "../../src/quantity/errors.js";
import { evenly } from "./evenly.js";

const seed = { seed: 7 };

describe("normal quantile", () => {
  it("undoes the normal distribution", () => {
    fc.assert(
      fc.property(evenly(-7, 0), (z) => {
        expect(normalQuantile(erfc(-z / Math.SQRT2) / 2)).toBeCloseTo(z, 9);
      }),
      seed,
    );
  });

  it("is odd about the middle and meets printed digits", () => {
    expect(normalQuantile(0.5)).toBeCloseTo(0, 15);
    expect(normalQuantile(0.975)).toBeCloseTo(1.959963984540054, 12);
    expect(normalQuantile(0.95)).toBeCloseTo(ninetyFifth, 12);
    expect(normalQuantile(0.25)).toBe(-normalQuantile(0.75));
  });

  it("has a quick form that agrees to nine digits", () => {
    fc.assert(
      fc.property(evenly(0.0001, 0.9999), (p) => {
        const z = normalQuantile(p);
        expect(Math.abs(normalDeviate(p) - z)).toBeLessThan(2e-9 * Math.max(1, Math.abs(z)));
      }),
      seed,
    );
  });

  it("is no number at and beyond the ends", () => {
    for (const p of [0, 1, -1, 2, Number.NaN]) expect(normalQuantile(p)).toBeNaN();
  });
});

describe("quantiles in place", () => {
  const shares = [0.05, 0.5, 0.95];

  it("are those of the sorted values, and columns come along", () => {
    const numbers = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1, maxLength: 2000 });
    fc.assert(
      fc.property(numbers, (list) => {
        const values = Float64Array.from(list);
        const twice = values.map((value) => 2 * value);
        const into = new Float64Array(3);
        quantilesInPlace(values, shares, into, [twice]);
        const sorted = Float64Array.from(list).sort();
        expect([...into]).toEqual(shares.map((share) => sorted[Math.round(share * (list.length - 1))]));
        expect([...twice]).toEqual([...values].map((value) => 2 * value));
        expect(values.toSorted()).toEqual(sorted);
      }),
      { ...seed, numRuns: 60 },
    );
  });

  it("find them among many in any order", () => {
    const n = 20_001;
    for (const step of [1, 7919, n - 1]) {
      const values = Float64Array.from({ length: n }, (_, i) => (i * step) % n);
      const into = new Float64Array(3);
      quantilesInPlace(values, shares, into);
      expect([...into]).toEqual([1000, 10_000, 19_000]);
    }
  });
});

describe("exact binomial interval", () => {
  it("meets its closed form where all or none came out", () => {
    expect(binomialInterval({ count: 0, of: 5 }).high).toBeCloseTo(1 - 0.025 ** (1 / 5), 12);
    expect(binomialInterval({ count: 5, of: 5 }).low).toBeCloseTo(0.025 ** (1 / 5), 12);
  });

  it("meets another program (scipy 1.17, exact method)", () => {
    const four = binomialInterval({ count: 4, of: 10 });
    expect(four.low).toBeCloseTo(0.12155225811982723, 9);
    expect(four.high).toBeCloseTo(0.7376219233930549, 9);
    const many = binomialInterval({ count: 41, of: 45 });
    expect(many.low).toBeCloseTo(0.7877882630456481, 9);
    expect(many.high).toBeCloseTo(0.9752470422163386, 9);
  });

  it("holds its share, and mirrors", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.nat({ max: 60 }), (of, some) => {
        const count = some % (of + 1);
        const { low, share, high } = binomialInterval({ count, of });
        const other = binomialInterval({ count: of - count, of });
        expect(low <= share && share <= high).toBe(true);
        expect(low).toBeCloseTo(1 - other.high, 9);
      }),
      { ...seed, numRuns: 50 },
    );
  });

  it("holds the true share at least as often as it says", () => {
    for (const p of [0.1, 0.5, 0.9]) {
      let held = 0;
      let weight = (1 - p) ** 20;
      for (let count = 0; count <= 20; count++) {
        const { low, high } = binomialInterval({ count, of: 20, confidence: 0.9 });
        if (low <= p && p <= high) held += weight;
        weight *= (((20 - count) / (count + 1)) * p) / (1 - p);
      }
      expect(held).toBeGreaterThanOrEqual(0.9);
      expect(held).toBeLessThan(0.99);
    }
  });

  it.each([
    { count: 1, of: 0 },
    { count: 3, of: 2 },
    { count: -1, of: 2 },
    { count: 0.5, of: 2 },
  ])("is refused for %o", (input) => {
    expect(() => binomialInterval(input)).toThrow(ValueError);
  });
});
