import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bearings } from "../../src/materials/bearings.js";
import { type Cover, type CoverFibre, coverFriction, type StrandCount } from "../../src/materials/covers.js";
import { stiffnessLaws } from "../../src/materials/stiffness.js";
import { type TreadName, treads } from "../../src/materials/surfaces.js";
import { wearVerdict } from "../../src/materials/wear.js";
import { ValueError } from "../../src/quantity/errors.js";
import { stiffnessOf } from "../../src/reeving/bending.js";
import { type CoverEffect, coverEffects, type LineFriction } from "../../src/reeving/cover-effect.js";
import { coverVerdicts } from "../../src/reeving/cover-verdict.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import { ratchetHold } from "../../src/reeving/ratchet-hold.js";
import { num, seed } from "./builders.js";

const wrapAngle = Math.PI;
const lineWith = ({ treadFriction, bearingFriction, radiusShare, stiffness }: LineFriction): Line => ({
  rope: { diameter: 0.007, stiffness },
  stations: [
    {
      kind: "ratchet",
      name: "ratchet",
      diameter: 0.055,
      wrapAngle,
      pinRadius: 0.0275 * radiusShare,
      bearingFriction,
      treadFriction,
    },
  ],
});
const names = Object.keys(treads) as TreadName[];
const counts: readonly StrandCount[] = [8, 16, 24];
const kinds: readonly CoverFibre[] = ["polyester", "aramidBlend", "bareCore"];
const all: readonly Cover[] = counts.flatMap((strands) =>
  kinds.flatMap((fibre) => [false, true].map((wet): Cover => ({ strands, fibre, wet }))),
);
const given = { lineWith, bearing: bearings.ball, covers: all };
const tread = fc.constantFrom(...names);

describe("one line with several covers", () => {
  it("carries nothing without load", () => {
    for (const { hauling, easing, runOutLoad } of coverEffects({ ...given, tread: "faceted", load: 0 })) {
      expect(easing).toEqual({ value: 0, low: 0, high: 0 });
      // Only the part of bending that does not grow with tension is left.
      expect(hauling.value).toBeGreaterThan(0);
      expect(hauling.value).toBeLessThan(1);
      expect(runOutLoad.value).toBeGreaterThan(0);
    }
  });

  it("has at its middle what the line itself says with the middle of all records", () => {
    fc.assert(
      fc.property(tread, num(5, 800), (name, load) => {
        for (const { cover, hauling, easing, runOutLoad } of coverEffects({ ...given, tread: name, load })) {
          const law = cover.fibre === "bareCore" ? stiffnessLaws.bareCore : stiffnessLaws.braidedCover;
          const line = prepareLine(
            lineWith({
              treadFriction: coverFriction(cover, treads[name]).value,
              bearingFriction: bearings.ball.friction.value,
              radiusShare: bearings.ball.radiusShare.value,
              stiffness: stiffnessOf(law),
            }),
          );
          const forces = line.handForces(load);
          expect(hauling.value).toBe(forces.hauling);
          expect(easing.value).toBe(forces.easing);
          expect(runOutLoad.value).toBeCloseTo(forces.runOutLoad, 12);
        }
      }),
      { ...seed, numRuns: 20 },
    );
  });

  it("gives the ratchet the hold ratio of its tread, and none to a line without one", () => {
    for (const { cover, holdRatio } of coverEffects({ ...given, tread: "ribbed", load: 100 })) {
      const { ratio } = ratchetHold({ tread: treads.ribbed, cover, wrapAngle });
      for (const end of ["value", "low", "high"] as const) expect(holdRatio[end] / ratio[end]).toBeCloseTo(1, 10);
    }
    const plain = coverEffects({
      ...given,
      tread: "ribbed",
      load: 100,
      lineWith: ({ stiffness }) => ({ rope: { diameter: 0.007, stiffness }, stations: [] }),
    });
    for (const { holdRatio, easing } of plain) {
      expect(holdRatio).toEqual({ value: 1, low: 1, high: 1 });
      expect(easing.value).toBe(100);
    }
  });

  it("never falls below nothing, and keeps its middle inside its range", () => {
    fc.assert(
      fc.property(tread, num(0, 800), num(0, 5), (name, load, drag) => {
        const tailDrag = { value: drag, low: 0, high: 2 * drag };
        for (const effect of coverEffects({ ...given, tread: name, load, tailDrag })) {
          for (const { value, low, high } of [effect.hauling, effect.easing, effect.runOutLoad, effect.holdRatio]) {
            expect(low).toBeGreaterThanOrEqual(0);
            expect(low).toBeLessThanOrEqual(value * (1 + 1e-12));
            expect(high).toBeGreaterThanOrEqual(value * (1 - 1e-12));
          }
        }
      }),
      { ...seed, numRuns: 20 },
    );
  });

  it("eases with less the more the cover grips, and hauls with the same", () => {
    const covers = counts.map((strands): Cover => ({ strands, fibre: "polyester", wet: false }));
    const [eight, sixteen, twentyFour] = coverEffects({ ...given, covers, tread: "toothed", load: 200 });
    expect(eight!.easing.value).toBeLessThan(sixteen!.easing.value);
    expect(sixteen!.easing.value).toBeLessThan(twentyFour!.easing.value);
    expect(eight!.hauling).toEqual(twentyFour!.hauling);
    expect(eight!.runOutLoad.value).toBeGreaterThan(twentyFour!.runOutLoad.value);
  });

  it("multiplies the drag of the tail by the hold of the tread, and by nothing less", () => {
    fc.assert(
      fc.property(tread, num(0.1, 6), (name, drag) => {
        const run = (value: number) =>
          coverEffects({ ...given, tread: name, load: 100, tailDrag: { value, low: value, high: value } });
        const [free, dragged] = [run(0), run(drag)];
        for (const [index, { runOutLoad, holdRatio }] of dragged.entries()) {
          const more = runOutLoad.value - free[index]!.runOutLoad.value;
          expect(more).toBeGreaterThan(drag * holdRatio.value);
          expect(more).toBeLessThan(1.2 * drag * holdRatio.value);
        }
      }),
      { ...seed, numRuns: 20 },
    );
  });

  it("refuses a load that cannot be", () => {
    for (const load of [-1, Number.NaN, 2e6])
      expect(() => coverEffects({ ...given, tread: "smooth", load })).toThrow(ValueError);
  });
});

