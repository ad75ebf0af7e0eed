import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OutsideModelError, ValueError } from "../../src/quantity/errors.js";
import { ropeLinearDensity } from "../../src/rope/make.js";
import { type TaperPlan, taper, taperVerdict } from "../../src/rope/taper.js";
import { evenly } from "../numerics/evenly.js";

const plan: TaperPlan = {
  covered: { fibre: "hmpe", construction: "coveredCore", coverFibre: "polyester", diameter: 0.005 },
  bare: { fibre: "hmpe", construction: "bareBraid", diameter: 0.002 },
  join: "splice",
  reach: 6,
  travel: 0.3,
  velocityRatio: 4,
  clearance: 0.3,
  tail: 0.5,
};

describe("the taper of a line", () => {
  it("never reaches the cleat at either end of travel, for any line that fits", () => {
    fc.assert(
      fc.property(evenly(3, 20), evenly(0.05, 1), evenly(1, 16), evenly(0.05, 1), (reach, travel, ratio, clearance) => {
        const made = taper({ ...plan, reach, travel, velocityRatio: ratio, clearance });
        expect(made.joinFromCleat.hauledIn).toBe(clearance);
        expect(made.joinFromCleat.letOut).toBeCloseTo(clearance + ratio * travel, 12);
        expect(made.bareLength + made.joinLength.value + clearance).toBeCloseTo(reach, 12);
        expect(made.lineLength).toBeCloseTo(reach + ratio * travel + 0.5, 12);
      }),
      { seed: 7 },
    );
  });

  it("cuts as much rope as it uses: the two parts overlap in both buried ends", () => {
    const made = taper(plan);
    expect(made.cut.covered + made.cut.bare).toBeCloseTo(made.lineLength + 2 * made.joinLength.value, 12);
    const stripped = taper({ ...plan, join: "strip", bare: { ...plan.bare, diameter: 0.00325 } });
    expect(stripped.cut).toEqual({ covered: stripped.lineLength, bare: 0 });
  });

  it("saves the difference of the two ropes over the thin part, less the buried ends", () => {
    const made = taper(plan);
    const thick = ropeLinearDensity(plan.covered).value;
    const thin = ropeLinearDensity(plan.bare).value;
    expect(made.saved.dry.value).toBeCloseTo(made.bareLength * (thick - thin) - made.joinLength.value * thin, 12);
    expect(made.saved.wet.value).toBeGreaterThan(made.saved.dry.value);
  });

  it("takes a quarter of an hour for each taper", () => {
    expect(taper({ ...plan, join: "strip" }).time.value).toBe(900);
    expect(taper(plan)).toMatchObject({ splices: 2, time: { value: 1800 } });
  });

  it("saves more the less cover there is", () => {
    expect(taper({ ...plan, clearance: 0.2 }).saved.dry.value).toBeGreaterThan(taper(plan).saved.dry.value);
  });

  it("is refused where the line is too short or the thin part is not thinner", () => {
    expect(() => taper({ ...plan, reach: 0.4 })).toThrow(OutsideModelError);
    expect(() => taper({ ...plan, bare: { ...plan.bare, diameter: 0.005 } })).toThrow(ValueError);
    expect(() => taper({ ...plan, travel: Number.NaN })).toThrow(/length/u);
    expect(() => taper({ ...plan, velocityRatio: 0 })).toThrow(/velocity ratio/u);
  });
});

describe("a join that would reach a block", () => {
  it("fails, and the change it names passes", () => {
    const verdict = taperVerdict(plan, 1.4);
    expect(verdict.outcome).toBe("not enough");
    const clearance = Number(/start the cover ([\d.]+) m/u.exec(verdict.change!)![1]);
    expect(taperVerdict({ ...plan, clearance }, 1.4).outcome).toBe("enough");
  });

  it("with no room for a shorter cover names the travel that passes", () => {
    const verdict = taperVerdict(plan, 0.8);
    const travel = Number(/shorten the travel to ([\d.]+) m/u.exec(verdict.change!)![1]);
    expect(taperVerdict({ ...plan, travel }, 0.8).outcome).toBe("enough");
  });

  it("that stays clear holds", () => {
    expect(taperVerdict(plan, 2)).toMatchObject({ outcome: "enough" });
    expect(taperVerdict(plan, 2)).not.toHaveProperty("change");
  });
});
