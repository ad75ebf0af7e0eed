import { Refusal } from "../quantity/errors.js";
import { worseBy } from "../quantity/verdict.js";
import type { Boat } from "./boat.js";
import { type Consequence, consequences, type Demand, ratingOf } from "./demand.js";
import { dayDemand } from "./judge-day.js";
import { withLine } from "./ready.js";
import { type LineStanding, lineStanding } from "./standing.js";
import { suitsWork } from "./suits.js";
import { type LineTrial, lineTrials, together } from "./trials.js";

/** A change that is proposed, and how the line stands after it. */
export interface Proposed {
  readonly words: string;
  readonly boat: Boat;
  readonly standing: LineStanding;
}

/** Pairs of changes that are worked out at most. */
const mostPairs = 40;

/** An injury margin below this is never lowered [-]. */
const guarded = 1.5;

/** Less than this is no change of a margin. */
const nothing = 1e-6;

/** What was worked out for each trial. */
type Standings = Map<LineTrial, LineStanding | undefined>;

/** The changes of one line, each worked out once, and only when it is asked for. */
export class Proposals {
  readonly #boat: Boat;
  readonly #now: LineStanding;
  readonly #quick: Standings = new Map();
  readonly #whole: Standings = new Map();
  #singles: readonly LineTrial[] | undefined;
  #pairs: readonly LineTrial[] | undefined;

  constructor(boat: Boat, now: LineStanding) {
    this.#boat = boat;
    this.#now = now;
  }

  /**
   * The nearest change that gives enough of what one demand asks for, a single one or a rope together with hardware.
   *
   * It lowers no injury margin below its demand, and none that is below 1.5 at all; it worsens nothing of the same or a graver
   * consequence; and it is what a rigger would fit there.
   */
  for(one: Demand): Proposed | undefined {
    // First what costs nothing else either; then what costs a race what it brings to safety.
    const graver = consequences.slice(0, consequences.indexOf(one.consequence) + 1);
    return (
      this.#first(this.#allSingles(), one, ["injury", "race"]) ??
      this.#first(this.#allPairs(), one, ["injury", "race"]) ??
      this.#first(this.#allSingles(), one, graver) ??
      this.#first(this.#allPairs(), one, graver)
    );
  }

  #first(trials: readonly LineTrial[], one: Demand, kept: readonly Consequence[]): Proposed | undefined {
    const { demands } = this.#now;
    const passes = (standing: LineStanding | undefined): standing is LineStanding =>
      standing !== undefined && mends(one, standing.demands) && isAllowed(demands, standing.demands, kept);
    for (const trial of trials) {
      if (one.subject !== dayDemand && !passes(this.#standing(trial, this.#quick, false))) continue;
      const standing = this.#standing(trial, this.#whole, true);
      if (passes(standing)) return { words: trial.words, boat: this.#with(trial), standing };
    }
    return undefined;
  }

  #allSingles(): readonly LineTrial[] {
    const line = this.#boat.lines[this.#now.name]!;
    this.#singles ??= lineTrials(this.#boat, line).filter((trial) => suitsWork(this.#boat, trial.line, line));
    return this.#singles;
  }

  #allPairs(): readonly LineTrial[] {
    if (this.#pairs !== undefined) return this.#pairs;
    const line = this.#boat.lines[this.#now.name]!;
    const all = lineTrials(this.#boat, line).filter(({ crew }) => crew === undefined);
    const ropes = all.filter((trial) => trial.line.path === line.path);
    const hardware = all.filter((trial) => trial.line.path !== line.path);
    this.#pairs = ropes
      .flatMap((rope) => hardware.map((piece) => together(line, rope, piece)))
      .filter((pair) => suitsWork(this.#boat, pair.line, line))
      .sort((first, second) => first.away - second.away)
      .slice(0, mostPairs);
    return this.#pairs;
  }

  /** How the line stands with a change, with the day or without it; nothing where a model refuses it. */
  #standing(trial: LineTrial, known: Standings, day: boolean): LineStanding | undefined {
    if (known.has(trial)) return known.get(trial);
    const found = standingOf(this.#with(trial), this.#now.name, day);
    known.set(trial, found);
    return found;
  }

  #with({ line, crew }: LineTrial): Boat {
    const changed = withLine(this.#boat, this.#now.name, line);
    return crew === undefined ? changed : { ...changed, crew: { ...changed.crew, [line.hand]: crew } };
  }
}

function standingOf(boat: Boat, name: string, day: boolean): LineStanding | undefined {
  try {
    return lineStanding(boat, name, { day });
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

const sameAs =
  ({ subject }: Demand) =>
  (other: Demand) =>
    other.subject === subject;

/** Whether there is enough of what a demand asks for; what is asked no more is enough. */
function mends(one: Demand, after: readonly Demand[]): boolean {
  return (after.find(sameAs(one))?.outcome ?? "enough") === "enough";
}

/**
 * Whether a change may be proposed.
 *
 * @param now  all demands of the line as it is
 * @param after  all demands of the line with the change
 * @param kept  consequences that must not get worse: that of the demand it mends, and all graver ones
 * @returns false where it lowers an injury margin that is guarded, or worsens anything of the consequences that are kept
 */
export function isAllowed(now: readonly Demand[], after: readonly Demand[], kept: readonly Consequence[]): boolean {
  return after.every((then) => {
    if (!kept.includes(then.consequence)) return true;
    const before = now.find(sameAs(then));
    if (before === undefined) return then.outcome === "enough";
    if (worseBy(then.outcome, before.outcome) > 0) return false;
    const lowered =
      isLower(then.margins.middle, before.margins.middle) || isLower(then.margins.worst, before.margins.worst);
    if (!lowered) return true;
    return then.outcome === "enough" && (then.consequence !== "injury" || lowestOf(before) >= guarded);
  });
}

const isLower = (one: number, other: number) => one < other * (1 - nothing);
const lowestOf = (demand: Demand) => Math.min(demand.margins.middle, ratingOf(demand));
