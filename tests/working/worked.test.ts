import { describe, expect, it } from "vitest";
import { surfaces } from "../../src/materials/surfaces.js";
import { coefficient } from "../../src/sources/coefficient.js";
import { checkAgreement } from "../../src/working/agreement.js";
import { formulas } from "../../src/working/catalogue.js";
import { formula } from "../../src/working/formula.js";
import { worked } from "../../src/working/worked.js";
import type { FormulaStep, Working } from "../../src/working/working.js";
import { checkWorking } from "../../src/working/working-check.js";

const friction = surfaces.anodised.friction;
const quarter = worked(formulas.capstan, { frictionCoefficient: friction, wrapAngle: Math.PI / 2 });
const half = worked(formulas.blockLoad, { loadTension: 100, handTension: 80, wrapAngle: Math.PI });
const air = worked(formulas.airDensity, { pressure: 101_325, temperature: 288.15 });
const sail = worked(formulas.ruleLoad, { loadCoefficient: 1.2, airDensity: air, apparentWindSpeed: 8, sailArea: 7 });
const hold = worked(formulas.easingTurn, { tensionRatio: quarter, loadTension: sail, constantDrag: 2 });
const last = ({ steps }: Working) => steps.at(-1) as FormulaStep;

describe("a working", () => {
  it("keeps formula, symbols, numbers, substitution and result as data", () => {
    const step = last(quarter);
    expect(quarter.steps).toHaveLength(1);
    expect(step.text).toBe("exp(frictionCoefficient * wrapAngle)");
    expect(step.symbols.map(({ sign, unit }) => [sign, unit])).toEqual([
      ["μ", "1"],
      ["θ", "rad"],
    ]);
    expect(step.symbols[0]?.origin).toEqual({
      low: friction.low,
      high: friction.high,
      status: friction.status,
      ...(friction.source !== undefined && { source: friction.source }),
      place: friction.place,
    });
    expect(step.substitution).toBe(`exp(${friction.value} · 1.571 rad)`);
    expect(step.result.value).toBeCloseTo(Math.exp((friction.value * Math.PI) / 2), 14);
    expect(JSON.parse(JSON.stringify(quarter))).toEqual(quarter);
  });

  it("puts brackets where numbers with units need them", () => {
    expect(last(half).substitution).toBe("sqrt((100 N)^2 + (80 N)^2 − 2 · 100 N · 80 N · cos(3.142 rad))");
    const odd = formula({
      id: "odd",
      title: "Odd",
      text: "a - (b - c) / (b * a)^2 - -b",
      symbols: {
        a: { quantity: "count", sign: "a" },
        b: { quantity: "count", sign: "b" },
        c: { quantity: "rangeFactor", sign: "c" },
      },
      result: "rangeFactor",
      source: "statics",
      valid: "nowhere",
    });
    expect(last(worked(odd, { a: 2, b: 3, c: 1e-6 })).substitution).toBe("2 − (3 − (1 × 10⁻⁶)) / (3 · 2)^2 − (−3)");
  });

  it("is the last of a chain whose steps feed each other, each step once", () => {
    expect(hold.steps.map(({ id }) => id)).toEqual(
      ["capstan", "air-density", "rule-load", "easing-turn"].sort(
        (one, other) => hold.steps.findIndex(({ id }) => id === one) - hold.steps.findIndex(({ id }) => id === other),
      ),
    );
    for (const { symbols } of hold.steps) {
      for (const { step, value } of symbols) if (step !== undefined) expect(hold.steps[step]?.result.value).toBe(value);
    }
    expect(hold.value).toBeCloseTo((sail.value - 2) / quarter.value, 12);
    const twice = worked(formulas.deadBand, {
      haulingForce: worked(formulas.haulingTurn, { tensionRatio: quarter, loadTension: sail, constantDrag: 2 }),
      easingForce: hold,
    });
    expect(twice.steps.map(({ id }) => id).filter((id) => id === "capstan" || id === "air-density")).toHaveLength(2);
    expect(twice.steps).toHaveLength(6);
    expect(checkWorking("twice", twice)).toBe(twice);
  });

  it("refuses numbers that are missing, cannot be, or are of another unit", () => {
    const given = { frictionCoefficient: 0.1, wrapAngle: 1 };
    expect(() => worked(formulas.capstan, { frictionCoefficient: 0.1 } as typeof given)).toThrow(
      /no number for "wrapAngle"/u,
    );
    expect(() => worked(formulas.capstan, { ...given, wrapAngle: -1 })).toThrow(/wrap angle/u);
    expect(() => worked(formulas.capstan, { ...given, wrapAngle: Number.NaN })).toThrow(/NaN/u);
    const metres = coefficient({ value: 1, unit: "m", low: 1, high: 1, status: "from memory", place: "a length" });
    expect(() => worked(formulas.capstan, { ...given, wrapAngle: metres })).toThrow(
      /wrapAngle in m; allowed: a number in rad/u,
    );
    expect(() => worked(formulas.capstan, { ...given, wrapAngle: sail })).toThrow(/wrapAngle in N/u);
    expect(() => worked(formulas.haulingChain, { tensionRatio: 1, loadTension: 1, constantDrag: 1, count: 2 })).toThrow(
      /NaN for .*ratio above 1/u,
    );
  });

  it("refuses a formula whose names and symbols do not belong together", () => {
    const base = { ...formulas.capstan, id: "own" };
    expect(() => worked({ ...base, text: "exp(mu * wrapAngle)" }, { frictionCoefficient: 1, wrapAngle: 1 })).toThrow(
      /unknown name "mu"; allowed: one of frictionCoefficient, wrapAngle/u,
    );
    expect(() => worked({ ...base, text: "exp(wrapAngle)" }, { frictionCoefficient: 1, wrapAngle: 1 })).toThrow(
      /frictionCoefficient not used/u,
    );
    const twice = { ...base, text: "a * b", symbols: { a: "tensionRatio", b: "tensionRatio" } } as const;
    expect(() => worked(twice, { a: 1, b: 1 })).toThrow(/the sign "k" twice/u);
  });
});

