import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bearings } from "../../src/materials/bearings.js";
import { blockLosses } from "../../src/materials/block-losses.js";
import { practice } from "../../src/materials/practice.js";
import { type StiffnessLaw, stiffnessLaws } from "../../src/materials/stiffness.js";
import { surfaces } from "../../src/materials/surfaces.js";
import { ReevingError, ValueError } from "../../src/quantity/errors.js";
import { stiffnessOf } from "../../src/reeving/bending.js";
import { prepareLine } from "../../src/reeving/line.js";
import {
  equalLossLoad,
  type RingOrSheave,
  ringAgainstBlock,
  ringEnoughAngle,
} from "../../src/reeving/ring-or-sheave.js";
import { type SharedLead, sharedLead } from "../../src/reeving/shared-lead.js";
import { capstanRatio } from "../../src/reeving/sliding.js";
import type { Ring } from "../../src/reeving/station.js";
import type { Band } from "../../src/sources/band.js";
import { num, seed } from "./builders.js";

const nothing = { value: 0, low: 0, high: 0 };
const steady = { value: 1, low: 1, high: 1 };
const limpLaw: StiffnessLaw = {
  name: "limp",
  tensionTerm: { ...stiffnessLaws.braidedCover.tensionTerm, value: 0, low: 0, high: 0 },
  constantTerm: { ...stiffnessLaws.braidedCover.constantTerm, value: 0, low: 0, high: 0 },
  diameterTerm: { ...stiffnessLaws.braidedCover.diameterTerm, value: 0, low: 0, high: 0 },
};
const pair: RingOrSheave = {
  ropeDiameter: 0.006,
  stiffness: stiffnessLaws.braidedCover,
  bearing: bearings.ball,
  drag: blockLosses.ballDrag,
  ringDiameter: 0.016,
  surface: surfaces.anodised,
  ringExponent: blockLosses.ringExponent,
  referenceTension: blockLosses.ringReferenceTension,
  sheaveDiameter: 0.032,
};

describe("a ring against a block", () => {
  it("costs the same nothing at no angle, but for the drag of the block", () => {
    const { ring, block } = ringAgainstBlock(pair, { load: 200, wrapAngle: 0 });
    expect(ring.value).toBe(0);
    expect(block.value).toBeCloseTo(blockLosses.ballDrag.value, 12);
  });

  it("slides by the capstan law when its friction does not fall with load", () => {
    const limpRing: RingOrSheave = { ...pair, ringExponent: steady, stiffness: limpLaw };
    const { ring } = ringAgainstBlock(limpRing, { load: 100, wrapAngle: 2 });
    const frictionCoefficient = surfaces.anodised.friction.value;
    expect(ring.value).toBeCloseTo(100 * (capstanRatio({ frictionCoefficient, wrapAngle: 2 }) - 1), 9);
  });

  it("costs a larger share of a light load than of a heavy one", () => {
    const share = (load: number) => ringAgainstBlock(pair, { load, wrapAngle: 1.5 }).ring.value / load;
    fc.assert(
      fc.property(num(1, 800), num(1.1, 3), (load, times) => {
        expect(share(times * load)).toBeLessThan(share(load));
      }),
      seed,
    );
  });

  it("reports the difference as ring less block", () => {
    const { ring, block, difference } = ringAgainstBlock(pair, { load: 150, wrapAngle: 1 });
    expect(difference.value).toBeCloseTo(ring.value - block.value, 12);
    expect(difference.low).toBeLessThan(difference.value);
  });

  it("is enough up to the angle at which it costs the allowed share more", () => {
    fc.assert(
      fc.property(num(5, 800), num(0.05, 0.2), (load, value) => {
        const { value: wrapAngle, low, high } = ringEnoughAngle(pair, load, { value, low: value, high: value });
        expect(low < wrapAngle && wrapAngle < high).toBe(true);
        const { difference } = ringAgainstBlock(pair, { load, wrapAngle });
        expect(difference.value / (value * load)).toBeCloseTo(1, 6);
      }),
      { ...seed, numRuns: 40 },
    );
    const all = { value: 1, low: 1, high: 1 };
    expect(ringEnoughAngle(pair, 300, all).value).toBe(Math.PI);
    const tenth = { value: 0.1, low: 0.06, high: 0.15 };
    expect(ringEnoughAngle(pair, 300, tenth).value).toBeGreaterThan(ringEnoughAngle(pair, 10, tenth).value);
    expect(() => ringEnoughAngle(pair, 300, { value: 1, low: 1, high: 2 })).toThrow(ValueError);
  });

  it("meets a block with a small sheave on a plain pin at one load, and says so when there is none", () => {
    const worn: RingOrSheave = { ...pair, bearing: bearings.plain, sheaveDiameter: 0.012, ringDiameter: 0.04 };
    const load = equalLossLoad(worn, 0.5, [1, 5000])!;
    const { difference } = ringAgainstBlock(worn, { load, wrapAngle: 0.5 });
    expect(Math.abs(difference.value)).toBeLessThan(1e-6 * load);
    expect(equalLossLoad({ ...pair, drag: nothing }, Math.PI, [1, 500])).toBeUndefined();
    expect(() => equalLossLoad(pair, 1, [10, 10])).toThrow(ReevingError);
    expect(() => ringAgainstBlock(pair, { load: -1, wrapAngle: 1 })).toThrow(ValueError);
  });
});

