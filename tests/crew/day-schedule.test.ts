import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutIntervals, type DaySchedule, dayIntervals, type Leg, type Race } from "../../src/crew/day-schedule.js";
import { ValueError } from "../../src/quantity/errors.js";

const leg: Leg = { name: "run", length: 100, load: 80 };
const race = (name: string, start: number, ...legs: Leg[]): Race => ({ name, start, legs });
const day = (...races: Race[]): DaySchedule => ({ length: 1000, races });

describe("a day on the water", () => {
  it("is whole: breaks and legs follow each other without a gap", () => {
    const found = dayIntervals(
      day(race("first", 100, leg, { ...leg, name: "beat", load: 0 }), race("second", 400, leg)),
    );
    expect(found.map(({ name, start, length, load }) => [name, start, length, load])).toEqual([
      ["break", 0, 100, 0],
      ["first, run", 100, 100, 80],
      ["first, beat", 200, 100, 0],
      ["break", 300, 100, 0],
      ["second, run", 400, 100, 80],
      ["break", 500, 500, 0],
    ]);
  });

  it("raises the load in gusts and frees the hand in tacks, which come first", () => {
    const gusty = { ...leg, gusts: { every: 40, lasts: 10, factor: 1.5 }, tacks: { every: 50, lasts: 5, factor: 0 } };
    const found = dayIntervals(day(race("first", 0, gusty)));
    expect(found.slice(0, 7).map(({ start, load }) => [start, load])).toEqual([
      [0, 0],
      [5, 120],
      [10, 80],
      [40, 120],
      [50, 0],
      [55, 80],
      [80, 120],
    ]);
  });

  it("keeps its length whatever the pattern, and the mean load that the pattern gives", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 }), (every, lasts) => {
        const gusts = { every, lasts: Math.min(lasts, every), factor: 2 };
        const found = dayIntervals({
          length: 12 * every,
          races: [race("first", 0, { ...leg, length: 12 * every, gusts })],
        });
        const total = found.reduce((sum, { length }) => sum + length, 0);
        const work = found.reduce((sum, { length, load }) => sum + length * load, 0);
        expect(total).toBeCloseTo(12 * every, 9);
        expect(work / total).toBeCloseTo(80 * (1 + gusts.lasts / every), 9);
        expect(found.every(({ length }) => length > 0)).toBe(true);
      }),
      { seed: 7 },
    );
  });

  it("is the same when it is cut finer", () => {
    const found = dayIntervals(day(race("first", 100, leg)));
    const fine = cutIntervals(found, 0.3);
    expect(fine.every(({ length }) => length <= 0.3 + 1e-9)).toBe(true);
    expect(fine.reduce((sum, { length, load }) => sum + length * load, 0)).toBeCloseTo(8000, 6);
  });

  const refused: [string, DaySchedule, RegExp][] = [
    [
      "an overlap",
      day(race("first", 0, leg), race("second", 99, leg)),
      /start of second.*100 s or later, the end of first/u,
    ],
    ["the wrong order", day(race("late", 500, leg), race("early", 0, leg)), /start of early/u],
    ["a race after dusk", day(race("first", 950, leg)), /end of first.*1000 s/u],
    ["a start before the day", day(race("first", -5, leg)), /start of first/u],
    ["a leg without length", day(race("first", 0, { ...leg, length: 0 })), /length of first, run/u],
    ["a leg of negative length", day(race("first", 0, { ...leg, length: -3 })), /length of first, run/u],
    ["an endless leg", day(race("first", 0, { ...leg, length: Number.POSITIVE_INFINITY })), /length of first, run/u],
    ["a load that is no number", day(race("first", 0, { ...leg, load: Number.NaN })), /load of first, run/u],
    ["a load that pushes", day(race("first", 0, { ...leg, load: -1 })), /load of first, run/u],
    [
      "gusts that overlap",
      day(race("first", 0, { ...leg, gusts: { every: 10, lasts: 11, factor: 2 } })),
      /gusts of first, run/u,
    ],
    [
      "tacks that take no time",
      day(race("first", 0, { ...leg, tacks: { every: 10, lasts: 0, factor: 0 } })),
      /tacks of first, run/u,
    ],
    [
      "a gust factor below nothing",
      day(race("first", 0, { ...leg, gusts: { every: 10, lasts: 1, factor: -1 } })),
      /load factor of gusts/u,
    ],
    ["a race without legs", day(race("first", 0)), /first: got no leg/u],
    ["a day without length", { length: 0, races: [] }, /length of the day/u],
  ];
  it.each(refused)("refuses %s and names it", (_what, plan, message) => {
    expect(() => dayIntervals(plan)).toThrow(ValueError);
    expect(() => dayIntervals(plan)).toThrow(message);
  });

  it("refuses a grid without step", () => {
    expect(() => cutIntervals([], 0)).toThrow(ValueError);
  });
});
