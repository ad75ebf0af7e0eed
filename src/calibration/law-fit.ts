import { weightedLeastSquares } from "../numerics/least-squares.js";
import type { Observation } from "./reading.js";
import { type EaseLaw, inverseEase } from "./rove-law.js";

/** Normal knowledge of a law before it is measured: logarithm of its ratio, and its drag [N]. */
export interface LawPrior {
  readonly logRatio: { readonly mean: number; readonly sigma: number };
  readonly drag: { readonly mean: number; readonly sigma: number };
}

/** What to fit, and how far each pull may be off. */
export interface LawFitInput {
  readonly observations: readonly Observation[];
  /** Share of a pull by which it scatters when it is read again [-]. */
  readonly repeatability: number;
  readonly prior?: LawPrior | undefined;
  /** Factor on the expected scatter of all pulls; 1 when absent. */
  readonly noiseFactor?: number;
  /** Take the drag as none: for pulls at a single load. */
  readonly withoutDrag?: boolean;
  /** What the line leaves while it is eased; the inverse of its hauling law when absent. */
  readonly ease?: EaseLaw | undefined;
  /** A law near the one that is sought; by default the pulls tell where to begin. */
  readonly start?: Pick<LawFit, "logRatio" | "drag"> | undefined;
}

/** A law with its errors, before it is put into words. */
export interface LawFit {
  readonly logRatio: number;
  /** [N] */
  readonly drag: number;
  /** Variance of logRatio, covariance, variance of drag [-, N, N²]. */
  readonly covariance: readonly [number, number, number];
  /** Squared residuals over expected scatter, added; without those of the prior. */
  readonly sumOfSquares: number;
  /** Pulls less unknowns. */
  readonly degreesOfFreedom: number;
}

/** Pull that a law expects, and how it follows the two unknowns. */
export interface Expected {
  readonly force: number;
  readonly byLogRatio: number;
  readonly byDrag: number;
}

/**
 * Pull that a law expects at the hand.
 *
 *     T_haul = k T + c,   T_ease = a T − b c;   a = b = 1 / k where the tension passes one turn after the other
 *
 * @param law  ln k [-] and c [N]
 * @param tension  T [N]
 * @param way  hauling or easing
 * @param ease  a and b over ln k [-]
 * @returns pull [N] with its slopes [N, -]
 */
export function expectedPull(
  { logRatio, drag }: Pick<LawFit, "logRatio" | "drag">,
  tension: number,
  way: Observation["way"],
  ease: EaseLaw = inverseEase,
): Expected {
  if (way === "hauling") {
    const hauled = Math.exp(logRatio) * tension;
    return { force: hauled + drag, byLogRatio: hauled, byDrag: 1 };
  }
  const { ratio, drag: share, ratioSlope, dragSlope } = ease(logRatio);
  return {
    force: ratio * tension - share * drag,
    byLogRatio: ratioSlope * tension - dragSlope * drag,
    byDrag: -share,
  };
}

/**
 * Scatter to expect of a pull: rounding to the step of the scale, and the hand.
 *
 *     σ² = r² / 12 + (s · T)²
 *
 * @param force  T [N]
 * @param resolution  r [N]
 * @param repeatability  s [-]
 * @returns standard deviation [N]
 */
export function pullSigma(force: number, resolution: number, repeatability: number): number {
  return Math.max(Math.hypot(resolution / Math.sqrt(12), repeatability * Math.max(0, force)), 1e-9);
}

const mostSteps = 100;

/**
 * Fits ratio and drag of a law to pulls, with or without a prior: weighted least squares, step by step on the
 * linearised law, which eases as the reeving does; the expected scatter follows the fitted law, not the single reading.
 *
 *     minimise Σ ((reading − law) / σ)² + ((ln k − m_k) / s_k)² + ((c − m_c) / s_c)²
 *
 * @param input  pulls, repeatability [-], prior
 * @returns the law; nothing where the pulls do not settle it
 * Source: iso-28037, weighted fit; statics for the law.
 */
export function fitLaw(input: LawFitInput): LawFit | undefined {
  const { observations, prior, withoutDrag = false } = input;
  let logRatio = input.start?.logRatio ?? startOf(observations) ?? prior?.logRatio.mean;
  if (logRatio === undefined) return undefined;
  let drag = withoutDrag ? 0 : (input.start?.drag ?? prior?.drag.mean ?? 0);
  const largest = observations.reduce((most, { tension }) => Math.max(most, tension), 1);
  for (let step = 0; step < mostSteps; step++) {
    const solved = weightedLeastSquares(systemAt(input, logRatio, drag));
    if (!solved) return undefined;
    const [byRatio = 0, byDrag = 0] = solved.values;
    const change = Math.max(-1, Math.min(1, byRatio));
    logRatio += change;
    drag += byDrag;
    if (Math.abs(change) < 1e-11 && Math.abs(byDrag) < 1e-11 * largest) return found(input, logRatio, drag);
  }
  return found(input, logRatio, drag);
}

function found(input: LawFitInput, logRatio: number, drag: number): LawFit | undefined {
  const system = systemAt(input, logRatio, drag);
  const solved = weightedLeastSquares(system);
  if (!solved) return undefined;
  const [[ratioVariance = 0, both = 0] = [], [, dragVariance = 0] = []] = solved.covariance;
  let sumOfSquares = 0;
  for (let row = 0; row < input.observations.length; row++)
    sumOfSquares += (system.observed[row]! / system.sigmas[row]!) ** 2;
  return {
    logRatio,
    drag,
    covariance: [ratioVariance, both, dragVariance],
    sumOfSquares,
    degreesOfFreedom: input.observations.length - (input.withoutDrag ? 1 : 2),
  };
}

/** The linearised law at a point: a row for each pull, and one for each half of the prior. */
function systemAt(input: LawFitInput, logRatio: number, drag: number) {
  const { observations, prior, repeatability, noiseFactor = 1, withoutDrag, ease } = input;
  const priorRows = prior === undefined ? 0 : withoutDrag ? 1 : 2;
  const rows = observations.length + priorRows;
  const [byLogRatio, byDrag, observed, sigmas] = Array.from({ length: 4 }, () => new Float64Array(rows)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  observations.forEach(({ tension, way, force, resolution }, row) => {
    const expected = expectedPull({ logRatio, drag }, tension, way, ease);
    byLogRatio[row] = expected.byLogRatio;
    byDrag[row] = expected.byDrag;
    observed[row] = force - expected.force;
    sigmas[row] = pullSigma(expected.force, resolution, repeatability) * noiseFactor;
  });
  if (prior !== undefined) {
    const row = observations.length;
    byLogRatio[row] = 1;
    observed[row] = prior.logRatio.mean - logRatio;
    sigmas[row] = prior.logRatio.sigma;
    if (!withoutDrag) {
      byDrag[row + 1] = 1;
      observed[row + 1] = prior.drag.mean - drag;
      sigmas[row + 1] = prior.drag.sigma;
    }
  }
  return { columns: withoutDrag ? [byLogRatio] : [byLogRatio, byDrag], observed, sigmas };
}

/** The middle of what each pull says of the ratio when drag is left out: no single wrong pull moves it far. */
function startOf(observations: readonly Observation[]): number | undefined {
  const logs = observations
    .filter(({ tension, force }) => tension > 0 && force > 0)
    .map(({ tension, force, way }) => (way === "hauling" ? 1 : -1) * Math.log(force / tension))
    .sort((one, other) => one - other);
  return logs[Math.floor(logs.length / 2)];
}
