import { type EventFunction, integrate } from "../numerics/dormand-prince.js";
import { within } from "../quantity/guard.js";
import type { HandLaw } from "./hill.js";
import { closedBalance, type MotionEnergy } from "./ledger.js";
import { type MovingLine, type ReadyLine, readyLine, type Way } from "./moving-line.js";

/** One moment of a motion, for a curve over time. */
export interface CoursePoint {
  /** [s] */
  readonly time: number;
  /** Metres hauled in since the start; below zero when gone out. */
  readonly travel: number;
  /** Speed of the load end, above zero as it is hauled in [m/s]. */
  readonly speed: number;
  /** Speed of the line at the hand, whichever way [m/s]. */
  readonly handSpeed: number;
  readonly handForce: number;
}

/** How one stretch of a motion ended. */
export type Ending = "there" | "stroke" | "stopped" | "crawls" | "time";

/** What ends a stretch, and what the hand and a retrieving crew do in it. */
export interface Stretch {
  readonly way: Way;
  /** Hand force over hand speed. */
  readonly hand: HandLaw;
  /** Pull at the load end over its speed; none when absent. */
  readonly retrieval?: HandLaw;
  /** Travel at which the motion is over [m]. */
  readonly goal: number;
  /** Longest time of this stretch [s]. */
  readonly lasting: number;
  /** Way of the hand after which the stretch ends [m]; without end when absent. */
  readonly stroke?: number;
  /** Hand speed below which the line counts as stopped [m/s]. */
  readonly crawl?: number;
}

/** Numbers of the state, by place: travel, speed, then works and losses. */
const places = ["travel", "speed", "hand", "retrieval", "gravity", "wind", "sail", "stations", "joining"] as const;

/** A motion that is followed stretch by stretch. */
export interface Course {
  readonly points: readonly CoursePoint[];
  readonly time: number;
  readonly travel: number;
  /** Whether a hand and a crew with these laws set the line moving from rest. */
  starts(way: Way, hand: HandLaw, retrieval?: HandLaw): boolean;
  follow(stretch: Stretch): Ending;
  /** Lets time go by with the line at rest; what still moves is stopped. */
  rest(duration: number, force: number): void;
  /** Balance so far. */
  energy(): MotionEnergy;
}

/** A line, its speed at the start [m/s, above zero as it is hauled in], and the tolerance of a step [-]. */
export interface CourseInput {
  readonly moving: MovingLine;
  readonly speed?: number;
  readonly tolerance?: number;
}

/**
 * Starts to follow a moving line, stretch by stretch, with its balance of energy.
 *
 *     x' = v,  v' = a(x, v, F),  works' = forces · speeds
 *
 * @param moving  line with load, rope and hand
 * @param speed  at the start [m/s], above zero as it is hauled in; 0 when absent
 * @param tolerance  error allowed in a step [-], 1e-14 to 0.01; 1e-7 when absent
 * @returns the course [s, m, m/s, N, J], at rest or moving as given
 * @throws ValueError for numbers that cannot be
 * Source: statics, with inertia; dormand-prince-1980 for the steps.
 */
export function courseOf({ moving, speed = 0, tolerance = 1e-7 }: CourseInput): Course {
  const ready = readyLine(moving);
  within("stepTolerance", tolerance);
  const points: CoursePoint[] = [];
  const start = 0.5 * ready.movingMass(0) * speed * speed;
  let time = 0;
  let stopped = 0;
  let state: Float64Array = Float64Array.from(places, (place) => (place === "speed" ? speed : 0));
  const kinetic = () => 0.5 * ready.movingMass(state[0]!) * state[1]! ** 2;

  return {
    points,
    get time() {
      return time;
    },
    get travel() {
      return state[0]!;
    },
    starts: (way, hand, retrieval) => {
      const situation = { travel: state[0]!, speed: 0, way, hand: hand(0), retrieval: retrieval?.(0) ?? 0 };
      const { acceleration } = ready.moment(situation);
      return way === "in" ? acceleration > 0 : acceleration < 0;
    },
    follow: (stretch) => {
      const { ending, ...end } = stretchOf(ready, stretch, { time, state, tolerance, points });
      time = end.time;
      state = end.state;
      return ending;
    },
    rest: (duration, force) => {
      stopped += kinetic();
      state = state.map((value, place) => (place === 1 ? 0 : value));
      const still = { travel: state[0]!, speed: 0, handSpeed: 0, handForce: force };
      points.push({ time, ...still });
      time += duration;
      points.push({ time, ...still });
    },
    energy: () => {
      const work = (place: (typeof places)[number]) => state[places.indexOf(place)]!;
      return closedBalance({
        hand: work("hand"),
        retrieval: work("retrieval"),
        gravity: work("gravity"),
        wind: work("wind"),
        sail: work("sail"),
        stations: work("stations"),
        joining: work("joining"),
        stopped,
        kinetic: kinetic() - start,
      });
    },
  };
}

interface From {
  readonly time: number;
  readonly state: Float64Array;
  readonly tolerance: number;
  readonly points: CoursePoint[];
}

function stretchOf(ready: ReadyLine, stretch: Stretch, { time, state, tolerance, points }: From) {
  const { way, hand, retrieval, goal, stroke, crawl } = stretch;
  const VR = ready.velocityRatio;
  const sign = way === "in" ? 1 : -1;
  const speedIn = (values: Float64Array) => Math.max(0, sign * values[1]!);
  const drawnAt = (speed: number) => retrieval?.(speed) ?? 0;
  const situation = { travel: 0, speed: 0, way, hand: 0, retrieval: 0 };
  const at = (values: Float64Array, speed: number) => {
    situation.travel = values[0]!;
    situation.speed = speed;
    situation.hand = hand(VR * speed);
    situation.retrieval = drawnAt(speed);
    return ready.moment(situation);
  };
  const begun = state[0]!;
  const events: [Ending, EventFunction][] = [
    ["there", (_, values) => sign * (goal - values[0]!)],
    ["stopped", (_, values) => sign * values[1]!],
  ];
  if (stroke !== undefined) events.push(["stroke", (_, values) => stroke - VR * Math.abs(values[0]! - begun)]);
  if (crawl !== undefined) events.push(["crawls", (_, values) => VR * sign * values[1]! - crawl]);
  const end = integrate({
    time,
    state,
    end: time + stretch.lasting,
    tolerance,
    events: events.map(([, event]) => event),
    derivative: (_, values, rates) => {
      const speed = speedIn(values);
      const { acceleration, handForce, power } = at(values, speed);
      rates[0] = values[1]!;
      rates[1] = acceleration;
      rates[2] = sign * handForce * VR * speed;
      rates[3] = -sign * drawnAt(speed) * speed;
      rates[4] = power.gravity;
      rates[5] = power.wind;
      rates[6] = power.sail;
      rates[7] = power.stations;
      rates[8] = power.joining;
    },
    onPoint: (moment, values) => {
      const speed = speedIn(values);
      // A hand that lets a line out feels what it offers.
      const handForce = way === "out" ? hand(VR * speed) : at(values, speed).handForce;
      points.push({
        time: moment,
        travel: values[0]!,
        speed: values[1]!,
        handSpeed: VR * Math.abs(values[1]!),
        handForce,
      });
    },
  });
  // A stroke may end just where the goal is: what is there is there, whichever end was met first.
  const there = sign * (goal - end.state[0]!) <= 0;
  const ending: Ending = there ? "there" : end.event === undefined ? "time" : events[end.event]![0];
  return { time: end.time, state: end.state, ending };
}