describe("data that claims to be a working", () => {
  const broken = (change: (copy: { -readonly [Key in keyof FormulaStep]: FormulaStep[Key] }) => void) => {
    const copy = structuredClone(hold) as Working;
    change(last(copy));
    return () => checkWorking("hold", copy);
  };

  it("passes when its numbers follow from each other", () => {
    expect(checkWorking("hold", structuredClone(hold))).toEqual(hold);
  });

  it("is refused when they do not, or when it has another form", () => {
    const wrong = { ...last(hold).result, value: 1 };
    expect(broken((step) => Object.assign(step, { result: wrong }))).toThrow(/the result 1; allowed: /u);
    expect(broken((step) => Object.assign(step, { text: "import(tensionRatio)" }))).toThrow(/the call import/u);
    expect(broken((step) => Object.assign(step, { text: "loadTension * other" }))).toThrow(/unknown name "other"/u);
    expect(broken((step) => Object.assign(step, { source: "nobody" }))).toThrow(/not in the bibliography/u);
    expect(broken((step) => Object.assign(step, { more: 1 }))).toThrow(/working/u);
    expect(broken((step) => Object.assign(step.symbols[0]!, { step: 7 }))).toThrow(/from step 7/u);
    expect(broken((step) => Object.assign(step.symbols[0]!, { quantity: "toString" }))).toThrow(/"toString"/u);
    expect(() => checkWorking("hold", { ...hold, value: 3 })).toThrow(/the value 3/u);
    for (const value of [undefined, 3, "x", {}, { steps: [], value: 1 }])
      expect(() => checkWorking("hold", value)).toThrow(/hold, working/u);
  });
});

describe("a printed number and its working", () => {
  const agree =
    (text: string, working: Working = hold) =>
    () =>
      checkAgreement("hold", text, working);
  const shown = hold.value;

  it("agree within half the last printed digit, in any unit", () => {
    for (const text of [`${shown.toFixed(0)} N`, `${shown.toFixed(1)} N (x kgf)`, `${(shown / 1000).toFixed(2)} kN`])
      expect(agree(text), text).not.toThrow();
    expect(agree("90°", half)).not.toThrow();
    expect(agree("180 N", half)).not.toThrow();
    expect(agree("about 200 N", half)).toThrow();
    const share = worked(formulas.endlessShare, { recoveryRate: 1, fatigueRate: 3 });
    expect(agree("25 %", share)).not.toThrow();
    expect(agree("0.25", share)).not.toThrow();
    expect(agree("26 %", share)).toThrow();
  });

  it("are refused when they differ", () => {
    expect(agree(`${(shown + 2).toFixed(0)} N`)).toThrow(/the number of its working: /u);
    expect(agree("181 N", half)).toThrow(/180 N/u);
    expect(agree("−180 N", half)).toThrow(/180 N/u);
  });

  it("pass where nothing can be compared", () => {
    for (const text of ["a third", "twice the load", "5 × 10⁻⁵", "7 sails"]) expect(agree(text), text).not.toThrow();
  });
});
