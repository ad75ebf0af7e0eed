import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { prepareLine } from "../../src/reeving/line.js";
import type { Reeving } from "../../src/reeving/reeving.js";
import type { Turn } from "../../src/reeving/station.js";
import { limp, lineOf, readyOrNot, ropeSystems, seed, simpleTackles, wheel, wildReevings } from "./builders.js";

const free = fc.constant<Turn>(wheel(1));
const tame = fc.oneof(simpleTackles(free), ropeSystems(free));

const advantage = (reeving: Reeving, load: number) => load / prepareLine(lineOf(reeving)).handForces(load).hauling;

describe("virtual work", () => {
  it("gives every purchase without friction its velocity ratio as advantage", () => {
    fc.assert(
      fc.property(tame, (reeving) => {
        const { velocityRatio } = prepareLine(lineOf(reeving));
        expect(advantage(reeving, 300) / velocityRatio).toBeCloseTo(1, 10);
      }),
      seed,
    );
  });

  it("holds for ropes led anyhow between two blocks and two anchors", () => {
    let purchases = 0;
    fc.assert(
      fc.property(wildReevings(free), (reeving) => {
        const mechanism = readyOrNot(reeving);
        if (mechanism === undefined) return;
        purchases += 1;
        expect(advantage(reeving, 300) / mechanism.velocityRatio).toBeCloseTo(1, 8);
      }),
      { ...seed, numRuns: 2000 },
    );
    expect(purchases).toBeGreaterThan(60);
  });

  it("leaves hauling and easing no gap without friction", () => {
    fc.assert(
      fc.property(tame, (reeving) => {
        const { deadBand, runOutLoad, efficiency } = prepareLine(lineOf(reeving, limp)).handForces(500);
        expect(Math.abs(deadBand)).toBeLessThan(1e-9);
        expect(Math.abs(runOutLoad)).toBeLessThan(1e-9);
        expect(efficiency).toBeCloseTo(1, 10);
      }),
      seed,
    );
  });
});
