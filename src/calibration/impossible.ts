import { figures } from "../quantity/print.js";
import type { LeftOut } from "./outliers.js";
import type { Observation, Reading } from "./reading.js";
import { calibrationRecords } from "./records.js";

/** Pulls that can be, and readings that cannot. */
export interface Possible {
  readonly observations: readonly Observation[];
  readonly leftOut: readonly LeftOut[];
}

const newtons = (force: number) => `${figures(force)} N`;

/** Why a whole reading cannot be; nothing when it can. */
function wrongWith({ load, haul, ease }: Reading): string | undefined {
  if (!(load > 0)) return `a load of ${newtons(load)}: nothing hangs there to be moved`;
  if (haul !== undefined && ease !== undefined && ease > haul)
    return `easing took ${newtons(ease)} and hauling only ${newtons(haul)}: friction is on the wrong side, or the two were swapped`;
  return undefined;
}

/** Why one pull cannot be, beyond the error of the scale; nothing when it can. */
function wrongPull({ way, tension, force, resolution }: Observation, slack: number): string | undefined {
  if (force < 0) return `a pull of ${newtons(force)}: a rope does not push`;
  if (way === "easing" && force < resolution)
    return `${force === 0 ? "no pull" : "less than a step of the scale"} left while easing: the line hardly goes out by itself, which bounds its loss and does not measure it`;
  if (tension < resolution)
    return `a load of ${newtons(tension)}, less than a step of the scale: it tells nothing. Hang more, or use a finer scale`;
  const largest = calibrationRecords.largestRatio.value;
  if (Math.max(force / tension, tension / force) > largest)
    return `a pull of ${newtons(force)} for a load of ${newtons(tension)}: more than ${figures(largest)} times apart. Look at the units`;
  const most = slack * tension + resolution;
  if (way === "hauling" && force < tension - most)
    return `hauled with ${newtons(force)} where a line without friction needs ${newtons(tension)}: the ratio would be below 1`;
  if (way === "easing" && force > tension + most)
    return `held ${newtons(force)} where a line without friction holds ${newtons(tension)}: the ratio would be below 1`;
  return undefined;
}

/**
 * Turns readings into pulls and names those that cannot be.
 *
 * @param readings  readings of one line
 * @param slack  share by which a pull may pass the limit of no friction before it is impossible [-]
 * @returns pulls that can be, and what was left out with row and reason
 */
export function possiblePulls(readings: readonly Reading[], slack: number): Possible {
  const observations: Observation[] = [];
  const leftOut: LeftOut[] = [];
  for (const reading of readings) {
    const reason = wrongWith(reading);
    if (reason !== undefined) {
      leftOut.push({ row: reading.row, pull: "both", reason });
      continue;
    }
    for (const way of ["hauling", "easing"] as const) {
      const force = way === "hauling" ? reading.haul : reading.ease;
      if (force === undefined) continue;
      const { row, resolution, load, purchase = 1 } = reading;
      const observation = { row, way, tension: load / purchase, force, resolution };
      const wrong = wrongPull(observation, slack);
      if (wrong === undefined) observations.push(observation);
      else leftOut.push({ row, pull: way, reason: wrong });
    }
  }
  return { observations, leftOut };
}
