import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { enduranceShare, enduranceTime, rememberedEndurance, singleRateEndurance } from "../../src/crew/endurance.js";
import {
  endlessShare,
  holdTime,
  modelEndurance,
  ratesOf,
  seamFactor,
  steppedEndurance,
} from "../../src/crew/fatigue.js";
import { type MuscleGroup, seamShare } from "../../src/materials/people-fatigue.js";
import { OutsideModelError, ValueError } from "../../src/quantity/errors.js";
import { evenly } from "../numerics/evenly.js";

const groups: MuscleGroup[] = ["hand", "elbow", "general"];
const hand = ratesOf("hand");

describe("endurance laws", () => {
  it("fall with the load and are undone by their inverse", () => {
    fc.assert(
      fc.property(fc.constantFrom(...groups), evenly(0.05, 0.99), (group, share) => {
        const time = enduranceTime({ group, share });
        expect(enduranceTime({ group, share: share + 0.01 })).toBeLessThan(time);
        expect(enduranceShare({ group, time })).toBeCloseTo(share, 12);
      }),
      { seed: 7 },
    );
  });

  it("give the whole maximum for no time to speak of", () => {
    expect(enduranceShare({ time: 1 })).toBe(1);
  });

  it("differ by a factor of two to three in minutes: nobody's minutes are pinned", () => {
    const times = [
      enduranceTime({ share: 0.25 }),
      rememberedEndurance(0.25),
      singleRateEndurance({ share: 0.25 }),
      16.2 * 60,
    ];
    const spread = Math.max(...times) / Math.min(...times);
    expect(spread).toBeGreaterThan(2);
    expect(spread).toBeLessThan(6);
  });

  it("refuse shares and times that cannot be", () => {
    expect(() => enduranceTime({ share: 0 })).toThrow(ValueError);
    expect(() => enduranceTime({ share: 1.2 })).toThrow(ValueError);
    expect(() => enduranceShare({ time: 0 })).toThrow(ValueError);
    expect(() => rememberedEndurance(0.1)).toThrow(OutsideModelError);
    expect(() => singleRateEndurance({ share: 0.5, fatigueRate: 0 })).toThrow(ValueError);
  });
});

describe("three compartments under a steady load", () => {
  it("end at once at the whole maximum, and never at or below the endless share", () => {
    expect(modelEndurance({ share: 1, ...hand })).toBeCloseTo(0, 12);
    const endless = endlessShare(hand);
    expect(modelEndurance({ share: endless, ...hand })).toBe(Number.POSITIVE_INFINITY);
    expect(modelEndurance({ share: 0.99 * endless, ...hand })).toBe(Number.POSITIVE_INFINITY);
    expect(modelEndurance({ share: 1.01 * endless, ...hand })).toBeLessThan(Number.POSITIVE_INFINITY);
    expect(steppedEndurance({ share: 0.9 * endless, ...hand, step: 1 })).toBe(Number.POSITIVE_INFINITY);
  });

  it("without recovery tire in step with load and time", () => {
    const never = { fatigueRate: 0.01, recoveryRate: 1e-6 };
    // 1 − f = F·f·T
    expect(modelEndurance({ share: 0.5, ...never })).toBeCloseTo(100, 1);
  });

  it("stepped finely come to the closed form, first order in the step", () => {
    for (const share of [0.2, 0.5, 0.8]) {
      const exact = modelEndurance({ share, ...hand });
      const coarse = steppedEndurance({ share, ...hand, step: 0.2 });
      const fine = steppedEndurance({ share, ...hand, step: 0.002 });
      expect(Math.abs(fine / exact - 1)).toBeLessThan(5e-4);
      expect(Math.abs(fine - exact)).toBeLessThan(Math.abs(coarse - exact));
    }
  });

  it("last longer with slower fatigue and faster recovery", () => {
    fc.assert(
      fc.property(evenly(0.15, 0.95), (share) => {
        const time = modelEndurance({ share, ...hand });
        expect(modelEndurance({ share, ...hand, fatigueRate: 0.9 * hand.fatigueRate })).toBeGreaterThan(time);
        expect(modelEndurance({ share, ...hand, recoveryRate: 1.1 * hand.recoveryRate })).toBeGreaterThan(time);
      }),
      { seed: 7 },
    );
  });

  it("refuse rates and steps that cannot be", () => {
    expect(() => modelEndurance({ share: 0.5, fatigueRate: 0, recoveryRate: 1 })).toThrow(ValueError);
    expect(() => steppedEndurance({ share: 0.5, ...hand, step: 0 })).toThrow(ValueError);
    expect(() => endlessShare({ fatigueRate: 1, recoveryRate: Number.NaN })).toThrow(ValueError);
  });
});

describe("the seam at 70 % of maximum", () => {
  it("is a jump from the model to the law, and stays on the law above", () => {
    const seam = seamShare.value;
    expect(holdTime({ share: seam })).toBeCloseTo(modelEndurance({ share: seam, ...hand }), 9);
    expect(holdTime({ share: seam + 1e-9 })).toBeCloseTo(enduranceTime({ share: seam }), 3);
    // Printed times: 44.4 s by the model, 59.6 s by the law.
    expect(holdTime({ share: seam + 1e-9 }) / holdTime({ share: seam })).toBeCloseTo(59.6 / 44.4, 1);
  });

  it("makes the model meet the law above it", () => {
    for (const group of groups)
      for (const share of [0.71, 0.8, 0.9, 0.99]) {
        const { fatigueRate, recoveryRate } = ratesOf(group);
        const slowed = { share, recoveryRate, fatigueRate: fatigueRate * seamFactor(share, group) };
        expect(modelEndurance(slowed)).toBeCloseTo(enduranceTime({ group, share }), 6);
      }
    expect(seamFactor(0.7, "hand")).toBe(1);
    expect(seamFactor(1, "hand")).toBe(0);
  });
});
