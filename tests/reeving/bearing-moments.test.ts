import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { bearingRatio } from "../../src/reeving/bearing.js";
import { collarMoment, frictionOfMoment, sealDrag } from "../../src/reeving/bearing-moments.js";
import { sideLeadLoss } from "../../src/reeving/side-lead.js";
import { num, seed } from "./builders.js";

describe("moment of a collar", () => {
  it("is two thirds of the rim's for a disc, and the rim's for a thin collar", () => {
    fc.assert(
      fc.property(num(0.01, 1), num(1, 1000), num(0.005, 0.5), (frictionCoefficient, axialForce, outerRadius) => {
        const rim = frictionCoefficient * axialForce * outerRadius;
        const of = (innerRadius: number) => collarMoment({ frictionCoefficient, axialForce, outerRadius, innerRadius });
        expect(of(0) / rim).toBeCloseTo(2 / 3, 12);
        expect(of(outerRadius) / rim).toBeCloseTo(1, 12);
        expect(of(0.5 * outerRadius)).toBeGreaterThan(of(0.4 * outerRadius));
      }),
      seed,
    );
  });

  it("agrees with the quotient of cubes and squares", () => {
    const moment = collarMoment({ frictionCoefficient: 0.3, axialForce: 10, outerRadius: 0.04, innerRadius: 0.01 });
    expect(moment).toBeCloseTo((2 / 3) * 0.3 * 10 * ((0.04 ** 3 - 0.01 ** 3) / (0.04 ** 2 - 0.01 ** 2)), 14);
  });

  it("refuses an inner edge outside the outer one", () => {
    expect(() =>
      collarMoment({ frictionCoefficient: 0.1, axialForce: 1, outerRadius: 0.01, innerRadius: 0.02 }),
    ).toThrow(ValueError);
  });
});

describe("friction from a measured moment", () => {
  it("gives the sheave the loss of that moment", () => {
    fc.assert(
      fc.property(num(1e-4, 0.05), num(100, 5000), (frictionMoment, bearingLoad) => {
        const pinRadius = 0.01;
        const bearingFriction = frictionOfMoment({ frictionMoment, bearingLoad, pinRadius });
        const k = bearingRatio({ bearingFriction, pinRadius, pitchDiameter: 0.06, wrapAngle: Math.PI });
        // Both tensions together load the bearing: T (1 + k) = F.
        const tension = bearingLoad / (1 + k);
        expect(((k - 1) * tension * 0.03) / frictionMoment).toBeCloseTo(1, 9);
      }),
      seed,
    );
  });

  it("refuses a moment that no bearing has", () => {
    expect(() => frictionOfMoment({ frictionMoment: 100, bearingLoad: 1, pinRadius: 0.01 })).toThrow(ValueError);
    expect(() => frictionOfMoment({ frictionMoment: 0.1, bearingLoad: 0, pinRadius: 0.01 })).toThrow(ValueError);
  });
});

describe("drag of seals", () => {
  const seal = { sealFriction: 10, pinDiameter: 0.02, pitchDiameter: 0.06 };
  it("grows with the square of the pin, and falls with the sheave", () => {
    expect(sealDrag({ ...seal, pinDiameter: 0.04 }) / sealDrag(seal)).toBeCloseTo(4, 12);
    expect(sealDrag({ ...seal, pitchDiameter: 0.12 }) / sealDrag(seal)).toBeCloseTo(0.5, 12);
    expect(sealDrag({ ...seal, seals: 0 })).toBe(0);
    expect(sealDrag({ ...seal, seals: 2 })).toBe(sealDrag(seal));
  });

  it("balances moments: lip times radius against pull times radius", () => {
    const moment = 2 * 10 * Math.PI * 0.02 * 0.01;
    expect(sealDrag(seal)).toBeCloseTo(moment / 0.03, 12);
  });

  it("refuses what cannot be", () => {
    expect(() => sealDrag({ ...seal, sealFriction: -1 })).toThrow(ValueError);
    expect(() => sealDrag({ ...seal, pitchDiameter: 0 })).toThrow(ValueError);
  });
});

describe("a line that leads off the plane of its sheave", () => {
  const lead = {
    tension: 300,
    leadAngle: 0.1,
    sideFriction: { value: 0.2, low: 0.1, high: 0.35 },
    sheaveDiameter: 0.04,
    ropeDiameter: 0.006,
    innerShare: 0.2,
  };
  it("costs nothing when it leads true, and more the farther it leads off", () => {
    expect(sideLeadLoss({ ...lead, leadAngle: 0 }).value).toBe(0);
    expect(sideLeadLoss({ ...lead, leadAngle: 0.2 }).value).toBeGreaterThan(1.9 * sideLeadLoss(lead).value);
  });

  it("grows in step with tension and friction", () => {
    const { value, low, high } = sideLeadLoss(lead);
    expect(sideLeadLoss({ ...lead, tension: 600 }).value).toBeCloseTo(2 * value, 12);
    expect(low).toBeCloseTo(value / 2, 12);
    expect(high).toBeCloseTo(1.75 * value, 12);
  });

  it("refuses a lead from behind", () => {
    expect(() => sideLeadLoss({ ...lead, leadAngle: 2 })).toThrow(ValueError);
    expect(() => sideLeadLoss({ ...lead, innerShare: 1.5 })).toThrow(ValueError);
  });
});
