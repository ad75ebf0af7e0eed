import { describe, expect, it } from "vitest";
import { along, falls, named, rises, value } from "./asked.js";

const model = "stay-where-it-was-put";
const halyard = named(model);

describe("a halyard that is left alone", () => {
  it("stretches and creeps in step with its length", () => {
    for (const label of ["Of this, stretch in the gust", "Creep"])
      expect(value(halyard, label, { length: 20 }) / value(halyard, label, { length: 5 })).toBeCloseTo(4, 9);
  });

  it("stretches with the square of one over its thickness", () => {
    const at = (diameter: number) => value(halyard, "Of this, stretch in the gust", { diameter });
    expect(at(5) / at(10)).toBeCloseTo(4, 9);
    expect(falls(along(model, "Lower in a gust, after an hour", "diameter"))).toBe(true);
  });

  it("loses less in stiffer rope: polyester, aramid, HMPE", () => {
    expect(falls(along(model, "Of this, stretch in the gust", "fibre"))).toBe(true);
  });

  it("is the sum of its three parts", () => {
    for (const settings of [{}, { cleat: "vee", bare: true }, { load: 800, cleat: "wornCam", bare: true }]) {
      const parts = ["Of this, stretch in the gust", "Creep", "Slip"].map((label) => value(halyard, label, settings));
      expect(value(halyard, "Lower in a gust, after an hour", settings)).toBeCloseTo(
        parts.reduce((sum, one) => sum + one, 0),
        9,
      );
    }
  });

  it("slips where the gust pulls harder than the cleat holds, and says so", () => {
    const slips = { cleat: "vee", bare: true, fibre: "hmpe" };
    expect(value(halyard, "Slip")).toBe(0);
    expect(value(halyard, "Slip", slips)).toBeGreaterThan(0);
    expect(value(halyard, "The cleat slips at", slips)).toBeLessThan(
      value(halyard, "Pull of the gust at the cleat", slips),
    );
    expect(halyard.compute({}).sentence).toContain("holds");
    expect(halyard.compute(slips).sentence).toContain("slips");
  });

  it("holds worse when wet or stripped, and pulls the same", () => {
    expect(falls(along(model, "The cleat slips at", "wet", { cleat: "horn" }))).toBe(true);
    expect(falls(along(model, "The cleat slips at", "bare", { cleat: "horn" }))).toBe(true);
    expect(new Set(along(model, "Pull of the gust at the cleat", "bare")).size).toBe(1);
  });

  it("is pulled in step with the load", () => {
    expect(rises(along(model, "Pull of the gust at the cleat", "load"))).toBe(true);
  });
});
