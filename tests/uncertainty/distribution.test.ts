import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { boundsOf, quantileOf } from "../../src/uncertainty/distribution.js";
import { sampledBand } from "../../src/uncertainty/sampled-band.js";
import { evenly } from "../numerics/evenly.js";

const anyBand = fc
  .tuple(evenly(0.1, 10), evenly(0, 3), evenly(0, 3))
  .map(([value, down, up]) => ({ value, low: value * Math.exp(-down), high: value * Math.exp(up) }));

describe("distribution of a record", () => {
  it("has the record's three numbers as 5th, 50th and 95th percentile", () => {
    fc.assert(
      fc.property(anyBand, (band) => {
        expect(quantileOf(band, 0.05)).toBeCloseTo(band.low, 9);
        expect(quantileOf(band, 0.5)).toBeCloseTo(band.value, 12);
        expect(quantileOf(band, 0.95) / band.high).toBeCloseTo(1, 9);
      }),
      { seed: 7 },
    );
    const through = { value: 1, low: -2, high: 2 };
    expect([0.05, 0.5, 0.95].map((p) => Number(quantileOf(through, p).toFixed(9)))).toEqual([-2, 1, 2]);
  });

  it("grows with the probability, and stays above zero where the record does", () => {
    fc.assert(
      fc.property(anyBand, evenly(0.001, 0.998), (band, p) => {
        expect(quantileOf(band, p)).toBeLessThanOrEqual(quantileOf(band, p + 0.001));
        expect(quantileOf(band, p)).toBeGreaterThan(0);
      }),
      { seed: 7 },
    );
  });

  it("has no side where the record has none", () => {
    const oneSided = { value: 1, low: 1, high: 2 };
    expect(quantileOf(oneSided, 0.2)).toBe(1);
    expect(quantileOf(oneSided, 0.8)).toBeGreaterThan(1);
  });

  it("ends at the bounds of its quantity", () => {
    const steep = { value: 0.9, low: 0.5, high: 0.99 };
    expect(quantileOf(steep, 0.9999, boundsOf("efficiency"))).toBe(1);
    expect(quantileOf({ value: 0.1, low: -1, high: 0.5 }, 0.01, boundsOf("efficiency"))).toBe(0);
  });

  it("refuses bands out of order and probabilities outside", () => {
    expect(() => quantileOf({ value: 1, low: 2, high: 3 }, 0.5)).toThrow(ValueError);
    expect(() => quantileOf({ value: Number.NaN, low: 0, high: 1 }, 0.5)).toThrow(ValueError);
    expect(() => quantileOf({ value: 1, low: 0, high: Number.POSITIVE_INFINITY }, 0.5)).toThrow(ValueError);
    for (const p of [0, 1, Number.NaN]) expect(() => quantileOf({ value: 1, low: 1, high: 1 }, p)).toThrow(ValueError);
  });
});

describe("sampled band", () => {
  const factor = { value: 1, low: 1 / 2, high: 2 };

  it("gives a record back", () => {
    const band = sampledBand({ a: factor }, ({ a }) => a, { samples: 4096 });
    expect(band.low).toBeCloseTo(0.5, 2);
    expect(band.value).toBeCloseTo(1, 2);
    expect(band.high).toBeCloseTo(2, 2);
  });

  it("adds spreads of independent factors in squares of logarithms, and of the same factor straight", () => {
    const apart = sampledBand({ a: factor, b: factor }, ({ a, b }) => a * b, { samples: 8192 });
    const together = sampledBand({ a: factor }, ({ a }) => a * a, { samples: 8192 });
    expect(Math.log2(apart.high)).toBeCloseTo(Math.SQRT2, 1);
    expect(Math.log2(together.high)).toBeCloseTo(2, 1);
  });

  it("is a point without spread, and the same twice", () => {
    const exact = { value: 3, low: 3, high: 3 };
    expect(sampledBand({ a: exact }, ({ a }) => 2 * a)).toEqual({ low: 6, value: 6, high: 6 });
    const options = { samples: 100, seed: 5 };
    const model = ({ a }: { a: number }) => Math.sin(a);
    expect(sampledBand({ a: factor }, model, options)).toEqual(sampledBand({ a: factor }, model, options));
    expect(sampledBand({ a: factor }, model, { ...options, seed: 6 })).not.toEqual(
      sampledBand({ a: factor }, model, options),
    );
  });

  it("refuses a model that gives no number, and no samples", () => {
    expect(() => sampledBand({ a: factor }, () => Number.NaN)).toThrow(ValueError);
    expect(() => sampledBand({ a: factor }, ({ a }) => a, { samples: 0 })).toThrow(ValueError);
  });
});
