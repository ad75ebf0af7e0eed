import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { monotoneCurve } from "../../src/numerics/pchip.js";
import { OutsideModelError, ValueError } from "../../src/quantity/errors.js";
import { evenly } from "./evenly.js";

const seed = { seed: 7 };

/** Nodes at rising positions with any values. */
const nodes = fc
  .array(fc.tuple(evenly(0.01, 50), evenly(-3, 3)), {
    minLength: 2,
    maxLength: 12,
  })
  .map((steps) => {
    let position = 0;
    const positions = steps.map(([step]) => {
      position += step;
      return position;
    });
    return { positions, values: steps.map(([, value]) => value) };
  });

const fraction = evenly(0, 1);

describe("monotone curve through nodes", () => {
  it("passes through every node", () => {
    fc.assert(
      fc.property(nodes, ({ positions, values }) => {
        const curve = monotoneCurve({ positions, values });
        positions.forEach((position, i) => {
          expect(curve(position)).toBeCloseTo(values[i]!, 12);
        });
      }),
      seed,
    );
  });

  it("never leaves the range of the two nodes around it, and never turns between them", () => {
    fc.assert(
      fc.property(nodes, fraction, fraction, ({ positions, values }, a, b) => {
        const curve = monotoneCurve({ positions, values });
        for (let i = 0; i + 1 < positions.length; i++) {
          const width = positions[i + 1]! - positions[i]!;
          const [first, second] = [Math.min(a, b), Math.max(a, b)].map((t) =>
            curve(Math.min(positions[i]! + t * width, positions[i + 1]!)),
          ) as [number, number];
          const low = Math.min(values[i]!, values[i + 1]!) - 1e-12;
          const high = Math.max(values[i]!, values[i + 1]!) + 1e-12;
          expect(first >= low && first <= high).toBe(true);
          expect((second - first) * Math.sign(values[i + 1]! - values[i]!)).toBeGreaterThanOrEqual(-1e-12);
        }
      }),
      seed,
    );
  });

  it("is a straight line where the nodes lie on one", () => {
    fc.assert(
      fc.property(nodes, fraction, ({ positions }, t) => {
        const curve = monotoneCurve({ positions, values: positions.map((x) => 2 * x - 1) });
        const first = positions[0]!;
        const x = Math.min(first + t * (positions.at(-1)! - first), positions.at(-1)!);
        expect(curve(x)).toBeCloseTo(2 * x - 1, 9);
      }),
      seed,
    );
  });

  it("is as smooth as promised: both sides of a node have one slope", () => {
    const curve = monotoneCurve({ positions: [0, 1, 3, 4], values: [0, 2, 5, 5.5] });
    for (const node of [1, 3]) {
      const step = 1e-6;
      const before = (curve(node) - curve(node - step)) / step;
      const after = (curve(node + step) - curve(node)) / step;
      expect(after).toBeCloseTo(before, 4);
    }
  });

  it("agrees with another program (SciPy 1.17, PchipInterpolator)", () => {
    const main = monotoneCurve({
      positions: [0, 7, 9, 12, 28, 60, 90, 120, 150, 180],
      values: [0, 0.948, 1.138, 1.25, 1.427, 1.269, 1.125, 0.838, 0.296, -0.112],
    });
    const reference: readonly [number, number][] = [
      [3.5, 0.5253793872654401],
      [8, 1.0562369762507673],
      [10, 1.187244245484041],
      [20, 1.3774583685290214],
      [45, 1.36120751400205],
      [75, 1.2027207569611171],
      [100, 1.049979743493182],
      [135, 0.5782835515205383],
      [170, 0.009811150097465905],
    ];
    for (const [position, value] of reference) expect(main(position)).toBeCloseTo(value, 13);
    const bent = monotoneCurve({ positions: [0, 1, 3, 4], values: [0, 2, 1, 1] });
    expect([0.5, 2, 3.5].map(bent)).toEqual([expect.closeTo(1.3541666666666667, 13), 1.5, 1]);
    const steep = monotoneCurve({ positions: [0, 1, 2], values: [0, 1, -5] });
    expect([0.25, 0.5, 1.5].map(steep)).toEqual([0.578125, 0.875, -0.8125]);
    const flatEnd = monotoneCurve({ positions: [0, 1, 2, 4], values: [0, 0.1, 3, 2] });
    expect(flatEnd(0.5)).toBeCloseTo(0.025833333333333337, 13);
    expect(monotoneCurve({ positions: [0, 1], values: [0, 2] })(0.25)).toBeCloseTo(0.5, 13);
  });

  it("refuses positions outside the nodes and NaN", () => {
    const curve = monotoneCurve({ positions: [0, 1], values: [0, 1] });
    for (const bad of [-1e-9, 1.1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => curve(bad)).toThrow(OutsideModelError);
    }
  });

  it("refuses nodes that make no curve", () => {
    const bad = [
      { positions: [0], values: [0] },
      { positions: [0, 1], values: [0] },
      { positions: [1, 0], values: [0, 1] },
      { positions: [0, 0], values: [0, 1] },
      { positions: [0, Number.NaN], values: [0, 1] },
      { positions: [0, 1], values: [0, Number.POSITIVE_INFINITY] },
    ];
    for (const curve of bad) expect(() => monotoneCurve(curve)).toThrow(ValueError);
  });
});
