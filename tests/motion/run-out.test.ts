import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { letOut, slowingHand } from "../../src/motion/run-out.js";
import { boatLengths, halyardRope, pressingForce } from "../../src/motion/sail.js";
import { ValueError } from "../../src/quantity/errors.js";
import { prepareLine } from "../../src/reeving/line.js";
import { num, seed } from "../reeving/builders.js";
import { down, free, halyardLine, rigs } from "./rigs.js";

const some = { ...seed, numRuns: 40 };

describe("a drop", () => {
  it("with friction above the weight stays up, and says so", () => {
    const { stall, way, time, energy } = letOut({ moving: down({ pressing: 200 }), lift: 7 });
    expect([way, time]).toEqual([0, 0]);
    expect(stall?.travel).toBe(0);
    expect(stall?.reason).toContain("stays where it is");
    expect(energy.gravity).toBe(0);
  });

  it("starts exactly when the load is above the run-out load of the statics", () => {
    fc.assert(
      fc.property(num(0.5, 60), num(0, 0.4), (weight, friction) => {
        const line = prepareLine(halyardLine(friction));
        const { way } = letOut({ moving: { line, load: { mass: () => 1, weight: () => weight } }, lift: 1 });
        expect(way > 0).toBe(weight > line.runOutLoad());
      }),
      some,
    );
  });

  it("with more friction is never faster", () => {
    fc.assert(
      fc.property(rigs, num(1.01, 2), (rig, more) => {
        const run = (friction: number, rubbing: number) => {
          const { stall, time } = letOut({
            moving: down({ ...rig, rubbing }, halyardLine(friction), rig.density),
            lift: 7,
            retrieval: () => 15,
          });
          return stall === undefined ? time : Number.POSITIVE_INFINITY;
        };
        const own = run(rig.friction, rig.rubbing);
        expect(run(more * rig.friction, rig.rubbing)).toBeGreaterThanOrEqual(own - 1e-6);
        expect(run(rig.friction, more * rig.rubbing)).toBeGreaterThanOrEqual(own - 1e-6);
      }),
      some,
    );
  });

  it("that runs against growing friction comes to rest and says where", () => {
    const load = { mass: () => 2, weight: () => 20, rub: (travel: number) => -10 * travel };
    const { stall, way } = letOut({ moving: { line: free, load }, lift: 10 });
    expect(way).toBeCloseTo(4, 5);
    expect(stall?.reason).toContain("4 m");
  });

  it("is held by the hand near its speed, and all that gravity gives beyond losses goes into the hand", () => {
    const hand = slowingHand({ handSpeed: 1, handForce: 60 });
    const { peakSpeed, peakPower, energy } = letOut({ moving: down({ pressing: 0 }), lift: 7, hand });
    expect(peakSpeed).toBeLessThan(1.1);
    expect(peakSpeed).toBeGreaterThan(0.9);
    expect(peakPower).toBeLessThan(66);
    expect(-energy.hand).toBeGreaterThan(20);
  });

  it("with an open hand is faster than with one that slows it", () => {
    const open = letOut({ moving: down({ pressing: 0 }), lift: 7 });
    const slowed = letOut({
      moving: down({ pressing: 0 }),
      lift: 7,
      hand: slowingHand({ handSpeed: 1, handForce: 60 }),
    });
    expect(slowed.time).toBeGreaterThan(open.time);
    expect(slowed.peakSpeed).toBeLessThan(open.peakSpeed);
    expect(open.peakPower).toBe(0);
  });

  it("of a heavy tail runs out slower than of a light one", () => {
    const sheet = (linearDensity: number) =>
      letOut({
        moving: {
          line: free,
          load: { mass: () => 1, wind: () => 30 },
          rope: { linearDensity, loadSide: 0, loadSlope: 0, handSide: 2, handDrop: 0 },
        },
        lift: 5,
      }).time;
    expect(sheet(0.05)).toBeGreaterThan(sheet(0.02));
    expect(sheet(0.02)).toBeGreaterThan(sheet(0.001));
  });
});

describe("a slowing hand", () => {
  it("does nothing below its speed and no more than its grip above", () => {
    const hand = slowingHand({ handSpeed: 2, handForce: 80 });
    expect([hand(0), hand(2), hand(2.2), hand(9)]).toEqual([0, 0, 80, 80].map((force) => expect.closeTo(force, 9)));
    expect(() => slowingHand({ handSpeed: 0, handForce: 80 })).toThrow(ValueError);
  });
});

describe("around the drop", () => {
  it("a pressing force grows with the square of the wind and ends in the lee", () => {
    const wind = { sailArea: 18, apparentWindSpeed: 5, airDensity: 1.225, pressingCoefficient: 0.3, blanketed: 0.5 };
    expect(pressingForce({ ...wind, apparentWindSpeed: 10 })).toBeCloseTo(4 * pressingForce(wind), 10);
    expect(pressingForce({ ...wind, blanketed: 1 })).toBe(0);
    expect(() => pressingForce({ ...wind, blanketed: 1.1 })).toThrow(ValueError);
  });

  it("boat lengths are speed times time over length", () => {
    expect(boatLengths({ boatSpeed: 4, duration: 10, boatLength: 5 })).toBe(8);
    expect(boatLengths({ boatSpeed: 0, duration: 10, boatLength: 5 })).toBe(0);
    expect(() => boatLengths({ boatSpeed: 4, duration: 10, boatLength: 0 })).toThrow(ValueError);
    expect(() => boatLengths({ boatSpeed: -4, duration: 10, boatLength: 5 })).toThrow(ValueError);
  });

  it("a halyard hangs on the side of its sail at the bottom only", () => {
    const halyard = { linearDensity: 0.02, lift: 7, handSide: 8, handDrop: 6 };
    expect(halyardRope(halyard, "bottom").loadSide).toBe(7);
    expect(halyardRope(halyard, "top").loadSide).toBe(0);
  });
});
