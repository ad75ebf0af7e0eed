import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gripDemand, holdersOf, holdingTension } from "../../src/crew/grip-demand.js";
import { gripOnDiameter, type HandHold, holdName, palmFriction } from "../../src/crew/hand-hold.js";
import { axialHold, gloveAnchors, palmAnchors, palmFactors, palmOnCover } from "../../src/materials/people-palm.js";
import { OutsideModelError, ValueError } from "../../src/quantity/errors.js";
import { evenly } from "../numerics/evenly.js";

const hold: HandHold = { cover: { strands: 16, fibre: "polyester", wet: false }, diameter: 0.008, hands: 1 };
const grip = { value: 350, low: 350, high: 350 };

describe("grip demand", () => {
  it("is nothing without tension and grows in step with it", () => {
    expect(gripDemand({ tension: 0, hold, maximumGrip: grip }).gripForce.value).toBe(0);
    const one = gripDemand({ tension: 50, hold, maximumGrip: grip });
    const two = gripDemand({ tension: 100, hold, maximumGrip: grip });
    expect(two.gripForce.value / one.gripForce.value).toBeCloseTo(2, 12);
    expect(two.share.high / one.share.high).toBeCloseTo(2, 12);
  });

  it("is half the tension over the friction: two faces carry it", () => {
    const { value: mu } = palmFriction(hold);
    expect(gripDemand({ tension: 90, hold, maximumGrip: grip }).gripForce.value).toBeCloseTo(90 / (2 * mu), 12);
  });

  it("is the whole of the maximum at the holding tension, middle and ends", () => {
    const most = holdingTension({ hold, maximumGrip: grip });
    expect(gripDemand({ tension: most.value, hold, maximumGrip: grip }).share.value).toBeCloseTo(1, 12);
    expect(gripDemand({ tension: most.low, hold, maximumGrip: grip }).share.high).toBeCloseTo(1, 12);
  });

  it("falls by e^(−μθ) with a wrap round the edge of the hand", () => {
    const wrapped = gripDemand({ tension: 90, hold: { ...hold, wrapAngle: 1 }, maximumGrip: grip });
    const straight = gripDemand({ tension: 90, hold, maximumGrip: grip });
    expect(wrapped.gripForce.value / straight.gripForce.value).toBeCloseTo(Math.exp(-palmFriction(hold).value), 12);
  });

  it("with two hands lies between what two separate hands and one and a bit would give", () => {
    const one = gripDemand({ tension: 90, hold, maximumGrip: grip }).share;
    const two = gripDemand({ tension: 90, hold: { ...hold, hands: 2 }, maximumGrip: grip }).share;
    expect(two.value / one.value).toBe(palmFactors.oneOverTwo.value);
    expect(two.value / one.value).toBeGreaterThan(0.5);
  });

  it("eases with a coarser cover and a stronger hand, everywhere", () => {
    fc.assert(
      fc.property(
        evenly(1, 400),
        evenly(150, 600),
        evenly(0.004, 0.02),
        fc.boolean(),
        (tension, value, diameter, wet) => {
          const share = (strands: 8 | 16 | 24, most: number) =>
            gripDemand({
              tension,
              hold: { ...hold, diameter, cover: { strands, fibre: "polyester", wet } },
              maximumGrip: { value: most, low: most, high: most },
            }).share;
          expect(share(8, value).value).toBeLessThan(share(16, value).value);
          expect(share(16, value).value).toBeLessThan(share(24, value).value);
          expect(share(16, value + 10).value).toBeLessThan(share(16, value).value);
          expect(share(16, value).low).toBeLessThan(share(16, value).value);
          expect(share(16, value).high).toBeGreaterThan(share(16, value).value);
        },
      ),
      { seed: 7 },
    );
  });

  it("refuses what cannot be", () => {
    expect(() => gripDemand({ tension: -1, hold, maximumGrip: grip })).toThrow(ValueError);
    expect(() => gripDemand({ tension: 1, hold, maximumGrip: { value: 0, low: 0, high: 0 } })).toThrow(ValueError);
    expect(() => gripDemand({ tension: 1, hold: { ...hold, diameter: 0.002 }, maximumGrip: grip })).toThrow(ValueError);
    expect(() => gripDemand({ tension: 1, hold: { ...hold, wrapAngle: -1 }, maximumGrip: grip })).toThrow(ValueError);
    expect(() => holdersOf({ tension: 1, hold, norm: "steiber-2016", sex: "men", age: 12 })).toThrow(OutsideModelError);
  });
});

