import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calibrate } from "../../src/calibration/calibrate.js";
import { calibratedLine, calibrationWords, lineAsMeasured } from "../../src/calibration/calibrated-line.js";
import { lineBands, lineLaw } from "../../src/calibration/line-law.js";
import { surfaces } from "../../src/materials/surfaces.js";
import { ReevingError, ValueError } from "../../src/quantity/errors.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import type { Turn } from "../../src/reeving/station.js";
import { tackle } from "../../src/reeving/tackle.js";
import { evenly } from "../numerics/evenly.js";

const rope = { diameter: 0.006, stiffness: { tensionTerm: 25, constantTerm: 30, diameterTerm: 1e6 } };
const bare = { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } };
const sheave = (name: string): Turn => ({
  kind: "sheave",
  name,
  wrapAngle: Math.PI,
  diameter: 0.03,
  pinRadius: 0.004,
  bearingFriction: 0.12,
});
const ring: Turn = {
  kind: "ring",
  name: "ring",
  wrapAngle: Math.PI / 3,
  diameter: 0.014,
  frictionCoefficient: surfaces.anodised.friction.value,
};
const sheet: Line = {
  rope,
  stations: [sheave("boom"), ring, { kind: "measured", name: "lead", tensionRatio: 1.05, drag: 1 }],
};
const purchase: Line = {
  rope,
  stations: [
    { kind: "tackle", name: "purchase", reeving: tackle({ parts: 4, hauledFrom: "fixed", turn: sheave("sheave") }) },
    ring,
  ],
};

describe("the law of a line", () => {
  it("is that of its measured turn", () => {
    const law = lineLaw(
      { rope: bare, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.2, drag: 3 }] },
      100,
    );
    expect(law.ratio).toBeCloseTo(1.2, 9);
    expect(law.drag).toBeCloseTo(3, 9);
    expect(law.velocityRatio).toBe(1);
  });

  it("has a band as wide as its coefficients make it", () => {
    const { ratio, drag } = lineBands(sheet, 200, {
      bearing: { value: 1, low: 0.5, high: 2 },
      sliding: { value: 1, low: 0.8, high: 1.3 },
    });
    expect(ratio.value).toBeCloseTo(lineLaw(sheet, 200).ratio, 12);
    expect(ratio.low).toBeLessThan(ratio.value);
    expect(ratio.high).toBeGreaterThan(ratio.value);
    expect(drag.low).toBeLessThanOrEqual(drag.value);
  });

  it.each([
    ["a ratchet", { ...sheave("ratchet"), kind: "ratchet", treadFriction: 0.3 } as Turn],
    ["a closed cleat", { kind: "cleat", name: "cleat", closed: true, holdLoad: 500 } as const],
  ])("is refused with %s", (words, station) => {
    const wrong: Line = { rope: bare, stations: [station] };
    expect(() => lineLaw(wrong, 100)).toThrow(ReevingError);
    expect(() => calibratedLine(wrong, { ratio: 1.2, drag: 1, load: 100 })).toThrow(words);
  });
});

describe("a calibrated line", () => {
  it.each([
    ["a sheet", sheet],
    ["a purchase", purchase],
  ])("%s has the ratio and the drag that were measured", (_, line) => {
    fc.assert(
      fc.property(evenly(1.03, 2), evenly(0, 6), (ratio, drag) => {
        const { line: found } = calibratedLine(line, { ratio, drag, load: 200 });
        const law = lineLaw(found, 200);
        expect(law.ratio).toBeCloseTo(ratio, 6);
        expect(law.drag).toBeCloseTo(drag, 5);
      }),
      { seed: 7, numRuns: 30 },
    );
  });

  it("is the line itself where it was measured as it was described", () => {
    const { ratio, drag } = lineLaw(sheet, 200);
    const { lossFactor, dragFactor, line } = calibratedLine(sheet, { ratio, drag, load: 200 });
    expect(lossFactor).toBeCloseTo(1, 5);
    expect(dragFactor).toBeCloseTo(1, 5);
    expect(line.stations).toHaveLength(3);
  });

  it("gets one measured turn where nothing is there to be multiplied", () => {
    const { line, lossFactor } = calibratedLine({ rope: bare, stations: [] }, { ratio: 1.2, drag: 3, load: 100 });
    expect(lossFactor).toBe(1);
    expect(line.stations).toHaveLength(1);
    expect(prepareLine(line).handForces(100).hauling).toBeCloseTo(123, 9);
  });

  it("leaves the given line untouched and refuses an impossible target", () => {
    const before = JSON.stringify(sheet);
    calibratedLine(sheet, { ratio: 1.5, drag: 0, load: 100 });
    expect(JSON.stringify(sheet)).toBe(before);
    expect(() => calibratedLine(sheet, { ratio: 0.9, drag: 0, load: 100 })).toThrow(ValueError);
    expect(() => calibratedLine(sheet, { ratio: 1.2, drag: -1, load: 100 })).toThrow(ValueError);
    expect(() => calibratedLine(sheet, { ratio: 1.2, drag: 0, load: 0 })).toThrow(ValueError);
  });

  it("comes from readings of the line to what the readings show", () => {
    const truth = calibratedLine(sheet, { ratio: 1.6, drag: 4, load: 150 }).line;
    const prepared = prepareLine(truth);
    const readings = [50, 100, 150, 200].map((load, index) => {
      const { hauling, easing } = prepared.handForces(load);
      return { row: index + 2, line: "sheet", load, haul: hauling, ease: easing, resolution: 0.5, wet: false };
    });
    const prior = lineBands(sheet, 150, {
      bearing: { value: 1, low: 0.4, high: 2.5 },
      sliding: { value: 1, low: 0.5, high: 2 },
      drag: { value: 1, low: 0.2, high: 5 },
    });
    const [calibration] = calibrate(readings, { prior: () => prior });
    const { line } = lineAsMeasured(sheet, calibration!);
    for (const load of [60, 180]) {
      const [own, wanted, catalogue] = [line, truth, sheet].map((one) => prepareLine(one).handForces(load).hauling) as [
        number,
        number,
        number,
      ];
      expect(Math.abs(own / wanted - 1)).toBeLessThan(0.03);
      expect(Math.abs(catalogue / wanted - 1)).toBeGreaterThan(0.05);
    }
    expect(calibrationWords(calibration!)).toMatch(/^sheet: measured, 4 readings\. Ratio .+ in place of the assumed /u);
  });

  it("says when it was not measured", () => {
    const [calibration] = calibrate([
      { row: 2, line: "sheet", load: 100, haul: 50, ease: 90, resolution: 1, wet: false },
    ]);
    expect(calibrationWords(calibration!)).toContain("not measured");
  });
});
