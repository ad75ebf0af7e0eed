import type { MuscleGroup } from "../materials/people-fatigue.js";
import { seamShare } from "../materials/people-fatigue.js";
import { ValueError } from "../quantity/errors.js";
import { seamFactorOf } from "./fatigue.js";

/** Many crews, one number each. */
export interface Crews {
  /** Largest tension that the rested hands hold [N]. */
  readonly holdingTension: Float64Array;
  /** F [1/s] */
  readonly fatigueRate: Float64Array;
  /** R [1/s] */
  readonly recoveryRate: Float64Array;
  /** Recovery at rest over recovery under load [-]. */
  readonly restFactor: Float64Array;
}

/** A day as columns: stretches that follow each other. */
export interface DayColumns {
  /** [s] */
  readonly lengths: Float64Array;
  /** Tension at the hand in each stretch [N]; 0 is rest. */
  readonly handForces: Float64Array;
}

/** What a day does to each crew. */
export interface CrewDays {
  /** First time at which the demand exceeds the capacity [s], from the start; infinite when it never does. */
  readonly givesOut: Float64Array;
  /** Capacity left at the end of the day [-]. */
  readonly left: Float64Array;
  /** Least capacity of the day, at the ends of the stretches [-]. */
  readonly least: Float64Array;
  /** Capacity at the end of each marked stretch [-], crew after crew. */
  readonly marked: Float64Array;
}

/** A day for many crews. */
export interface CrewDaysInput {
  readonly day: DayColumns;
  readonly crews: Crews;
  /** The hand when absent. */
  readonly group?: MuscleGroup;
  /** Indices of stretches, rising, at whose end the capacity is kept; none when absent. */
  readonly marks?: readonly number[];
}

/** First place of a number that is no finite one above zero, or, where zero is allowed, of 0 or more; -1 when there is none. */
function badPlace(column: Float64Array, zero: boolean): number {
  for (let i = 0; i < column.length; i++) {
    const value = column[i]!;
    if (!((zero ? value >= 0 : value > 0) && value < Number.POSITIVE_INFINITY)) return i;
  }
  return -1;
}

function refuseBadColumns({ lengths, handForces }: DayColumns, crews: Crews): void {
  const { holdingTension, fatigueRate, recoveryRate, restFactor } = crews;
  const columns = [holdingTension, fatigueRate, recoveryRate, restFactor];
  const sameLength =
    lengths.length === handForces.length && columns.every(({ length }) => length === holdingTension.length);
  const badLength = badPlace(lengths, false);
  const badForce = badPlace(handForces, true);
  const badCrew = columns.some((column) => badPlace(column, false) >= 0);
  if (sameLength && badLength < 0 && badForce < 0 && !badCrew) return;
  throw new ValueError({
    quantity: "columns of a day",
    value: !sameLength
      ? "columns of different length"
      : badCrew
        ? "a crew with a number that is not above 0"
        : badLength >= 0
          ? `stretch ${badLength} of ${lengths[badLength]} s`
          : `hand force ${handForces[badForce]} N in stretch ${badForce}`,
    allowed: "lengths above 0, hand forces of 0 or more, crews with numbers above 0, all finite; columns of one length",
    advice: "Make them with dayIntervals and sampleCrews.",
  });
}

/**
 * A day for many crews: capacity left, and the moment at which the hand gives out.
 *
 *     holding:    dM_F/dt = F·k·f − R·M_F   (k = 1 up to the seam at 0.7, above it so that the endurance law is met)
 *     resting:    dM_F/dt = −r·R·M_F
 *     given out:  dM_F/dt = F·(1 − M_F) − R·M_F   while 1 − M_F < f
 *
 * Each stretch has one load, so each step is an exact exponential; a change of regime inside a stretch is found in closed form.
 *
 * @param day  lengths [s] and hand forces [N] of the stretches
 * @param crews  holding tension [N], rates F and R [1/s], rest factor [-], one number for each crew
 * @param group  muscles whose seam is used; the hand when absent
 * @param marks  indices of stretches at whose end the capacity is kept [-]
 * @returns time of giving out [s], capacity at the end, least capacity and marked capacities [-]
 * @throws ValueError for columns that do not fit together or numbers out of range
 * Valid for hands that keep the load exactly; a crew that gives out goes on with what it has.
 * Source: xia-frey-law-2008, with looft-2018 at rest and frey-law-avin-2010 above the seam.
 * Example: crewDays({ day: { lengths: Float64Array.of(600), handForces: Float64Array.of(50) }, crews: { holdingTension: Float64Array.of(100), fatigueRate: Float64Array.of(0.0098), recoveryRate: Float64Array.of(0.00064), restFactor: Float64Array.of(30) } }).givesOut[0] → 105.5
 */
export function crewDays({ day, crews, group = "hand", marks = [] }: CrewDaysInput): CrewDays {
  refuseBadColumns(day, crews);
  const count = crews.holdingTension.length;
  const result: CrewDays = {
    givesOut: new Float64Array(count).fill(Number.POSITIVE_INFINITY),
    left: new Float64Array(count),
    least: new Float64Array(count),
    marked: new Float64Array(count * marks.length),
  };
  const marked = Int32Array.from(marks);
  const slowed = seamFactorOf(group);
  for (let crew = 0; crew < count; crew++) oneDay(day, crews, crew, slowed, marked, result);
  return result;
}

function oneDay(
  { lengths, handForces }: DayColumns,
  crews: Crews,
  crew: number,
  slowed: (share: number) => number,
  marks: Int32Array,
  result: CrewDays,
): void {
  const holding = crews.holdingTension[crew]!;
  const F = crews.fatigueRate[crew]!;
  const R = crews.recoveryRate[crew]!;
  const restRate = crews.restFactor[crew]! * R;
  const overRate = F + R;
  const overLevel = F / overRate;
  const seam = seamShare.value;
  const stretches = lengths.length;
  let length = 0;
  let underLoad = 1;
  let atRest = 1;
  let whenOver = 1;
  let start = 0;
  let tired = 0;
  let most = 0;
  let givesOut = Number.POSITIVE_INFINITY;
  let nextMark = 0;
  for (let i = 0; i < stretches; i++) {
    if (lengths[i] !== length) {
      length = lengths[i]!;
      underLoad = Math.exp(-R * length);
      atRest = Math.exp(-restRate * length);
      whenOver = Math.exp(-overRate * length);
    }
    const f = handForces[i]! / holding;
    if (f === 0) tired *= atRest;
    else {
      const limit = 1 - f;
      const drive = f > seam && f < 1 ? F * slowed(f) : F;
      const level = (drive * f) / R;
      if (tired <= limit) {
        const next = level + (tired - level) * underLoad;
        if (next <= limit) tired = next;
        else {
          const held = Math.log((level - tired) / (level - limit)) / R;
          if (start + held < givesOut) givesOut = start + held;
          tired = overLevel + (limit - overLevel) * Math.exp(-overRate * (length - held));
        }
      } else {
        if (start < givesOut) givesOut = start;
        const next = overLevel + (tired - overLevel) * whenOver;
        if (next >= limit) tired = next;
        else {
          const short = Math.log((tired - overLevel) / (limit - overLevel)) / overRate;
          tired = level + (limit - level) * Math.exp(-R * (length - short));
        }
      }
    }
    start += length;
    if (tired > most) most = tired;
    if (marks[nextMark] === i) {
      result.marked[crew * marks.length + nextMark] = 1 - tired;
      nextMark++;
    }
  }
  result.givesOut[crew] = givesOut;
  result.left[crew] = 1 - tired;
  result.least[crew] = 1 - most;
}
