import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ReevingError, ValueError } from "../../src/quantity/errors.js";
import { prepareLine } from "../../src/reeving/line.js";
import { tackle } from "../../src/reeving/tackle.js";
import { lineOf, num, seed, wheel } from "./builders.js";

const spread = (spreadAngle: number, parts = 2, k = 1) =>
  prepareLine(lineOf(tackle({ parts, hauledFrom: "moving", turn: wheel(k), spreadAngle })));

describe("parts that spread from the line of the load", () => {
  it("carry W = 2 T cos(angle) in a two-part bridle, and move by the same ratio", () => {
    fc.assert(
      fc.property(num(0, 1.45), num(1, 3000), (angle, load) => {
        const { hauling, velocityRatio } = spread(angle).handForces(load);
        expect(2 * hauling * Math.cos(angle)).toBeCloseTo(load, 8);
        expect(velocityRatio).toBeCloseTo(2 * Math.cos(angle), 10);
      }),
      seed,
    );
  });

  it("add up part by part with friction: W = (T + kT) cos(angle)", () => {
    fc.assert(
      fc.property(num(0, 1.4), num(1, 1.5), (angle, k) => {
        const { hauling } = spread(angle, 2, k).handForces(100);
        expect((hauling + hauling / k) * Math.cos(angle)).toBeCloseTo(100, 9);
      }),
      seed,
    );
  });

  it("become parallel parts as the angle vanishes", () => {
    for (const parts of [1, 2, 3, 6]) {
      const pull = (angle: number) => spread(angle, parts, 1.1).handForces(100).hauling;
      expect(pull(1e-7)).toBeCloseTo(pull(0), 8);
    }
  });

  it("need a bend of 120 degrees between them to carry the load each: T = W at 60 degrees to either side", () => {
    expect(spread(Math.PI / 3).handForces(500).hauling).toBeCloseTo(500, 9);
  });

  it("are refused close to a quarter turn, where nothing would lift", () => {
    expect(() => spread(1.55)).toThrow(ValueError);
    expect(() => spread(Number.NaN)).toThrow(ValueError);
    expect(() => spread(0, 0)).toThrow(ReevingError);
  });
});
