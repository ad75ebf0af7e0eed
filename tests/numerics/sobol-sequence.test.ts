import { describe, expect, it } from "vitest";
import { mostDimensions, sobolPoints } from "../../src/numerics/sobol-sequence.js";
import { ValueError } from "../../src/quantity/errors.js";

const words = (column: Float64Array) => [...column].map((value) => Math.floor(value * 2 ** 32));

/** Points as another program gives them without a shift (scipy 1.17, qmc.Sobol), by dimension: points 1 to 7. */
const elsewhere: readonly (readonly [dimension: number, points: readonly number[]])[] = [
  [2, [0.5, 0.25, 0.75, 0.625, 0.125, 0.875, 0.375]],
  [5, [0.5, 0.75, 0.25, 0.125, 0.625, 0.875, 0.375]],
  [13, [0.5, 0.25, 0.75, 0.625, 0.125, 0.875, 0.375]],
  [23, [0.5, 0.25, 0.75, 0.875, 0.375, 0.625, 0.125]],
];

describe("even points", () => {
  const columns = sobolPoints({ dimensions: mostDimensions, count: 1024, seed: 3 });

  it("are those of another program, digits shifted by one word a dimension", () => {
    for (const [dimension, points] of elsewhere) {
      const [shift = 0, ...shifted] = words(columns[dimension]!);
      expect(shifted.slice(0, 7).map((word) => ((word ^ shift) >>> 0) / 2 ** 32)).toEqual(points);
    }
  });

  it("put one point into each of 1,024 slices of every axis", () => {
    for (const column of columns) expect(new Set([...column].map((value) => Math.floor(value * 1024))).size).toBe(1024);
  });

  it("put four points into each of 16 × 16 fields of the first two axes", () => {
    const fields = new Map<number, number>();
    for (let i = 0; i < 1024; i++) {
      const field = 16 * Math.floor(16 * columns[0]![i]!) + Math.floor(16 * columns[1]![i]!);
      fields.set(field, (fields.get(field) ?? 0) + 1);
    }
    expect([...new Set(fields.values())]).toEqual([4]);
  });

  it("lie between 0 and 1, both left out", () => {
    for (const column of columns) expect(column.every((value) => value > 0 && value < 1)).toBe(true);
  });

  it("come again with their seed, and differ with another", () => {
    const input = { dimensions: 3, count: 100 };
    expect(sobolPoints({ ...input, seed: 7 })).toEqual(sobolPoints({ ...input, seed: 7 }));
    expect(sobolPoints({ ...input, seed: 8 })[0]![0]).not.toBe(sobolPoints({ ...input, seed: 7 })[0]![0]);
  });

  it("find a mean ever faster than chance would", () => {
    const errorOf = (count: number, seed: number) => {
      const [x, y] = sobolPoints({ dimensions: 2, count, seed }) as [Float64Array, Float64Array];
      return Math.abs(x.reduce((sum, value, i) => sum + value * y[i]!, 0) / count - 1 / 4);
    };
    const typical = (count: number) =>
      Math.sqrt([1, 2, 3, 4, 5, 6, 7, 8].reduce((sum, seed) => sum + errorOf(count, seed) ** 2 / 8, 0));
    // Chance alone would gain a factor of 4 from sixteen times the points.
    expect(typical(256) / typical(4096)).toBeGreaterThan(8);
    expect(typical(4096)).toBeLessThan(0.22 / Math.sqrt(4096) / 8);
  });

  it.each([
    { dimensions: 0, count: 1, seed: 1 },
    { dimensions: mostDimensions + 1, count: 1, seed: 1 },
    { dimensions: 1, count: 0, seed: 1 },
    { dimensions: 1, count: 1.5, seed: 1 },
    { dimensions: 1, count: Number.NaN, seed: 1 },
    { dimensions: 1, count: 1, seed: -1 },
  ])("are refused for %o", (input) => {
    expect(() => sobolPoints(input)).toThrow(ValueError);
  });
});
