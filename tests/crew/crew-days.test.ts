import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Crew, crewDay } from "../../src/crew/crew-day.js";
import { crewDays } from "../../src/crew/crew-days.js";
import { cutIntervals, dayIntervals } from "../../src/crew/day-schedule.js";
import { enduranceTime } from "../../src/crew/endurance.js";
import { endlessShare, modelEndurance, ratesOf } from "../../src/crew/fatigue.js";
import { ValueError } from "../../src/quantity/errors.js";
import { evenly } from "../numerics/evenly.js";

const crew: Crew = { holdingTension: 200, ...ratesOf("hand") };
const steady = (force: number, length: number, parts = 1) => ({
  lengths: new Float64Array(parts).fill(length / parts),
  handForces: new Float64Array(parts).fill(force),
});
const last = (values: readonly number[]) => values[values.length - 1]!;
const race = { every: 60, lasts: 4, factor: 0 };
const intervals = dayIntervals({
  length: 7200,
  races: [
    {
      name: "race",
      start: 600,
      legs: [{ name: "run", length: 5400, load: 60, tacks: race, gusts: { every: 37, lasts: 9, factor: 2.6 } }],
    },
  ],
});
const columns = (list: typeof intervals) => ({
  lengths: Float64Array.from(list, ({ length }) => length),
  handForces: Float64Array.from(list, ({ load }) => load),
});

describe("a steady hold", () => {
  it("gives out when the closed form says, in one piece and in many", () => {
    for (const share of [0.1, 0.2, 0.35, 0.5, 0.7]) {
      const exact = modelEndurance({ share, ...ratesOf("hand") });
      for (const parts of [1, 7, Math.ceil(exact / 0.1)]) {
        const { givesOut } = crewDay({ day: steady(200 * share, 1.5 * exact, parts), crew });
        expect(Math.abs(givesOut! / exact - 1)).toBeLessThan(1e-6);
      }
    }
  });

  it("gives out when the endurance law says above the seam", () => {
    for (const share of [0.75, 0.85, 0.95]) {
      const { givesOut } = crewDay({ day: steady(200 * share, 300, 3000), crew });
      expect(Math.abs(givesOut! / enduranceTime({ share }) - 1)).toBeLessThan(1e-6);
    }
  });

  it("goes on for ever below the endless share", () => {
    const share = 0.999 * endlessShare(ratesOf("hand"));
    expect(crewDay({ day: steady(200 * share, 1e7), crew }).givesOut).toBeUndefined();
  });

  it("gives out at once when it asks for more than the hand has", () => {
    expect(crewDay({ day: steady(201, 10), crew }).givesOut).toBe(0);
  });
});

