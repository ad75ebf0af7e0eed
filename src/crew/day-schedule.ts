import { ValueError } from "../quantity/errors.js";

/** Something that returns in a leg: gusts that raise the load, tacks that take it away, rests of the hand. */
export interface Repeat {
  /** From the start of one to the start of the next [s]. */
  readonly every: number;
  /** How long each lasts [s], at most `every`. */
  readonly lasts: number;
  /** Load meanwhile over the load of the leg [-]; 0 sets the hand free. */
  readonly factor: number;
}

/** A part of a race, or a stretch between races, with one level of load. */
export interface Leg {
  readonly name: string;
  /** [s] */
  readonly length: number;
  /** Load of the sheet between gusts [N]; 0 sets the hand free. */
  readonly load: number;
  readonly gusts?: Repeat;
  /** Tacks and gybes: they take the place of a gust. */
  readonly tacks?: Repeat;
  /** The other hand, both hands or a cleat take over; what is left to this hand comes on top of a gust. */
  readonly rests?: Repeat;
}

/** Legs that follow each other. */
export interface Race {
  readonly name: string;
  /** Time from the start of the day [s]. */
  readonly start: number;
  readonly legs: readonly Leg[];
}

/** A day on the water: races and sails between them; the hand is free in the gaps. */
export interface DaySchedule {
  /** Length of the day [s]. */
  readonly length: number;
  readonly races: readonly Race[];
}

/** A stretch of the day with one load. */
export interface Interval {
  /** Race and leg, or `break`. */
  readonly name: string;
  /** [s] */
  readonly start: number;
  readonly length: number;
  /** [N] */
  readonly load: number;
}

function refuse(quantity: string, value: string, allowed: string, advice: string): never {
  throw new ValueError({ quantity, value, allowed, advice });
}

function above(name: string, what: string, value: number): void {
  if (Number.isFinite(value) && value > 0) return;
  refuse(`${what} of ${name}`, `${value} s`, "a finite number of seconds above 0", "Give each interval a length.");
}

function notBelow(name: string, what: string, value: number, unit: string): void {
  if (Number.isFinite(value) && value >= 0) return;
  refuse(`${what} of ${name}`, `${value} ${unit}`.trim(), "a finite number, 0 or more", "Write 0 for a free hand.");
}

function checkRepeat(name: string, { every, lasts, factor }: Repeat): void {
  above(name, "spacing", every);
  above(name, "length", lasts);
  notBelow(name, "load factor", factor, "");
  if (lasts <= every) return;
  refuse(`length of ${name}`, `${lasts} s`, `at most ${every} s, its spacing`, "It would overlap with the next one.");
}

function checkLeg(name: string, { length, load, gusts, tacks, rests }: Leg): void {
  above(name, "length", length);
  notBelow(name, "load", load, "N");
  if (gusts) checkRepeat(`gusts of ${name}`, gusts);
  if (tacks) checkRepeat(`tacks of ${name}`, tacks);
  if (rests) checkRepeat(`rests of ${name}`, rests);
}

const raceLength = ({ legs }: Race) => legs.reduce((sum, { length }) => sum + length, 0);

/** Most gusts, tacks and rests of a day, and most stretches that it is cut into: beyond them nothing new is learned. */
export const mostRepeats = 20_000;
const mostStretches = 1_000_000;

/**
 * How often something comes back in a leg.
 *
 * @param leg  its length [s] and what comes back: spacing [s], above 0
 * @returns number of gusts, tacks and rests [-]
 * Source: common practice. Example: repeatsOf({ length: 60, gusts: { every: 20, lasts: 5, factor: 1.3 } }) → 3
 */
export function repeatsOf({ length, gusts, tacks, rests }: Omit<Leg, "name" | "load">): number {
  return [gusts, tacks, rests].reduce((sum, one) => sum + (one === undefined ? 0 : Math.ceil(length / one.every)), 0);
}

