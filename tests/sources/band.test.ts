import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandOf } from "../../src/sources/band.js";

const exact = (value: number) => ({ value, low: value, high: value });

describe("range of a result", () => {
  it("is a point when its inputs are points", () => {
    expect(bandOf({ a: exact(2), b: exact(3) }, ({ a, b }) => a * b)).toEqual(exact(6));
  });

  it("adds spreads of factors in squares of their logarithms", () => {
    const factor = { value: 1, low: 1 / 2, high: 2 };
    const band = bandOf({ a: factor, b: factor }, ({ a, b }) => a * b);
    expect(band.high).toBeCloseTo(2 ** Math.SQRT2, 12);
    expect(band.low).toBeCloseTo(2 ** -Math.SQRT2, 12);
  });

  it("adds spreads of terms in squares where the result goes through zero", () => {
    const band = bandOf({ a: { value: 1, low: -2, high: 4 }, b: { value: 0, low: -4, high: 4 } }, ({ a, b }) => a + b);
    expect(band).toEqual({ value: 1, low: -4, high: 6 });
  });

  it("turns round for an input that the result falls with, and holds its middle", () => {
    const value = fc.integer({ min: 1, max: 100 });
    fc.assert(
      fc.property(value, value, (middle, extra) => {
        const input = { value: middle, low: middle / (1 + extra / 10), high: middle * (1 + extra / 10) };
        const over = bandOf({ input }, (values) => 1 / values.input);
        expect(over.low).toBeCloseTo(1 / input.high, 12);
        expect(over.high).toBeCloseTo(1 / input.low, 12);
        expect(over.low).toBeLessThanOrEqual(over.value);
      }),
      { seed: 7 },
    );
  });
});
