import { within } from "../quantity/guard.js";
import { figures } from "../quantity/print.js";
import { type CoursePoint, courseOf } from "./course.js";
import { type HandLaw, reachTime, type Strokes } from "./hill.js";
import type { MotionEnergy } from "./ledger.js";
import type { MovingLine } from "./moving-line.js";

/** A stop short of the goal. */
export interface Stall {
  /** Way that was made [m]. */
  readonly travel: number;
  readonly reason: string;
}

/** What a motion came to. */
export interface Motion {
  /** Time until it was there, or until it stopped for good [s]. */
  readonly time: number;
  /** Way made by the load end, whichever way [m]. */
  readonly way: number;
  /** Absent when it was there. */
  readonly stall?: Stall;
  /** Largest speed of the line at the hand [m/s]. */
  readonly peakSpeed: number;
  /** Largest power at the hand [W]: work of a hand that hauls, heat in a hand that slows. */
  readonly peakPower: number;
  /** Pulls that it took; 0 for a pull without strokes. */
  readonly strokes: number;
  readonly energy: MotionEnergy;
  readonly points: readonly CoursePoint[];
}

/** Hauling a line in. */
export interface HaulInput {
  readonly moving: MovingLine;
  /** Way of the load end [m]. */
  readonly lift: number;
  readonly hand: HandLaw;
  /** Hand over hand; one pull without end when absent. */
  readonly strokes?: Strokes;
  /** Speed of the load end at the start [m/s]; 0 when absent. */
  readonly startSpeed?: number;
  /** Longest time of the whole [s]; 300 when absent. */
  readonly patience?: number;
  readonly tolerance?: number;
}

/** Hand speed below which a pull counts as stalled [m/s], and the longest that one pull may last [s]: a choice of ours. */
const crawlSpeed = 0.03;
const longestPull = 20;

const letGo: HandLaw = () => 0;

/**
 * Hauls a line in: a hoist, hand over hand or in one pull, with its time and where it stalls.
 *
 *     a pull until the hand has gone its stroke, then the line coasts and is held until the next pull
 *
 * @param moving  line, load and rope
 * @param lift  way of the load end [m], above 0
 * @param hand  force over hand speed [N]
 * @param strokes  stroke length [m], cycle rate [1/s], share that pulls [-]; one pull without end when absent
 * @param startSpeed  of the load end [m/s], 0 or more
 * @param patience  longest time [s], by default 300
 * @param tolerance  error allowed in a step [-], by default 1e-7
 * @returns time [s], way [m], stall with its reason, largest speed [m/s] and power [W], energy [J], points of the curve
 * @throws ValueError for numbers that cannot be
 * A pull slower than 3 cm/s, or longer than 20 s, counts as stalled. Valid for a line that is held between pulls by a cleat, a ratchet or the other hand.
 * Source: common practice, hand over hand; statics with inertia for the motion.
 */
export function haul(input: HaulInput): Motion {
  const { moving, hand, strokes, patience = 300 } = input;
  const lift = within("lift", input.lift);
  const stroke = strokes === undefined ? undefined : within("strokeLength", strokes.strokeLength);
  const pause = strokes === undefined ? 0 : reachTime(strokes);
  within("duration", patience);
  const speed = within("handSpeed", input.startSpeed ?? 0);
  const course = courseOf({ moving, speed, ...(input.tolerance !== undefined && { tolerance: input.tolerance }) });
  let pulls = 0;
  let stall: string | undefined;
  let moves = speed > 0;
  while (stall === undefined) {
    if (!moves && !course.starts("in", hand)) {
      stall = `the line asks for more than the ${figures(hand(0))} N of the hand`;
      break;
    }
    pulls += 1;
    const left = patience - course.time;
    const common = { way: "in", goal: lift } as const;
    const pulled = course.follow({
      ...common,
      hand,
      lasting: stroke === undefined ? left : Math.min(left, longestPull),
      crawl: crawlSpeed,
      ...(stroke !== undefined && { stroke }),
    });
    if (pulled === "there") break;
    if (pulled !== "stroke") {
      course.rest(0, hand(0));
      const late = pulled === "time" && (stroke === undefined || left <= longestPull);
      stall = late ? "it was not there in the time allowed" : `a pull of ${figures(hand(0))} N hardly moves it on`;
      break;
    }
    const begun = course.time;
    const coasted = course.follow({ ...common, hand: letGo, lasting: pause });
    if (coasted === "there") break;
    moves = coasted === "time";
    if (!moves) course.rest(Math.max(0, begun + pause - course.time), 0);
    if (course.time >= patience) stall = "it was not there in the time allowed";
  }
  return motionOf(course, stall, strokes === undefined ? 0 : pulls);
}

/**
 * Sums up a course.
 *
 * @param course  a motion that is over
 * @param stall  reason of a stop short of the goal, in words
 * @param strokes  pulls that it took [-]
 * @returns time [s], way [m], stall, largest speed [m/s] and power [W], energy [J], points
 * @throws OutsideModelError when the balance of energy does not close
 */
export function motionOf(course: ReturnType<typeof courseOf>, stall: string | undefined, strokes: number): Motion {
  const { points } = course;
  const largest = (of: (point: CoursePoint) => number) => points.reduce((most, point) => Math.max(most, of(point)), 0);
  const way = Math.abs(course.travel);
  return {
    time: course.time,
    way,
    ...(stall !== undefined && { stall: { travel: way, reason: stall } }),
    peakSpeed: largest(({ handSpeed }) => handSpeed),
    peakPower: largest(({ handSpeed, handForce }) => handSpeed * handForce),
    strokes,
    energy: course.energy(),
    points,
  };
}
