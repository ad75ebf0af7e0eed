import { describe, expect, it } from "vitest";
import { convert, parseQuantity } from "../../src/quantity/parse.js";
import { type QuantityName, vocabulary } from "../../src/quantity/vocabulary.js";
import type { VocabularyEntry } from "../../src/quantity/vocabulary-entry.js";

const entries = Object.entries(vocabulary) as [QuantityName, VocabularyEntry][];
const repeated = (values: readonly string[]) => values.filter((value, index) => values.indexOf(value) !== index);

describe("vocabulary", () => {
  it.each(entries)("%s has an example within its range", (name, { example, minimum, maximum }) => {
    const value = parseQuantity(name, example);
    expect(value).toBeGreaterThanOrEqual(minimum);
    expect(value).toBeLessThanOrEqual(maximum);
  });

  it.each(entries)("%s has a unit and a shown unit of one kind, both known", (_name, { unit, shownUnit }) => {
    if (unit === "1") {
      expect(shownUnit).toBe("1");
      return;
    }
    const there = convert(300, unit, shownUnit);
    expect(convert(there, shownUnit, unit)).toBeCloseTo(300, 9);
  });

  it.each(entries)("%s has a range, a label in lower case and a meaning", (_name, entry) => {
    expect(entry.minimum).toBeLessThan(entry.maximum);
    expect(Number.isFinite(entry.minimum) && Number.isFinite(entry.maximum)).toBe(true);
    expect(entry.label.replace("Beaufort", "beaufort")).toBe(entry.label.toLowerCase());
    expect(entry.meaning.length).toBeGreaterThan(10);
    expect(entry.symbol.length).toBeGreaterThan(0);
  });

  it("gives no two quantities one label, one meaning, or one symbol with one unit", () => {
    expect(repeated(entries.map(([, { label }]) => label))).toEqual([]);
    expect(repeated(entries.map(([, { symbol, unit }]) => `${symbol} [${unit}]`))).toEqual([]);
    expect(repeated(entries.map(([, { meaning }]) => meaning))).toEqual([]);
  });
});
