import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { haul } from "../../src/motion/hoist.js";
import { letOut } from "../../src/motion/run-out.js";
import { standardGravity } from "../../src/quantity/constants.js";
import { prepareLine } from "../../src/reeving/line.js";
import { tackle } from "../../src/reeving/tackle.js";
import { evenly } from "../numerics/evenly.js";
import { limp, wheel } from "../reeving/builders.js";
import { free } from "./rigs.js";

const some = { seed: 7, numRuns: 40 };

describe("textbook motion", () => {
  it("without friction and with a constant force is s = a t² / 2", () => {
    fc.assert(
      fc.property(evenly(0.1, 50), evenly(1, 400), evenly(0.5, 30), (mass, force, way) => {
        const { time, peakSpeed, stall } = haul({
          moving: { line: free, load: { mass: () => mass } },
          lift: way,
          hand: () => force,
        });
        expect(stall).toBeUndefined();
        expect(time).toBeCloseTo(Math.sqrt((2 * way * mass) / force), 5);
        expect(peakSpeed).toBeCloseTo(Math.sqrt((2 * way * force) / mass), 5);
      }),
      some,
    );
  });

  it("of a free fall keeps to g t² / 2", () => {
    const load = { mass: () => 3, weight: () => 3 * standardGravity };
    const { time } = letOut({ moving: { line: free, load }, lift: 8 });
    expect(time).toBeCloseTo(Math.sqrt(16 / standardGravity), 7);
  });

  it("in air is the hyperbolic tangent of time", () => {
    const [mass, drag] = [2, 0.5];
    const load = { mass: () => mass, weight: () => mass * standardGravity, drag };
    const { points } = letOut({ moving: { line: free, load }, lift: 30, tolerance: 1e-9 });
    const terminal = Math.sqrt((mass * standardGravity) / drag);
    for (const { time, speed } of points)
      expect(-speed).toBeCloseTo(terminal * Math.tanh((standardGravity * time) / terminal), 5);
  });

  it("of two bodies over a wheel is that of the difference over the sum", () => {
    fc.assert(
      fc.property(evenly(0.5, 10), evenly(1.05, 4), (light, ratio) => {
        const heavy = light * ratio;
        const load = { mass: () => light, weight: () => light * standardGravity };
        const { time } = haul({
          moving: { line: free, load, handMass: heavy },
          lift: 2,
          hand: () => heavy * standardGravity,
        });
        const acceleration = ((heavy - light) / (heavy + light)) * standardGravity;
        expect(time).toBeCloseTo(Math.sqrt(4 / acceleration), 5);
      }),
      some,
    );
  });

  it("through a purchase counts the mass at the hand with the square of the ratio", () => {
    const line = prepareLine({
      rope: limp,
      stations: [
        { kind: "tackle", name: "tackle", reeving: tackle({ parts: 3, hauledFrom: "fixed", turn: wheel(1) }) },
      ],
    });
    const { time, peakSpeed } = haul({
      moving: { line, load: { mass: () => 4 }, handMass: 0.5 },
      lift: 1,
      hand: () => 10,
    });
    const acceleration = 30 / (4 + 0.5 * 9);
    expect(time).toBeCloseTo(Math.sqrt(2 / acceleration), 6);
    expect(peakSpeed).toBeCloseTo(3 * Math.sqrt(2 * acceleration), 5);
  });

  it("of a rope that slides off a table ends at the speed of its fallen weight", () => {
    const [length, density, g] = [2, 0.1, standardGravity];
    const over = (travel: number) => 0.1 - travel;
    const load = { mass: () => density * length, weight: (travel: number) => density * g * over(travel) };
    const { points } = letOut({ moving: { line: free, load }, lift: length - 0.1 });
    expect(points.at(-1)!.handSpeed).toBeCloseTo(Math.sqrt((g * (length ** 2 - 0.1 ** 2)) / length), 6);
  });

  it("of a chain lifted from a heap at a steady speed asks for its weight and λ v²", () => {
    const [density, speed] = [0.8, 1.5];
    const moving = {
      line: free,
      load: { mass: (travel: number) => density * (1e-6 + travel), gain: () => density },
    };
    const { points } = haul({ moving, lift: 2, hand: () => density * speed ** 2, startSpeed: speed });
    for (const point of points) expect(point.speed).toBeCloseTo(speed, 6);
  });

  it("takes off in both directions alike when nothing but a force acts", () => {
    const load = { mass: () => 2.5 };
    const out = letOut({ moving: { line: free, load: { ...load, wind: () => 12 } }, lift: 3 });
    const home = haul({ moving: { line: free, load }, lift: 3, hand: () => 12 });
    expect(out.time).toBeCloseTo(home.time, 7);
    expect(out.peakSpeed).toBeCloseTo(home.peakSpeed, 7);
  });

  it("nears one result as the tolerance falls", () => {
    const load = { mass: () => 2, weight: () => 15, drag: 0.4 };
    const run = (tolerance: number) => letOut({ moving: { line: free, load }, lift: 9, tolerance }).time;
    const best = run(1e-13);
    const off = [1e-3, 1e-5, 1e-7, 1e-9].map((tolerance) => Math.abs(run(tolerance) - best));
    expect(off[0]).toBeGreaterThan(off[3]!);
    expect(off[1]).toBeLessThan(1e-4);
    expect(off[2]).toBeLessThan(1e-6);
    expect(off[3]).toBeLessThan(1e-8);
  });
});
