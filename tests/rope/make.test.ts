import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { constructions } from "../../src/materials/constructions.js";
import { type FibreName, fibres } from "../../src/materials/fibres.js";
import { ValueError } from "../../src/quantity/errors.js";
import { breakLoad, ropeStiffness } from "../../src/rope/break-load.js";
import { lineMass } from "../../src/rope/line-mass.js";
import { carryingDiameter, type RopeMake, ropeLinearDensity } from "../../src/rope/make.js";
import { strippedCore } from "../../src/rope/taper.js";
import { wetLinearDensity } from "../../src/rope/wet-mass.js";
import { evenly } from "../numerics/evenly.js";

const bare = (diameter: number, fibre: FibreName = "hmpe"): RopeMake => ({
  fibre,
  construction: "bareBraid",
  diameter,
});
const covered = (diameter: number): RopeMake => ({
  fibre: "hmpe",
  construction: "coveredCore",
  coverFibre: "polyester",
  diameter,
});
const names = Object.keys(fibres) as FibreName[];

describe("a rope by its make", () => {
  it("scales with the square of its diameter: mass, strength, stiffness, water", () => {
    fc.assert(
      fc.property(evenly(0.5, 20), evenly(1.1, 3), fc.constantFrom(...names), (size, factor, fibre) => {
        for (const property of [ropeLinearDensity, breakLoad, ropeStiffness, wetLinearDensity]) {
          const one = property(bare(size / 1000, fibre));
          const other = property(bare((factor * size) / 1000, fibre));
          for (const end of ["value", "low", "high"] as const)
            expect(other[end] / one[end]).toBeCloseTo(factor ** 2, 9);
        }
      }),
      { seed: 7, numRuns: 50 },
    );
  });

  it("weighs less than solid fibre of its size, and strength over mass stays below that of its yarn", () => {
    for (const fibre of names) {
      const solid = fibres[fibre].density.high * (Math.PI / 4) * 0.01 ** 2;
      expect(ropeLinearDensity(bare(0.01, fibre)).high).toBeLessThan(solid);
      const byMass = breakLoad(bare(0.01, fibre)).value / ropeLinearDensity(bare(0.01, fibre)).value;
      expect(byMass).toBeCloseTo(constructions.bareBraid.strengthConversion.value * fibres[fibre].tenacity.value, 3);
    }
  });

  it("with a cover is heavier and weaker than bare fibre of the same size, and as strong as its core", () => {
    expect(ropeLinearDensity(covered(0.005)).value).toBeGreaterThan(ropeLinearDensity(bare(0.005)).value);
    expect(breakLoad(covered(0.005)).value).toBeLessThan(breakLoad(bare(0.005)).value);
    const core = strippedCore(covered(0.005)).value;
    const ratio = constructions.coveredCore.strengthConversion.value / constructions.bareBraid.strengthConversion.value;
    expect(breakLoad(covered(0.005)).value).toBeCloseTo(ratio * breakLoad(bare(core)).value, 6);
  });

  it("between core and rope the mass of a cover lies between all core and all cover", () => {
    const polyester = ropeLinearDensity({ fibre: "polyester", construction: "bareBraid", diameter: 0.005 }).value;
    const both = ropeLinearDensity(covered(0.005)).value;
    expect(both).toBeGreaterThan(ropeLinearDensity(bare(0.005)).value);
    expect(both).toBeLessThan(polyester);
  });

  it("takes up water, a cover more than a stripped core", () => {
    const gain = (make: RopeMake) => wetLinearDensity(make).value / ropeLinearDensity(make).value;
    for (const fibre of names) expect(gain(bare(0.005, fibre))).toBeGreaterThan(1);
    expect(gain(covered(0.005))).toBeGreaterThan(gain(bare(0.005)));
  });

  it("weighs the same in one piece or in two, and nothing where there is none", () => {
    const make = covered(0.005);
    const whole = lineMass([{ make, length: 10 }]);
    const cut = lineMass([
      { make, length: 4 },
      { make, length: 6 },
    ]);
    for (const end of ["value", "low", "high"] as const) {
      expect(cut.dry[end]).toBeCloseTo(whole.dry[end], 12);
      expect(cut.wet[end]).toBeCloseTo(whole.wet[end], 12);
    }
    expect(whole.dry.value).toBeCloseTo(10 * ropeLinearDensity(make).value, 12);
    expect(lineMass([]).wet).toEqual({ value: 0, low: 0, high: 0 });
    expect(() => lineMass([{ make, length: 0 }])).toThrow(/length/u);
  });

  it("has a middle inside its range", () => {
    for (const property of [ropeLinearDensity, breakLoad, ropeStiffness, wetLinearDensity, carryingDiameter]) {
      const { low, value, high } = property(covered(0.006));
      expect(low).toBeLessThan(value);
      expect(high).toBeGreaterThan(value);
    }
  });

  it.each([
    [{ ...covered(0.005), construction: "bareBraid" as const }],
    [{ fibre: "hmpe" as const, construction: "coveredCore" as const, diameter: 0.005 }],
  ])("is refused when cover and construction do not fit: %j", (make) => {
    expect(() => breakLoad(make)).toThrow(ValueError);
    expect(() => ropeLinearDensity(make)).toThrow(/cover of a rope/u);
  });

  it.each([0, -0.005, Number.NaN, Number.POSITIVE_INFINITY])("of a diameter of %s is refused", (diameter) => {
    expect(() => breakLoad(bare(diameter))).toThrow(/rope diameter/u);
    expect(() => strippedCore(bare(0.005))).toThrow(/a rope with a cover/u);
  });
});
