import { cutIntervals, dayIntervals, type Interval, type Race } from "../crew/day-schedule.js";
import { coefficient } from "../sources/coefficient.js";

const minute = 60;

/** The demo day: races of two beats and two runs, gusts, tacks and gybes. All invented. Times in seconds. */
const gustWind = coefficient({
  value: 1.3,
  unit: "1",
  low: 1.2,
  high: 1.45,
  status: "invented for the demo",
  place: "wind of a gust over the wind between gusts",
});
const beatShare = coefficient({
  value: 0.25,
  unit: "1",
  low: 0.1,
  high: 0.4,
  status: "invented for the demo",
  place: "pull of the sheet that the same hand holds on a beat, over that of the gennaker sheet",
});

/** Load in a gust over the load between gusts [-]. */
export const gustFactor = gustWind.value ** 2;

const gusts = { every: 45, lasts: 8, factor: gustFactor };
const gybes = { every: 90, lasts: 6, factor: 0 };
const tacks = { every: 100, lasts: 8, factor: 0 };
// Spells of 15 s on a beat, twenty a leg, and six a run, as sailors were seen to trim; in between the other hand holds.
const beatRests = { every: 36, lasts: 21, factor: 0 };
const runRests = { every: 80, lasts: 44, factor: 0 };
const beatLength = 12 * minute;
const runLength = 8 * minute;
const raceLength = 2 * (beatLength + runLength);
const betweenStarts = 60 * minute;

/** Time at which a race starts [s], from the first on. */
function startOf(index: number): number {
  return 20 * minute + index * betweenStarts;
}

/** Beginnings and ends of the runs of the day [s]. */
export function runsOf(races: number): { readonly from: number; readonly to: number }[] {
  return Array.from({ length: races }, (_, race) =>
    [1, 2].map((run) => {
      const to = startOf(race) + run * (beatLength + runLength);
      return { from: to - runLength, to };
    }),
  ).flat();
}

/** Stretches of a day with some races, for the load of the sheet between gusts on a run [N]. */
export function raceDay(races: number, load: number): Interval[] {
  const run = (name: string) => ({ name, length: runLength, load, gusts, tacks: gybes, rests: runRests });
  const beat = (name: string) => ({
    name,
    length: beatLength,
    load: beatShare.value * load,
    gusts,
    tacks,
    rests: beatRests,
  });
  const raceAt = (index: number): Race => ({
    name: `race ${index + 1}`,
    start: startOf(index),
    legs: [beat("first beat"), run("first run"), beat("second beat"), run("second run")],
  });
  const length = startOf(races - 1) + raceLength + 20 * minute;
  return dayIntervals({ length, races: Array.from({ length: races }, (_, index) => raceAt(index)) });
}

/** The same stretches, none longer than a while, with the places that a curve is drawn through. */
export function drawnDay(intervals: readonly Interval[], every: number) {
  const stretches = cutIntervals(intervals, every);
  const ends = stretches.map(({ start, length }) => start + length);
  const marks = ends.flatMap((end, index) => {
    const next = ends[index + 1];
    return next === undefined || Math.floor(next / every) > Math.floor(end / every) ? [index] : [];
  });
  return { stretches, marks, times: marks.map((mark) => ends[mark]!) };
}
