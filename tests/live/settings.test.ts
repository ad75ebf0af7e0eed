import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addressOf, readAddress } from "../../src/live/address.js";
import { choice, slide, toggle } from "../../src/live/control.js";
import { initialSettings, wholeSettings } from "../../src/live/settings.js";
import type { AnySettings } from "../../src/notebook/control.js";
import { firstUnits, type Units } from "../../src/notebook/measure.js";
import { ValueError } from "../../src/quantity/errors.js";

const controls = {
  wind: slide({ label: "Wind", measure: "wind", minimum: 4, maximum: 18, step: 0.5, initial: 12 }),
  tread: choice("Tread", { smooth: "smooth", faceted: "faceted" }, "faceted"),
  wet: toggle("Wet"),
};

const settings = fc.record({
  wind: fc.integer({ min: 8, max: 36 }).map((half) => half / 2),
  tread: fc.constantFrom("smooth", "faceted"),
  wet: fc.boolean(),
});
const units = fc.record({
  force: fc.constantFrom<Units["force"]>("N", "kgf", "lbf"),
  wind: fc.constantFrom<Units["wind"]>("kn", "m/s"),
});

describe("settings", () => {
  it("are those of the page until somebody changes them", () => {
    expect(initialSettings(controls)).toEqual({ wind: 12, tread: "faceted", wet: false });
    expect(wholeSettings(controls, { wet: true })).toEqual({ wind: 12, tread: "faceted", wet: true });
  });

  it.each<[string, AnySettings]>([
    ["an unknown name", { colour: "red" }],
    ["a number below the range", { wind: 3.9 }],
    ["a number above the range", { wind: 18.1 }],
    ["no number", { wind: Number.NaN }],
    ["a text for a number", { wind: "12" }],
    ["an unknown option", { tread: "velvet" }],
    ["a text for a switch", { wet: "on" }],
  ])("refuse %s", (_, given) => {
    expect(() => wholeSettings(controls, given)).toThrow(ValueError);
  });
});

describe("an address", () => {
  it("carries what differs from the page, and nothing else", () => {
    const own = initialSettings(controls);
    expect(addressOf(controls, { settings: own, units: firstUnits })).toBe("");
    expect(
      addressOf(controls, { settings: { ...own, wind: 14.5, wet: true }, units: { force: "lbf", wind: "m/s" } }),
    ).toBe("#try:wind=14.5&wet=on&unit-force=lbf&unit-wind=m%2Fs");
  });

  it("brings back every setting and unit that it was made from", () => {
    fc.assert(
      fc.property(settings, units, (one, chosen) => {
        const address = addressOf(controls, { settings: one, units: chosen });
        const read = readAddress(controls, address === "" ? "#try:" : address);
        expect(read).toEqual({ settings: one, units: chosen, refusals: [] });
      }),
      { seed: 7 },
    );
  });

  it("without a setting is none of ours", () => {
    expect(readAddress(controls, "")).toBeUndefined();
    expect(readAddress(controls, "#how-sure")).toBeUndefined();
  });

  it.each(["wind=40", "wind=-1", "wind=1e1", "wind=", "wind", "wet=yes", "tread=velvet"])(
    "with %s falls back to the page's own value and says so",
    (part) => {
      const read = readAddress(controls, `#try:${part}`);
      expect(read?.settings).toEqual(initialSettings(controls));
      expect(read?.refusals).toHaveLength(1);
      expect(read?.refusals[0]).toContain("is used");
    },
  );

  it.each(["colour=red", "constructor=1", "unit-force=stone", "%E0%A4%A=1"])("says that %s is nothing here", (part) => {
    const read = readAddress(controls, `#try:${part}&wet=on`);
    expect(read?.settings).toEqual({ wind: 12, tread: "faceted", wet: true });
    expect(read?.units).toEqual(firstUnits);
    expect(read?.refusals).toHaveLength(1);
  });
});
