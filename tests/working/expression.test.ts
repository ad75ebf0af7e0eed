import { describe, expect, it } from "vitest";
import { readExpression, unitTrouble, valueAt } from "../../src/working/expression.js";
import { filesBelow, read } from "../house/project.js";

const value = (text: string, values: Record<string, number> = {}) => valueAt(readExpression(text), values);

describe("the text of a formula", () => {
  it("is worked out as it is written", () => {
    expect(value("2 + 3 * 4")).toBe(14);
    expect(value("-2^2")).toBe(-4);
    expect(value("2^3^2")).toBe(512);
    expect(value("(a - b) / c", { a: 7, b: 1, c: 3 })).toBe(2);
    expect(value("log(exp(2)) + log10(100)")).toBeCloseTo(4, 14);
    expect(value("atan2(1, -1)")).toBeCloseTo(2.356, 3);
  });

  it("keeps its names, each once, in order", () => {
    expect(readExpression("b * a + b / exp(c)").names).toEqual(["b", "a", "c"]);
  });

  it("gives nothing finite where there is no number", () => {
    for (const text of ["1 / a", "log(a)"]) expect(Number.isFinite(value(text, { a: 0 }))).toBe(false);
    expect(value("sqrt(a)", { a: -1 })).toBeNaN();
    expect(value("asin(a)", { a: 2 })).toBeNaN();
  });

  it.each([
    "import({ evil: 1 })",
    'createUnit("evil")',
    'evaluate("1 + 1")',
    'parse("1")',
    'config({ number: "BigNumber" })',
    'simplify("a + a")',
    "derivative(a, a)",
    'resolve("a")',
    "random()",
    "map([1], f)",
    "a.constructor",
    'a["constructor"]',
    "exp.constructor(1)",
    "constructor()",
    "toString()",
    "f(x) = x",
    "a = 2",
    "a; b",
    "[1, 2]",
    "{ a: 1 }",
    '"text"',
    "a ? b : c",
    "a > b",
    "a == b",
    "a and b",
    "a mod b",
    "a % b",
    "5!",
    "a'",
    "1:3",
    "2 m to cm",
    "Infinity",
    "NaN",
    "null",
    "true",
    "exp",
    "exp(1, 2)",
    "_a",
    "a_b",
    "μ",
    "",
    "1 +",
    "(1",
  ])("cannot be %s", (text) => {
    expect(() => readExpression(text)).toThrow(/^formula ".*": got .*; allowed: numbers, names/su);
  });

  it("reaches nothing of the language behind it", () => {
    expect(value("constructor", { constructor: 3 })).toBe(3);
    expect(Number.isFinite(value("constructor"))).toBe(false);
    expect(value("i * e", { i: 2, e: 3 })).toBe(6);
  });

  it("stands in code that never runs a text", () => {
    const files = filesBelow("src/working");
    expect(files.length).toBeGreaterThan(15);
    for (const file of files) expect(read(file), file).not.toMatch(/\beval\(|new Function/u);
  });
});

describe("units of a formula", () => {
  const force = { value: 3, unit: "N" };
  const way = { value: 2, unit: "m" };

  it("come out by kind, whatever their name", () => {
    expect(unitTrouble(readExpression("a * b"), { a: force, b: way }, "J")).toBeUndefined();
    expect(unitTrouble(readExpression("a / b^2"), { a: force, b: way }, "Pa")).toBeUndefined();
    expect(unitTrouble(readExpression("sqrt(a^2)"), { a: force }, "N")).toBeUndefined();
    expect(unitTrouble(readExpression("a / c"), { a: force, c: force }, "1")).toBeUndefined();
  });

  it("tell what came out instead", () => {
    expect(unitTrouble(readExpression("a * b"), { a: force, b: way }, "N")).toMatch(/^a quantity in /u);
    expect(unitTrouble(readExpression("a / c"), { a: force, c: force }, "N")).toBe("a pure number");
    expect(unitTrouble(readExpression("a + b"), { a: force, b: way }, "N")).toMatch(/Units do not match/u);
    expect(unitTrouble(readExpression("exp(a)"), { a: force }, "1")).toBeTruthy();
    expect(unitTrouble(readExpression("a + 1"), { a: force }, "N")).toBeTruthy();
    expect(unitTrouble(readExpression("a"), {}, "N")).toBe("no value for a");
  });

  it("take an angle for a pure number", () => {
    const angle = { value: 1, unit: "rad" };
    expect(unitTrouble(readExpression("exp(f * a)"), { f: { value: 0.1, unit: "1" }, a: angle }, "1")).toBeUndefined();
    expect(unitTrouble(readExpression("a / b"), { a: angle, b: angle }, "rad")).toBeUndefined();
  });
});
