import { OutsideModelError } from "../quantity/errors.js";

/** Rates of change of a state, written into `rates`; both are places that are used again for the next. */
export type Derivative = (time: number, state: Float64Array, rates: Float64Array) => void;

/** What falls from above zero to zero when an event happens. */
export type EventFunction = (time: number, state: Float64Array) => number;

/** A start, an end, and what may end the run before. */
export interface IntegrationInput {
  readonly derivative: Derivative;
  readonly time: number;
  readonly state: ArrayLike<number>;
  /** Time at which the run ends if no event does [s]. */
  readonly end: number;
  readonly events: readonly EventFunction[];
  /** Error allowed in a step, of each number of the state and of one unit of it. */
  readonly tolerance: number;
  /** Told the state at the end of every step, and at three times within it; its place is used again for the next. */
  readonly onPoint?: (time: number, state: Float64Array) => void;
}

/** Where a run ended. */
export interface Integration {
  readonly time: number;
  readonly state: Float64Array;
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
  const pair = pairFor(derivative, input.state.length);
  let time = input.time;
  let state: Float64Array = Float64Array.from(input.state);
  let next: Float64Array = new Float64Array(state.length);
  let before: Float64Array = Float64Array.from(events, (event) => event(time, state));
  let after: Float64Array = new Float64Array(events.length);
  onPoint?.(time, state);
  pair.begin(time, state);
  let step = Math.min(end - time, firstStep(state, pair.rates, tolerance));
  for (let count = 0; time < end; count++) {
    const least = 1e-13 * Math.max(1, Math.abs(time));
    if (count > mostSteps || !(step > least)) {
      if (end - time <= least) break;
      throw stuck(time, step);
    }
    pair.take(time, state, step, next);
    const error = pair.error(state, next, step, tolerance);
    if (!(error <= 1)) {
      step *= Number.isFinite(error) ? Math.max(0.2, 0.9 * error ** -0.2) : 0.1;
      continue;
    }
    pair.bend(state, next, step);
    for (let event = 0; event < events.length; event++) after[event] = events[event]!(time + step, next);
    const found = firstEvent(events, { time, state, step, before, after, pair });
    if (found !== undefined) {
      report(onPoint, { time, state, step, pair }, found.share);
      if (found.share < 1) pair.take(time, state, found.share * step, next);
      onPoint?.(time + found.share * step, next);
      spare = pair;
      return { time: time + found.share * step, state: next, event: found.event };
    }
    report(onPoint, { time, state, step, pair }, 1);
    time += step;
    [state, next] = [next, state];
    [before, after] = [after, before];
    onPoint?.(time, state);
    pair.goOn();
    step = Math.min(end - time, step * Math.min(5, Math.max(0.2, 0.9 * Math.max(error, 1e-10) ** -0.2)));
  }
  spare = pair;
  return { time, state };
}

/** What a run has left, for the next one; a run within a run makes its own. */
let spare: Pair | undefined;

function pairFor(derivative: Derivative, n: number): Pair {
  const pair = spare?.rates.length === n ? spare : new Pair(n);
  spare = undefined;
  pair.derivative = derivative;
  return pair;
}

function stuck(time: number, step: number): OutsideModelError {
  return new OutsideModelError({
    quantity: "step of the integration",
    value: `${step} s at ${time} s`,
    allowed: "a step that keeps the error within the tolerance",
    advice: "Look for a force that is not finite or jumps back and forth, or allow a larger tolerance.",
  });
}

function firstStep(state: Float64Array, rates: Float64Array, tolerance: number): number {
  const size = Math.hypot(...state) + 1;
  return Math.min(0.01, (tolerance ** 0.2 * size) / (Math.hypot(...rates) + size));
}

/** The pair at work on one run: its places are used again for every step, so that a step makes no garbage. */
class Pair {
  derivative: Derivative = () => {};
  readonly #k: readonly Float64Array[];
  readonly #change: Float64Array;
  readonly #bend: Float64Array;
  readonly #twist: Float64Array;
  readonly #rest: Float64Array;
  readonly #within: Float64Array;

