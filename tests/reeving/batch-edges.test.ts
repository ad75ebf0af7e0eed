import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ReevingError, ValueError } from "../../src/quantity/errors.js";
import { compileBatch } from "../../src/reeving/batch.js";
import { chunkSize } from "../../src/reeving/batch-law.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import { scaledLine } from "../../src/reeving/scaled.js";
import { firstSystem } from "../../src/reeving/systems.js";
import { tackle } from "../../src/reeving/tackle.js";
import { agree, cases } from "./batch-cases.js";
import { cleat, limp, num, ratchet, ring, seed, sheave, stiff } from "./builders.js";

const line: Line = {
  rope: stiff,
  stations: [
    { kind: "tackle", name: "tackle", reeving: tackle({ parts: 3, hauledFrom: "fixed", turn: sheave }) },
    { kind: "tackle", name: "system", reeving: firstSystem({ ropes: 2, turn: { ...ratchet, engageLoad: 60 } }) },
    { ...ring, loadDependence: { exponent: 0.8, referenceTension: 50 } },
    { ...ratchet, engageLoad: 30 },
    { ...cleat, holdLoad: 1 },
    { ...ring, name: "last" },
  ],
};
const result = (count: number) => ({ hauling: new Float64Array(count), easing: new Float64Array(count) });

describe("how many cases a batch has", () => {
  it.each([0, 1, chunkSize - 1, chunkSize, chunkSize + 1, 3 * chunkSize, 3 * chunkSize + 7])(
    "does not matter: %i",
    (count) => {
      const list = fc.sample(cases, { ...seed, numRuns: Math.max(1, count) }).slice(0, count);
      agree(line, list);
      agree(line, list, false);
    },
  );
});

describe("a batch", () => {
  it("forgets earlier batches", () => {
    const solver = compileBatch(line);
    fc.assert(
      fc.property(
        fc.array(num(0, 2000), { maxLength: 30 }),
        fc.array(num(0, 1.5), { minLength: 40, maxLength: 40 }),
        (loads, drags) => {
          const load = Float64Array.from(loads);
          const fresh = result(loads.length);
          compileBatch(line).solve({ load }, fresh);
          const other = result(40);
          solver.solve({ load: Float64Array.from(drags), factors: { drag: Float64Array.from(drags) } }, other);
          const again = result(loads.length);
          solver.solve({ load }, again);
          expect(again).toEqual(fresh);
        },
      ),
      { ...seed, numRuns: 40 },
    );
  });

  it("leaves loads and factors as they were", () => {
    const load = Float64Array.of(10, 20, 30);
    const drag = Float64Array.of(0, 1, 2);
    compileBatch(line).solve({ load, factors: { drag } }, result(3));
    expect([...load, ...drag]).toEqual([10, 20, 30, 0, 1, 2]);
  });

  it("of a line without stations hands the load through", () => {
    const out = result(3);
    compileBatch({ rope: limp, stations: [] }).solve({ load: Float64Array.of(0, 7, 1000) }, out);
    expect([...out.hauling]).toEqual([0, 7, 1000]);
    expect([...out.easing]).toEqual([0, 7, 1000]);
  });

  it("refuses arrays of different lengths, naming the array", () => {
    const solver = compileBatch(line);
    const load = new Float64Array(4);
    const short = new Float64Array(3);
    expect(() => solver.solve({ load }, { hauling: short, easing: load })).toThrow(ValueError);
    expect(() => solver.solve({ load }, { hauling: short, easing: load })).toThrow(
      /array "hauling" of a batch: got 3 values; allowed: 4 values/u,
    );
    expect(() => solver.solve({ load }, { hauling: new Float64Array(4), easing: short })).toThrow(/array "easing"/u);
    expect(() => solver.solve({ load, factors: { tread: short } }, result(4))).toThrow(/array "tread"/u);
  });

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY, 2e6])("refuses a load of %d N anywhere in it", (bad) => {
    const load = new Float64Array(2 * chunkSize).fill(10);
    load[chunkSize + 3] = bad;
    expect(() => compileBatch(line).solve({ load }, result(2 * chunkSize))).toThrow(ValueError);
  });

  it("refuses a line that cannot exist before it is solved", () => {
    expect(() => compileBatch({ rope: limp, stations: [ring, ring] })).toThrow(ReevingError);
    expect(() => compileBatch({ rope: limp, stations: [{ ...ring, frictionCoefficient: 5 }] })).toThrow(ValueError);
  });

  it("answers that a case is not a number, and only that case, when its factor is none; a seized bearing lets the rope slide", () => {
    const plain: Line = { rope: limp, stations: [sheave] };
    const system: Line = {
      rope: limp,
      stations: [{ kind: "tackle", name: "system", reeving: firstSystem({ ropes: 2, turn: sheave }) }],
    };
    for (const one of [plain, system]) {
      const seized = prepareLine(scaledLine(one, { bearing: 1000 })).handForces(100);
      for (const bad of [Number.NaN, 1000]) {
        const out = result(3);
        const load = Float64Array.of(100, 100, 100);
        compileBatch(one).solve({ load, factors: { bearing: Float64Array.of(1, bad, 1) } }, out);
        if (Number.isNaN(bad)) {
          expect(out.hauling[1]).toBeNaN();
          expect(out.easing[1]).toBeNaN();
        } else {
          expect(out.hauling[1]).toBeCloseTo(seized.hauling, 9);
          expect(out.easing[1]).toBeCloseTo(seized.easing, 9);
        }
        const { hauling, easing } = prepareLine(one).handForces(100);
        for (const index of [0, 2]) {
          expect(out.hauling[index]).toBeCloseTo(hauling, 9);
          expect(out.easing[index]).toBeCloseTo(easing, 9);
        }
      }
    }
  });
});
