import { describe, expect, it } from "vitest";
import { compare, readPrinted } from "../../src/published/compare.js";
import type { CheckRow } from "../../src/published/row.js";
import { ValueError } from "../../src/quantity/errors.js";

const row = (printed: string, computed: number, readingError?: number): CheckRow => ({
  id: "row",
  quantity: "something",
  printed,
  unit: "1",
  compute: () => computed,
  ...(readingError === undefined ? {} : { readingError }),
  evidence: "published",
  status: "published",
  source: "statics",
  place: "here",
});

describe("reading a printed number", () => {
  it.each([
    ["0.309", 0.309, 0.0005],
    ["153552935", 153_552_935, 0.5],
    ["-2.50", -2.5, 0.005],
    ["12", 12, 0.5],
    ["0", 0, 0.5],
    ["9 1/7", 9 + 1 / 7, 0.5 / 7],
    ["1 1/3", 4 / 3, 1 / 6],
  ])("takes %s with half of its last digit", (text, value, halfDigit) => {
    const printed = readPrinted(text);
    expect(printed.value).toBeCloseTo(value, 12);
    expect(printed.halfDigit).toBeCloseTo(halfDigit, 15);
  });

  it.each(["", "1,5", "about 3", "1e3", "1.", ".5", "1/7", "1 234", "NaN", "Infinity", " 1"])("refuses %j", (text) => {
    expect(() => readPrinted(text)).toThrow(ValueError);
    expect(() => readPrinted(text)).toThrow(/a plain decimal number or a mixed fraction/u);
  });
});

describe("comparing with a printed number", () => {
  it("holds up to half of the last digit and no further", () => {
    expect(compare(row("1.41", Math.SQRT2)).holds).toBe(true);
    expect(compare(row("1.41", 1.415)).holds).toBe(true);
    expect(compare(row("1.41", 1.4151)).holds).toBe(false);
    expect(compare(row("1.41", 1.4049)).holds).toBe(false);
    expect(compare(row("1.42", Math.SQRT2)).holds).toBe(false);
  });

  it("takes a stated reading error in place of the digits", () => {
    expect(compare(row("1.4", 1.46, 0.07)).holds).toBe(true);
    expect(compare(row("1.4", 1.42, 0.01)).holds).toBe(false);
  });

  it("never holds for an answer that is not a number", () => {
    expect(compare(row("1.4", Number.NaN)).holds).toBe(false);
    expect(compare(row("1.4", Number.POSITIVE_INFINITY)).holds).toBe(false);
  });

  it("reports computed less expected", () => {
    expect(compare(row("1.4", 1.5)).deviation).toBeCloseTo(0.1, 12);
    expect(compare(row("1.4", 1.5))).toMatchObject({ computed: 1.5, expected: 1.4, allowed: 0.05, unit: "1" });
  });
});
