import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseQuantity } from "../../src/quantity/parse.js";
import { figures, printForce } from "../../src/quantity/print.js";
import { axisTitle, printQuantity } from "../../src/quantity/quantity-text.js";
import { type QuantityName, vocabulary } from "../../src/quantity/vocabulary.js";
import type { VocabularyEntry } from "../../src/quantity/vocabulary-entry.js";

const names = Object.keys(vocabulary) as QuantityName[];

/** A force is printed with its kilograms-force in brackets, which are for the reader only. */
const readable = (printed: string) => printed.replace(/ \(.*\)$/u, "");

describe("figures", () => {
  it.each([
    [85.4321, "85.4"],
    [0.0123456, "0.0123"],
    [0, "0"],
    [-2.5, "−2.5"],
    [999.6, "1000"],
    [9999, "10\u202f000"],
    [1240, "1240"],
    [12_400, "12\u202f400"],
    [1_234_567, "1\u202f230\u202f000"],
    [2e7, "2 × 10⁷"],
    [1.5e-5, "1.5 × 10⁻⁵"],
    [-1.5e-5, "−1.5 × 10⁻⁵"],
    [Number.POSITIVE_INFINITY, "∞"],
    [Number.NEGATIVE_INFINITY, "−∞"],
    [Number.NaN, "–"],
  ])("shows %d as %s", (value, text) => {
    expect(figures(value)).toBe(text);
  });

  it("shows as many figures as it is asked for", () => {
    expect(figures(Math.PI, 2)).toBe("3.1");
    expect(figures(Math.PI, 6)).toBe("3.14159");
  });

  it("is never further off than half a unit of the third figure", () => {
    const plain = fc.integer({ min: -4e6, max: 6.9e6 }).map((n) => 10 ** (n / 1e6));
    fc.assert(
      fc.property(plain, fc.boolean(), (size, below) => {
        const value = below ? -size : size;
        const shown = Number(figures(value).replaceAll("\u202f", "").replace("−", "-"));
        expect(Math.abs(shown - value)).toBeLessThanOrEqual(
          0.5 * 10 ** (Math.floor(Math.log10(size)) - 2) * (1 + 1e-9),
        );
      }),
      { seed: 7 },
    );
  });
});

describe("printing a quantity", () => {
  it.each([
    ["windSpeed", 6.1733, "12 kn"],
    ["ropeDiameter", 0.006, "6 mm"],
    ["wrapAngle", Math.PI, "180°"],
    ["temperature", 288.15, "15 °C"],
    ["sailArea", 7, "7 m²"],
    ["airDensity", 1.225, "1.23 kg/m³"],
    ["bendingCoefficient", 20, "0.02 1/mm"],
    ["share", 0.5, "0.5"],
    ["tension", 86.3, "86.3 N (8.8 kgf)"],
  ] as const)("prints %s %d as %s", (name, value, text) => {
    expect(printQuantity(name, value)).toBe(text);
  });

  it("puts the kilogram-force beside the newton at standard gravity", () => {
    expect(printForce(9.80665)).toBe("9.81 N (1 kgf)");
  });

  it.each(names)("reads back what it printed: %s", (name) => {
    const entry: VocabularyEntry = vocabulary[name];
    const least = Math.max(entry.minimum, entry.maximum * 1e-6);
    const most = Math.min(entry.maximum, Math.max(least * 2, 1e5));
    const inside = fc.integer({ min: 10, max: 990 }).map((n) => least + ((most - least) * n) / 1000);
    fc.assert(
      fc.property(inside, (value) => {
        const printed = readable(printQuantity(name, value));
        fc.pre(!printed.includes("×"));
        const once = parseQuantity(name, printed);
        expect(readable(printQuantity(name, once))).toBe(printed);
        const offset = entry.shownUnit === "degC" ? 273.15 : 0;
        expect(Math.abs(once - value)).toBeLessThanOrEqual(0.0051 * Math.abs(value - offset) + 1e-9);
      }),
      { seed: 7, numRuns: 40 },
    );
  });

  it("titles an axis with label and unit, and a pure number with its label", () => {
    expect(axisTitle("handTension")).toBe("Hand force [N]");
    expect(axisTitle("windSpeed")).toBe("True wind speed [kn]");
    expect(axisTitle("tensionRatio")).toBe("Tension ratio");
  });
});
