import { within } from "../quantity/guard.js";
import { figures } from "../quantity/print.js";
import { courseOf } from "./course.js";
import type { HandLaw } from "./hill.js";
import { type Motion, motionOf } from "./hoist.js";
import type { MovingLine } from "./moving-line.js";

/** A line that goes out: a drop, or a sheet that is let go. */
export interface RunOutInput {
  readonly moving: MovingLine;
  /** Way of the load end [m]. */
  readonly lift: number;
  /** Hand that slows the line, force over hand speed; an open hand when absent. */
  readonly hand?: HandLaw;
  /** Crew that draws at the load end, force over its speed; none when absent. */
  readonly retrieval?: HandLaw;
  /** Speed of the load end outward at the start [m/s]; 0 when absent. */
  readonly startSpeed?: number;
  readonly patience?: number;
  readonly tolerance?: number;
}

const open: HandLaw = () => 0;

/**
 * Lets a line go out: a drop or a run-out, with its time, its largest speed and where it stays.
 *
 *     gravity, wind and a retrieving crew against rubbing, stations and the hand
 *
 * @param moving  line, load and rope
 * @param lift  way of the load end [m], above 0
 * @param hand  force that slows the line, over hand speed [N]; none when absent
 * @param retrieval  force that draws at the load end, over its speed [N]; none when absent
 * @param startSpeed  outward, of the load end [m/s], 0 or more
 * @param patience  longest time [s], by default 300
 * @param tolerance  error allowed in a step [-], by default 1e-7
 * @returns time [s], way [m], stall with its reason, largest speed [m/s] and power in the hand [W], energy [J], points
 * @throws ValueError for numbers that cannot be
 * Source: statics, with inertia.
 */
export function letOut(input: RunOutInput): Motion {
  const { moving, hand = open, retrieval, patience = 300 } = input;
  const lift = within("lift", input.lift);
  within("duration", patience);
  const speed = within("handSpeed", input.startSpeed ?? 0);
  const course = courseOf({
    moving,
    speed: -speed,
    ...(input.tolerance !== undefined && { tolerance: input.tolerance }),
  });
  if (speed === 0 && !course.starts("out", hand, retrieval)) {
    course.rest(0, hand(0));
    return motionOf(course, "what draws it out does not overcome the friction: it stays where it is", 0);
  }
  const ending = course.follow({
    way: "out",
    goal: -lift,
    hand,
    lasting: patience,
    ...(retrieval !== undefined && { retrieval }),
  });
  if (ending === "there") return motionOf(course, undefined, 0);
  const stall =
    ending === "time"
      ? "it was not out in the time allowed"
      : `it comes to rest after ${figures(Math.abs(course.travel), 2)} m: friction is then larger than what draws it out`;
  return motionOf(course, stall, 0);
}

/** A hand that slows a line: it grips harder the faster the line runs. */
export interface SlowingHand {
  /** Speed at which the hand begins to grip [m/s]. */
  readonly handSpeed: number;
  /** Force of its full grip, reached at a tenth above that speed [N]. */
  readonly handForce: number;
}

/**
 * Force of a hand that keeps a line near a speed, as far as its grip reaches.
 *
 *     F = F_grip · clamp((v − v_g) / (0.1 v_g), 0, 1)
 *
 * @param handSpeed  v_g [m/s], above 0, up to 100
 * @param handForce  F_grip [N], 0 to 1e6
 * @returns a function from hand speed [m/s] to hand force [N]
 * @throws ValueError outside these ranges
 * Source: common practice, a running line is slowed little by little. Example: slowingHand({ handSpeed: 2, handForce: 60 })(2.1) → 30
 */
export function slowingHand({ handSpeed, handForce }: SlowingHand): HandLaw {
  const v = within("handSpeed", handSpeed, 1e-3);
  const F = within("handTension", handForce);
  return (speed) => F * Math.min(1, Math.max(0, (10 * (speed - v)) / v));
}
