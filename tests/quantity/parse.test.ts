import { describe, expect, it } from "vitest";
import { Refusal, UnitError, ValueError } from "../../src/quantity/errors.js";
import { convert, parseQuantity } from "../../src/quantity/parse.js";
import { type QuantityName, vocabulary } from "../../src/quantity/vocabulary.js";
import { filesBelow, read } from "../house/project.js";

const degree = Math.PI / 180;

/** Values from the definitions of the units: the knot 1852 m/h, the pound-force 0.45359237 kg at standard gravity. */
const accepted: readonly (readonly [QuantityName, string, number])[] = [
  ["windSpeed", "12 kn", (12 * 1852) / 3600],
  ["windSpeed", "12 knots", (12 * 1852) / 3600],
  ["windSpeed", "6 m/s", 6],
  ["windSpeed", "36 km/h", 10],
  ["ropeDiameter", "6 mm", 0.006],
  ["ropeDiameter", "0.25 inch", 0.00635],
  ["tension", "25 kgf", 25 * 9.80665],
  ["tension", "120 lbf", 120 * 0.45359237 * 9.80665],
  ["tension", "1.2 kN", 1200],
  ["tension", "10 daN", 100],
  ["wrapAngle", "30 deg", 30 * degree],
  ["wrapAngle", "30°", 30 * degree],
  ["linearDensity", "8 g/m", 0.008],
  ["linearDensity", "8000 tex", 0.008],
  ["temperature", "15 degC", 288.15],
  ["temperature", "15 °C", 288.15],
  ["temperature", "-10 degC", 263.15],
  ["bendingCoefficient", "0.02 1/mm", 20],
  ["boatSpeed", "-2 m/s", -2],
  ["boatSpeed", "−2 m/s", -2],
  ["sailArea", "7 m²", 7],
  ["airDensity", "1.2 kg/m³", 1.2],
  ["tension", " 1.5e2 N ", 150],
  ["tension", "12kgf", 12 * 9.80665],
  ["tension", "12\u202f400 N", 12_400],
  ["ropeDiameter", "2 × 10⁻³ m", 0.002],
  ["share", "0.5", 0.5],
];

const refused: readonly (readonly [QuantityName, string, typeof UnitError | typeof ValueError, string])[] = [
  ["ropeDiameter", "6 kgf", UnitError, "kgf"],
  ["windSpeed", "12 kN", UnitError, "kN"],
  ["linearDensity", "8 g", UnitError, "g"],
  ["ropeDiameter", "6", UnitError, "no unit"],
  ["ropeDiameter", "6 furlings", UnitError, "furlings"],
  ["tension", "5 N + 3 N", UnitError, "N + 3 N"],
  ["tension", "1 240 N", UnitError, "240 N"],
  ["share", "50 %", UnitError, "%"],
  ["ropeDiameter", "NaN mm", ValueError, "NaN mm"],
  ["ropeDiameter", "Infinity mm", ValueError, "Infinity mm"],
  ["ropeDiameter", "1e400 mm", ValueError, "1e400 mm"],
  ["share", "1e400", ValueError, "1e400"],
  ["ropeDiameter", "6,5 mm", ValueError, "6,5 mm"],
  ["tension", "1,240 N", ValueError, "1,240 N"],
  ["tension", "1.2.3 N", ValueError, "1.2.3 N"],
  ["ropeDiameter", "six mm", ValueError, "six mm"],
  ["ropeDiameter", "", ValueError, '""'],
  ["ropeDiameter", "-6 mm", ValueError, "-0.006 m"],
  ["ropeDiameter", "0 mm", ValueError, "0 m"],
  ["ropeDiameter", "6 m", ValueError, "6 m"],
  ["tension", "-5 N", ValueError, "-5 N"],
  ["temperature", "-400 degC", ValueError, "-126.85 K"],
  ["share", "1.5", ValueError, "1.5"],
  ["frictionCoefficient", "5", ValueError, "5"],
];

