import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { within, withUnit } from "../../src/quantity/guard.js";
import { type QuantityName, vocabulary } from "../../src/quantity/vocabulary.js";
import type { VocabularyEntry } from "../../src/quantity/vocabulary-entry.js";

const entries = Object.entries(vocabulary) as [QuantityName, VocabularyEntry][];

describe("guard", () => {
  it.each(entries)("%s: both ends of the range are allowed, what lies beyond is not", (name, { minimum, maximum }) => {
    expect(within(name, minimum)).toBe(minimum);
    expect(within(name, maximum)).toBe(maximum);
    const step = 1e-6 * (maximum - minimum);
    expect(() => within(name, minimum - step)).toThrow(ValueError);
    expect(() => within(name, maximum + step)).toThrow(ValueError);
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
      expect(() => within(name, bad)).toThrow(ValueError);
  });

  it("keeps to a narrower range where it is given", () => {
    expect(within("tension", 5, 5, 6)).toBe(5);
    expect(() => within("tension", 4.9, 5, 6)).toThrow(/from 5 N to 6 N/u);
  });

  it("names quantity, value, range and an example", () => {
    expect(() => within("pinRadius", -0.004)).toThrow(
      'pin radius (pinRadius): got -0.004 m; allowed: a finite number from 0.000001 m to 1 m. Give it in m, for example parseQuantity("pinRadius", "4 mm").',
    );
  });

  it("prints pure numbers without a unit", () => {
    expect(withUnit(0.1234567, "1")).toBe("0.123457");
    expect(withUnit(Number.NaN, "m")).toBe("NaN m");
  });
});
