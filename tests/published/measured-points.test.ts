import { describe, expect, it } from "vitest";
import { ropeEnds } from "../../src/materials/ends.js";
import { measuredSets, setsAside } from "../../src/published/band-sets.js";
import { isInside } from "../../src/uncertainty/coverage.js";

const kilogram = 9.80665;
const pound = 4.4482216152605;
const all = [...measuredSets(), ...setsAside()];
const pointsOf = (id: string) => {
  const set = all.find((one) => one.id === id);
  expect(set, id).toBeDefined();
  return set!.points;
};
const measuredOf = (id: string, unit = 1) =>
  pointsOf(id).map(({ measured }) => Number((measured / unit).toPrecision(6)));

describe("measured points of people", () => {
  it("are the means as printed", () => {
    expect(measuredOf("german-grip", kilogram)).toEqual([
      50.7, 52.4, 53.6, 53.4, 53.8, 52.9, 50.4, 49.1, 46.3, 44.1, 41.7, 32.5, 33.6, 33.3, 34.2, 34.5, 33.4, 32.2, 30,
      29, 27.6, 26,
    ]);
    expect(measuredOf("recruits")).toEqual([541, 329]);
    expect(measuredOf("british-grip", kilogram)).toEqual([51, 31]);
    expect(measuredOf("laboratory-grip")).toEqual([480.2, 341.5]);
    expect(measuredOf("six-people", kilogram)).toEqual([30, 32, 43, 30, 40, 42]);
  });

  it("are foretold from the norm of the other sample and what the way of measuring changes", () => {
    const [youngMen] = pointsOf("german-grip");
    expect(youngMen!.band.value / pound).toBeCloseTo(121, 9);
    expect(youngMen!.band.low / pound).toBeCloseTo(121 * 0.83, 9);
    expect(youngMen!.band.high / pound).toBeCloseTo(121 * 1.17, 9);
  });

  it("are foretold wider for one person than for a mean", () => {
    const person = pointsOf("six-people").find(({ name }) => name.endsWith(" men"))!.band;
    const mean = pointsOf("german-grip")[1]!.band;
    expect(person.value).toBeCloseTo(mean.value, 9);
    expect(person.low).toBeLessThan(mean.low);
    expect(person.high).toBeGreaterThan(mean.high);
  });
});

describe("measured holds", () => {
  it("are the times as printed", () => {
    expect(measuredOf("athletes")).toEqual([56, 62, 87]);
    expect(measuredOf("long-holds", 60)).toEqual([10.1, 11.6]);
    expect(measuredOf("half-of-maximum")).toEqual([60]);
  });

  it("are foretold by the power law, wider by the exponent the lighter the grip", () => {
    const bands = ["half-of-maximum", "athletes", "long-holds"].map((id) => pointsOf(id)[0]!.band);
    expect(bands.map(({ value }) => value)).toEqual(
      [0.5, 0.4, 0.189].map((share) => expect.closeTo(33.55 * share ** -1.61, 6)),
    );
    const widths = bands.map(({ low, high }) => high / low);
    expect(widths).toEqual([...widths].sort((a, b) => a - b));
    for (const { value, low, high } of bands) {
      expect(low).toBeLessThan(0.5 * value);
      expect(high).toBeGreaterThan(3 * value);
    }
  });
});

describe("measured knots", () => {
  it("are the shares as printed", () => {
    expect(measuredOf("magazine-loops", 0.01)).toEqual([55.7, 53, 52.3, 57.5, 43.4, 47.4, 39, 40.1]);
    expect(measuredOf("thin-braid", 0.01)).toEqual([83, 84]);
    expect(measuredOf("older-knots", 0.01)).toEqual([60, 75, 45]);
  });

  it("repeat the loads that are printed beside them", () => {
    const loads = [
      1470 / 2640,
      1400 / 2640,
      1490 / 2850,
      1640 / 2850,
      1600 / 3690,
      1750 / 3690,
      2090 / 5360,
      2150 / 5360,
    ];
    for (const [index, { measured, halfStep }] of pointsOf("magazine-loops").entries())
      expect(Math.abs(measured - loads[index]!)).toBeLessThanOrEqual(halfStep + 1e-9);
  });

  it("lay outside the printed range of a bowline, for which it was widened", () => {
    const bowlines = [...pointsOf("magazine-loops"), ...pointsOf("thin-braid")].filter(({ name }) =>
      /bowline in .*(?:polyester|braid)/u.test(name),
    );
    expect(bowlines).toHaveLength(7);
    const printed = { value: 0.71, low: 0.67, high: 0.75 };
    expect(bowlines.filter((one) => isInside({ ...one, band: printed }))).toEqual([]);
    expect(bowlines.filter(isInside)).toHaveLength(7);
    expect(ropeEnds.bowline.retained.soft.value).toBeCloseTo(printed.value, 12);
  });
});
