import { OutsideModelError } from "../quantity/errors.js";

/** Rates of change of a state: written into `rates`, so that a step makes no garbage. */
export type Derivative = (time: number, state: readonly number[], rates: number[]) => void;

/** What falls from above zero to zero when an event happens. */
export type EventFunction = (time: number, state: readonly number[]) => number;

/** A start, an end, and what may end the run before. */
export interface IntegrationInput {
  readonly derivative: Derivative;
  readonly time: number;
  readonly state: readonly number[];
  /** Time at which the run ends if no event does [s]. */
  readonly end: number;
  readonly events: readonly EventFunction[];
  /** Error allowed in a step, of each number of the state and of one unit of it. */
  readonly tolerance: number;
  /** Told the state at the end of every step, and at three times within it. */
  readonly onPoint?: (time: number, state: readonly number[]) => void;
}

/** Where a run ended. */
export interface Integration {
  readonly time: number;
  readonly state: readonly number[];
  /** Place of the event in the list; absent when the end time was reached. */
  readonly event?: number;
}

// Tableau of Dormand and Prince, 5(4), with the weights of its dense output.
const a: readonly (readonly number[])[] = [
  [],
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
];
const c: readonly number[] = [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1];
const e: readonly number[] = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40];
const d: readonly number[] = [
  -12715105075 / 11282082432,
  0,
  87487479700 / 32700410799,
  -10690763975 / 1880347072,
  701980252875 / 199316789632,
  -1453857185 / 822651844,
  69997945 / 29380423,
];

const mostSteps = 200_000;

/**
 * Follows a system of differential equations until an event or an end time, with steps that keep to a tolerance.
 *
 *     y' = f(t, y); embedded Runge-Kutta pair of order 5(4); an event is found where its function falls to zero
 *
 * An own one, since no integrator found in the npm registry stops at events. The one with types and dense output keeps
 * every step, leaves the ends of its interpolation unguarded and refuses stretches that are a little stiff; the others
 * have no types or no dense output.
 *
 * @param derivative  f, writes the rates of change [unit of the state a second]
 * @param time  start [s]
 * @param state  numbers at the start [any unit]
 * @param end  end [s], not before the start
 * @param events  functions that end the run when they fall from above zero to zero; one that starts at or below zero must rise first
 * @param tolerance  error allowed in a step [-], relative and of one unit
 * @param onPoint  told every step and three points within it
 * @returns time [s], state, and which event ended the run
 * @throws OutsideModelError when the rates are not finite, or no step is small enough
 * Valid for systems that are not stiff.
 * Source: dormand-prince-1980, with the dense output of Hairer, Nørsett and Wanner.
 */
export function integrate(input: IntegrationInput): Integration {
  const { derivative, end, events, tolerance, onPoint } = input;
  const n = input.state.length;
  const rows = () => Array.from({ length: 7 }, () => new Array<number>(n).fill(0));
  const k = rows();
  let time = input.time;
  let state = [...input.state];
  onPoint?.(time, state);
  derivative(time, state, k[0]!);
  let before = events.map((event) => event(time, state));
  let step = Math.min(end - time, firstStep(state, k[0]!, tolerance));
  for (let count = 0; time < end; count++) {
    const least = 1e-13 * Math.max(1, Math.abs(time));
    if (count > mostSteps || !(step > least)) {
      if (end - time <= least) break;
      throw stuck(time, step);
    }
    const next = take(derivative, time, state, step, k);
    const error = errorOf(k, state, next, step, tolerance);
    if (!(error <= 1)) {
      step *= Number.isFinite(error) ? Math.max(0.2, 0.9 * error ** -0.2) : 0.1;
      continue;
    }
    const dense = denseOutput(state, next, step, k);
    const after = events.map((event) => event(time + step, next));
    const found = firstEvent(events, { time, step, before, after, dense });
    if (found !== undefined) {
      report(onPoint, time, found.share * step, (share) => dense(share * found.share));
      const last = found.share === 1 ? next : take(derivative, time, state, found.share * step, k);
      onPoint?.(time + found.share * step, last);
      return { time: time + found.share * step, state: last, event: found.event };
    }
    report(onPoint, time, step, dense);
    time += step;
    state = next;
    before = after;
    onPoint?.(time, state);
    for (let index = 0; index < n; index++) k[0]![index] = k[6]![index]!;
    step = Math.min(end - time, step * Math.min(5, Math.max(0.2, 0.9 * Math.max(error, 1e-10) ** -0.2)));
  }
  return { time, state };
}

