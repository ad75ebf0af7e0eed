import { describe, expect, it } from "vitest";
import { meanForce } from "../../src/motion/hill.js";
import { haul } from "../../src/motion/hoist.js";
import { meanSpeedBand, timeBand, timeVerdict } from "../../src/motion/time-verdict.js";
import { ValueError } from "../../src/quantity/errors.js";
import { hand, strokes, up } from "./rigs.js";

const sure = (value: number) => ({ value, low: value, high: value });
const asked = { words: "hoist", lift: 7, wanted: 5, speed: sure(1), changes: [] };

describe("speed with its range", () => {
  const run = ({ sailMass }: { sailMass: number }) =>
    haul({ moving: up({ sailMass }), lift: 7, hand: meanForce(hand, strokes) });

  it("holds the middle between the ends of the mass", () => {
    const { value, low, high } = meanSpeedBand({ sailMass: { value: 2, low: 1, high: 4 } }, run);
    expect(value).toBeCloseTo(7 / run({ sailMass: 2 }).time, 7);
    expect(low).toBeCloseTo(7 / run({ sailMass: 4 }).time, 7);
    expect(high).toBeCloseTo(7 / run({ sailMass: 1 }).time, 7);
  });

  it("is nothing where the hoist stalls, and the time has no end there", () => {
    const speed = meanSpeedBand({ sailMass: { value: 2, low: 1, high: 400 } }, run);
    expect(speed.low).toBe(0);
    expect(timeBand(7, speed).high).toBe(Number.POSITIVE_INFINITY);
    expect(() => timeBand(0, speed)).toThrow(ValueError);
  });
});

describe("a verdict on time", () => {
  it("holds, is doubtful or fails as the range lies", () => {
    expect(timeVerdict({ ...asked, speed: { value: 2, low: 1.5, high: 3 } }).outcome).toBe("enough");
    expect(timeVerdict({ ...asked, speed: { value: 2, low: 1, high: 3 } }).outcome).toBe("can't tell");
    expect(timeVerdict({ ...asked, speed: { value: 1, low: 0.5, high: 3 } }).outcome).toBe("not enough");
  });

  it("names the first change that holds, with its time, before one that is only doubtful", () => {
    const changes = [
      { words: "a thinner line", speed: sure(1.2) },
      { words: "a bigger sheave", speed: { value: 1.5, low: 1.2, high: 2 } },
      { words: "a second person", speed: sure(2) },
      { words: "a winch", speed: sure(3) },
    ];
    expect(timeVerdict({ ...asked, changes }).change).toBe("a second person: 3.5 s (3.5 to 3.5 s)");
    expect(timeVerdict({ ...asked, changes: changes.slice(0, 2) }).change).toContain("a bigger sheave");
    expect(timeVerdict({ ...asked, changes: changes.slice(0, 1) }).change).toBeUndefined();
  });

  it("says a stall with its height and reason", () => {
    const { reason, outcome } = timeVerdict({
      ...asked,
      speed: { value: 0, low: 0, high: 1 },
      stall: { travel: 3.2, reason: "too heavy" },
    });
    expect(outcome).toBe("not enough");
    expect(reason).toContain("3.2 m of 7 m: too heavy");
  });

  it("refuses no time at all", () => {
    expect(() => timeVerdict({ ...asked, wanted: 0 })).toThrow(ValueError);
  });
});
