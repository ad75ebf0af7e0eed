import type { Repeat } from "../crew/day-schedule.js";

/** A part of a race: which lines are held by hand, and how hard they pull. */
export interface BoatLeg {
  readonly name: string;
  /** [s] */
  readonly length: number;
  /** Load over that of the design wind, by line [-]; a line that is not named is not held. */
  readonly holds: Readonly<Record<string, number>>;
  readonly gusts?: Repeat;
  /** Tacks and gybes: they take the place of a gust. */
  readonly tacks?: Repeat;
  /** The other hand, both hands or a cleat take over. */
  readonly rests?: Repeat;
}

/** Legs that follow one another. */
export interface BoatRace {
  readonly name: string;
  /** From the start of the day [s]. */
  readonly start: number;
  readonly legs: readonly BoatLeg[];
}

/** A day on the water; hands rest between the races. */
export interface BoatDay {
  /** [s] */
  readonly length: number;
  readonly races: readonly BoatRace[];
}
