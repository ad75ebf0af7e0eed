import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { apparentFriction, splitTwoAngles } from "../../src/reeving/apparent-friction.js";
import { capstanRatio, holdingFriction, wedgeFriction } from "../../src/reeving/sliding.js";
import { num, seed } from "./builders.js";

const friction = num(0, 0.8);
const wrap = num(0.01, 4 * Math.PI);

describe("sliding round a surface", () => {
  it("costs nothing without friction or without wrap", () => {
    expect(capstanRatio({ frictionCoefficient: 0, wrapAngle: 7 })).toBe(1);
    expect(capstanRatio({ frictionCoefficient: 0.3, wrapAngle: 0 })).toBe(1);
  });

  it("multiplies over wraps one after the other", () => {
    fc.assert(
      fc.property(friction, wrap, wrap, (frictionCoefficient, a, b) => {
        const whole = capstanRatio({ frictionCoefficient, wrapAngle: a + b });
        const parts =
          capstanRatio({ frictionCoefficient, wrapAngle: a }) * capstanRatio({ frictionCoefficient, wrapAngle: b });
        expect(whole / parts).toBeCloseTo(1, 12);
      }),
      seed,
    );
  });

  it("is solved back for the friction that holds", () => {
    fc.assert(
      fc.property(friction, wrap, (frictionCoefficient, wrapAngle) => {
        const tensionRatio = capstanRatio({ frictionCoefficient, wrapAngle });
        expect(holdingFriction({ tensionRatio, wrapAngle })).toBeCloseTo(frictionCoefficient, 10);
      }),
      seed,
    );
  });

  it("is found again from the pulls that raise and lower a load", () => {
    fc.assert(
      fc.property(friction, wrap, num(1, 500), (frictionCoefficient, wrapAngle, load) => {
        fc.pre(frictionCoefficient * wrapAngle < 5);
        const k = capstanRatio({ frictionCoefficient, wrapAngle });
        const found = apparentFriction({ raisingForce: load * k, loweringForce: load / k, wrapAngle });
        expect(found).toBeCloseTo(frictionCoefficient, 10);
      }),
      seed,
    );
  });

  it("is parted from bending by two wraps on the same bar", () => {
    fc.assert(
      fc.property(num(0, 0.5), num(1, 1.4), (frictionCoefficient, bendingRatio) => {
        const apparent = (wrapAngle: number) => frictionCoefficient + Math.log(bendingRatio) / wrapAngle;
        const fit = splitTwoAngles({
          smallWrap: Math.PI / 2,
          smallWrapFriction: apparent(Math.PI / 2),
          largeWrap: Math.PI,
          largeWrapFriction: apparent(Math.PI),
        });
        expect(fit.frictionCoefficient).toBeCloseTo(frictionCoefficient, 10);
        expect(fit.bendingRatio).toBeCloseTo(bendingRatio, 10);
      }),
      seed,
    );
  });

  it("refuses impossible readings", () => {
    expect(() => apparentFriction({ raisingForce: 50, loweringForce: 60, wrapAngle: 1 })).toThrow(ValueError);
    expect(() => apparentFriction({ raisingForce: 50, loweringForce: 0, wrapAngle: 1 })).toThrow(ValueError);
    expect(() => holdingFriction({ tensionRatio: 2, wrapAngle: 0 })).toThrow(ValueError);
    expect(() => holdingFriction({ tensionRatio: 0.5, wrapAngle: 1 })).toThrow(ValueError);
    const same = { smallWrap: 1, smallWrapFriction: 0.2, largeWrap: 1, largeWrapFriction: 0.2 };
    expect(() => splitTwoAngles(same)).toThrow(ValueError);
    expect(() => capstanRatio({ frictionCoefficient: 5, wrapAngle: 1 })).toThrow(ValueError);
    expect(() => capstanRatio({ frictionCoefficient: Number.NaN, wrapAngle: 1 })).toThrow(ValueError);
    expect(() => capstanRatio({ frictionCoefficient: 0.1, wrapAngle: Number.POSITIVE_INFINITY })).toThrow(ValueError);
  });
});

describe("a rope in a V groove", () => {
  it("has the plain friction in a V as flat as a plate", () => {
    expect(wedgeFriction({ frictionCoefficient: 0.2, grooveAngle: Math.PI })).toBeCloseTo(0.2, 12);
  });

  it("has twice the friction at a full angle of 60 degrees, by the balance of three forces", () => {
    expect(wedgeFriction({ frictionCoefficient: 0.2, grooveAngle: Math.PI / 3 })).toBeCloseTo(0.4, 12);
  });

  it("grips more the narrower it is", () => {
    fc.assert(
      fc.property(num(0.05, 3), num(1.01, 1.04), (grooveAngle, more) => {
        const narrow = wedgeFriction({ frictionCoefficient: 0.2, grooveAngle });
        expect(wedgeFriction({ frictionCoefficient: 0.2, grooveAngle: grooveAngle * more })).toBeLessThan(narrow);
      }),
      seed,
    );
  });
});
