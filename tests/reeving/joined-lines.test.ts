import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { joinedForces, prepareJoined } from "../../src/reeving/joined-lines.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import type { Turn } from "../../src/reeving/station.js";
import { tackle } from "../../src/reeving/tackle.js";
import { evenly } from "../numerics/evenly.js";

const soft = { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 };
const part = (tensionRatio: number, drag: number, name = "block"): Line => ({
  rope: { diameter: 0.006, stiffness: soft },
  stations: [{ kind: "measured", name, tensionRatio, drag }],
});

describe("a line of several ropes", () => {
  it("of one rope feels as that line does, cut or whole", () => {
    fc.assert(
      fc.property(evenly(1, 2), evenly(0, 5), evenly(1, 2), evenly(0, 5), evenly(1, 1000), (k, c, l, d, load) => {
        const [one, other] = [part(k, c), part(l, d, "ratchet")];
        const whole = prepareLine({ ...one, stations: [...one.stations, ...other.stations] }).handForces(load);
        const cut = joinedForces([one, other], load);
        expect(cut.hauling).toBeCloseTo(whole.hauling, 9);
        expect(cut.easing).toBeCloseTo(whole.easing, 9);
        expect(cut.runOutLoad).toBeCloseTo(whole.runOutLoad, 6);
      }),
      { seed: 7 },
    );
  });

  it("has the stations of that line, in both directions, wherever it is cut", () => {
    const turns = [part(1.2, 1, "a"), part(1.1, 0.5, "b"), part(1.3, 0, "c")];
    const sheave: Turn = { kind: "measured", name: "sheave", tensionRatio: 1.1 };
    const purchase = (name: string, parts: number): Line => ({
      rope: turns[0]!.rope,
      stations: [{ kind: "tackle", name, reeving: tackle({ parts, hauledFrom: "fixed", turn: sheave }) }],
    });
    const pieces = [purchase("first", 2), turns[0]!, purchase("second", 3), turns[1]!, turns[2]!];
    const stationsOf = (some: readonly Line[]) => some.flatMap(({ stations }) => stations);
    const whole = prepareLine({ rope: turns[0]!.rope, stations: stationsOf(pieces) });
    for (const at of [1, 2, 3, 4]) {
      const cut = prepareJoined(
        [pieces.slice(0, at), pieces.slice(at)].map((some) => ({ rope: turns[0]!.rope, stations: stationsOf(some) })),
      );
      expect(cut.velocityRatio).toBeCloseTo(6, 9);
      expect(cut.runOutLoad(3)).toBeCloseTo(whole.runOutLoad(3), 9);
      expect(cut.handForces(500).efficiency).toBeCloseTo(whole.handForces(500).efficiency, 9);
      for (const direction of ["hauling", "easing"] as const) {
        const [one, other] = [cut.state(500, direction), whole.state(500, direction)];
        expect(one.handForce).toBeCloseTo(other.handForce, 9);
        expect(one.moves).toBe(other.moves);
        one.stations.forEach((station, index) => {
          const same = other.stations[index]!;
          expect(station.name).toBe(same.name);
          for (const key of ["loadTension", "handTension", "lineSpeed", "loss"] as const)
            expect(station[key]).toBeCloseTo(same[key], 9);
        });
      }
    }
  });

  it("goes out a little above its run-out load and not below", () => {
    const parts = [part(1.2, 0.5), part(1.5, 2)];
    const { runOutLoad } = joinedForces(parts, 100);
    expect(runOutLoad).toBeCloseTo(1.2 * 2 + 0.5, 9);
    expect(joinedForces(parts, 1.001 * runOutLoad).easing).toBeGreaterThan(0);
    expect(joinedForces(parts, 0.999 * runOutLoad).easing).toBe(0);
  });

  it("without drag has no run-out load", () => {
    expect(joinedForces([part(1.2, 0), part(1.1, 0)], 50).runOutLoad).toBe(0);
  });

  it("needs a part, and a load that can be", () => {
    expect(() => joinedForces([], 100)).toThrow(ValueError);
    expect(() => joinedForces([part(1.1, 0)], Number.NaN)).toThrow(/load-side tension/u);
  });
});
