import { describe, expect, it } from "vitest";
import { blockLoad } from "../../src/reeving/block-load.js";
import { prepareLine } from "../../src/reeving/line.js";
import type { Ratchet, Turn } from "../../src/reeving/station.js";
import { tackle } from "../../src/reeving/tackle.js";
import { alone, limp, lineOf, ratchet, wheel } from "./builders.js";

const engageLoad = 120;
const sensing: Ratchet = { ...ratchet, engageLoad };
const { engageLoad: _engage, ...alwaysOn } = sensing;
const { treadFriction: _tread, ...wheelOnly } = alwaysOn;
const free: Turn = { ...wheelOnly, kind: "sheave" };
const easing = (station: Turn, load: number) => alone(station, load).easing;

/** Load at which the block load with a free sheave reaches the engage load; half a turn: the tensions add up. */
const kinkLoad = engageLoad / (1 + easing(free, 1));

describe("a load-sensing ratchet in a line", () => {
  it("is a free sheave below its engage load and an always-on ratchet above it", () => {
    for (const share of [0.1, 0.5, 0.999])
      expect(easing(sensing, share * kinkLoad)).toBe(easing(free, share * kinkLoad));
    for (const share of [1.001, 2, 10])
      expect(easing(sensing, share * kinkLoad)).toBe(easing(alwaysOn, share * kinkLoad));
  });

  it("jumps where it engages: the easing force drops, it is not smoothed", () => {
    const [below, above] = [easing(sensing, kinkLoad - 1e-6), easing(sensing, kinkLoad + 1e-6)];
    expect(above).toBeLessThan(below);
    expect(below / above).toBeCloseTo(easing(free, 1) / easing(alwaysOn, 1), 5);
    const middle = easing(sensing, kinkLoad + 1e-9);
    expect([below, above].some((side) => Math.abs(side - middle) < 1e-6)).toBe(true);
  });

  it("engages at the vector sum of the tensions, not at the tension", () => {
    const at = { loadTension: kinkLoad, handTension: easing(free, kinkLoad), wrapAngle: Math.PI };
    expect(blockLoad(at)).toBeCloseTo(engageLoad, 9);
    const corner: Ratchet = { ...sensing, wrapAngle: Math.PI / 2 };
    const cornerFree: Turn = { ...free, wrapAngle: Math.PI / 2 };
    const hand = easing(cornerFree, 1);
    const load = engageLoad / Math.hypot(1, hand);
    expect(easing(corner, load * 0.9999)).toBe(easing(cornerFree, load * 0.9999));
    expect(easing(corner, load * 1.0001)).toBeLessThan(easing(cornerFree, load * 1.0001));
  });

  it("hauls as a sheave at any load", () => {
    for (const load of [1, kinkLoad, 1000]) expect(alone(sensing, load).hauling).toBe(alone(free, load).hauling);
  });

  it("grips at once without an engage load, and never with one out of reach", () => {
    expect(easing({ ...sensing, engageLoad: 0 }, 50)).toBe(easing(alwaysOn, 50));
    expect(easing({ ...sensing, engageLoad: 1e6 }, 5000)).toBe(easing(free, 5000));
  });
});

describe("load-sensing ratchets inside a tackle", () => {
  const reeving = (turn: Turn) => tackle({ parts: 2, hauledFrom: "fixed", turn: [wheel(1), turn] });
  const ease = (turn: Turn, load: number) => prepareLine(lineOf(reeving(turn))).handForces(load).easing;

  it("judge by the load on their own sheave, not by that of the tackle", () => {
    // The two parts share the load: half of it meets the ratchet on the fixed block.
    const kink = 2 * kinkLoad;
    expect(ease(sensing, kink * 0.9999)).toBeCloseTo(ease(free, kink * 0.9999), 10);
    expect(ease(sensing, kink * 1.0001)).toBeCloseTo(ease(alwaysOn, kink * 1.0001), 10);
    expect(ease(sensing, kink * 1.0001)).toBeLessThan(ease(sensing, kink * 0.9999));
  });

  it("engage one after the other as the load rises", () => {
    const both = tackle({ parts: 3, hauledFrom: "fixed", turn: [sensing, wheel(1), { ...sensing, engageLoad: 400 }] });
    const line = prepareLine({ rope: limp, stations: [{ kind: "tackle", name: "tackle", reeving: both }] });
    let drops = 0;
    let before = 0;
    for (let load = 1; load < 3000; load += 0.5) {
      const { easing: now } = line.handForces(load);
      if (now < before) drops += 1;
      before = now;
    }
    expect(drops).toBe(2);
  });
});
