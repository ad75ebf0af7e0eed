import { describe, expect, it } from "vitest";
import { measuredSets, setsAside } from "../../src/published/band-sets.js";
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
  const rows = publishedChecks("bands").filter(({ id }) => id.startsWith("coverage-"));

  it("are at least six with at least sixty points, each with bands in order", () => {
    expect(sets.length).toBeGreaterThanOrEqual(6);
    expect(points.length).toBeGreaterThanOrEqual(60);
    expect(new Set(sets.map(({ id }) => id)).size).toBe(sets.length);
    for (const { name, band, measured, halfStep } of points) {
      expect(band.low < band.value && band.value < band.high, name).toBe(true);
      expect(measured > 0 && halfStep > 0, name).toBe(true);
    }
  });

  it("leave out the bars and the hold that set a spread", () => {
    expect(points.filter(({ name }) => /50 mm|60 mm|43 mm|concrete|held at 25 %/u.test(name))).toEqual([]);
  });

  it("leave out every set for which a spread was widened, with its source", () => {
    const aside = setsAside();
    expect(aside.length).toBeGreaterThan(0);
    for (const { id, source, widened } of aside) {
      expect(widened.length, id).toBeGreaterThan(5);
      expect(
        sets.filter((set) => set.id === id || set.source === source),
        id,
      ).toEqual([]);
    }
    expect(rows.filter(({ id }) => aside.some((set) => id === `coverage-${set.id}`))).toEqual([]);
  });

  it("stand in the checks one by one, with count and exact interval", () => {
    for (const set of sets) {
      const { inside, of, low, high } = coverageOf(set.points);
      const row = rows.find(({ id }) => id === `coverage-${set.id}`);
      const interval = `${(100 * low).toFixed(0)} to ${(100 * high).toFixed(0)} %`;
      expect(row?.quantity, set.id).toContain(`${inside} of ${of} measured points`);
      expect(row?.quantity, set.id).toContain(`exact interval ${interval}`);
    }
  });

  it("hold between 85 and 97 % together, in the checks too", () => {
    expect(rows).toHaveLength(sets.length + 3);
    const pooled = coverageOf(points);
    process.stdout.write(`bands hold ${pooled.inside} of ${pooled.of} measured points from ${sets.length} sets\n`);
    expect(pooled.share).toBeGreaterThanOrEqual(0.85);
    expect(pooled.share).toBeLessThanOrEqual(0.97);
    expect(rows.find(({ id }) => id === "coverage-pooled")?.quantity).toContain(`${pooled.inside} of ${pooled.of}`);
    for (const about of ["lines", "people"]) {
      const ofKind = coverageOf(sets.filter((set) => set.about === about).flatMap((set) => set.points));
      expect(rows.find(({ id }) => id === `coverage-${about}`)?.quantity).toContain(`${ofKind.inside} of ${ofKind.of}`);
    }
  });
});
