import { within } from "../quantity/guard.js";
import { figures } from "../quantity/print.js";
import { outcomeOf, type Verdict } from "../quantity/verdict.js";
import { type Band, bandOf } from "../sources/band.js";
import type { Motion } from "./hoist.js";

/**
 * Mean speed of a hoist or drop with its range; a motion that stalls has none.
 *
 *     v = way / time, 0 when it stalls
 *
 * @param inputs  named bands of what the motion is made of [SI]
 * @param motion  runs the motion for one value of each [SI]
 * @returns speed of the load end [m/s] with its range, never below 0
 * @throws whatever the motion refuses
 * Source: statics, way over time. Example: meanSpeedBand({ lift: { value: 8, low: 8, high: 8 } }, ({ lift }) => haul({ moving: { line: prepareLine({ rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [] }), load: { mass: () => 1 } }, lift, hand: () => 4 })).value → 4
 */
export function meanSpeedBand<Name extends string>(
  inputs: Readonly<Record<Name, Band>>,
  motion: (values: Record<Name, number>) => Motion,
): Band {
  const { value, low, high } = bandOf(inputs, (values) => {
    const { stall, way, time } = motion(values);
    return stall === undefined ? way / time : 0;
  });
  return { value, low: Math.max(0, low), high };
}

/**
 * Time that a way takes at a mean speed with its range.
 *
 *     t = H / v; without end where the speed may be nothing
 *
 * @param lift  H [m], above 0
 * @param speed  v with its range [m/s]
 * @returns time with its range [s], infinite where the motion stalls
 * @throws ValueError for an impossible way
 * Source: statics, way over speed. Example: timeBand(8, { value: 2, low: 0, high: 4 }).value → 4
 */
export function timeBand(lift: number, speed: Band): Band {
  const H = within("lift", lift);
  const at = (v: number) => (v > 0 ? H / v : Number.POSITIVE_INFINITY);
  return { value: at(speed.value), low: at(speed.high), high: at(speed.low) };
}

/** One way to rig and sail it, tried. */
export interface TimeTrial {
  readonly words: string;
  /** Mean speed with its range [m/s]. */
  readonly speed: Band;
  /** Why and where it stalls at the middle values, from the motion. */
  readonly stall?: Motion["stall"];
}

/** What is judged, and the changes that were tried, the smallest first. */
export interface TimeQuestion extends TimeTrial {
  /** Way [m]. */
  readonly lift: number;
  /** Longest time that is wanted [s]. */
  readonly wanted: number;
  readonly changes: readonly TimeTrial[];
}

/**
 * Whether a hoist or drop is over in the time that is wanted, and the nearest change that is.
 *
 *     holds when H / v ≤ wanted time, over the range of v; the nearest change is the first in the given order that holds, or else that passes at its middle
 *
 * @param asked  way [m], wanted time [s], speed with its range [m/s], changes in order of their size
 * @returns verdict with reason in seconds; a stall is said with its height
 * @throws ValueError for an impossible way or time
 * Source: common practice, a sail must be up or down in time. Example: timeVerdict({ words: "hoist", lift: 8, wanted: 5, speed: { value: 2, low: 1.8, high: 2.2 }, changes: [] }).outcome → "enough"
 */
export function timeVerdict(asked: TimeQuestion): Verdict {
  const { lift, wanted, changes } = asked;
  const needed = within("lift", lift) / within("duration", wanted, 1e-3);
  const outcome = ({ speed }: TimeTrial) => outcomeOf({ middle: speed.value / needed, worst: speed.low / needed });
  const own = outcome(asked);
  const better =
    changes.find((change) => outcome(change) === "enough") ??
    (own === "not enough" ? changes.find((change) => outcome(change) === "can't tell") : undefined);
  const { stall } = asked;
  const found =
    stall === undefined
      ? `${seconds(timeBand(lift, asked.speed))}`
      : `it stops after ${figures(stall.travel, 2)} m of ${figures(lift, 2)} m: ${stall.reason}`;
  const verdict = { subject: asked.words, outcome: own, reason: `${found}; wanted: ${figures(wanted, 2)} s` };
  return own === "enough" || better === undefined
    ? verdict
    : { ...verdict, change: `${better.words}: ${seconds(timeBand(lift, better.speed))}` };
}

/** A time with its range in words. */
function seconds({ value, low, high }: Band): string {
  const range = Number.isFinite(high)
    ? `${figures(low, 2)} to ${figures(high, 2)} s`
    : `from ${figures(low, 2)} s to not at all`;
  return `${figures(value, 2)} s (${range})`;
}