describe("tiring and recovering", () => {
  it("without rest the capacity only falls", () => {
    fc.assert(
      fc.property(evenly(15, 140), (force) => {
        const { capacity } = crewDay({ day: steady(force, 3600, 200), crew });
        expect(capacity.every((value, i) => i === 0 || value <= capacity[i - 1]! + 1e-15)).toBe(true);
      }),
      { seed: 7 },
    );
  });

  it("a long rest gives everything back", () => {
    const day = { lengths: Float64Array.of(400, 1e6), handForces: Float64Array.of(120, 0) };
    const { capacity } = crewDay({ day, crew });
    expect(capacity[0]).toBeLessThan(0.7);
    expect(capacity[1]).toBeCloseTo(1, 12);
  });

  it("the rest factor acts at rest, and not under the lightest load", () => {
    const capacityAfter = (force: number) =>
      last(
        crewDay({ day: { lengths: Float64Array.of(300, 60), handForces: Float64Array.of(80, force) }, crew }).capacity,
      );
    expect(capacityAfter(0)).toBeGreaterThan(capacityAfter(0.001) + 0.1);
  });

  it("a hand that gave out takes hold again when the load falls below what it has left", () => {
    const day = { lengths: Float64Array.of(600, 20_000), handForces: Float64Array.of(150, 6) };
    const { capacity, givesOut } = crewDay({ day, crew });
    expect(givesOut).toBeLessThan(100);
    expect(capacity[0]).toBeLessThan(0.75);
    expect(capacity[1]).toBeGreaterThan(capacity[0]!);
  });

  it("a hand drained below a light load finds it again in closed form, in one piece as in many", () => {
    const weak = { ...crew, fatigueRate: 0.05, recoveryRate: 0.002, restFactor: 1 };
    const light = 0.9 * 200 * endlessShare(weak);
    const day = (parts: number) => ({
      lengths: Float64Array.from([4000, ...new Array<number>(parts).fill(3000 / parts)]),
      handForces: Float64Array.from([199, ...new Array<number>(parts).fill(light)]),
    });
    expect(last(crewDay({ day: day(1), crew: weak }).capacity)).toBeCloseTo(
      last(crewDay({ day: day(3000), crew: weak }).capacity),
      9,
    );
  });

  it("a stronger crew never tires sooner at the same load, nor one that tires slower or rests better", () => {
    fc.assert(
      fc.property(evenly(0.2, 2.5), evenly(1, 2), (weight, better) => {
        const day = columns(intervals.map((one) => ({ ...one, load: weight * one.load })));
        const time = (changed: Partial<Crew>) =>
          crewDay({ day, crew: { ...crew, ...changed } }).givesOut ?? Number.POSITIVE_INFINITY;
        expect(time({ holdingTension: 200 * better })).toBeGreaterThanOrEqual(time({}));
        expect(time({ fatigueRate: crew.fatigueRate / better })).toBeGreaterThanOrEqual(time({}));
        expect(time({ restFactor: crew.restFactor * better })).toBeGreaterThanOrEqual(time({}));
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it("gains from short pauses about what a laboratory measured: 10 s in 3 minutes at a quarter of maximum, 1.43 times", () => {
    const share = 0.25;
    const parts = 60;
    const day = {
      lengths: Float64Array.from({ length: parts }, (_, i) => (i % 2 === 0 ? 170 : 10)),
      handForces: Float64Array.from({ length: parts }, (_, i) => (i % 2 === 0 ? 200 * share : 0)),
    };
    const gain = (restFactor: number) =>
      crewDay({ day, crew: { ...crew, restFactor } }).givesOut! / modelEndurance({ share, ...ratesOf("hand") });
    expect(gain(30)).toBeGreaterThan(1.2);
    expect(gain(30)).toBeLessThan(1.6);
    expect(gain(15)).toBeLessThan(gain(30));
  });

  it("is the same on the stretches of the day and on a grid of a tenth of a second", () => {
    const whole = crewDay({ day: columns(intervals), crew });
    const fine = crewDay({ day: columns(cutIntervals(intervals, 0.1)), crew });
    expect(whole.givesOut).toBeDefined();
    expect(Math.abs(fine.givesOut! / whole.givesOut! - 1)).toBeLessThan(1e-9);
    expect(last(fine.capacity)).toBeCloseTo(last(whole.capacity), 9);
  });

  it("keeps capacity between nothing and everything, whatever the day", () => {
    fc.assert(
      fc.property(fc.array(evenly(0, 400), { minLength: 1, maxLength: 40 }), evenly(0.1, 900), (forces, length) => {
        const day = { lengths: new Float64Array(forces.length).fill(length), handForces: Float64Array.from(forces) };
        const { capacity } = crewDay({ day, crew });
        expect(capacity.every((value) => value >= 0 && value <= 1)).toBe(true);
      }),
      { seed: 7 },
    );
  });
});

describe("many crews", () => {
  it("come out as each alone, with the marks asked for", () => {
    const day = columns(intervals);
    const strengths = [120, 200, 400];
    const crews = {
      holdingTension: Float64Array.from(strengths),
      fatigueRate: new Float64Array(3).fill(crew.fatigueRate),
      recoveryRate: new Float64Array(3).fill(crew.recoveryRate),
      restFactor: new Float64Array(3).fill(crew.restFactor),
    };
    const marks = [5, 50];
    const all = crewDays({ day, crews, marks });
    strengths.forEach((holdingTension, i) => {
      const alone = crewDay({ day, crew: { ...crew, holdingTension } });
      expect(all.givesOut[i]).toBe(alone.givesOut ?? Number.POSITIVE_INFINITY);
      expect(all.left[i]).toBe(last(alone.capacity));
      expect(all.least[i]).toBe(Math.min(1, ...alone.capacity));
      expect([...all.marked.slice(2 * i, 2 * i + 2)]).toEqual(marks.map((mark) => alone.capacity[mark]));
    });
  });

  const good = {
    holdingTension: Float64Array.of(1),
    fatigueRate: Float64Array.of(1),
    recoveryRate: Float64Array.of(1),
    restFactor: Float64Array.of(1),
  };
  it.each([
    [{ day: steady(1, 0), crews: good }, /stretch 0 of 0 s/u],
    [{ day: steady(Number.NaN, 1), crews: good }, /hand force NaN/u],
    [{ day: { lengths: Float64Array.of(1, 2), handForces: Float64Array.of(1) }, crews: good }, /different length/u],
    [{ day: steady(1, 1), crews: { ...good, restFactor: Float64Array.of(0) } }, /not above 0/u],
    [{ day: steady(1, 1), crews: { ...good, restFactor: Float64Array.of(1, 1) } }, /different length/u],
  ])("refuse columns that do not fit", (input, message) => {
    expect(() => crewDays(input)).toThrow(ValueError);
    expect(() => crewDays(input)).toThrow(message);
  });
});
