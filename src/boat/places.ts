import { figures } from "../quantity/print.js";
import type { BoatPlace } from "./boat.js";
import { wanted } from "./schema-words.js";

/** A line with the places that its file gives. */
export interface PlacedLine {
  readonly path: readonly { readonly at?: BoatPlace; readonly wrap?: number }[];
  readonly sailAt?: BoatPlace;
  readonly handAt?: BoatPlace;
}

/** An angle that is written may lie so far from the one that the places give [rad]. */
const tolerance = 0.35;

/**
 * Angle over which the rope touches at a station: as it is written, or from the places before, here and after.
 *
 *     θ = angle between the way in and the way on;   0 straight on, π back
 *
 * @param line  stations and ends with their places [m], angles that are written [rad]
 * @param at  which station [-]
 * @returns angle [rad], or what is wrong, in words for the reader of the file
 */
export function wrapAt({ path, sailAt, handAt }: PlacedLine, at: number): number | string {
  const { wrap, at: here } = path[at]!;
  const before = at === 0 ? sailAt : path[at - 1]!.at;
  const after = at === path.length - 1 ? handAt : path[at + 1]!.at;
  const turned = before && here && after && turnBetween(before, here, after);
  if (turned === undefined)
    return (
      wrap ??
      wanted(
        "an angle, or the places before, here and after",
        "Write wrap: 90 deg, or at: [ahead, lee, up] at both neighbours and here; sailAt and handAt are the ends.",
      )
    );
  if (wrap === undefined || Math.abs(wrap - turned) <= tolerance) return wrap ?? turned;
  return wanted(
    `about ${figures((180 * turned) / Math.PI, 2)} deg, which the places give`,
    "Mend the angle or the places, or leave the angle out.",
  );
}

function turnBetween(before: BoatPlace, here: BoatPlace, after: BoatPlace): number | undefined {
  const way = (from: BoatPlace, to: BoatPlace) => to.map((end, axis) => end - from[axis]!);
  const [inward, onward] = [way(before, here), way(here, after)];
  const long = Math.hypot(...inward) * Math.hypot(...onward);
  if (long === 0) return undefined;
  const cosine = inward.reduce((sum, one, axis) => sum + one * onward[axis]!, 0) / long;
  return Math.acos(Math.min(1, Math.max(-1, cosine)));
}
