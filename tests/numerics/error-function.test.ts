import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { erfc, integratedErfc, scaledErfc } from "../../src/numerics/error-function.js";
import { evenly } from "./evenly.js";

describe("complementary error function", () => {
  it.each([
    [0, 1],
    [0.5, 0.4795001221869535],
    [1, 0.15729920705028513],
    [2, 0.004677734981047266],
    [3, 2.209049699858544e-5],
    [5, 1.5374597944280349e-12],
  ])("of %d is that of the tables", (x, value) => {
    expect(erfc(x) / value).toBeCloseTo(1, 11);
  });

  it("is mirrored: erfc(x) + erfc(−x) = 2, and ends at 2 and 0", () => {
    fc.assert(
      fc.property(evenly(0, 4), (x) => {
        expect(erfc(x) + erfc(-x)).toBeCloseTo(2, 13);
      }),
      { seed: 7 },
    );
    expect(erfc(-30)).toBe(2);
    expect(erfc(40)).toBe(0);
  });

  it("does not jump where series and fraction meet", () => {
    expect(scaledErfc(2 - 1e-12) / scaledErfc(2)).toBeCloseTo(1, 10);
  });

  it("scaled goes to 1 / (x √π) and never overflows", () => {
    expect(scaledErfc(1e6) * 1e6 * Math.sqrt(Math.PI)).toBeCloseTo(1, 10);
    expect(Number.isFinite(scaledErfc(1e150))).toBe(true);
  });

  it("is the falling slope of its integral", () => {
    fc.assert(
      fc.property(evenly(0.01, 5), (x) => {
        const h = 1e-5;
        const slope = (integratedErfc(x + h) - integratedErfc(x - h)) / (2 * h);
        expect(Math.abs(slope + erfc(x))).toBeLessThan(1e-9);
      }),
      { seed: 7 },
    );
    expect(integratedErfc(0)).toBeCloseTo(1 / Math.sqrt(Math.PI), 15);
  });
});
