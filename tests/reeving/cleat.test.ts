import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { prepareLine } from "../../src/reeving/line.js";
import { alone, cleat, limp, num, ring, seed } from "./builders.js";

describe("a cleat", () => {
  it("does nothing when it is open", () => {
    fc.assert(
      fc.property(num(0, 1000), (load) => {
        const { hauling, easing, deadBand, runOutLoad, flags } = alone({ ...cleat, closed: false }, load);
        expect([hauling, easing, deadBand, runOutLoad, flags]).toEqual([load, load, 0, 0, []]);
      }),
      seed,
    );
  });

  it("holds up to its hold load when it is closed, and slips beyond it", () => {
    fc.assert(
      fc.property(num(0, 1000), (load) => {
        const { hauling, easing, runOutLoad, flags } = alone(cleat, load);
        expect(hauling).toBe(load + 2);
        expect(easing).toBe(Math.max(0, load - 400));
        expect(runOutLoad).toBe(400);
        expect(flags).toEqual(["cleat: closed, holds up to its slip load"]);
      }),
      seed,
    );
  });

  it("says whether the line slips through it", () => {
    const line = prepareLine({ rope: limp, stations: [cleat] });
    expect(line.state(399, "easing").moves).toBe(false);
    expect(line.state(401, "easing").moves).toBe(true);
    expect(line.state(399, "hauling").moves).toBe(true);
  });

  it("holds more with friction between it and the sail", () => {
    const line = prepareLine({ rope: limp, stations: [ring, cleat] });
    expect(line.runOutLoad()).toBeCloseTo(400 * Math.exp(0.12 * 1.5), 9);
  });

  it("carries the difference of the tensions on its fastening", () => {
    const { stations } = prepareLine({ rope: limp, stations: [cleat] }).state(1000, "easing");
    expect(stations[0]!.blocks).toEqual([{ name: "cleat", load: 400 }]);
  });

  it("refuses loads that cannot exist", () => {
    for (const bad of [{ holdLoad: -1 }, { holdLoad: Number.NaN }, { drag: -1 }, { drag: Number.POSITIVE_INFINITY }])
      expect(() => alone({ ...cleat, ...bad }, 10)).toThrow(ValueError);
  });
});