describe("a hand on a rope", () => {
  it("is judged inside what was printed of other things", () => {
    const { low, high } = palmFriction(hold);
    for (const anchor of [
      palmAnchors.clothTapeDry,
      palmAnchors.suedeDry,
      palmAnchors.clothTapeMoist,
      palmAnchors.aluminium,
    ])
      expect(anchor.value > low && anchor.value < high).toBe(true);
  });

  it("holds a printed breakaway pull within its range: one hand along a cylinder, grip of 437 N", () => {
    const handle = { ...hold, diameter: 0.025 };
    const held = holdingTension({ hold: handle, maximumGrip: { value: 437, low: 437, high: 437 } });
    expect(held.low).toBeLessThan(axialHold.value);
    expect(held.high).toBeGreaterThan(axialHold.value);
  });

  it("holds the 40 pounds that a climbing text gives for a bare grip on a rope, within its range", () => {
    const rope = { ...hold, diameter: 0.011 };
    const held = holdingTension({ hold: rope, maximumGrip: { value: 437, low: 292, high: 567 } });
    expect(held.low).toBeLessThan(178);
    expect(held.high).toBeGreaterThan(178);
  });

  it("grips best from 22 to 32 mm, less on thinner and thicker, without a jump", () => {
    expect(gripOnDiameter({ diameter: 0.027 })).toBe(1);
    expect(gripOnDiameter({ diameter: 0.004 })).toBe(palmFactors.thinLine.value);
    let before = 0;
    for (let d = 0.004; d <= 0.022; d += 0.0005) {
      const now = gripOnDiameter({ diameter: d });
      expect(now).toBeGreaterThan(before);
      if (before > 0) expect(now - before).toBeLessThan(0.07);
      before = now;
    }
    expect(gripOnDiameter({ diameter: 0.0762 })).toBeLessThan(gripOnDiameter({ diameter: 0.0635 }));
  });

  it("multiplies cover, fibre, water and glove, and lists its records", () => {
    const worst = palmFriction({ cover: { strands: 8, fibre: "bareCore", wet: true }, glove: true });
    expect(worst.parts).toHaveLength(4);
    expect(worst.value).toBeCloseTo(palmOnCover[8].value * 0.65 * 1 * 1.1, 12);
  });

  it("in a glove is judged to lie between the gloves that were printed", () => {
    const { low, high } = palmFactors.glove;
    expect(low).toBeCloseTo(gloveAnchors.polyester.value / gloveAnchors.bare.value, 2);
    expect(high).toBeCloseTo(gloveAnchors.latex.value / gloveAnchors.bare.value, 2);
  });

  it("has a name", () => {
    expect(holdName({ ...hold, hands: 2, glove: true })).toBe("two gloved hands on 8 mm 16-strand polyester, dry");
  });
});

describe("who can hold it", () => {
  it("is everybody without tension, nobody at a tonne, and fewer with more tension", () => {
    const who = { hold, norm: "mathiowetz-1985", sex: "women", age: 40 } as const;
    expect(holdersOf({ ...who, tension: 0 }).value).toBeCloseTo(1, 6);
    expect(holdersOf({ ...who, tension: 10_000 }).high).toBeLessThan(1e-6);
    fc.assert(
      fc.property(evenly(50, 400), (tension) => {
        const share = holdersOf({ ...who, tension });
        expect(holdersOf({ ...who, tension: tension + 20 }).value).toBeLessThan(share.value);
        expect(share.low >= 0 && share.high <= 1).toBe(true);
      }),
      { seed: 7 },
    );
  });
});