const single = (stiffness: StiffnessLaw, ringExponent: Band): Omit<SharedLead, "lines" | "load"> => ({
  ropeDiameter: 0.006,
  stiffness,
  ringDiameter: 0.016,
  surface: surfaces.anodised,
  ringExponent,
  referenceTension: blockLosses.ringReferenceTension,
  wrapAngle: 1.5,
});

describe("lines that share a ring", () => {
  it("in the middle cost what a ring of that many lines costs", () => {
    const lead = single(stiffnessLaws.braidedCover, steady);
    const rope = { diameter: 0.006, stiffness: stiffnessOf(stiffnessLaws.braidedCover) };
    for (const lines of [2, 3, 4]) {
      const { shared, alone } = sharedLead({ ...lead, lines, load: 100 });
      const through = (count: number) => {
        const ring: Ring = {
          kind: "ring",
          name: "ring",
          diameter: 0.016,
          wrapAngle: 1.5,
          frictionCoefficient: surfaces.anodised.friction.value,
          lines: count,
        };
        return prepareLine({ rope, stations: [ring] }).handForces(100);
      };
      expect(shared.hauling.value).toBeCloseTo(through(lines).hauling, 12);
      expect(shared.easing.value).toBeCloseTo(through(lines).easing, 12);
      expect(alone.hauling.value).toBeCloseTo(through(1).hauling, 12);
      expect(alone.hauling.value).toBeLessThan(shared.hauling.value);
      expect(alone.easing.value).toBeGreaterThan(shared.easing.value);
    }
  });

  it("have the range of the factor: exactly so for a limp rope on a known surface", () => {
    const known = surfaces.anodised.friction.value;
    const lead = {
      ...single(limpLaw, steady),
      surface: { name: "known", friction: { ...surfaces.anodised.friction, low: known, high: known } },
    };
    const { alone, shared, saved } = sharedLead({ ...lead, lines: 2, load: 100 });
    const growth = Math.log(alone.hauling.value / 100);
    const { low, high } = practice.sharedLeadFactor;
    expect(Math.log(shared.hauling.low / 100)).toBeCloseTo(low * growth, 12);
    expect(Math.log(shared.hauling.high / 100)).toBeCloseTo(high * growth, 12);
    expect(saved.value).toBeCloseTo(shared.hauling.value - alone.hauling.value, 12);
  });

  it("run out later, friction falling with load or not", () => {
    const tail = { kind: "measured", name: "tail", tensionRatio: 1, drag: 2 } as const;
    for (const exponent of [steady, blockLosses.ringExponent]) {
      const lead = single(stiffnessLaws.braidedCover, exponent);
      const { alone, shared, runOutSaved } = sharedLead({ ...lead, towardsHand: [tail], lines: 3, load: 20 });
      expect(shared.runOutLoad.value).toBeGreaterThan(alone.runOutLoad.value);
      expect(runOutSaved.value).toBeCloseTo(shared.runOutLoad.value - alone.runOutLoad.value, 12);
      expect(runOutSaved.low).toBeGreaterThan(0);
    }
  });

  it("may hold the load altogether: the easing force is then nothing", () => {
    const stop = { kind: "measured", name: "tail", tensionRatio: 1, drag: 50 } as const;
    const lead = { ...single(limpLaw, steady), towardsHand: [stop] };
    const { shared } = sharedLead({ ...lead, lines: 2, load: 4 });
    expect(shared.easing).toEqual({ value: 0, low: 0, high: 0 });
    expect(() => sharedLead({ ...lead, lines: 9, load: 1 })).toThrow(ValueError);
    expect(() => sharedLead({ ...lead, lines: 1, load: 1 })).toThrow(ValueError);
  });
});
