import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hillForce, meanForce } from "../../src/motion/hill.js";
import { haul } from "../../src/motion/hoist.js";
import { ValueError } from "../../src/quantity/errors.js";
import { prepareLine } from "../../src/reeving/line.js";
import { num, seed } from "../reeving/builders.js";
import { crew, free, halyardLine, hand, rigs, strokes, up } from "./rigs.js";

const some = { ...seed, numRuns: 30 };
const even = meanForce(hand, strokes);
const hoist = (moving = up(), law = even) => haul({ moving, lift: 7, hand: law });

/** Time of a hoist, without end when it stalls. */
const timeOf = (moving = up(), law = even) => {
  const { stall, time } = hoist(moving, law);
  return stall === undefined ? time : Number.POSITIVE_INFINITY;
};

describe("a hoist", () => {
  it("with more sail is never faster", () => {
    fc.assert(
      fc.property(rigs, num(1.01, 2), (rig, more) => {
        const line = halyardLine(rig.friction);
        const light = timeOf(up(rig, line, rig.density));
        const heavy = timeOf(up({ ...rig, sailMass: more * rig.sailMass }, line, rig.density));
        expect(heavy).toBeGreaterThanOrEqual(light - 1e-6);
      }),
      some,
    );
  });

  it("with more friction, at the blocks or at the sail, is never faster", () => {
    fc.assert(
      fc.property(rigs, num(1.01, 2), (rig, more) => {
        const own = timeOf(up(rig, halyardLine(rig.friction), rig.density));
        const blocks = timeOf(up(rig, halyardLine(more * rig.friction), rig.density));
        const rubs = timeOf(up({ ...rig, rubbing: more * rig.rubbing }, halyardLine(rig.friction), rig.density));
        expect(Math.min(blocks, rubs)).toBeGreaterThanOrEqual(own - 1e-6);
      }),
      some,
    );
  });

  it("of a wet line is slower than of a dry one when what the rope weighs has to be lifted", () => {
    const upward = (density: number) => {
      const moving = up({}, halyardLine(), density);
      return timeOf({ ...moving, rope: { ...moving.rope!, handDrop: 0 } });
    };
    expect(upward(0.05)).toBeGreaterThan(upward(0.025));
    expect(upward(0.025)).toBeGreaterThan(upward(0.005));
  });

  it("of a stronger crew is never slower", () => {
    const times = [150, 200, 300, 500].map((greatestPull) =>
      timeOf(up(), meanForce(hillForce({ ...crew, greatestPull }), strokes)),
    );
    for (const [index, time] of times.slice(1).entries()) expect(time).toBeLessThan(times[index]!);
  });

  it("is never faster than the hand at its greatest speed", () => {
    fc.assert(
      fc.property(rigs, (rig) => {
        const law = hillForce({ greatestPull: rig.pull, greatestSpeed: rig.top, curvature: 0.25 });
        const { peakSpeed } = haul({ moving: up(rig, halyardLine(rig.friction), rig.density), lift: 7, hand: law });
        expect(peakSpeed).toBeLessThanOrEqual(rig.top);
      }),
      some,
    );
  });
});

describe("strokes", () => {
  it("make the speed pulse: it rests between pulls, and the pulls are counted", () => {
    const { points, strokes: pulls, peakSpeed } = haul({ moving: up(), lift: 7, hand, strokes });
    expect(pulls).toBeGreaterThanOrEqual(7);
    expect(pulls).toBeLessThanOrEqual(Math.ceil(7 / 0.6));
    const falls = points.filter(({ speed }, index) => index > 0 && speed === 0 && points[index - 1]!.speed > 0);
    expect(falls.length).toBeGreaterThan(2);
    expect(peakSpeed).toBeGreaterThan(1);
  });

  it("come to the mean pull where mass counts for little and nothing coasts", () => {
    const load = { mass: () => 0.01, weight: () => 60 };
    const moving = { line: prepareLine(halyardLine()), load };
    const inStrokes = haul({ moving, lift: 6, hand, strokes });
    const steady = haul({ moving, lift: 6, hand: even });
    expect(Math.abs(inStrokes.time - steady.time)).toBeLessThan(0.06 * steady.time);
  });

  it("of no pause are one pull", () => {
    const without = haul({ moving: up(), lift: 7, hand, strokes: { ...strokes, pullingShare: 1 } });
    const one = haul({ moving: up(), lift: 7, hand });
    expect(without.time).toBeCloseTo(one.time, 4);
  });
});

describe("a hoist that stalls", () => {
  it("is said with its height, where the pull is what the line asks for, but for a crawl", () => {
    const load = { mass: () => 2, weight: (travel: number) => 50 * travel };
    const { stall } = haul({ moving: { line: free, load }, lift: 7, hand: meanForce(hand, strokes), tolerance: 1e-9 });
    expect(stall?.travel).toBeGreaterThan(hand(0.04) / 50);
    expect(stall?.travel).toBeLessThan(5.2);
    expect(stall?.reason).toContain("250 N");
  });

  it("at the start has gone nowhere", () => {
    const load = { mass: () => 40, weight: () => 400 };
    const { stall, time, way, energy } = haul({ moving: { line: free, load }, lift: 7, hand, strokes });
    expect(stall?.travel).toBe(0);
    expect(stall?.reason).toContain("250 N");
    expect([time, way, energy.hand]).toEqual([0, 0, 0]);
  });

  it("in strokes stands where the dead band holds it", () => {
    const load = { mass: () => 2, weight: (travel: number) => 50 * travel };
    const line = prepareLine(halyardLine(0.4));
    const { stall, way } = haul({ moving: { line, load }, lift: 7, hand, strokes });
    const needed = line.handForces(50 * way);
    expect(stall).toBeDefined();
    expect(needed.hauling).toBeGreaterThan(hand(0.04));
    expect(needed.easing).toBeLessThan(250);
  });

  it("or takes too long is no exception", () => {
    const { stall, time } = haul({ moving: up(), lift: 7, hand: even, patience: 1 });
    expect(stall?.reason).toContain("time allowed");
    expect(time).toBeCloseTo(1, 9);
  });
});

describe("bad input", () => {
  it.each([
    ["no mass", () => haul({ moving: { line: free, load: { mass: () => 0 } }, lift: 1, hand })],
    [
      "a mass that is no number",
      () => haul({ moving: { line: free, load: { mass: () => Number.NaN } }, lift: 1, hand }),
    ],
    ["a sail without mass", () => hoist(up({ sailMass: 0 }))],
    ["no lift", () => haul({ moving: up(), lift: 0, hand })],
    ["a share above one", () => hoist(up({ headShare: 1.5 }))],
    ["a tolerance of nothing", () => haul({ moving: up(), lift: 7, hand, tolerance: 0 })],
    ["a start below rest", () => haul({ moving: up(), lift: 7, hand, startSpeed: -1 })],
    ["rope of no mass", () => hoist(up({}, halyardLine(), 0))],
    ["patience without end", () => haul({ moving: up(), lift: 7, hand, patience: Number.POSITIVE_INFINITY })],
  ])("%s is refused", (_, run) => {
    expect(run).toThrow(ValueError);
  });
});
