import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pulledSide, yieldingSide } from "../../src/reeving/law.js";
import { passageOf } from "../../src/reeving/passage.js";
import { leadLineFactor, ratioFromPull, ratioFromRaiseLower } from "../../src/reeving/rules.js";
import {
  alone,
  asStation,
  num,
  powerRings,
  ropeSystems,
  ropes,
  seed,
  sensingRatchets,
  simpleTackles,
  straightTurns,
  tackleTurns,
  wheel,
} from "./builders.js";

const tackles = asStation(fc.oneof(simpleTackles(straightTurns), ropeSystems(straightTurns)));
const sensing = fc.oneof(sensingRatchets, asStation(simpleTackles(tackleTurns)));

describe("solving back", () => {
  it("finds the least load that draws a hand tension out, exactly", () => {
    fc.assert(
      fc.property(fc.oneof(straightTurns, powerRings, tackles), ropes, num(0.01, 300), (station, rope, hand) => {
        const passage = passageOf(station, rope);
        const load = passage.leastLoad(hand);
        fc.pre(load < 1e6);
        expect(passage.through(load, "easing") / hand).toBeCloseTo(1, 7);
        expect(passage.through(load * (1 - 1e-6), "easing")).toBeLessThan(hand);
      }),
      { ...seed, numRuns: 300 },
    );
  });

  it("finds it for load-sensing ratchets too, on either side of their jump", () => {
    fc.assert(
      fc.property(sensing, ropes, num(0.01, 200), (station, rope, hand) => {
        const passage = passageOf(station, rope);
        const load = passage.leastLoad(hand);
        fc.pre(load < 9e5);
        expect(passage.through(load, "easing")).toBeGreaterThanOrEqual(hand * (1 - 1e-9));
        for (const share of [0.1, 0.5, 0.9, 1 - 1e-6])
          expect(passage.through(share * load, "easing")).toBeLessThan(hand);
      }),
      { ...seed, numRuns: 300 },
    );
  });

  it("undoes a law", () => {
    fc.assert(
      fc.property(num(1, 3), num(0, 10), num(0, 500), (ratio, drag, tension) => {
        expect(yieldingSide({ ratio, drag }, pulledSide({ ratio, drag }, tension))).toBeCloseTo(tension, 9);
      }),
      seed,
    );
  });

  it("finds the ratio of one sheave from the pull of the whole purchase", () => {
    fc.assert(
      fc.property(num(1, 2.5), fc.integer({ min: 2, max: 12 }), fc.integer({ min: 0, max: 2 }), (K, parts, extra) => {
        const sheaves = parts - 1 + extra;
        const pullOverLoad = leadLineFactor({ tensionRatio: K, parts, sheaves });
        fc.pre(pullOverLoad <= 1);
        expect(ratioFromPull({ pullOverLoad, parts, sheaves })).toBeCloseTo(K, 7);
      }),
      seed,
    );
  });

  it("finds the ratio of a turn from the pulls that raise and lower", () => {
    fc.assert(
      fc.property(num(1, 3), num(1, 500), (K, load) => {
        const { hauling, easing } = alone(wheel(K), load);
        expect(ratioFromRaiseLower({ raisingForce: hauling, loweringForce: easing })).toBeCloseTo(K, 9);
      }),
      seed,
    );
  });
});
