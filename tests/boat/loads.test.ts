import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lineLoads } from "../../src/boat/loads.js";
import { evenly } from "../numerics/evenly.js";
import { small } from "./small-boat.js";

const loadsOf = (boat = small(), name = "mainsheet") => lineLoads(boat, boat.lines[name]!);

describe("loads of a line", () => {
  it("as stated are what the file says, with its spread and its gusts", () => {
    const { design, gust, light } = loadsOf(small(), "halyard");
    expect(design).toEqual({ value: 200, low: 180, high: expect.closeTo(220, 9) });
    // What the crew has set does not grow in a gust.
    expect(gust).toEqual(design);
    expect(light!.value).toBe(29);
    expect(loadsOf(small(), "outhaul").light).toBeUndefined();
  });

  it("as measured grow with the square of the apparent wind, at anchor that of the true wind", () => {
    const measured = small(
      [
        "sheet: { kind: boom, boomAngle: 5 deg, forceLever: 0.9 m, sheetLever: 2 m, sheetSlope: 50 deg }",
        "sheet: { kind: measured, load: 100 N, at: 6 kn }",
      ],
      ["boatSpeed: { design: 5 kn, light: 2.5 kn }", "boatSpeed: { design: 0 kn, light: 0 kn }"],
    );
    const { design, light } = loadsOf(measured);
    expect(design.value).toBeCloseTo(400, 6);
    expect(light!.value).toBeCloseTo((100 * 16) / 36, 6);
  });

  it("from the sail keep the balance of the boom by hand", () => {
    const { design } = loadsOf();
    const wind = 12 * (1852 / 3600);
    const ahead = wind * Math.cos((50 * Math.PI) / 180) + 5 * (1852 / 3600);
    const across = wind * Math.sin((50 * Math.PI) / 180);
    const pressure = 0.5 * 1.225 * (ahead ** 2 + across ** 2);
    // Sail force square to the boom is at most lift and drag together.
    const most = pressure * 8 * Math.hypot(1.427, 0.113);
    const level = (most * 0.9) / 2 / Math.cos((50 * Math.PI) / 180);
    expect(design.value).toBeLessThan(level);
    expect(design.value).toBeGreaterThan(0.85 * level);
    expect(design.low).toBeLessThan(design.value);
    expect(design.high).toBeGreaterThan(design.value);
  });

  it("take the share that the line takes", () => {
    const half = loadsOf(small(["corner: sheet }", "corner: sheet, share: 0.5 }"]));
    expect(half.design.value).toBeCloseTo(loadsOf().design.value / 2, 9);
    expect(half.light!.high).toBeCloseTo(loadsOf().light!.high / 2, 9);
  });

  it("of a run-out wind grow with its square", () => {
    const boat = small(["safetyFactor: 5\n", "safetyFactor: 5\n  runOutWind: 6 kn\n"]);
    expect(loadsOf(boat).light!.value).toBeCloseTo(loadsOf().light!.value * (6 / 4) ** 2, 9);
    expect(loadsOf(boat).design).toEqual(loadsOf().design);
  });

  it("of a halyard in light air are the weight of its sail", () => {
    const boat = small(
      ["sheetSlope: 50 deg }", "sheetSlope: 50 deg }\n    halyard: { luff: 6 m, luffSag: 0.5 m, luffShare: 0.3 }"],
      [
        "load: { kind: stated, design: 200 N, light: 29 N, spread: 0.1 }",
        "load: { kind: sail, sail: main, corner: halyard }",
      ],
    );
    expect(loadsOf(boat, "halyard").light!.value).toBeCloseTo(3 * 9.80665, 9);
    expect(loadsOf(boat, "halyard").design.value).toBeGreaterThan(3 * 9.80665);
  });

  it("never fall with more wind or more sail, and grow with the area", () => {
    const base = small();
    fc.assert(
      fc.property(evenly(1, 3), (factor) => {
        const main = base.sails.main!;
        const larger = { ...base, sails: { main: { ...main, area: factor * main.area } } };
        expect(loadsOf(larger).design.value / loadsOf(base).design.value).toBeCloseTo(factor, 9);
        const still = { ...main, boatSpeed: { design: 0, light: 0 } };
        const windy = (speed: number) => ({
          ...base,
          sails: { main: still },
          conditions: { ...base.conditions, designWind: speed },
        });
        expect(loadsOf(windy(4 * factor)).design.value / loadsOf(windy(4)).design.value).toBeCloseTo(factor ** 2, 6);
      }),
      { seed: 7, numRuns: 20 },
    );
  });
});
