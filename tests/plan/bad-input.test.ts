import { beforeAll, describe, expect, it } from "vitest";
import { choiceFrom } from "../../src/plan/choice.js";
import { optimum } from "../../src/plan/optimum.js";
import { PlanError } from "../../src/plan/plan-error.js";
import type { PlanLine, PlanOption } from "../../src/plan/plan-option.js";
import type { PlanLimit } from "../../src/plan/planned-boat.js";
import { robustBoat } from "../../src/plan/robust.js";
import { shoppingList } from "../../src/plan/shopping-list.js";
import { loadSolver, type Solver } from "../../src/plan/solver.js";
import { ValueError } from "../../src/quantity/errors.js";
import { lineOf } from "./whole-boat.js";

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const good = lineOf("jib sheet", [{ milligrams: 90_000, cents: 2000, millinewtons: 80_000, reach: 3 }]);
const plan = (lines: readonly PlanLine[], limits: readonly PlanLimit[] = []) => optimum(solver, { lines, limits });
const changed = (change: Partial<PlanOption>): PlanLine => ({ ...good, options: [{ ...good.options[0]!, ...change }] });

describe("a boat that cannot be planned", () => {
  it("is refused without lines, without options, with a name twice", () => {
    expect(() => plan([])).toThrow(PlanError);
    expect(() => plan([{ ...good, options: [] }])).toThrow(/options of the line "jib sheet": got none/u);
    expect(() => plan([good, good])).toThrow(/"jib sheet": got met twice/u);
    expect(() => plan([{ ...good, options: [...good.options, ...good.options] }])).toThrow(/"way 1": got met twice/u);
  });

  it.each([
    ["NaN mass", { mass: { dry: Number.NaN, wet: 1, aloft: 0 } }, /dry of "jib sheet", option "way 1": got NaN/u],
    ["negative mass", { mass: { dry: 1, wet: -0.1, aloft: 0 } }, /wet of .*got -0\.1/u],
    ["endless cost", { cost: Number.POSITIVE_INFINITY }, /cost of .*got Infinity/u],
    ["negative hand force", { handForce: -1 }, /handForce of/u],
    ["NaN measure", { measures: { reach: Number.NaN } }, /reach of .*got NaN/u],
    ["negative piece", { pieces: [{ rope: "thin", length: -2 }] }, /length of thin of/u],
    ["negative part", { parts: [{ part: "block", count: -2 }] }, /count of block of/u],
  ])("is refused for %s", (_, change, message) => {
    expect(() => plan([changed(change)])).toThrow(ValueError);
    expect(() => plan([changed(change)])).toThrow(message);
  });

  it("is refused for a weight below zero", () => {
    expect(() => plan([{ ...good, weight: -1 }])).toThrow(/weight of the line "jib sheet"/u);
  });

  it("is refused for a limit on something that is not there, or that is no number", () => {
    const reach = { kind: "measure", line: "jib sheet", measure: "reach", sense: "at most", bound: 3 } as const;
    expect(() => plan([good], [{ ...reach, measure: "grip" }])).toThrow(/has no such measure; allowed: reach/u);
    expect(() => plan([good], [{ ...reach, measure: "toString" }])).toThrow(PlanError);
    expect(() => plan([good], [{ ...reach, line: "mainsheet" }])).toThrow(/no such line; allowed: jib sheet/u);
    expect(() => plan([good], [{ ...reach, bound: Number.NaN }])).toThrow(ValueError);
    expect(() => plan([good], [{ kind: "total", total: "beauty" as "dry", atMost: 1 }])).toThrow(/no such total/u);
    expect(() => plan([good], [{ kind: "total", total: "dry", atMost: Number.NaN }])).toThrow(ValueError);
    expect(() => plan([good], [{ kind: "total", total: "dry", atMost: -1 }])).toThrow(ValueError);
  });

  it("is refused at the bad end of the friction where a limited measure has no value there", () => {
    const limits: PlanLimit[] = [{ kind: "measure", line: "jib sheet", measure: "reach", sense: "at most", bound: 3 }];
    const { measuresRobust: _, ...without } = good.options[0]!;
    const lines = [{ ...good, options: [without] }];
    expect(() => robustBoat({ lines, limits })).toThrow(/no value at the 95th percentile/u);
    expect(robustBoat({ lines, limits: [] }).lines[0]!.options[0]!.measures).toEqual({ reach: 3 });
  });

  it("names the option or line that a choice does not find", () => {
    const boat = { lines: [good], limits: [] };
    expect(() => choiceFrom(boat, {})).toThrow(/none named; allowed: way 1/u);
    expect(() => choiceFrom(boat, { "jib sheet": "way 2" })).toThrow(/"way 2"; allowed: way 1/u);
    expect(() => choiceFrom(boat, { "jib sheet": "way 1", mast: "x" })).toThrow(/line "mast"/u);
  });

  it("refuses spare rope that cannot be", () => {
    expect(() => shoppingList({ choice: [], spare: -0.1 })).toThrow(ValueError);
    expect(() => shoppingList({ choice: [], rounding: 0 })).toThrow(ValueError);
  });
});
