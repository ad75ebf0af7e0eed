import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type RopeEndName, ropeEnds } from "../../src/materials/ends.js";
import type { FibreName } from "../../src/materials/fibres.js";
import { bendStrength } from "../../src/rope/bend-strength.js";
import { retainedStrength } from "../../src/rope/retained.js";
import { sunlightRetained } from "../../src/rope/sunlight.js";
import { evenly } from "../numerics/evenly.js";

const calm = { fibre: "polyester", ends: [], use: "new", wet: false } as const;
const ends = Object.keys(ropeEnds) as RopeEndName[];

describe("strength left in a rope", () => {
  it("is all of it when nothing weakens it", () => {
    expect(retainedStrength(calm)).toMatchObject({ value: 1, low: 1, high: 1, weakestPlace: "nowhere in particular" });
  });

  it("is that of the weakest place: places do not multiply", () => {
    const both = retainedStrength({ ...calm, ends: ["splice", "bowline"] });
    expect(both.value).toBe(ropeEnds.bowline.retained.soft.value);
    expect(both.weakestPlace).toBe("bowline");
  });

  it.each([
    ["polyester", "bowline", 0.7],
    ["polyester", "figureEight", 0.72],
    ["polyester", "reefKnot", 0.5],
    ["hmpe", "bowline", 1 / 3],
    ["hmpeHighModulus", "bowline", 0.5],
    ["hmpe", "bowline", 0.3901],
    ["hmpe", "figureEight", 0.3],
    ["hmpe", "splice", 0.8],
    ["hmpe", "splice", 0.87],
    ["hmpe", "splice", 0.85],
    ["hmpe", "splice", 1],
    ["hmpe", "cowHitch", 0.57],
    ["hmpe", "softShackle", 1],
  ] as const)("in %s with a %s holds the printed %f", (fibre, end, shown) => {
    const { low, high } = retainedStrength({ ...calm, fibre, ends: [end] });
    expect(low).toBeLessThanOrEqual(shown);
    expect(high).toBeGreaterThanOrEqual(shown);
  });

  it("of a bowline in HMPE is a third, half of that in polyester, under any cover", () => {
    const left = (fibre: FibreName) => retainedStrength({ ...calm, fibre, ends: ["bowline"] }).value;
    expect(left("hmpe")).toBeCloseTo(0.33, 12);
    expect(left("hmpeHighModulus")).toBeCloseTo(0.33, 12);
    expect(left("polyester")).toBeCloseTo(0.71, 12);
    for (const fibre of ["aramid", "lcp", "pbo"] as const) {
      expect(left(fibre)).toBeLessThan(left("polyamide"));
      expect(left(fibre)).toBeGreaterThan(left("hmpe"));
    }
  });

  it("says where a knot may slip before it breaks: in slippery cores only, and no splice", () => {
    const slips = (fibre: FibreName, end: RopeEndName, diameterRatio = 30) =>
      retainedStrength({ ...calm, fibre, ends: [end], diameterRatio }).slips;
    for (const fibre of ["hmpe", "hmpeHighModulus", "lcp", "pbo"] as const) {
      expect(slips(fibre, "bowline")).toBe(true);
      for (const end of ["splice", "stitchedEye", "softShackle"] as const) expect(slips(fibre, end)).toBe(false);
    }
    for (const fibre of ["polyester", "polyamide", "polypropylene", "aramid"] as const)
      expect(slips(fibre, "bowline")).toBe(false);
    expect(slips("hmpe", "cowHitch", 0.5)).toBe(false);
  });

  it("over a tight pin is that of the bend", () => {
    const tight = retainedStrength({ ...calm, ends: ["splice"], diameterRatio: 1 });
    expect(tight.value).toBeCloseTo(bendStrength({ material: "polyester", diameterRatio: 1 }).value, 12);
    expect(tight.weakestPlace).toBe("bend");
  });

  it("falls with use, and with water where the fibre minds it", () => {
    const worn = (["new", "season", "worn"] as const).map((use) => retainedStrength({ ...calm, use }).value);
    expect(worn).toEqual([...worn].sort((one, other) => other - one));
    expect(retainedStrength({ ...calm, fibre: "polyamide", wet: true }).value).toBeCloseTo(0.875, 12);
    expect(retainedStrength({ ...calm, wet: true }).value).toBe(1);
  });

  it("falls in the sun, of PBO far more than of polyester", () => {
    const left = (fibre: "pbo" | "polyester", daysInSun: number) => retainedStrength({ ...calm, fibre, daysInSun });
    expect(left("pbo", 0)).toMatchObject({ value: 1, low: 1, high: 1 });
    expect(left("pbo", 60).value).toBeLessThan(0.5 * left("polyester", 60).value);
    expect(left("pbo", 60).value).toBeLessThan(left("pbo", 30).value);
    expect(left("pbo", 60).value).toBeCloseTo(sunlightRetained({ fibre: "pbo", days: 60 }).value, 12);
  });

  it("never grows with one more end or a tighter bend", () => {
    fc.assert(
      fc.property(fc.subarray(ends), fc.constantFrom(...ends), evenly(0.5, 30), (some, more, diameterRatio) => {
        const before = retainedStrength({ ...calm, ends: some, diameterRatio });
        expect(retainedStrength({ ...calm, ends: [...some, more], diameterRatio }).value).toBeLessThanOrEqual(
          before.value,
        );
        expect(retainedStrength({ ...calm, ends: some, diameterRatio: diameterRatio / 1.5 }).value).toBeLessThanOrEqual(
          before.value,
        );
        expect(before.low).toBeLessThanOrEqual(before.value);
        expect(before.high).toBeGreaterThanOrEqual(before.value);
      }),
      { seed: 7 },
    );
  });
});
