import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { camGrip, lockingAngle, lockingFriction } from "../../src/reeving/cam-cleat.js";
import { jammerGrip, selfEnergising } from "../../src/reeving/jammer.js";
import { curvedFaceFriction, frictionAngle, jawGrip } from "../../src/reeving/jaw.js";
import { wedgeFriction } from "../../src/reeving/sliding.js";
import { grooveFactor, ridgeDraw, veeGrip } from "../../src/reeving/vee-cleat.js";
import { wedgeDrive, wedgeRelease } from "../../src/reeving/wedge.js";
import { num, seed } from "./builders.js";

const free = { pivotShare: 0, pivotFriction: 0 };

describe("a jaw", () => {
  const jaw = { preload: 10, preloadArm: 1, frictionArm: 1, normalArm: 0.3, frictionCoefficient: 0.2 };

  it("balances the moments about its pivot", () => {
    fc.assert(
      fc.property(num(1, 100), num(-1, 1), num(0.05, 2), num(0.01, 1.5), (preload, frictionArm, normalArm, mu) => {
        const grip = jawGrip({ preload, preloadArm: 0.5, frictionArm, normalArm, frictionCoefficient: mu });
        expect(grip.selfLocking).toBe(mu * frictionArm >= normalArm);
        if (grip.selfLocking) return;
        expect(grip.normalForce * normalArm).toBeCloseTo(preload * 0.5 + grip.friction * frictionArm, 6);
        expect(grip.friction).toBeCloseTo(mu * grip.normalForce, 9);
      }),
      seed,
    );
  });

  it("does not hold without preload, and locks when friction carries more than the normal force opens", () => {
    expect(jawGrip({ ...jaw, preload: 0 }).friction).toBe(0);
    expect(jawGrip({ ...jaw, frictionCoefficient: 0.3 }).selfLocking).toBe(true);
    expect(jawGrip({ ...jaw, frictionCoefficient: 0.2999 }).friction).toBeGreaterThan(1e4);
  });

  it("refuses what cannot be", () => {
    for (const bad of [{ preload: -1 }, { preloadArm: -1 }, { normalArm: -1 }, { frictionCoefficient: Number.NaN }])
      expect(() => jawGrip({ ...jaw, ...bad })).toThrow(ValueError);
  });

  it("with a curved face has more friction, from that of a flat one to 4 / π of it", () => {
    expect(curvedFaceFriction({ frictionCoefficient: 0.2, wrapAngle: 0 })).toBe(0.2);
    expect(curvedFaceFriction({ frictionCoefficient: 0.2, wrapAngle: 1e-4 })).toBeCloseTo(0.2, 8);
    expect(curvedFaceFriction({ frictionCoefficient: 0.2, wrapAngle: Math.PI })).toBeCloseTo((0.2 * 4) / Math.PI, 12);
  });
});

describe("a cam cleat", () => {
  it("locks exactly when the friction angle reaches the cam angle, a free pivot taken", () => {
    fc.assert(
      fc.property(num(0.02, 0.6), num(0.01, 1), (camAngle, mu) => {
        const { selfLocking } = camGrip({ ...free, camAngle, frictionCoefficient: mu, spring: 7 });
        fc.pre(Math.abs(mu - Math.tan(camAngle)) > 1e-9);
        expect(selfLocking).toBe(frictionAngle(mu) > camAngle);
      }),
      seed,
    );
  });

  it("needs more friction with a rough pivot, none more with a smooth or tiny one", () => {
    fc.assert(
      fc.property(num(0.02, 0.5), num(0.01, 0.5), num(0.01, 0.5), (camAngle, pivotShare, pivotFriction) => {
        const rough = lockingFriction({ camAngle, pivotShare, pivotFriction });
        expect(rough).toBeGreaterThan(Math.tan(camAngle));
        expect(lockingFriction({ camAngle, pivotShare: 0, pivotFriction })).toBeCloseTo(Math.tan(camAngle), 12);
        expect(lockingAngle({ camAngle, pivotShare, pivotFriction: 0 })).toBe(camAngle);
      }),
      seed,
    );
  });

  it("that does not lock holds by its springs alone, and more with more friction", () => {
    const slip = (spring: number, frictionCoefficient: number) =>
      camGrip({ ...free, camAngle: 0.3, frictionCoefficient, spring }).friction;
    expect(slip(0, 0.1)).toBe(0);
    expect(slip(14, 0.1)).toBeCloseTo(2 * slip(7, 0.1), 9);
    expect(slip(7, 0.2)).toBeGreaterThan(slip(7, 0.1));
    expect(slip(7, 0)).toBe(0);
  });
});

