import { describe, expect, it } from "vitest";
import { allDayFactor, allDayVerdicts } from "../../src/crew/all-day.js";
import { crewDay } from "../../src/crew/crew-day.js";
import { crewDays } from "../../src/crew/crew-days.js";
import { dayIntervals } from "../../src/crew/day-schedule.js";
import { ratesOf } from "../../src/crew/fatigue.js";
import { holdingTension } from "../../src/crew/grip-demand.js";
import { gripStrength } from "../../src/crew/grip-strength.js";
import { sampleCrews } from "../../src/crew/sample-crews.js";
import { dayAtHand, type SheetOption } from "../../src/crew/sheet-option.js";
import { ValueError } from "../../src/quantity/errors.js";
import type { Band } from "../../src/sources/band.js";

const intervals = dayIntervals({
  length: 10_000,
  races: [
    {
      name: "first",
      start: 600,
      legs: [{ name: "run", length: 900, load: 60, gusts: { every: 60, lasts: 10, factor: 1.5 } }],
    },
    { name: "second", start: 5000, legs: [{ name: "run", length: 900, load: 60 }] },
  ],
});
const grip: Band = { value: 320, low: 290, high: 350 };
const option = (name: string, ratio: number, strands: 8 | 16 | 24): SheetOption => ({
  name,
  parts: [`${ratio}`, `${strands}`],
  hold: { cover: { strands, fibre: "polyester", wet: false }, diameter: 0.008, hands: 1 },
  causes: { ratio: { value: ratio, low: ratio ** 0.8, high: ratio ** 1.2 } },
  lineWith: (values) => ({
    rope: { diameter: 0.008, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } },
    stations: [{ kind: "measured", name: "ratchet", tensionRatio: values.ratio! }],
  }),
});

describe("the highest load all day", () => {
  it("is where the hand just lasts: a little less holds, a little more does not", () => {
    const sheet = option("plain", 2, 16);
    const { value } = allDayFactor({ intervals, maximumGrip: grip, option: sheet });
    const holding = holdingTension({ hold: sheet.hold, maximumGrip: grip }).value;
    const gives = (factor: number) =>
      crewDay({
        day: dayAtHand({ intervals, option: sheet, factor }),
        crew: { holdingTension: holding, ...ratesOf("hand") },
      }).givesOut;
    expect(gives(0.999 * value)).toBeUndefined();
    expect(gives(1.001 * value)).toBeDefined();
  });

  it("doubles with twice the ratio, and grows with grip and a coarser cover", () => {
    const factor = (sheet: SheetOption, maximumGrip = grip) => allDayFactor({ intervals, maximumGrip, option: sheet });
    const plain = factor(option("plain", 2, 16));
    expect(factor(option("double", 4, 16)).value / plain.value).toBeCloseTo(2, 5);
    expect(factor(option("coarse", 2, 8)).value).toBeGreaterThan(plain.value);
    expect(factor(option("plain", 2, 16), { value: 640, low: 600, high: 700 }).value / plain.value).toBeCloseTo(2, 5);
    expect(plain.low < plain.value && plain.value < plain.high).toBe(true);
  });

  it("has a narrower range the more is known, and none when all is", () => {
    const sheet = option("plain", 2, 16);
    const all = ["ratio", "friction", "thinLine", "oneOverTwo", "maximumGrip", "fatigue", "recovery", "rest"];
    const width = (known: string[]) => {
      const { low, high } = allDayFactor({ intervals, maximumGrip: grip, option: sheet, known });
      return high / low;
    };
    const widths = all.map((_, i) => width(all.slice(0, i)));
    widths.forEach((one, i) => {
      if (i > 0) expect(one).toBeLessThanOrEqual(widths[i - 1]!);
    });
    expect(width(all)).toBe(1);
    expect(() => width(["luck"])).toThrow(ValueError);
  });

  it("has no end on a day without load", () => {
    const idle = dayIntervals({ length: 100, races: [] });
    expect(allDayFactor({ intervals: idle, maximumGrip: grip, option: option("plain", 2, 16) }).value).toBe(1024);
  });

  it("refuses a hand without grip", () => {
    const maximumGrip = { value: 0, low: 0, high: 0 };
    expect(() => allDayFactor({ intervals, maximumGrip, option: option("plain", 2, 16) })).toThrow(ValueError);
  });
});

