import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ReevingError } from "../../src/quantity/errors.js";
import { prepareLine } from "../../src/reeving/line.js";
import type { Reeving } from "../../src/reeving/reeving.js";
import { doubleBurton, firstSystem, thirdSystem } from "../../src/reeving/systems.js";
import { lineOf, num, seed, wheel } from "./builders.js";

const ratio = num(1, 1.5);
const forces = (reeving: Reeving, load = 1) => prepareLine(lineOf(reeving)).handForces(load);

describe("systems of several ropes, by hand", () => {
  it("first system: every block passes on K/(1+K) of its load, the lead adds one K", () => {
    fc.assert(
      fc.property(ratio, fc.integer({ min: 1, max: 8 }), (K, ropes) => {
        const { hauling, easing, velocityRatio } = forces(firstSystem({ ropes, turn: wheel(K) }));
        expect(hauling / ((K / (1 + K)) ** ropes * K)).toBeCloseTo(1, 11);
        expect(easing / (1 / (1 + K) ** ropes / K)).toBeCloseTo(1, 11);
        expect(velocityRatio).toBeCloseTo(2 ** ropes, 9);
      }),
      seed,
    );
  });

  it("single burton: W = P/K + (P + P/K)/K while hauling, W = KP + K(P + KP) while easing", () => {
    fc.assert(
      fc.property(ratio, (K) => {
        const { hauling: P, easing: E } = forces(thirdSystem({ ropes: 2, turn: wheel(K) }));
        expect(P * (1 / K + 1 / K + 1 / K ** 2)).toBeCloseTo(1, 12);
        expect(E * (K + K + K ** 2)).toBeCloseTo(1, 12);
      }),
      seed,
    );
  });

  it("third system: every rope takes its own share, the sum of all shares is the load", () => {
    fc.assert(
      fc.property(ratio, fc.integer({ min: 1, max: 8 }), (K, ropes) => {
        // Walking back from the hand: `held` is what holds the block that the rope hauls on.
        let held = 1;
        let load = 0;
        for (let rope = ropes; rope >= 1; rope--) {
          const share = held / K;
          load += share;
          held += share;
        }
        const { hauling, velocityRatio } = forces(thirdSystem({ ropes, turn: wheel(K) }));
        expect(hauling * load).toBeCloseTo(1, 11);
        expect(velocityRatio).toBeCloseTo(2 ** ropes - 1, 9);
      }),
      seed,
    );
  });

  it("double burton of three singles: W = P (2/K + 2/K² + 1/K³)", () => {
    fc.assert(
      fc.property(ratio, (K) => {
        const { hauling, velocityRatio } = forces(doubleBurton({ form: "three singles", turn: wheel(K) }));
        expect(hauling * (2 / K + 2 / K ** 2 + 1 / K ** 3)).toBeCloseTo(1, 12);
        expect(velocityRatio).toBeCloseTo(5, 12);
      }),
      seed,
    );
  });

  it("double burton of a double and singles: the fall passes three sheaves and starts at the load", () => {
    fc.assert(
      fc.property(ratio, (K) => {
        // Parts of the fall from the hand: P, P/K, P/K² over the load block, P/K³ from the load; runner (P + P/K)/K.
        const { hauling, velocityRatio } = forces(doubleBurton({ form: "double and singles", turn: wheel(K) }));
        const load = (p: number) => p / K + p / K ** 2 + p / K ** 3 + (p + p / K) / K;
        expect(load(hauling)).toBeCloseTo(1, 12);
        expect(velocityRatio).toBeCloseTo(5, 12);
      }),
      seed,
    );
  });

  it("multiply in a cascade: the pull of one is the load of the next", () => {
    fc.assert(
      fc.property(ratio, num(1, 1000), (K, load) => {
        const reevings = [firstSystem({ ropes: 2, turn: wheel(K) }), thirdSystem({ ropes: 3, turn: wheel(K) })];
        const stations = reevings.map((reeving, n) => ({ kind: "tackle" as const, name: `tackle ${n}`, reeving }));
        const line = prepareLine({ rope: lineOf(reevings[0]!).rope, stations });
        const product = forces(reevings[0]!).hauling * forces(reevings[1]!).hauling;
        expect(line.handForces(load).hauling / (load * product)).toBeCloseTo(1, 11);
        expect(line.velocityRatio).toBeCloseTo(4 * 7, 9);
      }),
      seed,
    );
  });

  it.each([0, 9, 2.5, -1, Number.NaN, Number.POSITIVE_INFINITY])("refuse %d ropes", (ropes) => {
    expect(() => firstSystem({ ropes, turn: wheel(1) })).toThrow(ReevingError);
    expect(() => thirdSystem({ ropes, turn: wheel(1) })).toThrow(
      /ropes of the system: got .* a whole number from 1 to 8/u,
    );
  });
});
