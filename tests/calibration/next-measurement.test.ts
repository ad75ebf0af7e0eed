import { describe, expect, it } from "vitest";
import { calibrate, type LineCalibration } from "../../src/calibration/calibrate.js";
import { expectedHandForce } from "../../src/calibration/measured-law.js";
import { nextMeasurements, nextWords } from "../../src/calibration/next-measurement.js";
import type { Reading } from "../../src/calibration/reading.js";

const reading = (row: number, line: string, load: number): Reading => ({
  row,
  line,
  load,
  haul: 1.25 * load + 2,
  ease: (load - 2) / 1.25,
  resolution: 1,
  wet: false,
});
const width = ({ posterior }: LineCalibration, load: number) => {
  const both = (["hauling", "easing"] as const).map((way) => {
    const { low, high } = expectedHandForce(posterior, { load, way });
    return high - low;
  });
  return Math.hypot(...both) / Math.SQRT2;
};

describe("the next most useful measurement", () => {
  const readings = [reading(1, "sheet", 50), reading(2, "sheet", 100)];

  it("brings, when it is read, the width that was promised", () => {
    const now = calibrate(readings)[0]!;
    for (const { load, way, widthNow, widthAfter } of nextMeasurements([now])) {
      const { haul, ease, ...bare } = reading(3, "sheet", load);
      const more: Reading = way === "hauling" ? { ...bare, haul: haul! } : { ...bare, ease: ease! };
      const then = calibrate([...readings, more])[0]!;
      expect(width(now, 100)).toBeCloseTo(widthNow, 3);
      expect(width(then, 100) / widthAfter).toBeCloseTo(1, 1);
      expect(widthAfter).toBeLessThan(widthNow);
    }
  });

  it("is the best of all loads that can be hung, both ways", () => {
    const now = calibrate(readings);
    const [best] = nextMeasurements(now);
    for (const load of [10, 40, 100, 150]) {
      for (const one of nextMeasurements(now, { loads: [load] }))
        expect(one.widthNow - one.widthAfter).toBeLessThanOrEqual(best!.widthNow - best!.widthAfter + 1e-12);
    }
  });

  it("goes to the line that is known worst", () => {
    const many = Array.from({ length: 12 }, (_, index) => reading(index + 1, "halyard", 50 + 5 * index));
    const [best] = nextMeasurements(calibrate([...many, reading(20, "sheet", 100)]));
    expect(best!.line).toBe("sheet");
    expect(nextWords(best!)).toMatch(/^(?:Haul|Ease) sheet with .+ hung: .+ instead of .+ N\.$/u);
  });

  it("goes to a small load where the hand force at a small load is wanted", () => {
    const now = calibrate([reading(1, "sheet", 100), reading(2, "sheet", 200)]);
    const [best] = nextMeasurements(now, { wantedLoad: 10, loads: [10, 50, 100, 200] });
    expect(best!.load).toBe(10);
  });

  it("is none without a line or a load", () => {
    expect(nextMeasurements([])).toEqual([]);
    expect(nextMeasurements(calibrate([{ ...reading(1, "sheet", 100), haul: 10, ease: 100 }]))).toEqual([]);
  });

  it("names a wet line", () => {
    expect(nextWords({ line: "sheet", wet: true, load: 100, way: "easing", widthNow: 9, widthAfter: 7 })).toBe(
      "Ease sheet, wet, with 100 N (10 kgf) hung: the range of the hand force is then 7 N wide instead of 9 N.",
    );
  });
});
