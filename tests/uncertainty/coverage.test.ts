import { describe, expect, it } from "vitest";
import { measuredSets } from "../../src/published/band-sets.js";
import { publishedChecks } from "../../src/published/registry.js";
import { ValueError } from "../../src/quantity/errors.js";
import { coverageOf, isInside, type MeasuredPoint } from "../../src/uncertainty/coverage.js";

const point = (measured: number, halfStep = 0): MeasuredPoint => ({
  name: "pull",
  measured,
  halfStep,
  band: { value: 1, low: 0.9, high: 1.2 },
});

describe("points inside a band", () => {
  it("are those between its ends, or that read like one", () => {
    expect([0.8, 0.9, 1.2, 1.3].map((measured) => isInside(point(measured)))).toEqual([false, true, true, false]);
    expect(isInside(point(0.8, 0.1))).toBe(true);
    expect(isInside(point(1.35, 0.1))).toBe(false);
  });

  it("are counted with an exact interval", () => {
    const coverage = coverageOf([point(1), point(1), point(2)]);
    expect([coverage.inside, coverage.of]).toEqual([2, 3]);
    expect(coverage.low).toBeLessThan(2 / 3);
    expect(() => coverageOf([])).toThrow(ValueError);
  });
});

describe("measured sets", () => {
  const sets = measuredSets();
  const points = sets.flatMap((set) => set.points);

  it("are at least six, each with bands in order", () => {
    expect(sets.length).toBeGreaterThanOrEqual(6);
    for (const { name, band, measured, halfStep } of points) {
      expect(band.low < band.value && band.value < band.high, name).toBe(true);
      expect(measured > 0 && halfStep > 0, name).toBe(true);
    }
  });

  it("leave out the bars that set a spread", () => {
    expect(points.filter(({ name }) => /50 mm|60 mm|43 mm|concrete/u.test(name))).toEqual([]);
  });

  it("stand in the checks, set by set and together, between 85 and 97 %", () => {
    const rows = publishedChecks("bands").filter(({ id }) => id.startsWith("coverage-"));
    expect(rows).toHaveLength(sets.length + 1);
    const pooled = coverageOf(points);
    process.stdout.write(`bands hold ${pooled.inside} of ${pooled.of} measured points from ${sets.length} sets\n`);
    expect(pooled.share).toBeGreaterThanOrEqual(0.85);
    expect(pooled.share).toBeLessThanOrEqual(0.97);
  });
});
