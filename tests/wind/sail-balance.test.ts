import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { standardGravity } from "../../src/quantity/constants.js";
import { OutsideModelError, ValueError } from "../../src/quantity/errors.js";
import {
  type BalanceInput,
  halyardOf,
  outhaulOf,
  type SailBalance,
  sailBalance,
  tackOf,
} from "../../src/wind/sail-balance.js";

const right: BalanceInput = {
  lengths: { luff: 4, leech: 5, foot: 3 },
  pulls: { luff: 0, leech: 0, foot: 0 },
  windForce: 0,
  shares: { luff: 0.3, leech: 0.4 },
  sailMass: 0,
  luffOn: "mast",
};

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Any sail that can be: a triangle, pulls, wind and weight. */
const anySail: fc.Arbitrary<BalanceInput> = fc.record({
  lengths: fc.tuple(between(3, 12), between(1, 5), between(0.3, 2.8)).map(([luff, foot, angle]) => ({
    luff,
    foot,
    leech: Math.hypot(foot * Math.sin(angle), luff - foot * Math.cos(angle)),
  })),
  pulls: fc.record({ luff: between(0, 3000), leech: between(0, 3000), foot: between(0, 3000) }),
  windForce: between(0, 5000),
  shares: fc.record({ luff: between(0, 0.5), leech: between(0, 0.5) }),
  sailMass: between(0, 30),
  luffOn: fc.constantFrom("mast", "stay", "flying"),
});

const parts = ({ head, tack, clew, alongLuff }: SailBalance) => [head, tack, clew, alongLuff];
const sum = (balance: SailBalance, axis: "aft" | "lee" | "up") =>
  parts(balance).reduce((total, vector) => total + vector[axis], 0);

describe("a sail in balance", () => {
  it("puts the wind and its weight on what holds it, and nothing else", () => {
    fc.assert(
      fc.property(anySail, (sail) => {
        const balance = sailBalance(sail);
        const size = sail.windForce + Object.values(sail.pulls).reduce((total, pull) => total + pull, 1);
        expect(Math.abs(sum(balance, "aft"))).toBeLessThanOrEqual(1e-9 * size);
        expect(Math.abs(sum(balance, "lee") - sail.windForce)).toBeLessThanOrEqual(1e-9 * size);
        expect(Math.abs(sum(balance, "up") + sail.sailMass * standardGravity)).toBeLessThanOrEqual(1e-9 * size);
      }),
      { seed: 17, numRuns: 500 },
    );
  });

  it("puts no moment about the tack on them in its own plane", () => {
    fc.assert(
      fc.property(anySail, (sail) => {
        const { head, clew, clewAt } = sailBalance(sail);
        const { luff } = sail.lengths;
        // About an axis across the sail: the pulls of each edge lie on one line, and the weight hangs above the tack.
        const moment = luff * head.aft + clewAt.up * clew.aft - clewAt.aft * clew.up;
        expect(Math.abs(moment)).toBeLessThanOrEqual(1e-7 * (1 + sail.pulls.leech * luff + sail.pulls.foot * luff));
      }),
      { seed: 17, numRuns: 500 },
    );
  });

  it("hangs its weight on the halyard where nothing else pulls", () => {
    const balance = sailBalance({ ...right, sailMass: 4 });
    expect(halyardOf(balance, "mast")).toBeCloseTo(4 * standardGravity, 12);
    expect([tackOf(balance, "mast"), outhaulOf(balance)]).toEqual([0, 0]);
  });

  it("gives the halyard the leech times the cosine at the head, and the luff as it was set", () => {
    const balance = sailBalance({ ...right, pulls: { luff: 50, leech: 100, foot: 0 } });
    expect(halyardOf(balance, "mast")).toBeCloseTo(50 + 100 * (4 / 5), 12);
    expect(tackOf(balance, "mast")).toBeCloseTo(50, 12);
    expect(outhaulOf(balance)).toBeCloseTo(100 * (3 / 5), 12);
  });

  it("gives the outhaul the foot as well", () => {
    const balance = sailBalance({ ...right, pulls: { luff: 0, leech: 0, foot: 70 } });
    expect(outhaulOf(balance)).toBeCloseTo(70, 12);
    expect(halyardOf(balance, "mast")).toBe(0);
  });

  it("leaves the wind on the luff to mast or stay, and to head and tack where it is set flying", () => {
    const wind = { ...right, windForce: 100 };
    const onMast = sailBalance(wind);
    expect(onMast.alongLuff.lee).toBeCloseTo(30, 12);
    expect(onMast.head.lee).toBeCloseTo(20, 12);
    const flying = sailBalance({ ...wind, luffOn: "flying" });
    expect(flying.alongLuff.lee).toBe(0);
    expect(flying.head.lee).toBeCloseTo(35, 12);
    expect(halyardOf(flying, "flying")).toBeCloseTo(35, 12);
  });

  it("refuses what is no sail", () => {
    expect(() => sailBalance({ ...right, lengths: { luff: 4, leech: 9, foot: 3 } })).toThrow(OutsideModelError);
    expect(() => sailBalance({ ...right, shares: { luff: 0.7, leech: 0.7 } })).toThrow(OutsideModelError);
    expect(() => sailBalance({ ...right, windForce: Number.NaN })).toThrow(ValueError);
    expect(() => sailBalance({ ...right, pulls: { luff: -1, leech: 0, foot: 0 } })).toThrow(ValueError);
  });
});