function checkRaces(races: readonly Race[], length: number): void {
  let end = 0;
  let repeats = 0;
  let before = "the start of the day";
  for (const race of races) {
    notBelow(race.name, "start", race.start, "s");
    if (race.legs.length === 0) refuse(race.name, "no leg", "one leg or more", "Leave out a race without legs.");
    for (const leg of race.legs) {
      checkLeg(`${race.name}, ${leg.name}`, leg);
      repeats += repeatsOf(leg);
      if (repeats > mostRepeats)
        refuse(
          `gusts and tacks up to ${race.name}, ${leg.name}`,
          String(repeats),
          `at most ${mostRepeats} in a day`,
          "Let them come back more seldom.",
        );
    }
    if (race.start < end) {
      refuse(
        `start of ${race.name}`,
        `${race.start} s`,
        `${end} s or later, the end of ${before}`,
        "Intervals may not overlap: put them in the order of the day, each after the one before.",
      );
    }
    end = race.start + raceLength(race);
    before = race.name;
  }
  if (end > length)
    refuse(`end of ${before}`, `${end} s`, `at most ${length} s, the length of the day`, "Make the day longer.");
}

/** Times within a leg at which a load may change. */
function changes(length: number, repeat: Repeat | undefined): number[] {
  if (repeat === undefined) return [];
  const count = Math.ceil(length / repeat.every);
  return Array.from({ length: count }, (_, i) => [i * repeat.every, i * repeat.every + repeat.lasts])
    .flat()
    .filter((time) => time > 0 && time < length);
}

function isOn(repeat: Repeat | undefined, time: number): repeat is Repeat {
  return repeat !== undefined && time - Math.floor(time / repeat.every) * repeat.every < repeat.lasts;
}

function legIntervals(name: string, start: number, leg: Leg): Interval[] {
  const { length, load, gusts, tacks, rests } = leg;
  const returning = [gusts, tacks, rests].flatMap((one) => changes(length, one));
  const edges = [...new Set([0, ...returning, length])].sort((a, b) => a - b);
  return edges.slice(1).map((end, i) => {
    const begin = edges[i]!;
    const middle = 0.5 * (begin + end);
    const resting = isOn(rests, middle) ? rests.factor : 1;
    const factor = isOn(tacks, middle) ? tacks.factor : resting * (isOn(gusts, middle) ? gusts.factor : 1);
    return { name, start: start + begin, length: end - begin, load: load * factor };
  });
}

/**
 * Load over a day: every stretch with one load, in order, breaks included.
 *
 *     load = load of the leg · factor of the tack or, without one, of the gust and of the rest;   0 between the races
 *
 * @param length  length of the day [s], above 0
 * @param races  races in the order of the day, with start [s] and legs: length [s], load [N], gusts, tacks, rests
 * @returns stretches that follow each other without a gap from 0 to the end of the day: start and length [s], load [N]
 * @throws ValueError for an interval that overlaps, ends too late, has no length, or a number that is not finite; the message names it
 * Valid for loads that stay level between changes; gusts, tacks and rests start with the leg.
 * Source: common practice, a day of races.
 * Example: dayIntervals({ length: 60, races: [] }) → [{ name: "break", start: 0, length: 60, load: 0 }]
 */
export function dayIntervals({ length, races }: DaySchedule): Interval[] {
  above("the day", "length", length);
  checkRaces(races, length);
  const found: Interval[] = [];
  let time = 0;
  const rest = (until: number) => {
    if (until > time) found.push({ name: "break", start: time, length: until - time, load: 0 });
    time = Math.max(time, until);
  };
  for (const race of races) {
    rest(race.start);
    for (const leg of race.legs) {
      for (const interval of legIntervals(`${race.name}, ${leg.name}`, time, leg)) found.push(interval);
      time += leg.length;
    }
  }
  rest(length);
  return found;
}

/**
 * The same stretches, cut so that none is longer than a step.
 *
 * @param intervals  stretches of a day
 * @param longest  longest stretch [s], above 0
 * @returns stretches of equal length within each old one [s, N]
 * @throws ValueError for a step that is not above 0, or so short that there would be more than a million stretches
 * Source: common practice, a finer grid of the same load.
 * Example: cutIntervals([{ name: "hold", start: 0, length: 3, load: 5 }], 1).length → 3
 */
export function cutIntervals(intervals: readonly Interval[], longest: number): Interval[] {
  above("the grid", "step", longest);
  const all = intervals.reduce((sum, { length }) => sum + length / longest, intervals.length);
  if (!(all <= mostStretches))
    refuse("stretches of the day", String(Math.ceil(all)), `at most ${mostStretches}`, "Take a longer step.");
  return intervals.flatMap(({ name, start, length, load }) => {
    const count = Math.max(1, Math.ceil(length / longest - 1e-9));
    return Array.from({ length: count }, (_, i) => ({
      name,
      start: start + (i * length) / count,
      length: length / count,
      load,
    }));
  });
}
