import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { joinedForces } from "../../src/reeving/joined-lines.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import { evenly } from "../numerics/evenly.js";

const soft = { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 };
const part = (tensionRatio: number, drag: number, name = "block"): Line => ({
  rope: { diameter: 0.006, stiffness: soft },
  stations: [{ kind: "measured", name, tensionRatio, drag }],
});

describe("a line of several ropes", () => {
  it("of one rope feels as that line does, cut or whole", () => {
    fc.assert(
      fc.property(evenly(1, 2), evenly(0, 5), evenly(1, 2), evenly(0, 5), evenly(1, 1000), (k, c, l, d, load) => {
        const [one, other] = [part(k, c), part(l, d, "ratchet")];
        const whole = prepareLine({ ...one, stations: [...one.stations, ...other.stations] }).handForces(load);
        const cut = joinedForces([one, other], load);
        expect(cut.hauling).toBeCloseTo(whole.hauling, 9);
        expect(cut.easing).toBeCloseTo(whole.easing, 9);
        expect(cut.runOutLoad).toBeCloseTo(whole.runOutLoad, 6);
      }),
      { seed: 7 },
    );
  });

  it("goes out a little above its run-out load and not below", () => {
    const parts = [part(1.2, 0.5), part(1.5, 2)];
    const { runOutLoad } = joinedForces(parts, 100);
    expect(runOutLoad).toBeCloseTo(1.2 * 2 + 0.5, 9);
    expect(joinedForces(parts, 1.001 * runOutLoad).easing).toBeGreaterThan(0);
    expect(joinedForces(parts, 0.999 * runOutLoad).easing).toBe(0);
  });

  it("without drag has no run-out load", () => {
    expect(joinedForces([part(1.2, 0), part(1.1, 0)], 50).runOutLoad).toBe(0);
  });

  it("needs a part, and a load that can be", () => {
    expect(() => joinedForces([], 100)).toThrow(ValueError);
    expect(() => joinedForces([part(1.1, 0)], Number.NaN)).toThrow(/load-side tension/u);
  });
});
