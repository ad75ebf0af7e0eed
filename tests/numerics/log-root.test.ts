import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { logRoot } from "../../src/numerics/log-root.js";
import { evenly } from "./evenly.js";

const between = { least: 1e-3, most: 20 };

describe("a root sought on the logarithm", () => {
  it("is found where the function crosses", () => {
    fc.assert(
      fc.property(evenly(0.002, 19), evenly(0.2, 3), (root, slope) => {
        const bent = (x: number) => slope * Math.log(root / x) + 0.1 * Math.tanh(Math.log(root / x));
        expect(logRoot(bent, between) / root).toBeCloseTo(1, 4);
      }),
      { seed: 7 },
    );
  });

  it("is an end when there is no crossing between", () => {
    expect(logRoot(() => 1, between)).toBe(between.most);
    expect(logRoot(() => -1, between)).toBe(between.least);
  });
});
