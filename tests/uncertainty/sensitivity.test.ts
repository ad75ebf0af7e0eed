import { describe, expect, it } from "vitest";
import { normalQuantile } from "../../src/numerics/normal-quantile.js";
import { ValueError } from "../../src/quantity/errors.js";
import { type SensitivityInput, sensitivityOf } from "../../src/uncertainty/sensitivity.js";

/** A model of one case as one of many. */
const each =
  (dimensions: number, f: (x: readonly number[]) => number): SensitivityInput["model"] =>
  (columns, results) => {
    for (let i = 0; i < results.length; i++)
      results[i] = f(Array.from({ length: dimensions }, (_, j) => columns[j]![i]!));
  };

describe("sensitivity of functions that are known", () => {
  it("is the share of squared weights for a sum", () => {
    const weights = [3, 2, 1];
    const { inputs, variance } = sensitivityOf({
      dimensions: 3,
      model: each(3, (x) => weights.reduce((sum, weight, j) => sum + weight * normalQuantile(x[j]!), 5)),
      samples: 4096,
    });
    expect(variance).toBeCloseTo(14, 0);
    for (const [j, weight] of weights.entries()) {
      expect(inputs[j]!.first.value).toBeCloseTo(weight ** 2 / 14, 2);
      expect(inputs[j]!.total.value).toBeCloseTo(weight ** 2 / 14, 2);
    }
  });

  it("is all of it together for a product of centred inputs: no first order, full total", () => {
    const { inputs } = sensitivityOf({
      dimensions: 2,
      model: each(2, ([x, y]) => (x! - 0.5) * (y! - 0.5)),
      samples: 4096,
    });
    for (const { first, total } of inputs) {
      expect(first.value).toBeCloseTo(0, 2);
      expect(total.value).toBeCloseTo(1, 2);
    }
  });

  it("has true values within four of its own standard errors, and errors that shrink", () => {
    const ishigami = (samples: number) =>
      sensitivityOf({
        dimensions: 3,
        model: each(3, (u) => {
          const [a, b, c] = u.map((one) => Math.PI * (2 * one - 1)) as [number, number, number];
          return Math.sin(a) + 7 * Math.sin(b) ** 2 + 0.1 * c ** 4 * Math.sin(a);
        }),
        samples,
      });
    // From the closed form with a = 7, b = 0.1.
    const b = 0.1 * Math.PI ** 4;
    const first = [(1 + b / 5) ** 2 / 2, 49 / 8, 0];
    const both = (8 * b * b) / 225;
    const variance = first[0]! + first[1]! + both;
    const coarse = ishigami(256);
    const fine = ishigami(4096);
    for (const [j, part] of first.entries()) {
      const index = fine.inputs[j]!;
      expect(Math.abs(index.first.value - part / variance)).toBeLessThan(4 * index.first.error + 1e-4);
      const total = (part + (j === 1 ? 0 : both)) / variance;
      expect(Math.abs(index.total.value - total)).toBeLessThan(4 * index.total.error + 1e-4);
      expect(index.total.error).toBeLessThan(coarse.inputs[j]!.total.error);
    }
    expect(fine.mean).toBeCloseTo(3.5, 2);
  });

  it("is 0 throughout for a result that never changes", () => {
    const { inputs, variance } = sensitivityOf({ dimensions: 2, model: each(2, () => 4) });
    expect(variance).toBe(0);
    expect(inputs.map(({ first, total }) => [first.value, total.value])).toEqual([
      [0, 0],
      [0, 0],
    ]);
  });

  it("comes again with its seed", () => {
    const input = { dimensions: 2, model: each(2, ([x, y]) => x! * y!), samples: 64 };
    expect(sensitivityOf(input)).toEqual(sensitivityOf(input));
    expect(sensitivityOf({ ...input, seed: 2 })).not.toEqual(sensitivityOf(input));
  });

  it("refuses counts out of range and results that are no numbers", () => {
    const model = each(1, ([x]) => x!);
    for (const wrong of [
      { dimensions: 0 },
      { dimensions: 13 },
      { samples: 1 },
      { samples: 0 },
      { repeats: 1 },
      { samples: Number.NaN },
    ])
      expect(() => sensitivityOf({ dimensions: 1, model, ...wrong })).toThrow(ValueError);
    expect(() => sensitivityOf({ dimensions: 1, model: each(1, () => Number.NaN) })).toThrow(ValueError);
  });
});
