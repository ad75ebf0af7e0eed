import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hillForce, meanForce } from "../../src/motion/hill.js";
import { haul } from "../../src/motion/hoist.js";
import { closedBalance, imbalanceAllowed } from "../../src/motion/ledger.js";
import { letOut, slowingHand } from "../../src/motion/run-out.js";
import { halyardRope, sailComingDown, sailGoingUp } from "../../src/motion/sail.js";
import { OutsideModelError } from "../../src/quantity/errors.js";
import { prepareLine } from "../../src/reeving/line.js";
import { num, ropes, seed } from "../reeving/builders.js";
import { down, halyardLine, hand, rigs, strokes, up } from "./rigs.js";

const some = { ...seed, numRuns: 60 };

describe("work of crew, gravity and wind", () => {
  it("is kinetic energy and losses, in every hoist within 0.1 %", () => {
    fc.assert(
      fc.property(rigs, fc.boolean(), (rig, inStrokes) => {
        const { energy } = haul({
          moving: up(rig, halyardLine(rig.friction), rig.density),
          lift: 7,
          hand: hillForce({ greatestPull: rig.pull, greatestSpeed: rig.top, curvature: 0.25 }),
          ...(inStrokes && { strokes }),
          patience: 60,
        });
        expect(Math.abs(energy.imbalance)).toBeLessThan(imbalanceAllowed);
        for (const loss of [energy.sail, energy.stations, energy.joining, energy.stopped])
          expect(loss).toBeGreaterThanOrEqual(-1e-9);
      }),
      some,
    );
  });

  it("is kinetic energy and losses, in every drop within 0.1 %, and the hand takes energy out", () => {
    fc.assert(
      fc.property(rigs, num(0.5, 6), num(0, 100), fc.boolean(), (rig, handSpeed, handForce, drawn) => {
        const pull = hillForce({ greatestPull: rig.pull, greatestSpeed: rig.top, curvature: 0.25 });
        const { energy } = letOut({
          moving: down(rig, halyardLine(rig.friction), rig.density),
          lift: 7,
          hand: slowingHand({ handSpeed, handForce }),
          ...(drawn && { retrieval: meanForce(pull, strokes) }),
          patience: 60,
        });
        expect(Math.abs(energy.imbalance)).toBeLessThan(imbalanceAllowed);
        expect(energy.hand).toBeLessThanOrEqual(1e-9);
        expect(energy.retrieval).toBeGreaterThanOrEqual(0);
        for (const loss of [energy.sail, energy.stations, energy.joining]) expect(loss).toBeGreaterThanOrEqual(-1e-9);
      }),
      some,
    );
  });

  it("closes for ropes of any stiffness over a ring whose friction falls with load", () => {
    fc.assert(
      fc.property(ropes, num(0, 0.3), num(0.5, 1), (rope, frictionCoefficient, exponent) => {
        const line = prepareLine({
          rope,
          stations: [
            {
              kind: "ring",
              name: "ring",
              wrapAngle: 2,
              diameter: 0.02,
              frictionCoefficient,
              loadDependence: { exponent, referenceTension: 50 },
            },
          ],
        });
        const common = { sailMass: 2, lift: 6, headShare: 0.1, pressing: 20, rubbing: 0.2 };
        const halyard = { linearDensity: 0.02, lift: 6, handSide: 5, handDrop: 4 };
        const rise = haul({
          moving: { line, load: sailGoingUp(common), rope: halyardRope(halyard, "bottom") },
          lift: 6,
          hand,
          strokes,
        });
        const fall = letOut({
          moving: { line, load: sailComingDown(common), rope: halyardRope(halyard, "top") },
          lift: 6,
          retrieval: () => 20,
        });
        for (const { energy } of [rise, fall]) expect(Math.abs(energy.imbalance)).toBeLessThan(imbalanceAllowed);
      }),
      some,
    );
  });

  it("loses at the stations what the statics lose there, station by station", () => {
    const prepared = prepareLine(halyardLine());
    const steady = { line: prepared, load: { mass: () => 1e-3, weight: () => 40 } };
    const { energy } = haul({ moving: steady, lift: 5, hand: () => prepared.handForce(40, "hauling") * 1.0001 });
    const perMetre = prepared.state(40, "hauling").stations.reduce((sum, { loss }) => sum + loss, 0);
    expect(energy.stations / 5).toBeCloseTo(perMetre, 2);
  });

  it("is refused when it does not close", () => {
    const works = {
      hand: 10,
      retrieval: 0,
      gravity: 0,
      wind: 0,
      kinetic: 9.9,
      sail: 0,
      stations: 0,
      joining: 0,
      stopped: 0,
    };
    expect(() => closedBalance(works)).toThrow(OutsideModelError);
    expect(closedBalance({ ...works, kinetic: 10 }).imbalance).toBe(0);
    expect(closedBalance({ ...works, hand: 0, kinetic: 0 }).imbalance).toBe(0);
  });
});
