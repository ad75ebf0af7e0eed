import { describe, expect, it } from "vitest";
import { bearings } from "../../src/materials/bearings.js";
import { stiffnessLaws } from "../../src/materials/stiffness.js";
import { bandAtLoad } from "../../src/uncertainty/line-band.js";
import { uncertainInputsOf } from "../../src/uncertainty/line-inputs.js";
import { sheave, stiff } from "../reeving/builders.js";

describe("uncertainInputs of records", () => {
  it("are one for each number, and none without records", () => {
    expect(uncertainInputsOf({})).toEqual([]);
    const band = { value: 1, low: 0.5, high: 2 };
    const all = uncertainInputsOf({
      bearing: bearings.ball,
      rope: stiffnessLaws.braidedCover,
      ring: band,
      tread: band,
      drag: band,
      load: band,
    });
    expect(all.map(({ turns }) => turns)).toEqual([
      "load",
      "bearing",
      "bearing",
      "bending",
      "sliding",
      "tread",
      "drag",
    ]);
    expect(new Set(all.map(({ name }) => name)).size).toBe(all.length);
  });

  it("widen the band with every record", () => {
    const width = (records: Parameters<typeof uncertainInputsOf>[0]) => {
      const { low, high } = bandAtLoad(
        { line: { rope: stiff, stations: [sheave] }, uncertainInputs: uncertainInputsOf(records) },
        100,
      ).hauling;
      return high - low;
    };
    const rope = stiffnessLaws.braidedCover;
    expect(width({})).toBe(0);
    expect(width({ bearing: bearings.plain })).toBeGreaterThan(0);
    expect(width({ bearing: bearings.plain, rope })).toBeGreaterThan(width({ bearing: bearings.plain }));
  });
});
