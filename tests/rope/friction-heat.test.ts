import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { bulkRise, frictionHeat, frictionPower, passageRise } from "../../src/rope/friction-heat.js";
import { evenly } from "../numerics/evenly.js";
import { seed } from "./solids.js";

describe("heat of friction", () => {
  it("is nothing at rest or without loss", () => {
    expect(frictionPower({ lostForce: 0, speed: 9 })).toBe(0);
    expect(frictionPower({ lostForce: 90, speed: 0 })).toBe(0);
    expect(bulkRise({ heat: 0, mass: 1, specificHeat: 900 })).toBe(0);
  });

  it("is power times time, whatever the speed", () => {
    fc.assert(
      fc.property(evenly(1, 500), evenly(0.1, 10), evenly(0.1, 20), (lostForce, speed, time) => {
        const heat = frictionHeat({ lostForce, distance: speed * time });
        expect(heat / (frictionPower({ lostForce, speed }) * time)).toBeCloseTo(1, 12);
      }),
      seed,
    );
  });

  it("warms the passing rope by the same at any speed: power over the mass that passes each second", () => {
    fc.assert(
      fc.property(evenly(1, 500), evenly(0.1, 10), evenly(0.005, 0.1), (lostForce, speed, linearDensity) => {
        const each = bulkRise({
          heat: frictionPower({ lostForce, speed }),
          mass: linearDensity * speed,
          specificHeat: 1030,
        });
        expect(passageRise({ lostForce, linearDensity, specificHeat: 1030 }) / each).toBeCloseTo(1, 12);
      }),
      seed,
    );
  });

  it("refuses what cannot be", () => {
    expect(() => frictionPower({ lostForce: -1, speed: 1 })).toThrow(ValueError);
    expect(() => frictionPower({ lostForce: 1, speed: Number.NaN })).toThrow(/rope speed/u);
    expect(() => bulkRise({ heat: 1, mass: 0, specificHeat: 900 })).toThrow(ValueError);
    expect(() => passageRise({ lostForce: 1, linearDensity: 0, specificHeat: 900 })).toThrow(ValueError);
  });
});
