import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bestSpeedShare, handPower, hillForce, meanForce, reachTime } from "../../src/motion/hill.js";
import { ValueError } from "../../src/quantity/errors.js";
import { evenly } from "../numerics/evenly.js";
import { crew, hand, strokes } from "./rigs.js";

const seed = { seed: 7 };

describe("force of a hand that pulls", () => {
  it("is the greatest pull at rest, nothing at the greatest speed, and no more when it is drawn along", () => {
    expect(hand(0)).toBe(250);
    expect(hand(3)).toBe(0);
    expect(hand(30)).toBe(0);
    expect(hand(-2)).toBe(250);
  });

  it("keeps Hill's product of force and speed", () => {
    fc.assert(
      fc.property(evenly(0, 0.999), evenly(0.05, 5), (share, curvature) => {
        const law = hillForce({ ...crew, curvature });
        const [a, b] = [curvature * 250, curvature * 3];
        expect((law(3 * share) + a) * (3 * share + b)).toBeCloseTo((250 + a) * b, 6);
      }),
      seed,
    );
  });

  it("nears a straight line when the curvature is large", () => {
    const law = hillForce({ ...crew, curvature: 10 });
    expect(law(1.5)).toBeGreaterThan(115);
    expect(law(1.5)).toBeLessThan(125);
  });

  it("gives most power at the best speed, and the force there is the same share", () => {
    fc.assert(
      fc.property(evenly(0.02, 5), evenly(0.001, 0.999), (curvature, share) => {
        const law = hillForce({ greatestPull: 1, greatestSpeed: 1, curvature });
        const best = bestSpeedShare(curvature);
        expect(law(best)).toBeCloseTo(best, 10);
        expect(share * law(share)).toBeLessThanOrEqual(best * law(best) + 1e-12);
      }),
      seed,
    );
  });

  it.each([
    ["a pull below nothing", { ...crew, greatestPull: -1 }],
    ["a speed of nothing", { ...crew, greatestSpeed: 0 }],
    ["a curvature that is no number", { ...crew, curvature: Number.NaN }],
  ])("refuses %s", (_, pull) => {
    expect(() => hillForce(pull)).toThrow(ValueError);
  });
});

describe("a pull in strokes", () => {
  it("without a pause is the pull itself", () => {
    const even = meanForce(hand, { ...strokes, pullingShare: 1 });
    for (const speed of [0, 0.5, 1.7, 2.9]) expect(even(speed)).toBeCloseTo(hand(speed), 10);
  });

  it("takes stroke and pause at the mean speed", () => {
    const law = meanForce(hand, strokes);
    const speed = 1.2;
    const mean = strokes.strokeLength / (strokes.strokeLength / speed + reachTime(strokes));
    expect(law(mean)).toBeCloseTo(hand(speed), 10);
    expect(law(strokes.strokeLength / reachTime(strokes))).toBe(0);
  });

  it("refuses strokes that cannot be", () => {
    expect(() => meanForce(hand, { ...strokes, strokeLength: 0 })).toThrow(ValueError);
    expect(() => reachTime({ ...strokes, pullingShare: 1.2 })).toThrow(ValueError);
    expect(() => reachTime({ ...strokes, cycleRate: 0 })).toThrow(ValueError);
  });
});

describe("power of a hand", () => {
  it("is force times speed", () => {
    expect(handPower({ handForce: 130, handSpeed: 0 })).toBe(0);
    expect(handPower({ handForce: 50, handSpeed: 2 })).toBe(100);
    expect(() => handPower({ handForce: -1, handSpeed: 2 })).toThrow(ValueError);
  });
});
