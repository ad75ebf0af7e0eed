import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { practice } from "../../src/materials/practice.js";
import { stiffnessLaws } from "../../src/materials/stiffness.js";
import { ValueError } from "../../src/quantity/errors.js";
import { bendingLaw, stiffnessOf } from "../../src/reeving/bending.js";
import { num, seed, stiff } from "./builders.js";

const base = { ropeDiameter: 0.008, sheaveDiameter: 0.04, wrapAngle: Math.PI, stiffness: stiff.stiffness };
const inputs = fc.record({
  ropeDiameter: num(0.002, 0.02),
  sheaveDiameter: num(0.005, 0.2),
  wrapAngle: num(0, 2 * Math.PI),
  stiffness: fc.constantFrom(...Object.values(stiffnessLaws)).map(stiffnessOf),
});

describe("bending", () => {
  it("vanishes with the wrap, with the stiffness, and on an ever larger sheave", () => {
    expect(bendingLaw({ ...base, wrapAngle: 0 })).toEqual({ ratio: 1, drag: 0 });
    const soft = { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 };
    expect(bendingLaw({ ...base, stiffness: soft })).toEqual({ ratio: 1, drag: 0 });
    const losses = [0.05, 0.5, 5].map((sheaveDiameter) => bendingLaw({ ...base, sheaveDiameter }).ratio - 1);
    expect(losses[2]! / losses[0]!).toBeCloseTo((0.05 + 0.008) / (5 + 0.008), 12);
  });

  it("meets itself where the contact becomes long enough for the full bend", () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const pitch = input.sheaveDiameter + input.ropeDiameter;
        const edge = (2 * practice.fullBendContact.value * input.ropeDiameter) / pitch;
        const at = (wrapAngle: number) => bendingLaw({ ...input, wrapAngle });
        expect(at(edge * (1 - 1e-9)).ratio).toBeCloseTo(at(edge * (1 + 1e-9)).ratio, 8);
        expect(at(edge * 2)).toEqual(at(edge * 1.5));
        expect(at(edge / 2).ratio - 1).toBeCloseTo((at(edge).ratio - 1) / 2, 12);
        expect(at(edge / 2).drag).toBeCloseTo(at(edge).drag / 2, 10);
      }),
      seed,
    );
  });

  it("is d² over the pitch diameter times the terms, at a full turn of the rope", () => {
    const { ratio, drag } = bendingLaw(base);
    const scale = 0.008 ** 2 / 0.048;
    expect(ratio).toBeCloseTo(1 + 60 * scale, 14);
    expect(drag).toBeCloseTo((40 + 1e6 * 0.008 ** 2) * scale, 14);
  });

  it("grows with the rope and falls with the sheave", () => {
    fc.assert(
      fc.property(inputs, num(1.01, 1.5), (input, more) => {
        const { ratio, drag } = bendingLaw(input);
        const thick = bendingLaw({ ...input, ropeDiameter: input.ropeDiameter * more });
        const large = bendingLaw({ ...input, sheaveDiameter: input.sheaveDiameter * more, wrapAngle: Math.PI });
        expect(thick.ratio).toBeGreaterThanOrEqual(ratio * (1 - 1e-12));
        expect(thick.drag).toBeGreaterThanOrEqual(drag * (1 - 1e-12));
        expect(large.ratio).toBeLessThanOrEqual(bendingLaw({ ...input, wrapAngle: Math.PI }).ratio);
      }),
      seed,
    );
  });

  it("refuses sizes and stiffnesses that cannot exist", () => {
    const { stiffness } = base;
    const bad = [
      { ...base, ropeDiameter: -0.008 },
      { ...base, ropeDiameter: 0 },
      { ...base, sheaveDiameter: Number.NaN },
      { ...base, wrapAngle: -0.1 },
      { ...base, stiffness: { ...stiffness, tensionTerm: -1 } },
      { ...base, stiffness: { ...stiffness, constantTerm: Number.NaN } },
      { ...base, stiffness: { ...stiffness, constantTerm: -1e4 } },
      { ...base, stiffness: { ...stiffness, diameterTerm: Number.POSITIVE_INFINITY } },
    ];
    for (const input of bad) expect(() => bendingLaw(input)).toThrow(ValueError);
  });
});
