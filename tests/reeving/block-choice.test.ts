import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bearings } from "../../src/materials/bearings.js";
import { blockLosses } from "../../src/materials/block-losses.js";
import { demoBlocks, demoNarrowBlocks, type Fitting } from "../../src/materials/block-sizes.js";
import { stiffnessLaws } from "../../src/materials/stiffness.js";
import { ValueError } from "../../src/quantity/errors.js";
import { blockForLine, type LineOnBlock } from "../../src/reeving/block-choice.js";
import { num, seed } from "./builders.js";

const shop: readonly Fitting[] = [...demoBlocks, ...demoNarrowBlocks];
const line = (millimetres: number, name: string, load: number): LineOnBlock => ({
  ropeDiameter: millimetres / 1000,
  stiffness: stiffnessLaws.braidedCover,
  bearing: bearings.ball,
  drag: blockLosses.ballDrag,
  block: shop.find((block) => block.name === name)!,
  blocks: shop,
  ropeDiameters: [0.004, 0.005, 0.006, 0.008],
  material: "hmpe",
  rule: "braided",
  load,
  wrapAngle: Math.PI,
});

describe("a block for a line", () => {
  it("pulls on the block with the sum of both parts at half a turn, and with nothing when the line goes straight", () => {
    fc.assert(
      fc.property(num(10, 1000), (load) => {
        const { blockLoad, loss } = blockForLine(line(6, "40 mm block", load));
        expect(blockLoad).toBeCloseTo(2 * load + loss.value, 8);
      }),
      seed,
    );
    const straight = blockForLine({ ...line(6, "40 mm block", 100), wrapAngle: 0 });
    expect(straight.blockLoad).toBeCloseTo(straight.loss.value, 9);
    expect(straight.strength.outcome).toBe("enough");
  });

  it("fails above the working load, and names the next block that carries it", () => {
    const heavy = blockForLine(line(8, "32 mm block", 950));
    expect(heavy.strength.outcome).toBe("not enough");
    expect(heavy.strength.reason).toMatch(/good for 1920 N/u);
    expect(heavy.strength.change).toBe("the 40 mm block");
    expect(blockForLine(line(8, "40 mm block", 950)).strength.outcome).toBe("enough");
    expect(blockForLine(line(8, "80 mm block", 5000)).strength.change).toBeUndefined();
  });

  it("doubts a block whose working load lies within the range of the pull", () => {
    const { loss } = blockForLine(line(8, "40 mm block", 900));
    const workingLoad = 1800 + (loss.value + loss.high) / 2;
    const block = { ...shop[3]!, workingLoad };
    expect(blockForLine({ ...line(8, "40 mm block", 900), block }).strength.outcome).toBe("can't tell");
  });

  it("presses the groove less the larger the sheave, and leaves more strength", () => {
    const small = blockForLine(line(6, "32 mm block", 300));
    const large = blockForLine(line(6, "63 mm narrow block", 300));
    expect(small.groovePressure / large.groovePressure).toBeCloseTo(63 / 32, 9);
    expect(large.retainedStrength.value).toBeGreaterThan(small.retainedStrength.value);
    expect(large.loss.value).toBeLessThan(small.loss.value);
    expect(large.mass).toBeGreaterThan(small.mass);
  });

  it("refuses no load at all", () => {
    expect(() => blockForLine(line(6, "32 mm block", 0))).toThrow(ValueError);
  });
});
