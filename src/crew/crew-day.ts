import type { MuscleGroup } from "../materials/people-fatigue.js";
import { within } from "../quantity/guard.js";
import { crewDays, type DayColumns } from "./crew-days.js";
import type { FatigueRates } from "./fatigue.js";

/** One crew. */
export interface Crew extends FatigueRates {
  /** Largest tension that the rested hands hold [N]. */
  readonly holdingTension: number;
  /** Recovery at rest over recovery under load [-]. */
  readonly restFactor: number;
}

/** A day of one crew, stretch by stretch. */
export interface CrewDay {
  /** End of each stretch [s]. */
  readonly times: readonly number[];
  /** Capacity left at the end of each stretch [-]. */
  readonly capacity: readonly number[];
  /** Share of maximum that each stretch asks for [-]. */
  readonly demand: readonly number[];
  /** First time at which the demand exceeds the capacity [s]; absent when it never does. */
  readonly givesOut?: number;
}

/**
 * A day of one crew: demand and capacity left, stretch by stretch.
 *
 *     f = T_hand / T_hold,   Q = 1 − M_F
 *
 * @param day  lengths [s] and hand forces [N] of the stretches
 * @param crew  holding tension [N], rates F and R [1/s], rest factor [-]
 * @param group  muscles whose seam is used; the hand when absent
 * @returns times [s], capacity and demand [-], and when the hand gives out [s]
 * @throws ValueError for numbers out of range
 * Valid as crewDays, which it calls.
 * Source: xia-frey-law-2008.
 * Example: crewDay({ day: { lengths: Float64Array.of(600), handForces: Float64Array.of(0) }, crew: { holdingTension: 100, fatigueRate: 0.0098, recoveryRate: 0.00064, restFactor: 30 } }).capacity → [1]
 */
export function crewDay({
  day,
  crew,
  group = "hand",
}: {
  readonly day: DayColumns;
  readonly crew: Crew;
  readonly group?: MuscleGroup;
}): CrewDay {
  const holding = within("handTension", crew.holdingTension, 1e-9);
  const { givesOut, marked } = crewDays({
    day,
    crews: {
      holdingTension: Float64Array.of(holding),
      fatigueRate: Float64Array.of(within("fatigueRate", crew.fatigueRate)),
      recoveryRate: Float64Array.of(within("recoveryRate", crew.recoveryRate)),
      restFactor: Float64Array.of(within("restFactor", crew.restFactor)),
    },
    group,
    marks: Array.from(day.lengths, (_, i) => i),
  });
  let time = 0;
  const first = givesOut[0]!;
  return {
    times: Array.from(day.lengths, (length) => {
      time += length;
      return time;
    }),
    capacity: Array.from(marked),
    demand: Array.from(day.handForces, (force) => force / holding),
    ...(Number.isFinite(first) && { givesOut: first }),
  };
}
