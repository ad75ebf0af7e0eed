import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Cover, coverFriction } from "../../src/materials/covers.js";
import { treads } from "../../src/materials/surfaces.js";
import { ValueError } from "../../src/quantity/errors.js";
import { holdingWrap, ratchetHold } from "../../src/reeving/ratchet-hold.js";
import { capstanRatio, holdingFriction } from "../../src/reeving/sliding.js";
import { alone, num, ratchet, seed, sheave } from "./builders.js";

const covers: fc.Arbitrary<Cover> = fc.record({
  strands: fc.constantFrom(8 as const, 16 as const, 24 as const),
  fibre: fc.constantFrom("polyester" as const, "aramidBlend" as const, "bareCore" as const),
  wet: fc.boolean(),
});
const anyTread = fc.constantFrom(...Object.values(treads));
const smooth: Cover = { strands: 24, fibre: "polyester", wet: false };

describe("the hold of a locked ratchet", () => {
  it("is nothing without wrap", () => {
    const { ratio, handShare } = ratchetHold({ tread: treads.toothed, cover: smooth, wrapAngle: 0 });
    expect(ratio).toEqual({ value: 1, low: 1, high: 1 });
    expect(handShare).toEqual({ value: 1, low: 1, high: 1 });
  });

  it("multiplies over wraps one after the other, at the middle and at both ends", () => {
    fc.assert(
      fc.property(covers, anyTread, num(0.01, 6), num(0.01, 6), (cover, tread, one, other) => {
        const ratioOver = (wrapAngle: number) => ratchetHold({ tread, cover, wrapAngle }).ratio;
        const [whole, first, second] = [ratioOver(one + other), ratioOver(one), ratioOver(other)];
        for (const end of ["value", "low", "high"] as const)
          expect(whole[end] / (first[end] * second[end])).toBeCloseTo(1, 10);
      }),
      seed,
    );
  });

  it("has the range of its friction, and the hand's share is the inverse with its ends changed over", () => {
    fc.assert(
      fc.property(covers, anyTread, num(0.01, 6), (cover, tread, wrapAngle) => {
        const { ratio, handShare, friction } = ratchetHold({ tread, cover, wrapAngle });
        expect(friction).toEqual(coverFriction(cover, tread));
        expect(holdingFriction({ tensionRatio: ratio.high, wrapAngle })).toBeCloseTo(friction.high, 10);
        expect(holdingFriction({ tensionRatio: ratio.low, wrapAngle })).toBeCloseTo(friction.low, 10);
        expect(handShare.value * ratio.value).toBeCloseTo(1, 12);
        expect(handShare.low * ratio.high).toBeCloseTo(1, 12);
        expect(handShare.high * ratio.low).toBeCloseTo(1, 12);
      }),
      seed,
    );
  });

  it("grows from tread to tread and from cover to cover as the friction does", () => {
    fc.assert(
      fc.property(covers, covers, anyTread, num(0.1, 6), (one, other, tread, wrapAngle) => {
        const [first, second] = [one, other].map((cover) => ratchetHold({ tread, cover, wrapAngle }));
        expect(Math.sign(first!.ratio.value - second!.ratio.value)).toBe(
          Math.sign(first!.friction.value - second!.friction.value),
        );
      }),
      seed,
    );
  });

  it("is what a line with that ratchet holds, and holds nothing while hauling", () => {
    fc.assert(
      fc.property(covers, anyTread, num(10, 900), (cover, tread, load) => {
        const { friction, handShare } = ratchetHold({ tread, cover, wrapAngle: ratchet.wrapAngle });
        const forces = alone({ ...ratchet, treadFriction: friction.value }, load);
        expect(forces.easing / (load * handShare.value)).toBeCloseTo(1, 10);
        expect(forces.hauling).toBeCloseTo(alone(sheave, load).hauling, 9);
      }),
      seed,
    );
  });

  it("refuses a wrap that is no angle", () => {
    const hold = (wrapAngle: number) => () => ratchetHold({ tread: treads.smooth, cover: smooth, wrapAngle });
    for (const wrap of [-0.1, 300, Number.NaN, Number.POSITIVE_INFINITY]) expect(hold(wrap)).toThrow(ValueError);
  });
});

describe("the wrap that holds", () => {
  it("is none for no difference of tension", () => {
    expect(holdingWrap({ tensionRatio: 1, frictionCoefficient: 0.2 })).toBe(0);
  });

  it("is found back from the ratio that a wrap holds", () => {
    fc.assert(
      fc.property(num(0.02, 1), num(0.01, 12), (frictionCoefficient, wrapAngle) => {
        const tensionRatio = capstanRatio({ frictionCoefficient, wrapAngle });
        expect(holdingWrap({ tensionRatio, frictionCoefficient }) / wrapAngle).toBeCloseTo(1, 9);
      }),
      seed,
    );
  });

  it("refuses a surface without friction and a ratio below one", () => {
    expect(() => holdingWrap({ tensionRatio: 2, frictionCoefficient: 0 })).toThrow(ValueError);
    expect(() => holdingWrap({ tensionRatio: 0.5, frictionCoefficient: 0.2 })).toThrow(ValueError);
    expect(() => holdingWrap({ tensionRatio: Number.NaN, frictionCoefficient: 0.2 })).toThrow(ValueError);
  });
});