const caught = (run: () => unknown): Refusal => {
  try {
    run();
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
  throw new Error("nothing was refused");
};

describe("reading a value with its unit", () => {
  it.each(accepted)("reads %s from %j", (name, text, expected) => {
    expect(parseQuantity(name, text)).toBeCloseTo(expected, 9 - Math.floor(Math.log10(Math.abs(expected))));
  });

  it.each(refused)("refuses %s from %j", (name, text, kind, found) => {
    const refusal = caught(() => parseQuantity(name, text));
    expect(refusal).toBeInstanceOf(kind);
    expect(refusal.name).toBe(kind.name);
    expect(refusal.quantity).toContain(vocabulary[name].label);
    expect(refusal.quantity).toContain(name);
    expect(refusal.value).toContain(found);
    expect(refusal.allowed.length).toBeGreaterThan(5);
    expect(refusal.advice).toContain(vocabulary[name].example);
    for (const part of [refusal.quantity, refusal.value, refusal.allowed, refusal.advice])
      expect(refusal.message).toContain(part);
  });

  it("names the range that a value must keep to, in its unit", () => {
    expect(() => parseQuantity("ropeDiameter", "300 mm")).toThrow(/from 0\.000001 m to 0\.2 m/u);
  });
});

/** Texts that would do something if anything read them as a program, or as an expression. */
const programs = [
  "import({ evil: 1 })",
  'import("node:fs")',
  'createUnit("evil")',
  'createUnit("evil", "3 m")',
  'evaluate("1 m")',
  'parse("m")',
  "config({})",
  "f(x) = x",
  "x = 3 m",
  "sqrt(4) m",
  "sqrt(m^2)",
  "m; mm",
  "m, mm",
  "[m]",
  "{m}",
  "m.constructor",
  'm["constructor"]',
  "constructor",
  "__proto__",
  "toString",
  "hasOwnProperty",
  "globalThis.evil = 1",
  "(() => { globalThis.evil = 1; })()",
  "new Function('globalThis.evil = 1')()",
  "process.exit()",
  "m /* mm */",
  "m + mm",
  "m to mm",
  "m in mm",
  "m mod 2",
  "m ? 1 : 2",
  "<script>alert(1)</script>",
  "m\u0000",
];

describe("the text of a unit", () => {
  it.each(programs)("is read as a unit and as nothing else: %s", (text) => {
    expect(() => parseQuantity("ropeDiameter", `6 ${text}`)).toThrow(UnitError);
    expect(() => parseQuantity("ropeDiameter", text)).toThrow(ValueError);
    expect(() => convert(1, text, "m")).toThrow(UnitError);
    expect(() => convert(1, "m", text)).toThrow(UnitError);
    expect(globalThis).not.toHaveProperty("evil");
    // No text has made a unit, or changed one.
    expect(() => convert(1, "evil", "m")).toThrow(UnitError);
    expect(parseQuantity("ropeDiameter", "6 mm")).toBeCloseTo(0.006, 15);
  });

  it("stands in code that never runs a text", () => {
    const files = filesBelow("src/quantity");
    expect(files.length).toBeGreaterThan(10);
    for (const file of files) expect(read(file), file).not.toMatch(/\beval\(|new Function|\.evaluate\(|\.compile\(/u);
  });
});

describe("converting between units", () => {
  it("is the inverse of converting back", () => {
    expect(convert(convert(7.3, "lbf", "N"), "N", "lbf")).toBeCloseTo(7.3, 12);
    expect(convert(1, "1/m", "1/mm")).toBeCloseTo(0.001, 15);
    expect(convert(1, "tonf", "kgf")).toBeCloseTo(1000, 9);
  });

  it("refuses two units of different kinds, an unknown unit, and a number that is not finite", () => {
    expect(() => convert(1, "lbf", "m")).toThrow(UnitError);
    expect(() => convert(1, "smoots", "m")).toThrow(UnitError);
    expect(() => convert(Number.NaN, "lbf", "N")).toThrow(ValueError);
    expect(() => convert(Number.POSITIVE_INFINITY, "lbf", "N")).toThrow(ValueError);
  });
});
