import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type GripNormName, gripShare, gripStrength, type MeanNormName } from "../../src/crew/grip-strength.js";
import { meanNorms, percentileNorm, type Sex } from "../../src/materials/people-grip.js";
import { normalShare } from "../../src/numerics/normal.js";
import { OutsideModelError, ValueError } from "../../src/quantity/errors.js";
import { evenly } from "../numerics/evenly.js";

const sexes: Sex[] = ["women", "men"];
const norms: MeanNormName[] = ["mathiowetz-1985", "steiber-2016"];

describe("grip norms", () => {
  it("meet the newtons that a second reader worked out of the printed pounds", () => {
    const men = gripStrength({ norm: "mathiowetz-1985", sex: "men", age: 22 });
    expect(men.mean.value).toBeCloseTo(538, -0.5);
    expect(men.deviation).toBeCloseTo(92, -0.5);
    expect(gripStrength({ norm: "mathiowetz-1985", sex: "women", age: 80, hand: "left" }).mean.value).toBeCloseTo(
      167,
      -0.5,
    );
  });

  it("say whose grip it is, and name the source", () => {
    const { mean } = gripStrength({ norm: "steiber-2016", sex: "women", age: 74 });
    expect(mean.source).toBe("steiber-2016");
    expect(mean.place).toContain("women, 70 to 74 years, right hand");
  });

  it.each(norms)("%s is whole: a mean and a deviation for each age group and hand", (norm) => {
    const { firstAges, groups } = meanNorms[norm];
    for (const sex of sexes)
      for (const hand of ["right", "left"] as const) {
        expect(groups[sex][hand]).toHaveLength(firstAges.length);
        for (const [mean, deviation] of groups[sex][hand]) expect(mean > 2.5 * deviation).toBe(true);
      }
  });

  it("of percentiles rise along each row", () => {
    for (const row of [...percentileNorm.men, ...percentileNorm.women]) {
      expect(row).toHaveLength(percentileNorm.percents.length);
      expect(row.every((value, i) => i === 0 || value > row[i - 1]!)).toBe(true);
    }
  });

  it("agree with each other within what the ways of measuring explain, and a little more", () => {
    for (const sex of sexes)
      for (const age of [22, 32, 42, 52, 62]) {
        const { mean } = gripStrength({ norm: "mathiowetz-1985", sex, age });
        // The middle of the other norm's people: half of them hold it.
        const share = gripShare({ norm: "tomkinson-2025", sex, age, force: mean.value });
        expect(share.low).toBeLessThan(0.5);
        expect(share.high).toBeGreaterThan(0.3);
      }
  });
});

describe("share of people who can grip", () => {
  it("is half at the mean, and one deviation above it 15.87 %", () => {
    for (const norm of norms) {
      const { mean, deviation } = gripStrength({ norm, sex: "men", age: 33 });
      expect(gripShare({ norm, sex: "men", age: 33, force: mean.value }).value).toBeCloseTo(0.5, 12);
      expect(gripShare({ norm, sex: "men", age: 33, force: mean.value + deviation }).value).toBeCloseTo(0.1587, 4);
    }
  });

  it("meets the printed percentiles in the middle of an age group", () => {
    const force = 28.6 * 9.80665;
    expect(gripShare({ norm: "tomkinson-2025", sex: "women", age: 22.5, force }).value).toBeCloseTo(0.5, 12);
  });

  it("ranges over what ways of measuring shift: the mean grip, measured 17 % too high or too low", () => {
    const { mean, deviation } = gripStrength({ norm: "steiber-2016", sex: "men", age: 40 });
    const share = gripShare({ norm: "steiber-2016", sex: "men", age: 40, force: mean.value });
    const at = (factor: number) => 1 - normalShare((mean.value / factor - mean.value) / deviation);
    expect(share.low).toBeCloseTo(at(0.83), 9);
    expect(share.high).toBeCloseTo(at(1.17), 9);
  });

  it("falls with the force, holds its range, and stays a share", () => {
    const names: GripNormName[] = ["mathiowetz-1985", "steiber-2016", "tomkinson-2025"];
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.constantFrom(...sexes),
        evenly(20, 74),
        evenly(0, 0.98),
        (norm, sex, age, part) => {
          const [least, most] = sex === "men" ? [345, 530] : [195, 330];
          const force = least + part * (most - least);
          const share = gripShare({ norm, sex, age, force });
          const harder = gripShare({ norm, sex, age, force: force + 0.02 * (most - least) });
          expect(harder.value).toBeLessThan(share.value);
          expect(share.low).toBeLessThanOrEqual(share.value);
          expect(share.high).toBeGreaterThanOrEqual(share.value);
          expect(share.value > 0 && share.value < 1).toBe(true);
        },
      ),
      { seed: 7 },
    );
  });

  it.each([
    [19, "mathiowetz-1985", "20 year to 90 year"],
    [91, "mathiowetz-1985", "20 year to 90 year"],
    [75, "steiber-2016", "20 year to 74 year"],
    [16, "tomkinson-2025", "20 year to 74 year"],
  ] as const)("refuses an age of %s in %s and says the range", (age, norm, range) => {
    expect(() => gripShare({ norm, sex: "women", age, force: 300 })).toThrow(OutsideModelError);
    expect(() => gripShare({ norm, sex: "women", age, force: 300 })).toThrow(range);
  });

  it("refuses a force outside printed percentiles, a negative force, and an age that is no number", () => {
    const woman = { norm: "tomkinson-2025", sex: "women", age: 30 } as const;
    expect(() => gripShare({ ...woman, force: 20 })).toThrow(OutsideModelError);
    expect(() => gripShare({ ...woman, force: -1 })).toThrow(ValueError);
    expect(() => gripShare({ ...woman, age: Number.NaN, force: 250 })).toThrow(ValueError);
  });
});
