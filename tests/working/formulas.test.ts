import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as haulbook from "../../src/index.js";
import { parseQuantity } from "../../src/quantity/parse.js";
import { vocabulary } from "../../src/quantity/vocabulary.js";
import { sunlightRetained } from "../../src/rope/sunlight.js";
import { bibliography } from "../../src/sources/bibliography.js";
import { apparentWind } from "../../src/wind/apparent.js";
import { sailCoefficients } from "../../src/wind/coefficients.js";
import { formulas } from "../../src/working/catalogue.js";
import { unitTrouble } from "../../src/working/expression.js";
import { type Formula, readFormula, symbolWords } from "../../src/working/formula.js";
import { worked } from "../../src/working/worked.js";
import { type Case, within } from "./cases.js";
import { crewCases } from "./crew-cases.js";
import { matterCases, pairNumbers } from "./matter-cases.js";
import { mechanicsCases } from "./mechanics-cases.js";
import { windCases } from "./wind-cases.js";

const offered = new Map<string, unknown>(Object.entries(haulbook));
const all = Object.entries(formulas) as [string, Formula][];
const cases: Readonly<Record<string, Case>> = { ...mechanicsCases, ...windCases, ...matterCases, ...crewCases };

/** Names of counts, which are whole. */
const whole = new Set(["count", "ropeParts", "sheaveCount"]);
/** Cases in which a number that is counted by the code stands for a velocity ratio. */
const wholeVelocity = new Set(["frictionless"]);

/** Inputs that hang on the others, or on a table. */
const drawn: Readonly<Record<string, (values: Record<string, number>) => Record<string, number>>> = {
  ...pairNumbers,
  apparentAngle: (v) => ({
    ...v,
    apparentWindSpeed: apparentWind({
      windSpeed: v.windSpeed!,
      trueWindAngle: v.trueWindAngle!,
      boatSpeed: v.boatSpeed!,
    }).apparentWindSpeed,
  }),
  inducedDrag: (v) => ({
    ...v,
    liftCoefficient: sailCoefficients({ edition: "orc-2013", sail: "main", apparentWindAngle: 1 }).liftCoefficient,
  }),
  retained: (v) => ({ ...v, days: 40, sun: sunlightRetained({ fibre: "polyamide", days: 40 }).value }),
  ratioOfLine: (v) => {
    // A line that can be: its ratio is at least 1 and its drag at least 0.
    const part = v.loadTension! / v.velocityRatio!;
    const pullAtOnce = v.pullAtOnce! + 1.5 * part;
    return { ...v, pullAtOnce, pullAtTwice: pullAtOnce + part * (1 + (v.pullAtTwice! - 400) / 200) };
  },
};

function inputsOf(name: string): fc.Arbitrary<Record<string, number>> {
  const { inputs } = cases[name]!;
  const arbitraries = Object.entries(inputs).map(([input, range]) => {
    if (range.length === 0) return [input, fc.constant(0)] as const;
    if (range.length === 1) return [input, fc.constant(range[0]!)] as const;
    const spread = within(range);
    const counted = whole.has(input) || (wholeVelocity.has(name) && input === "velocityRatio");
    return [input, counted ? spread.map(Math.round) : spread] as const;
  });
  return fc.record(Object.fromEntries(arbitraries)).map((values) => drawn[name]?.(values) ?? values);
}

describe("formulas", () => {
  it("are many, each with an id of its own, a known source and a function that is offered", () => {
    expect(all.length).toBeGreaterThanOrEqual(80);
    const ids = all.map(([, { id }]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, { id, source, mirrors, title, valid }] of all) {
      expect(id).toMatch(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/u);
      expect(source === "common practice" || source in bibliography, `${id}: ${source}`).toBe(true);
      expect(typeof offered.get(mirrors ?? ""), `${id}: ${mirrors}`).toBe("function");
      expect(title.length * valid.length).toBeGreaterThan(0);
    }
  });

  it("are all compared with the code", () => {
    expect(Object.keys(cases).sort()).toEqual(Object.keys(formulas).sort());
  });

  it.each(all)("%s says what each name in it stands for", (_, formula) => {
    expect(readFormula(formula).names.length).toBeGreaterThan(0);
  });

  it.each(all)("%s gives what the code gives, and in the right unit", (name, formula) => {
    const { code } = cases[name]!;
    let compared = 0;
    fc.assert(
      fc.property(inputsOf(name), (values) => {
        const expected = code(values);
        expect(Number.isFinite(expected)).toBe(true);
        const given = Object.fromEntries(Object.keys(formula.symbols).map((symbol) => [symbol, values[symbol]!]));
        const { value, steps } = worked(formula, given);
        expect(
          Math.abs(value - expected) / Math.max(Math.abs(expected), 1e-9),
          `${value} and ${expected}`,
        ).toBeLessThan(1e-12);
        expect(steps[0]?.result.unit).toBe(symbolWords(formula.result).unit);
        compared += 1;
      }),
      { seed: 7, numRuns: 60 },
    );
    expect(compared).toBe(60);
  });

  it.each(all)("%s has the unit of its result for units of its symbols, and no other", (_, formula) => {
    const expression = readFormula(formula);
    const values = Object.fromEntries(
      Object.entries(formula.symbols).map(([name, symbol]) => {
        const { quantity, unit } = symbolWords(symbol);
        const value = Math.abs(parseQuantity(quantity, vocabulary[quantity].example)) || 0.5;
        return [name, { value, unit }];
      }),
    );
    const { unit } = symbolWords(formula.result);
    expect(unitTrouble(expression, values, unit)).toBeUndefined();
    expect(unitTrouble(expression, values, unit === "kg^3" ? "N" : "kg^3")).toMatch(/pure number|quantity in/u);
  });

  it("would be caught by the unit check with a wrong power", () => {
    const wrong = { ...formulas.groovePressure, id: "wrong", text: "2 * tension / (ropeDiameter * sheaveDiameter^2)" };
    expect(() => worked(wrong, { tension: 1, ropeDiameter: 0.01, sheaveDiameter: 0.1 })).toThrow(
      /formula "wrong": got a quantity in .*; allowed: a result in Pa/u,
    );
    const sum = { ...formulas.pitchDiameter, id: "sum", text: "sheaveDiameter + ropeDiameter^2" };
    expect(() => worked(sum, { ropeDiameter: 0.01, sheaveDiameter: 0.1 })).toThrow(/Units do not match/u);
  });
});
