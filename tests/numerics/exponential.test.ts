import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fastExp } from "../../src/numerics/exponential.js";
import { evenly } from "./evenly.js";

const deviation = (x: number) => Math.abs(fastExp(x) / Math.exp(x) - 1);

describe("exponential without branches", () => {
  it("agrees with the built-in one to a few units of the last place", () => {
    fc.assert(
      fc.property(evenly(-700, 700), (x) => {
        expect(deviation(x)).toBeLessThan(1e-15);
      }),
      { seed: 7, numRuns: 5000 },
    );
  });

  it("is exactly 1 at 0, and e at 1", () => {
    expect(fastExp(0)).toBe(1);
    expect(fastExp(-0)).toBe(1);
    expect(deviation(1)).toBeLessThan(5e-16);
  });

  it("meets itself where the nearest power of two changes", () => {
    for (let n = -20; n <= 20; n++) {
      const edge = (n + 0.5) * Math.LN2;
      for (const x of [edge * (1 - 1e-15), edge, edge * (1 + 1e-15)]) expect(deviation(x)).toBeLessThan(1e-15);
    }
  });

  it("passes numbers out of its range on to the built-in one", () => {
    expect(fastExp(701)).toBe(Math.exp(701));
    expect(fastExp(1000)).toBe(Number.POSITIVE_INFINITY);
    expect(fastExp(-1000)).toBe(0);
    expect(fastExp(Number.POSITIVE_INFINITY)).toBe(Number.POSITIVE_INFINITY);
    expect(fastExp(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(fastExp(Number.NaN)).toBeNaN();
  });
});