describe("a V groove", () => {
  it("gives back what was tested at 70°, and the theory when the test agrees with it", () => {
    const seventy = (70 * Math.PI) / 180;
    expect(grooveFactor({ grooveAngle: seventy, testedFactor: 1.25 })).toBeCloseTo(1.25, 12);
    fc.assert(
      fc.property(num(0.3, 3.1), (grooveAngle) => {
        const theory = wedgeFriction({ frictionCoefficient: 1, grooveAngle });
        expect(grooveFactor({ grooveAngle, testedFactor: 1 / Math.sin(seventy / 2) })).toBeCloseTo(theory, 9);
        expect(grooveFactor({ grooveAngle, testedFactor: 1 })).toBe(1);
        const tested = grooveFactor({ grooveAngle, testedFactor: 1.25 });
        expect(tested >= 1 && tested <= theory + 1e-12).toBe(true);
      }),
      seed,
    );
  });

  it("whose ridges run across the rope draws nothing down", () =>
    expect(ridgeDraw({ ridgeAngle: Math.PI / 2, wallFriction: 0 })).toBeCloseTo(0, 12));

  it("holds what was pressed in when its ridges draw nothing, more when they do, and locks in the end", () => {
    const vee = { frictionCoefficient: 0.5, grooveFactor: 1.5, wallFriction: 0, press: 60 };
    expect(veeGrip({ ...vee, ridgeAngle: Math.PI / 2 }).friction).toBeCloseTo(0.5 * 1.5 * 60, 6);
    expect(veeGrip({ ...vee, ridgeAngle: Math.PI / 4 }).friction).toBeCloseTo(45 / (1 - 0.75), 6);
    expect(veeGrip({ ...vee, ridgeAngle: Math.PI / 6 }).selfLocking).toBe(true);
  });

  it("refuses a groove without angle", () =>
    expect(() => grooveFactor({ grooveAngle: 0, testedFactor: 1.25 })).toThrow(ValueError));
});

describe("a jammer", () => {
  it("without friction on the jaw keeps the lever's own grip", () => {
    expect(selfEnergising({ camAngle: 0.4, frictionCoefficient: 0 })).toBe(1);
    const { friction } = jammerGrip({
      camAngle: Math.PI / 2,
      frictionCoefficient: 0.2,
      plateFriction: 0.1,
      preload: 100,
    });
    expect(friction).toBeCloseTo(30, 9);
  });

  it("multiplies it as its friction nears the jaw's angle, and locks there", () => {
    fc.assert(
      fc.property(num(0.1, 1), num(0.01, 0.99), (camAngle, share) => {
        const mu = Math.min(2, share * Math.tan(camAngle));
        const grip = (frictionCoefficient: number) =>
          jammerGrip({ camAngle, frictionCoefficient, plateFriction: 0, preload: 100 }).normalForce;
        expect(grip(mu) / grip(0)).toBeCloseTo(selfEnergising({ camAngle, frictionCoefficient: mu }), 6);
      }),
      seed,
    );
    expect(selfEnergising({ camAngle: 0.2, frictionCoefficient: 0.3 })).toBe(Number.POSITIVE_INFINITY);
    expect(jammerGrip({ camAngle: 0.2, frictionCoefficient: 0.3, plateFriction: 0.1, preload: 1 }).selfLocking).toBe(
      true,
    );
  });
});

describe("a wedge", () => {
  it("takes the squeeze times its slope without friction, both ways", () => {
    const smooth = { squeeze: 100, slopeAngle: 0.3, frictionCoefficient: 0 };
    expect(wedgeDrive(smooth)).toBeCloseTo(100 * Math.tan(0.3), 12);
    expect(wedgeRelease(smooth)).toBeCloseTo(-wedgeDrive(smooth), 12);
  });

  it("must be drawn out exactly when friction beats its slope", () => {
    fc.assert(
      fc.property(num(0, 1), num(0, 1), (slopeAngle, frictionCoefficient) => {
        const release = wedgeRelease({ squeeze: 100, slopeAngle, frictionCoefficient });
        expect(Math.sign(release)).toBe(Math.sign(frictionAngle(frictionCoefficient) - slopeAngle));
      }),
      seed,
    );
  });

  it("cannot be driven when friction and slope make a quarter turn", () =>
    expect(wedgeDrive({ squeeze: 1, slopeAngle: 1, frictionCoefficient: 2 })).toBe(Number.POSITIVE_INFINITY));
});