function stuck(time: number, step: number): OutsideModelError {
  return new OutsideModelError({
    quantity: "step of the integration",
    value: `${step} s at ${time} s`,
    allowed: "a step that keeps the error within the tolerance",
    advice: "Look for a force that is not finite or jumps back and forth, or allow a larger tolerance.",
  });
}

function firstStep(state: readonly number[], rates: readonly number[], tolerance: number): number {
  const size = Math.hypot(...state) + 1;
  return Math.min(0.01, (tolerance ** 0.2 * size) / (Math.hypot(...rates) + size));
}

/** One step of the pair; leaves its slopes in `k`, the first of which must be there already. */
function take(f: Derivative, time: number, state: readonly number[], step: number, k: number[][]): number[] {
  const next = new Array<number>(state.length);
  for (let stage = 1; stage < 7; stage++) {
    const row = a[stage]!;
    for (let index = 0; index < next.length; index++) {
      let sum = 0;
      for (let earlier = 0; earlier < stage; earlier++) sum += row[earlier]! * k[earlier]![index]!;
      next[index] = state[index]! + step * sum;
    }
    f(time + c[stage]! * step, next, k[stage]!);
  }
  return next;
}

function errorOf(k: number[][], state: readonly number[], next: readonly number[], step: number, tol: number): number {
  let worst = 0;
  for (let index = 0; index < state.length; index++) {
    let sum = 0;
    for (let stage = 0; stage < 7; stage++) sum += e[stage]! * k[stage]![index]!;
    const scale = tol * (1 + Math.max(Math.abs(state[index]!), Math.abs(next[index]!)));
    const share = Math.abs(step * sum) / scale;
    if (Number.isNaN(share)) return Number.NaN;
    worst = Math.max(worst, share);
  }
  return worst;
}

/** State at a share of the step. */
function denseOutput(state: readonly number[], next: readonly number[], step: number, k: number[][]) {
  const change = state.map((value, index) => next[index]! - value);
  const bend = change.map((value, index) => step * k[0]![index]! - value);
  const twist = change.map((value, index) => value - step * k[6]![index]! - bend[index]!);
  const rest = state.map((_, index) => step * d.reduce((sum, weight, stage) => sum + weight * k[stage]![index]!, 0));
  return (share: number): number[] =>
    state.map((value, index) => {
      const back = 1 - share;
      return value + share * (change[index]! + back * (bend[index]! + share * (twist[index]! + back * rest[index]!)));
    });
}

interface Step {
  readonly time: number;
  readonly step: number;
  readonly before: readonly number[];
  readonly after: readonly number[];
  readonly dense: (share: number) => number[];
}

/** The event that comes first in the step, with the share of the step at which it does. */
function firstEvent(events: readonly EventFunction[], { time, step, before, after, dense }: Step) {
  let first: { event: number; share: number } | undefined;
  for (const [event, height] of events.entries()) {
    if (!(before[event]! > 0 && after[event]! <= 0)) continue;
    let low = 0;
    let high = 1;
    for (let halving = 0; halving < 50 && high - low > 1e-14; halving++) {
      const middle = (low + high) / 2;
      if (height(time + middle * step, dense(middle)) > 0) low = middle;
      else high = middle;
    }
    if (first === undefined || high < first.share) first = { event, share: high };
  }
  return first;
}

function report(
  onPoint: IntegrationInput["onPoint"],
  time: number,
  step: number,
  dense: (share: number) => number[],
): void {
  if (onPoint) for (const share of [0.25, 0.5, 0.75]) onPoint(time + share * step, dense(share));
}
