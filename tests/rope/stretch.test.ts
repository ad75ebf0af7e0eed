import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stiffnessRatios } from "../../src/materials/elasticity.js";
import { ValueError } from "../../src/quantity/errors.js";
import {
  quickStiffness,
  segmentStretch,
  seriesStretch,
  slowStiffness,
  stiffnessFromTest,
} from "../../src/rope/stretch.js";
import { evenly } from "../numerics/evenly.js";

const seed = { seed: 7 };
const segments = fc.record({
  length: evenly(0.1, 100),
  axialStiffness: evenly(1e3, 1e7),
  tension: evenly(0, 5000),
});

describe("the stretch of a piece", () => {
  it("is nothing without tension", () =>
    expect(segmentStretch({ length: 10, axialStiffness: 1e5, tension: 0 })).toBe(0));

  it("grows in step with tension and length, and against stiffness", () => {
    fc.assert(
      fc.property(segments, evenly(0.1, 5), (segment, factor) => {
        const once = segmentStretch(segment);
        expect(segmentStretch({ ...segment, tension: factor * segment.tension })).toBeCloseTo(factor * once, 9);
        expect(segmentStretch({ ...segment, length: factor * segment.length })).toBeCloseTo(factor * once, 9);
        expect(segmentStretch({ ...segment, axialStiffness: factor * segment.axialStiffness })).toBeCloseTo(
          once / factor,
          9,
        );
      }),
      seed,
    );
  });

  it("under its own weight is that of half the weight at the end", () => {
    fc.assert(
      fc.property(segments, (segment) => {
        const hanging = segmentStretch({ ...segment, tension: 0, farTension: segment.tension });
        expect(hanging).toBeCloseTo(segmentStretch({ ...segment, tension: segment.tension / 2 }), 12);
      }),
      seed,
    );
  });

  it("does not care where it is cut", () => {
    fc.assert(
      fc.property(segments, evenly(0.05, 0.95), (segment, cut) => {
        const parts = [cut, 1 - cut].map((share) => ({ ...segment, length: share * segment.length }));
        expect(seriesStretch(parts)).toBeCloseTo(segmentStretch(segment), 12);
      }),
      seed,
    );
  });

  it("gives the stiffness back", () => {
    fc.assert(
      fc.property(segments, (segment) => {
        const tension = segment.tension + 1;
        const stretch = segmentStretch({ ...segment, tension });
        fc.pre(stretch > 1e-6 && stretch < 100);
        expect(stiffnessFromTest({ tension, length: segment.length, stretch }) / segment.axialStiffness).toBeCloseTo(
          1,
          9,
        );
      }),
      seed,
    );
  });

  it("refuses what cannot be", () => {
    for (const bad of [{ tension: -1 }, { length: 0 }, { axialStiffness: 0 }, { farTension: Number.NaN }])
      expect(() => segmentStretch({ length: 1, axialStiffness: 1e4, tension: 1, ...bad })).toThrow(ValueError);
    expect(() => stiffnessFromTest({ tension: 0, length: 1, stretch: 0.1 })).toThrow(ValueError);
    expect(() => stiffnessFromTest({ tension: 1, length: 1, stretch: 0 })).toThrow(ValueError);
  });
});

describe("stiffness from strength", () => {
  it("is higher when quick, and grows with the mean load", () => {
    for (const ratio of [stiffnessRatios.polyester, stiffnessRatios.hmpe]) {
      const quick = (loadShare: number) => quickStiffness({ ratio, breakLoad: 1e4, loadShare }).value;
      expect(quick(0.2)).toBeGreaterThan(slowStiffness({ ratio, breakLoad: 1e4 }).value);
      expect(quick(0.3)).toBeGreaterThan(quick(0.1));
    }
  });

  it("scales with strength and keeps its range in order", () => {
    const { value, low, high } = slowStiffness({ ratio: stiffnessRatios.hmpe, breakLoad: 2e4 });
    expect(value).toBeCloseTo(2 * slowStiffness({ ratio: stiffnessRatios.hmpe, breakLoad: 1e4 }).value, 6);
    expect(low < value && value < high).toBe(true);
  });

  it("refuses a mean load above the break load", () =>
    expect(() => quickStiffness({ ratio: stiffnessRatios.hmpe, breakLoad: 1e4, loadShare: 1.1 })).toThrow(ValueError));
});
