import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { solveLinear } from "../../src/numerics/linear.js";
import { evenly } from "./evenly.js";

const entry = evenly(-10, 10);

/** Row after row, with a heavy diagonal in shuffled rows: it always has one solution, and needs row exchange. */
const systems = fc.integer({ min: 1, max: 8 }).chain((size) =>
  fc.record({
    size: fc.constant(size),
    matrix: fc.array(entry, { minLength: size * size, maxLength: size * size }),
    solution: fc.array(entry, { minLength: 2 * size, maxLength: 2 * size }),
    order: fc.shuffledSubarray([...Array(size).keys()], { minLength: size, maxLength: size }),
  }),
);

describe("linear equations", () => {
  it("finds the solution that the right sides were made from, for several sides at once", () => {
    fc.assert(
      fc.property(systems, ({ size, matrix, solution, order }) => {
        const A = Float64Array.from(matrix);
        order.forEach((row, column) => {
          A[row * size + column] = A[row * size + column]! + 100;
        });
        const B = new Float64Array(2 * size);
        for (let row = 0; row < size; row++)
          for (let column = 0; column < size; column++)
            for (let k = 0; k < 2; k++) B[2 * row + k]! += A[row * size + column]! * solution[2 * column + k]!;
        expect(solveLinear(size, A, B)).toBe(true);
        B.forEach((value, index) => {
          expect(Math.abs(value - solution[index]!)).toBeLessThan(1e-11);
        });
      }),
      { seed: 7 },
    );
  });

  it("says no when equations repeat, contradict or hold no number", () => {
    expect(solveLinear(2, Float64Array.of(1, 2, 2, 4), Float64Array.of(1, 2))).toBe(false);
    expect(solveLinear(2, Float64Array.of(1, 2, 2, 4), Float64Array.of(1, 3))).toBe(false);
    expect(solveLinear(1, Float64Array.of(0), Float64Array.of(0))).toBe(false);
    expect(solveLinear(1, Float64Array.of(Number.NaN), Float64Array.of(1))).toBe(false);
  });

  it("exchanges rows where the first pivot is zero", () => {
    const sides = Float64Array.of(3, 5);
    expect(solveLinear(2, Float64Array.of(0, 1, 1, 0), sides)).toBe(true);
    expect([...sides]).toEqual([5, 3]);
  });
});
