import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { guard, within, withUnit } from "../../src/quantity/guard.js";
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

describe("an angle in degrees where radians are meant", () => {
  it.each([
    ["apparentWindAngle", 90, "1.571"],
    ["heelAngle", 20, "0.3491"],
    ["leadAngle", 5, "0.08727"],
    ["camAngle", 9, "0.1571"],
    ["wrapAngle", 180, "3.142"],
    ["wrapAngle", 90, "1.571"],
    ["wrapAngle", 45, "0.7854"],
    ["wrapAngle", 30, "0.5236"],
  ] as const)("is refused and told: %s %d", (name, value, radians) => {
    const words = `It looks like degrees: ${value} deg is ${radians} rad.`;
    expect(() => within(name, value)).toThrow(words);
    expect(() => guard(name)(value)).toThrow(words);
  });

  it("is not what a wrap of several turns is taken for", () => {
    for (const turns of [0.25, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 8, 10])
      expect(within("wrapAngle", 2 * Math.PI * turns)).toBe(2 * Math.PI * turns);
    for (const radians of [5, 10, 15, 20]) expect(within("wrapAngle", radians)).toBe(radians);
  });

  it("is not said of what is no angle, or lies beyond the range in degrees too", () => {
    const told = (act: () => unknown) => {
      try {
        act();
      } catch (error) {
        return String(error);
      }
      return "";
    };
    expect(told(() => within("tension", -90))).not.toContain("degrees");
    expect(told(() => within("heelAngle", 1000))).not.toContain("degrees");
    expect(told(() => within("heelAngle", -0.1))).not.toContain("degrees");
  });
});
