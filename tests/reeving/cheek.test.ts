import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { practice } from "../../src/materials/practice.js";
import { ValueError } from "../../src/quantity/errors.js";
import { cheekContact } from "../../src/reeving/cheek.js";
import { turnLoss } from "../../src/reeving/turn.js";
import { num, seed, sheave, stiff } from "./builders.js";

const at = (grooveRatio: number, wrapAngle = Math.PI) =>
  cheekContact({ ropeDiameter: 0.008, grooveWidth: grooveRatio * 0.008, wrapAngle });

describe("contact at the cheeks", () => {
  it("begins without a step at a groove of 1.10 rope diameters", () => {
    expect(practice.cheekContactRatio.value).toBe(1.1);
    expect(at(1.11)).toEqual({ touches: false, ratio: 1 });
    expect(at(1.1 + 1e-9).ratio).toBe(1);
    expect(at(1.1 - 1e-9).touches).toBe(true);
    expect(at(1.1 - 1e-9).ratio).toBeCloseTo(1, 7);
  });

  it("rubs more the narrower the groove and the longer the wrap", () => {
    fc.assert(
      fc.property(num(0.5, 1.09), num(0.1, 6), num(0.001, 0.01), (groove, wrap, step) => {
        expect(at(groove, wrap).ratio).toBeGreaterThan(at(groove + step, wrap).ratio);
        expect(at(groove, wrap + step).ratio).toBeGreaterThan(at(groove, wrap).ratio);
        expect(at(groove, 0).ratio).toBe(1);
      }),
      seed,
    );
  });

  it("allows a groove narrower than the rope and flags it, but refuses one of less than half", () => {
    const flags = (grooveWidth: number) => turnLoss({ turn: { ...sheave, grooveWidth }, rope: stiff }).flags;
    expect(flags(0.0072)).toEqual([
      "sheave: the groove is narrower than the rope (groove 0.90 × rope, want 1.10 or more)",
    ]);
    expect(flags(0.0084)).toEqual(["sheave: the rope touches the cheeks (groove 1.05 × rope, want 1.10 or more)"]);
    expect(flags(0.009)).toEqual([]);
    expect(() => flags(0.0039)).toThrow(ValueError);
    expect(() => flags(0.0039)).toThrow(/groove ratio .*from 0\.5 to 20/u);
    expect(flags(0.0041)).toHaveLength(1);
  });
});
