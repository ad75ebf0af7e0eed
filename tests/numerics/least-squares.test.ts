import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { weightedLeastSquares } from "../../src/numerics/least-squares.js";
import { evenly } from "./evenly.js";

const line = (x: readonly number[], y: readonly number[], sigmas: readonly number[]) =>
  weightedLeastSquares({
    columns: [Float64Array.from(x, () => 1), Float64Array.from(x)],
    observed: Float64Array.from(y),
    sigmas: Float64Array.from(sigmas),
  });

describe("weighted least squares", () => {
  it("finds a line through points that lie on it, whatever the weights", () => {
    fc.assert(
      fc.property(
        evenly(-5, 5),
        evenly(-5, 5),
        fc.array(evenly(0.1, 9), { minLength: 4, maxLength: 9 }),
        (a, b, sigmas) => {
          const x = sigmas.map((_, index) => index);
          const found = line(
            x,
            x.map((at) => a + b * at),
            sigmas,
          )!;
          expect(found.values[0]).toBeCloseTo(a, 9);
          expect(found.values[1]).toBeCloseTo(b, 9);
          expect(found.sumOfSquares).toBeCloseTo(0, 12);
        },
      ),
      { seed: 7 },
    );
  });

  it("takes a point read twice for one read with an error smaller by the root of two", () => {
    const twice = line([1, 2, 3, 3], [2, 3, 7, 7], [1, 1, 2, 2])!;
    const once = line([1, 2, 3], [2, 3, 7], [1, 1, Math.SQRT2])!;
    twice.values.forEach((value, index) => {
      expect(value).toBeCloseTo(once.values[index]!, 12);
      expect(twice.covariance[index]![index]).toBeCloseTo(once.covariance[index]![index]!, 12);
    });
  });

  it("gives the covariance of a mean: sigma squared over the count", () => {
    const found = weightedLeastSquares({
      columns: [Float64Array.of(1, 1, 1, 1)],
      observed: Float64Array.of(1, 2, 3, 6),
      sigmas: Float64Array.of(2, 2, 2, 2),
    })!;
    expect(found.values[0]).toBeCloseTo(3, 12);
    expect(found.covariance[0]![0]).toBeCloseTo(1, 12);
    expect(found.degreesOfFreedom).toBe(3);
  });

  it("answers with nothing where the unknowns are not settled", () => {
    expect(line([2, 2, 2], [1, 2, 3], [1, 1, 1])).toBeUndefined();
    expect(line([2], [1], [1])).toBeUndefined();
  });

  it("leaves what it was given untouched", () => {
    const columns = [Float64Array.of(1, 1, 1), Float64Array.of(1, 2, 3)];
    const observed = Float64Array.of(2, 4, 7);
    weightedLeastSquares({ columns, observed, sigmas: Float64Array.of(1, 2, 1) });
    expect(columns[1]).toEqual(Float64Array.of(1, 2, 3));
    expect(observed).toEqual(Float64Array.of(2, 4, 7));
  });
});
