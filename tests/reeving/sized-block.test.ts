import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bearings } from "../../src/materials/bearings.js";
import { blockLosses } from "../../src/materials/block-losses.js";
import { massLaws } from "../../src/materials/block-sizes.js";
import { stiffnessLaws } from "../../src/materials/stiffness.js";
import { ValueError } from "../../src/quantity/errors.js";
import { stiffnessOf } from "../../src/reeving/bending.js";
import { prepareLine } from "../../src/reeving/line.js";
import { handForcesOfSize, type SizedLine, sizeSteps } from "../../src/reeving/size-gain.js";
import { type BlockLossInput, blockLoss } from "../../src/reeving/sized-block.js";
import type { Sheave } from "../../src/reeving/station.js";
import { tackle } from "../../src/reeving/tackle.js";
import { num, seed } from "./builders.js";

const nothing = { value: 0, low: 0, high: 0 };
const block: BlockLossInput = {
  ropeDiameter: 0.008,
  stiffness: stiffnessLaws.braidedCover,
  bearing: bearings.ball,
  drag: blockLosses.ballDrag,
  sheaveDiameter: 0.04,
  wrapAngle: Math.PI,
  load: 300,
};

describe("pull that one block costs", () => {
  it("has in its middle what the line with that sheave costs, cheeks and all", () => {
    fc.assert(
      fc.property(num(0.012, 0.1), num(0, 1000), num(0.7, 1.4), num(0.2, 3.1), (sheaveDiameter, load, g, wrapAngle) => {
        const grooveWidth = g * block.ropeDiameter;
        const sheave: Sheave = {
          kind: "sheave",
          name: "sheave",
          diameter: sheaveDiameter,
          wrapAngle,
          pinRadius: (bearings.ball.radiusShare.value * sheaveDiameter) / 2,
          bearingFriction: bearings.ball.friction.value,
          grooveWidth,
          drag: blockLosses.ballDrag.value,
        };
        const rope = { diameter: block.ropeDiameter, stiffness: stiffnessOf(stiffnessLaws.braidedCover) };
        const hauling = prepareLine({ rope, stations: [sheave] }).handForces(load).hauling;
        const { value, low, high } = blockLoss({ ...block, sheaveDiameter, load, grooveWidth, wrapAngle });
        expect(value).toBeCloseTo(hauling - load, 9);
        expect(low <= value && value <= high).toBe(true);
      }),
      seed,
    );
  });

  it("falls with the sheave, ever more slowly", () => {
    const at = (sheaveDiameter: number) => blockLoss({ ...block, sheaveDiameter }).value;
    fc.assert(
      fc.property(num(0.01, 0.15), num(0.001, 0.02), (diameter, step) => {
        const [first, second, third] = [at(diameter), at(diameter + step), at(diameter + 2 * step)];
        expect(second).toBeLessThan(first);
        expect(second - third).toBeLessThan(first - second);
      }),
      seed,
    );
  });

  it("keeps only bearing and drag round a very large sheave", () => {
    const huge = blockLoss({ ...block, sheaveDiameter: 2.5 }).value;
    const limp = blockLoss({ ...block, sheaveDiameter: 2.5, drag: nothing }).value;
    expect(huge - limp).toBeCloseTo(blockLosses.ballDrag.value, 9);
    expect(limp / block.load).toBeLessThan(0.015);
  });

  it("is dearer in a tight groove, with a wider range, and the same in any groove that is wide enough", () => {
    const groove = (g: number) => blockLoss({ ...block, grooveWidth: g * block.ropeDiameter });
    expect(groove(1.2)).toEqual(groove(1.5));
    expect(groove(1.2).value).toBeCloseTo(blockLoss(block).value, 12);
    expect(groove(1).value).toBeGreaterThan(groove(1.05).value);
    expect(groove(1).high / groove(1).low).toBeGreaterThan(groove(1.2).high / groove(1.2).low);
  });

  it("refuses what cannot be", () => {
    expect(() => blockLoss({ ...block, load: -1 })).toThrow(ValueError);
    expect(() => blockLoss({ ...block, sheaveDiameter: 0 })).toThrow(ValueError);
    expect(() => blockLoss({ ...block, grooveWidth: 0.002 })).toThrow(ValueError);
  });
});

const line: SizedLine = {
  ...block,
  stations: (sheave) => [
    { kind: "tackle", name: "4:1", reeving: tackle({ parts: 4, hauledFrom: "fixed", turn: sheave }) },
  ],
};
const sizes = [0.02, 0.032, 0.04, 0.063];

describe("what a bigger block saves", () => {
  it("adds up over the steps to the difference of the ends", () => {
    const steps = sizeSteps({ line, sheaveDiameters: sizes, load: 600, blocks: 4, mass: massLaws.block });
    const saved = steps.reduce((sum, step) => sum + step.saved.value, 0);
    const pull = (diameter: number) => handForcesOfSize(line, diameter, 600).hauling.value;
    expect(saved).toBeCloseTo(pull(0.02) - pull(0.063), 9);
    expect(steps.map(({ from, to }) => [from, to])).toEqual([
      [0.02, 0.032],
      [0.032, 0.04],
      [0.04, 0.063],
    ]);
  });

  it("falls for each gram with every step", () => {
    const steps = sizeSteps({ line, sheaveDiameters: sizes, load: 600, blocks: 4, mass: massLaws.block });
    const worth = steps.map(({ savedPerMass }) => savedPerMass.value);
    expect(worth[1]).toBeLessThan(worth[0]! / 2);
    expect(worth[2]).toBeLessThan(worth[1]! / 2);
    for (const { saved, added, savedPerMass } of steps) {
      expect(savedPerMass.value).toBeCloseTo(saved.value / added.value, 9);
      expect(savedPerMass.low <= savedPerMass.value && savedPerMass.value <= savedPerMass.high).toBe(true);
    }
  });

  it("is a share of the load: a light line saves little", () => {
    const limp: SizedLine = {
      ...line,
      drag: nothing,
      stiffness: {
        ...stiffnessLaws.braidedCover,
        constantTerm: { ...stiffnessLaws.braidedCover.constantTerm, value: 0, low: 0 },
        diameterTerm: { ...stiffnessLaws.braidedCover.diameterTerm, value: 0, low: 0 },
      },
    };
    const at = (load: number) =>
      sizeSteps({ line: limp, sheaveDiameters: [0.02, 0.04], load, blocks: 4, mass: massLaws.block })[0]!.saved.value;
    expect(at(600) / at(20)).toBeCloseTo(30, 9);
  });

  it("leaves hauling above easing, and a larger sheave with the smaller run-out load", () => {
    const small = handForcesOfSize(line, 0.02, 300);
    const large = handForcesOfSize(line, 0.063, 300);
    expect(small.hauling.value - small.easing.value).toBeGreaterThan(large.hauling.value - large.easing.value);
    expect(large.runOutLoad.value).toBeLessThan(small.runOutLoad.value);
    expect(large.easing.value).toBeGreaterThan(small.easing.value);
  });

  it("refuses sizes that do not rise", () => {
    const steps = (sheaveDiameters: number[]) =>
      sizeSteps({ line, sheaveDiameters, load: 1, blocks: 1, mass: massLaws.block });
    expect(() => steps([0.04])).toThrow(ValueError);
    expect(() => steps([0.04, 0.04])).toThrow(/each larger/u);
    expect(() => steps([0.04, 0.02])).toThrow(ValueError);
  });
});
