import { describe, expect, it } from "vitest";
import { demoBlocks, demoNarrowBlocks, type Fitting } from "../../src/materials/block-sizes.js";
import { ValueError } from "../../src/quantity/errors.js";
import { bendVerdict, grooveVerdict, type RopeOnBlock, runOutVerdict } from "../../src/reeving/size-verdicts.js";

const ropeDiameters = [0.003, 0.004, 0.005, 0.006, 0.008, 0.01];
const all = [...demoBlocks, ...demoNarrowBlocks];
const on = (millimetres: number, name: string): RopeOnBlock => ({
  ropeDiameter: millimetres / 1000,
  block: demoBlocks.find((block) => block.name === name)!,
  blocks: all,
  ropeDiameters,
});
const bend = (millimetres: number, name: string) =>
  bendVerdict({ ...on(millimetres, name), material: "hmpe", rule: "braided" });

describe("whether the bend is too tight", () => {
  it("fails a thick rope on a small sheave, and names the first block and rope that hold", () => {
    const verdict = bend(8, "20 mm block");
    expect(verdict.outcome).toBe("not enough");
    expect(verdict.reason).toMatch(/2\.5 rope diameters/u);
    expect(verdict.reason).toMatch(/% of the strength/u);
    // 8 mm asks for 80 mm over the whole range: one block has it. 20 mm carries 2 mm at that: no rope is that thin.
    expect(verdict.change).toBe("the 80 mm narrow block");
    expect(bend(10, "20 mm block").change).toBeUndefined();
  });

  it("finds a change that itself holds", () => {
    const verdict = bend(5, "32 mm block");
    expect(verdict.outcome).toBe("not enough");
    expect(verdict.change).toBe("the 63 mm narrow block");
    expect(bend(5, "63 mm block").outcome).toBe("enough");
    expect(bend(5, "40 mm block").outcome).toBe("can't tell");
    expect(bend(4, "40 mm block")).toEqual({
      subject: "4 mm HMPE line on the 40 mm block",
      outcome: "enough",
      reason: expect.stringContaining("10 rope diameters"),
    });
    expect(bend(5, "40 mm block").change).toBe("the 63 mm narrow block");
  });

  it("offers no block whose groove fails the rope", () => {
    const aramid = (blocks: readonly Fitting[]) =>
      bendVerdict({ ...on(3, "40 mm block"), blocks, material: "aramid", rule: "stiffFibre" });
    // The 80 mm block is large enough, but its groove is six rope diameters wide.
    expect(aramid(demoBlocks).outcome).toBe("not enough");
    expect(aramid(demoBlocks).change).toBeUndefined();
    expect(aramid(all).change).toBe("the 80 mm halyard sheave");
  });

  it("asks more of aramid", () => {
    const aramid = bendVerdict({ ...on(4, "63 mm block"), material: "aramid", rule: "stiffFibre" });
    expect(aramid.outcome).not.toBe("enough");
  });
});

describe("whether the groove fits", () => {
  it("fails a rope that rubs on the cheeks, and names what fits", () => {
    const verdict = grooveVerdict(on(8, "32 mm block"));
    expect(verdict.outcome).toBe("not enough");
    expect(verdict.reason).toMatch(/rubs on the cheeks/u);
    expect(verdict.change).toBe("the 40 mm block, or 6 mm line");
    expect(grooveVerdict(on(8, "40 mm block")).outcome).toBe("enough");
    expect(grooveVerdict(on(6, "32 mm block")).outcome).toBe("enough");
  });

  it("doubts a groove at the limit", () => {
    const block: Fitting = { ...demoBlocks[3]!, grooveWidth: 0.0112 };
    expect(grooveVerdict({ ...on(10, "40 mm block"), block }).outcome).toBe("can't tell");
  });

  it("fails a thin rope in a wide groove", () => {
    const verdict = grooveVerdict(on(3, "63 mm block"));
    expect(verdict.outcome).toBe("not enough");
    expect(verdict.reason).toMatch(/lies flat/u);
    expect(verdict.change).toBe("10 mm line");
    expect(grooveVerdict(on(4, "63 mm block")).change).toBe("the 80 mm halyard sheave, or 10 mm line");
    expect(grooveVerdict(on(4, "20 mm block")).outcome).toBe("enough");
  });

  it("sees a rope that can be drawn in beside the sheave", () => {
    const thin: RopeOnBlock = {
      ...on(3, "16 mm block"),
      ropeDiameter: 0.001,
      block: { ...demoBlocks[0]!, grooveWidth: 0.0015 },
    };
    expect(grooveVerdict(thin).reason).toMatch(/beside the sheave/u);
  });

  it("refuses a rope that cannot enter", () => {
    expect(() => grooveVerdict({ ...on(10, "16 mm block"), block: { ...demoBlocks[0]!, grooveWidth: 0.004 } })).toThrow(
      ValueError,
    );
  });
});

describe("whether a line goes out in the lightest air", () => {
  const around = (value: number) => ({ value, low: 0.8 * value, high: 1.2 * value });
  it("names the first change that goes out over its whole range", () => {
    const verdict = runOutVerdict({
      subject: "shared ring",
      load: 7,
      runOutLoad: around(8),
      changes: [
        { words: "a ring each", runOutLoad: around(6.5) },
        { words: "a block each", runOutLoad: around(4) },
      ],
    });
    expect(verdict).toMatchObject({ outcome: "not enough", change: "a block each" });
    expect(verdict.reason).toMatch(/7 N.*from 8 N/u);
  });

  it("says nothing of a change when it goes out, or when nothing helps", () => {
    const verdict = (load: number) => runOutVerdict({ subject: "ring", load, runOutLoad: around(8), changes: [] });
    expect(verdict(10).outcome).toBe("enough");
    expect(verdict(9).outcome).toBe("can't tell");
    expect(verdict(1).change).toBeUndefined();
    expect(() => verdict(0)).toThrow(ValueError);
  });
});
