import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { type Line, prepareLine } from "./line.js";

/** Hand forces of ropes that are joined one after the other. */
export interface JoinedForces {
  readonly hauling: number;
  readonly easing: number;
  /** Least load at which the line goes out by itself [N]. */
  readonly runOutLoad: number;
}

/**
 * What the hand feels on a line that changes its rope on the way: thin where it runs, covered where it is held.
 *
 *     the hand tension of each part is the load of the next; the run-out load of the first is that which leaves the
 *     others just enough to go out
 *
 * @param parts  lines from the sail to the hand, each with its own rope and the stations that it runs through
 * @param load  load at the sail end [N], 0 to 1 MN
 * @returns hauling and easing force and run-out load [N]
 * @throws ValueError for no parts, or as a line does
 * Valid while no join runs through a station of another part.
 * Source: statics, tension in series. Example: joinedForces([{ rope: { diameter: 0.004, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "block", tensionRatio: 1.1 }] }, { rope: { diameter: 0.007, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "block", tensionRatio: 1.2 }] }], 100).hauling → 132
 */
export function joinedForces(parts: readonly Line[], load: number): JoinedForces {
  if (parts.length === 0)
    throw new ValueError({
      quantity: "parts of a line",
      value: "none",
      allowed: "at least one",
      advice: "Give each rope with the stations that it runs through.",
    });
  const prepared = parts.map(prepareLine);
  const through = (direction: "hauling" | "easing", from: number, count = prepared.length) =>
    prepared.slice(0, count).reduce((tension, line) => line.handForces(tension)[direction], from);
  return {
    hauling: through("hauling", within("loadTension", load)),
    easing: through("easing", load),
    runOutLoad: prepared.reduceRight((left, line) => line.runOutLoad(left), 0),
  };
}