describe("ways to rig the sheet", () => {
  const rated = (name: string, ratio: number, strands: 8 | 16 | 24, low: number, value: number) => ({
    option: option(name, ratio, strands),
    factor: { value, low, high: 2 * value },
  });

  it("are told the passing option with the fewest other parts", () => {
    const [poor, doubt, good] = allDayVerdicts([
      rated("poor", 2, 24, 0.3, 0.6),
      rated("doubt", 2, 16, 0.7, 1.4),
      rated("good", 4, 16, 1.3, 2.6),
      rated("better", 8, 8, 1.5, 3),
    ]);
    expect([poor!.outcome, doubt!.outcome, good!.outcome]).toEqual(["not enough", "can't tell", "enough"]);
    expect(doubt!.change).toContain("good");
    expect(good!.change).toBeUndefined();
  });

  it("are told the load that would pass when no option does", () => {
    const [only] = allDayVerdicts([rated("poor", 2, 24, 0.3, 0.6)]);
    expect(only!.change).toContain("0.3 times the loads");
  });
});

describe("sampled crews", () => {
  const strength = gripStrength({ norm: "mathiowetz-1985", sex: "women", age: 27 });
  const sample = (seed: number, count = 400) =>
    sampleCrews({ count, seed, strength, option: option("plain", 2, 16), referenceLoad: 60 });

  it("are the same for the same seed, and spread round the middle crew", () => {
    expect(sample(3)).toEqual(sample(3));
    expect(sample(4)).not.toEqual(sample(3));
    const sorted = [...sample(3).holdingTension].sort((a, b) => a - b);
    const middle = holdingTension({ hold: option("plain", 2, 16).hold, maximumGrip: strength.mean }).value;
    expect(sorted[200]! / middle).toBeGreaterThan(0.9);
    expect(sorted[200]! / middle).toBeLessThan(1.15);
    expect(sorted[0]).toBeGreaterThan(0);
  });

  it("with a heavier line count as weaker by as much", () => {
    const wide = sample(3).holdingTension;
    const fixed = sampleCrews({
      count: 400,
      seed: 3,
      strength,
      option: { ...option("plain", 2, 16), causes: { ratio: { value: 2, low: 2, high: 2 } } },
      referenceLoad: 60,
    }).holdingTension;
    const spread = (values: Float64Array) => {
      const logs = [...values].map(Math.log);
      const mean = logs.reduce((sum, one) => sum + one, 0) / logs.length;
      return logs.reduce((sum, one) => sum + (one - mean) ** 2, 0);
    };
    expect(spread(wide)).toBeGreaterThan(spread(fixed));
  });

  it("mostly last when the middle crew lasts by far, and hardly when it is far from lasting", () => {
    const sheet = option("plain", 2, 16);
    const share = (factor: number) => {
      const { givesOut } = crewDays({ day: dayAtHand({ intervals, option: sheet, factor }), crews: sample(3) });
      return givesOut.filter((time) => time === Number.POSITIVE_INFINITY).length / givesOut.length;
    };
    const { value } = allDayFactor({ intervals, maximumGrip: strength.mean, option: sheet });
    expect(share(value / 5)).toBeGreaterThan(0.9);
    expect(share(value)).toBeGreaterThan(0.35);
    expect(share(value)).toBeLessThan(0.65);
    expect(share(5 * value)).toBeLessThan(0.1);
  });

  it("refuse a count of none and a load of nothing", () => {
    expect(() => sample(3, 0)).toThrow(ValueError);
    expect(() =>
      sampleCrews({ count: 1, seed: 1, strength, option: option("plain", 2, 16), referenceLoad: 0 }),
    ).toThrow(ValueError);
  });
});
