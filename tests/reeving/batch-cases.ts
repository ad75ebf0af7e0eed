import fc from "fast-check";
import { expect } from "vitest";
import { compileBatch } from "../../src/reeving/batch.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import { type FactorName, factorNames, scaledLine } from "../../src/reeving/scaled.js";
import { num } from "./builders.js";

/** One case of a batch. */
export interface Case {
  readonly load: number;
  readonly factors: Readonly<Record<FactorName, number>>;
}

const factor = fc.oneof(num(0, 1.6), fc.constant(1), fc.constant(0));

export const cases: fc.Arbitrary<Case> = fc.record({
  load: fc.oneof(num(0, 2000), fc.constant(0), num(0, 5)),
  factors: fc.record({ bearing: factor, bending: factor, sliding: factor, tread: factor, drag: factor }),
});

/** The answers of the batch solver for a list of cases; without factors when they are left out. */
export function solved(line: Line, list: readonly Case[], withFactors = true) {
  const load = Float64Array.from(list, (one) => one.load);
  const columns = Object.fromEntries(
    factorNames.map((name) => [name, Float64Array.from(list, ({ factors }) => factors[name])]),
  );
  const result = { hauling: new Float64Array(list.length), easing: new Float64Array(list.length) };
  compileBatch(line).solve(withFactors ? { load, factors: columns } : { load }, result);
  return result;
}

/** To 1e-12 of the force, or of the load where the hand force is the small difference of large ones. */
function same(found: number, expected: number, load: number): void {
  const allowed = 1e-12 * Math.max(Math.abs(expected), load, 1);
  if (!(Math.abs(found - expected) <= allowed)) expect(found).toBe(expected);
}

/** Checks a batch against the same line asked one case at a time. */
export function agree(line: Line, list: readonly Case[], withFactors = true): void {
  const { hauling, easing } = solved(line, list, withFactors);
  list.forEach(({ load, factors }, index) => {
    const single = prepareLine(withFactors ? scaledLine(line, factors) : line).handForces(load);
    same(hauling[index]!, single.hauling, load);
    same(easing[index]!, single.easing, load);
  });
}