describe("the verdict on covers", () => {
  const dry = all.filter(({ wet, fibre, strands }) => !wet && (fibre !== "bareCore" || strands === 24));
  const effects = names.flatMap((name) =>
    coverEffects({ ...given, covers: dry, tread: name, load: 162, tailDrag: { value: 2, low: 1, high: 3 } }),
  );
  const exactly = (value: number) => ({ value, low: value, high: value });
  const judge = (hand: number, light: number, of: readonly CoverEffect[] = effects) =>
    coverVerdicts({ effects: of, handLimit: exactly(hand), lightLoad: exactly(light) });

  it("leaves only wear to judge when the hand is strong and the wind never light", () => {
    judge(1e5, 1e5).forEach(({ outcome }, index) => {
      expect(outcome).toBe(wearVerdict(effects[index]!).outcome);
    });
  });

  it("fails everywhere, without a change, for a hand or a wind that can do nothing", () => {
    for (const verdict of [...judge(1e-3, 1e5), ...judge(1e5, 1e-6)]) {
      expect(verdict.outcome).toBe("not enough");
      expect(verdict).not.toHaveProperty("change");
    }
  });

  it("never gets better with a weaker hand or a lighter wind", () => {
    const rank = ({ outcome }: { outcome: string }) => ["not enough", "can't tell", "enough"].indexOf(outcome);
    fc.assert(
      fc.property(num(20, 150), num(2, 60), num(0.3, 1), (hand, light, less) => {
        const good = judge(hand, light);
        for (const worse of [judge(hand * less, light), judge(hand, light * less)])
          worse.forEach((verdict, index) => {
            expect(rank(verdict)).toBeLessThanOrEqual(rank(good[index]!));
          });
      }),
      { ...seed, numRuns: 30 },
    );
  });

  it("names as change a cover that holds, with the fewest things changed among those that do", () => {
    const list = judge(80, 26);
    const holding = list.filter(({ outcome }) => outcome === "enough").map(({ subject }) => subject);
    expect(holding.length).toBeGreaterThan(1);
    for (const { outcome, change } of list) {
      if (outcome === "enough") expect(change).toBeUndefined();
      else expect(holding).toContain(change?.split(":")[0]);
    }
    const onTeeth = list.find(({ subject }) => subject === "8-strand polyester, dry, on a toothed metal tread");
    expect(onTeeth?.outcome).toBe("not enough");
    expect(onTeeth?.change).toMatch(/^(?:\d+-strand polyester, dry, on a toothed|8-strand polyester, dry, on a )/u);
  });

  it("names only what is in the way, and all three demands when nothing is", () => {
    for (const { outcome, reason } of judge(80, 26)) {
      const named = [/asks the hand/u, /runs out/u, /wear rate/u].filter((demand) => demand.test(reason)).length;
      if (outcome === "enough") expect(named).toBe(3);
      else expect(named).toBeGreaterThan(0);
    }
  });

  it("keeps a dry sheet from being mended by a wet one", () => {
    const wet = coverEffects({ ...given, covers: all.filter((cover) => cover.wet), tread: "toothed", load: 162 });
    const mixed = judge(60, 1e5, [...effects, ...wet]);
    for (const { subject, change } of mixed)
      if (change !== undefined) expect(/, wet,/u.test(change)).toBe(/, wet,/u.test(subject));
  });
});
