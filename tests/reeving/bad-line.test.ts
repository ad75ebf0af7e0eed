import { describe, expect, it } from "vitest";
import { ReevingError, ValueError } from "../../src/quantity/errors.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import type { Station } from "../../src/reeving/reeving.js";
import { efficiency, leadLineFactor, ratioFromPull, tenthRulePull } from "../../src/reeving/rules.js";
import { alone, cleat, limp, ratchet, ring, sheave, wheel } from "./builders.js";

const notFinite = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
const lineWith = (...stations: Station[]): Line => ({ rope: limp, stations });

describe("a line that cannot exist", () => {
  it("is refused when it meets the same station twice", () => {
    expect(() => prepareLine(lineWith(ring, wheel(1.1), ring))).toThrow(ReevingError);
    expect(() => prepareLine(lineWith(ring, ring))).toThrow(/station "ring": got met twice: a loop in the line/u);
  });

  it.each([-0.006, 0, 1, ...notFinite])("is refused with a rope of diameter %d m", (diameter) => {
    const rope = { ...limp, diameter };
    expect(() => prepareLine({ rope, stations: [] })).toThrow(ValueError);
    expect(() => prepareLine({ rope, stations: [] })).toThrow(/rope diameter \(ropeDiameter\): got/u);
  });

  const fields: readonly (readonly [Station, readonly string[]])[] = [
    [sheave, ["wrapAngle", "diameter", "pinRadius", "bearingFriction", "grooveWidth", "lines", "drag"]],
    [ring, ["wrapAngle", "diameter", "frictionCoefficient", "lines", "drag"]],
    [ratchet, ["wrapAngle", "diameter", "pinRadius", "bearingFriction", "treadFriction", "engageLoad", "drag"]],
    [wheel(1.1), ["tensionRatio", "drag"]],
    [cleat, ["holdLoad", "drag"]],
  ];
  it.each(fields)("is refused when a number of its station is not finite or below zero (case %#)", (station, names) => {
    for (const name of names)
      for (const bad of [...notFinite, -1])
        expect(() => prepareLine(lineWith({ ...station, [name]: bad } as Station)), `${name} = ${bad}`).toThrow(
          ValueError,
        );
  });

  it.each([...notFinite, -1, 2e6])("refuses a load of %d N", (load) => {
    const line = prepareLine(lineWith(ring));
    expect(() => line.handForces(load)).toThrow(ValueError);
    expect(() => line.state(load, "easing")).toThrow(/load-side tension \(loadTension\): got/u);
  });
});

describe("limits that are allowed", () => {
  it("no load, no wrap, no friction", () => {
    expect(alone(ring, 0)).toMatchObject({ hauling: 0, easing: 0 });
    expect(alone({ ...ring, wrapAngle: 0 }, 80)).toMatchObject({ hauling: 80, easing: 80 });
    expect(alone({ ...ring, frictionCoefficient: 0 }, 80)).toMatchObject({ hauling: 80, easing: 80 });
  });

  it("a load below the run-out load: nothing to hold, and the line does not move", () => {
    const line = prepareLine(lineWith({ ...sheave, drag: 10 }));
    expect(line.runOutLoad()).toBeCloseTo(10, 12);
    expect(line.handForces(5).easing).toBe(0);
    expect(line.state(5, "easing")).toMatchObject({ moves: false, handForce: 0 });
  });
});

describe("rules and closed forms", () => {
  it("refuse counts that are not whole", () => {
    for (const parts of [0, 2.5, 21, Number.NaN]) {
      expect(() => leadLineFactor({ tensionRatio: 1.1, parts, sheaves: 3 })).toThrow(ReevingError);
      expect(() =>
        leadLineFactor({ tensionRatio: 1.1, parts: 3, sheaves: parts === 0 ? -1 : 2 * parts + 0.5 }),
      ).toThrow(ReevingError);
    }
    expect(() => tenthRulePull({ load: 1, parts: 3, sheaves: 1.5 })).toThrow(ReevingError);
  });

  it("refuse more work out than in, and pulls that no sheave gives", () => {
    expect(() => efficiency({ load: 100, pull: 20, velocityRatio: 4 })).toThrow(ValueError);
    expect(efficiency({ load: 100, pull: 25, velocityRatio: 4 })).toBeCloseTo(1, 12);
    expect(() => ratioFromPull({ pullOverLoad: 0.2, parts: 4, sheaves: 4 })).toThrow(ValueError);
    expect(() => ratioFromPull({ pullOverLoad: Number.NaN, parts: 4, sheaves: 4 })).toThrow(ValueError);
  });

  it("are 1 over N without friction, and add a tenth of the load for each sheave in the seaman's rule", () => {
    for (let parts = 1; parts <= 20; parts++)
      expect(leadLineFactor({ tensionRatio: 1, parts, sheaves: parts })).toBeCloseTo(1 / parts, 14);
    expect(tenthRulePull({ load: 100, parts: 4, sheaves: 0 })).toBe(25);
    expect(tenthRulePull({ load: 100, parts: 4, sheaves: 4 })).toBeCloseTo(35, 12);
    expect(tenthRulePull({ load: 100, parts: 4, sheaves: 4, sharePerSheave: 0 })).toBe(25);
  });
});
