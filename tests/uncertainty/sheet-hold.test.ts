import { describe, expect, it } from "vitest";
import type { SheetOption } from "../../src/crew/sheet-option.js";
import { sheetHold } from "../../src/uncertainty/sheet-hold.js";

/** A turn whose ratio is one number, for which the truth is free: what is left is the load over the ratio. */
const option: SheetOption = {
  name: "one turn",
  parts: [],
  hold: { cover: { strands: 16, fibre: "polyester", wet: false }, diameter: 0.007, hands: 1 },
  causes: { ratio: { value: 2, low: 1.5, high: 3 } },
  lineWith: ({ ratio }) => ({
    rope: { diameter: 0.007, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } },
    stations: [{ kind: "measured", name: "turn", tensionRatio: ratio! }],
  }),
};

describe("what a sheet leaves in the hand", () => {
  it("is the load over the ratio, its range that of the ratio turned round", () => {
    const { value, low, high } = sheetHold(option, 120);
    expect(value).toBeCloseTo(60, 9);
    expect(low / 40).toBeCloseTo(1, 2);
    expect(high / 80).toBeCloseTo(1, 2);
  });

  it("grows in step with the load", () => {
    expect(sheetHold(option, 240).high / sheetHold(option, 120).high).toBeCloseTo(2, 9);
  });

  it("has no width where everything is known", () => {
    const { low, high } = sheetHold({ ...option, causes: { ratio: { value: 2, low: 2, high: 2 } } }, 120);
    expect(high - low).toBeCloseTo(0, 9);
  });
});
