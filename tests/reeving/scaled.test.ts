import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { prepareLine } from "../../src/reeving/line.js";
import type { Station } from "../../src/reeving/reeving.js";
import { factorNames, scaledLine } from "../../src/reeving/scaled.js";
import {
  alone,
  asStation,
  cleats,
  linesOf,
  num,
  ratchet,
  ring,
  seed,
  sheave,
  simpleTackles,
  stiff,
  straightTurns,
  wheel,
} from "./builders.js";

const anything: fc.Arbitrary<Station> = fc.oneof(straightTurns, cleats, asStation(simpleTackles(straightTurns)));

describe("factors on the causes of a line", () => {
  it("of 1 change nothing, and the given line is left alone", () => {
    fc.assert(
      fc.property(linesOf(anything), num(1, 2000), (line, load) => {
        const before = JSON.stringify(line);
        const ones = Object.fromEntries(factorNames.map((name) => [name, 1]));
        expect(prepareLine(scaledLine(line, ones)).handForces(load)).toEqual(prepareLine(line).handForces(load));
        expect(JSON.stringify(line)).toBe(before);
      }),
      seed,
    );
  });

  it("of 0 on everything leave only cheeks and cleats", () => {
    const none = { bearing: 0, bending: 0, sliding: 0, tread: 0, drag: 0 };
    for (const turn of [sheave, ring, ratchet, wheel(1.3, 4)]) {
      const { rope, stations } = scaledLine({ rope: stiff, stations: [turn] }, none);
      expect(alone(stations[0]!, 100, rope)).toMatchObject({ hauling: 100, easing: 100 });
    }
  });

  it("act on their own cause: twice the sliding is twice the logarithm of the ratio", () => {
    const { stations } = scaledLine({ rope: stiff, stations: [ring] }, { sliding: 2, bearing: 9, tread: 9 });
    expect(stations[0]).toMatchObject({ frictionCoefficient: 0.24, wrapAngle: 1.5 });
    const measured = scaledLine({ rope: stiff, stations: [wheel(1.1, 3)] }, { bearing: 2, drag: 3 }).stations[0];
    expect(measured).toMatchObject({ drag: 9 });
    expect((measured as { tensionRatio: number }).tensionRatio).toBeCloseTo(1.2, 12);
    const locked = scaledLine({ rope: stiff, stations: [ratchet] }, { tread: 2, sliding: 9 }).stations[0];
    expect(locked).toMatchObject({ treadFriction: 0.7, bearingFriction: 0.12 });
  });

  it("reach the turns inside a tackle", () => {
    fc.assert(
      fc.property(simpleTackles(straightTurns), (reeving) => {
        const line = { rope: stiff, stations: [{ kind: "tackle" as const, name: "tackle", reeving }] };
        const none = { bearing: 0, bending: 0, sliding: 0, tread: 0, drag: 0 };
        const { hauling, easing } = prepareLine(scaledLine(line, none)).handForces(100);
        const narrow = reeving.ropes[0]!.turns.some(({ turn }) => "grooveWidth" in turn);
        if (!narrow) expect(hauling).toBeCloseTo(easing, 9);
      }),
      seed,
    );
  });
});
