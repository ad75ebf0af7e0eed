import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { bearingRatio } from "../../src/reeving/bearing.js";
import { blockLoad } from "../../src/reeving/block-load.js";
import { num, seed } from "./builders.js";

const inputs = fc.record({
  bearingFriction: num(0, 0.9),
  pinRadius: num(0.001, 0.01),
  pitchDiameter: num(0.022, 0.2),
  wrapAngle: num(0, Math.PI),
});

describe("bearing", () => {
  it("balances the moments about the pin with the true resultant", () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const k = bearingRatio(input);
        const resultant = blockLoad({ loadTension: 1, handTension: k, wrapAngle: input.wrapAngle });
        const moment = input.bearingFriction * input.pinRadius * resultant;
        expect(((k - 1) * input.pitchDiameter) / 2).toBeCloseTo(moment, 13);
      }),
      seed,
    );
  });

  it("is (R + μr) / (R − μr) at half a turn", () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const R = input.pitchDiameter / 2;
        const moment = input.bearingFriction * input.pinRadius;
        const k = bearingRatio({ ...input, wrapAngle: Math.PI });
        expect(k / ((R + moment) / (R - moment))).toBeCloseTo(1, 13);
      }),
      seed,
    );
  });

  it("costs nothing without friction, and nothing without wrap", () => {
    fc.assert(
      fc.property(inputs, (input) => {
        expect(bearingRatio({ ...input, bearingFriction: 0 })).toBe(1);
        expect(bearingRatio({ ...input, wrapAngle: 0 })).toBe(1);
        expect(bearingRatio({ ...input, bearingFriction: 1e-9 })).toBeCloseTo(1, 7);
        expect(bearingRatio({ ...input, wrapAngle: 1e-9 })).toBeCloseTo(1, 7);
      }),
      seed,
    );
  });

  it("grows with friction, pin and wrap, and falls with the size of the sheave", () => {
    fc.assert(
      fc.property(inputs, num(1.001, 1.1), (input, more) => {
        const k = bearingRatio(input) * (1 - 1e-12);
        expect(bearingRatio({ ...input, bearingFriction: input.bearingFriction * more })).toBeGreaterThanOrEqual(k);
        expect(bearingRatio({ ...input, pinRadius: input.pinRadius * more })).toBeGreaterThanOrEqual(k);
        const wider = Math.min(Math.PI, input.wrapAngle * more);
        expect(bearingRatio({ ...input, wrapAngle: wider })).toBeGreaterThanOrEqual(k);
        expect(bearingRatio({ ...input, pitchDiameter: input.pitchDiameter * more })).toBeLessThanOrEqual(
          bearingRatio(input) * (1 + 1e-12),
        );
      }),
      seed,
    );
  });

  it("is the same for a wrap and its mirror image beyond half a turn", () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const mirrored = bearingRatio({ ...input, wrapAngle: 2 * Math.PI - input.wrapAngle });
        expect(mirrored).toBeCloseTo(bearingRatio(input), 7);
      }),
      seed,
    );
  });

  it("depends on ratios only: sizes in any one unit", () => {
    fc.assert(
      fc.property(inputs, num(0.5, 5), (input, scale) => {
        const scaled = { ...input, pinRadius: scale * input.pinRadius, pitchDiameter: scale * input.pitchDiameter };
        expect(bearingRatio(scaled)).toBeCloseTo(bearingRatio(input), 10);
      }),
      seed,
    );
  });

  it("refuses a bearing that seizes", () => {
    const input = { bearingFriction: 1, pinRadius: 0.02, pitchDiameter: 0.04, wrapAngle: Math.PI };
    expect(() => bearingRatio(input)).toThrow(ValueError);
    expect(bearingRatio({ ...input, pinRadius: 0.0197 })).toBeGreaterThan(100);
  });
});