  constructor(n: number) {
    const column = () => new Float64Array(n);
    this.#k = Array.from({ length: 7 }, column);
    this.#change = column();
    this.#bend = column();
    this.#twist = column();
    this.#rest = column();
    this.#within = column();
  }

  /** Rates at the beginning of the step. */
  get rates(): Float64Array {
    return this.#k[0]!;
  }

  begin(time: number, state: Float64Array): void {
    this.derivative(time, state, this.rates);
  }

  /** The end of a step is the beginning of the next. */
  goOn(): void {
    this.rates.set(this.#k[6]!);
  }

  /** One step, from rates at its beginning that must be there already. */
  take(time: number, state: Float64Array, step: number, next: Float64Array): void {
    for (let stage = 1; stage < 7; stage++) {
      this.#weighted(a[stage]!, next);
      for (let index = 0; index < next.length; index++) next[index] = state[index]! + step * next[index]!;
      this.derivative(time + c[stage]! * step, next, this.#k[stage]!);
    }
  }

  /** Slopes of the stages, each with its weight, added up. */
  #weighted(weights: readonly number[], sums: Float64Array): void {
    sums.fill(0);
    for (let stage = 0; stage < weights.length; stage++) {
      const [weight, slopes] = [weights[stage]!, this.#k[stage]!];
      for (let index = 0; index < sums.length; index++) sums[index]! += weight * slopes[index]!;
    }
  }

  /** Error of a step over what is allowed. */
  error(state: Float64Array, next: Float64Array, step: number, tolerance: number): number {
    this.#weighted(e, this.#within);
    let worst = 0;
    for (let index = 0; index < state.length; index++) {
      const scale = tolerance * (1 + Math.max(Math.abs(state[index]!), Math.abs(next[index]!)));
      const share = Math.abs(step * this.#within[index]!) / scale;
      if (Number.isNaN(share)) return Number.NaN;
      worst = Math.max(worst, share);
    }
    return worst;
  }

  /** Takes up a step for its dense output. */
  bend(state: Float64Array, next: Float64Array, step: number): void {
    const [first, last] = [this.rates, this.#k[6]!];
    this.#weighted(d, this.#rest);
    for (let index = 0; index < state.length; index++) {
      const change = next[index]! - state[index]!;
      const bend = step * first[index]! - change;
      this.#change[index] = change;
      this.#bend[index] = bend;
      this.#twist[index] = change - step * last[index]! - bend;
      this.#rest[index]! *= step;
    }
  }

  /** State at a share of the step that begins at a state; its place is used again for the next. */
  at(state: Float64Array, share: number): Float64Array {
    const back = 1 - share;
    const within = this.#within;
    for (let index = 0; index < within.length; index++) {
      const bent = this.#bend[index]! + share * (this.#twist[index]! + back * this.#rest[index]!);
      within[index] = state[index]! + share * (this.#change[index]! + back * bent);
    }
    return within;
  }
}

interface Step {
  readonly time: number;
  readonly state: Float64Array;
  readonly step: number;
  readonly pair: Pair;
}

/** The event that comes first in the step, with the share of the step at which it does. */
function firstEvent(
  events: readonly EventFunction[],
  { time, state, step, before, after, pair }: Step & { readonly before: Float64Array; readonly after: Float64Array },
) {
  let first: { event: number; share: number } | undefined;
  for (let event = 0; event < events.length; event++) {
    if (!(before[event]! > 0 && after[event]! <= 0)) continue;
    const height = events[event]!;
    let low = 0;
    let high = 1;
    for (let halving = 0; halving < 50 && high - low > 1e-14; halving++) {
      const middle = (low + high) / 2;
      if (height(time + middle * step, pair.at(state, middle)) > 0) low = middle;
      else high = middle;
    }
    if (first === undefined || high < first.share) first = { event, share: high };
  }
  return first;
}

/** Tells of three points within the step, or within a first share of it. */
function report(onPoint: IntegrationInput["onPoint"], { time, state, step, pair }: Step, reached: number): void {
  if (onPoint === undefined) return;
  for (let quarter = 1; quarter < 4; quarter++) {
    const share = quarter / 4;
    onPoint(time + share * (reached * step), pair.at(state, share * reached));
  }
}
