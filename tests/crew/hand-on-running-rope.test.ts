import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runningHold, runningHolders } from "../../src/crew/hand-on-running-rope.js";
import { runningRopeHold } from "../../src/materials/people-running.js";
import { ValueError } from "../../src/quantity/errors.js";
import { evenly } from "../numerics/evenly.js";

describe("a hand on a rope that runs", () => {
  it("keeps what was printed, and at its weak end far less than the 222 N that a handbook takes as possible for anybody", () => {
    expect(runningHold()).toEqual({ value: 209, low: 46, high: 425 });
    expect(222 / runningHold().low).toBeCloseTo(4.8, 1);
    expect(runningRopeHold.status).toBe("published");
  });

  it("keeps no more than on a still rope, end by end", () => {
    expect(runningHold({ value: 120, low: 80, high: 180 })).toEqual({ value: 120, low: 46, high: 180 });
    fc.assert(
      fc.property(evenly(1, 900), evenly(0.2, 1), evenly(1, 3), (value, down, up) => {
        const still = { value, low: down * value, high: up * value };
        const { low, value: middle, high } = runningHold(still);
        expect(low).toBeLessThanOrEqual(Math.min(middle, still.low));
        expect(middle).toBeLessThanOrEqual(still.value);
        expect(high).toBeLessThanOrEqual(still.high);
        expect(high).toBeGreaterThanOrEqual(middle);
      }),
      { seed: 7 },
    );
  });

  it("is kept by fewer people the harder it pulls: 95, 50 and 5 of 100 at the printed numbers", () => {
    expect(runningHolders({ tension: 0 })).toBe(1);
    expect(runningHolders({ tension: 46 })).toBeCloseTo(0.95, 6);
    expect(runningHolders({ tension: 209 })).toBeCloseTo(0.5, 9);
    expect(runningHolders({ tension: 425 })).toBeCloseTo(0.05, 6);
    // The printed conclusion: there is no load that everybody keeps.
    expect(runningHolders({ tension: 20 })).toBeLessThan(1);
    fc.assert(
      fc.property(evenly(0.1, 1000), evenly(1.01, 3), (tension, more) => {
        expect(runningHolders({ tension: more * tension })).toBeLessThan(runningHolders({ tension }) + 1e-12);
      }),
      { seed: 7 },
    );
    expect(() => runningHolders({ tension: -1 })).toThrow(ValueError);
    expect(() => runningHold({ value: Number.NaN, low: 0, high: 1 })).toThrow(ValueError);
  });
});
