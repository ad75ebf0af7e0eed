import { figures } from "../quantity/print.js";
import { expectedPull, fitLaw, type LawFit, type LawFitInput, pullSigma } from "./law-fit.js";
import type { Observation, Way } from "./reading.js";

/** A pull, or a whole reading, that was left out of a fit. */
export interface LeftOut {
  readonly row: number;
  readonly pull: Way | "both";
  /** Why, in words with numbers. */
  readonly reason: string;
}

/** Pulls that agree with each other, and those that do not. */
export interface Agreed {
  readonly kept: readonly Observation[];
  readonly leftOut: readonly LeftOut[];
  /** The law that the pulls were held against; absent where there were too few. */
  readonly law?: LawFit;
}

/** Residual in expected scatters from which a pull loses weight while the outliers are sought. */
const quadraticUpTo = 1.5;

/** Of more pulls than this, evenly spread ones tell the law that all are held against. */
const mostForSearch = 20_000;

/**
 * Finds pulls that lie far from the law of all the others.
 *
 *     |reading − law| > m · max(1, 1.4826 · median |z|) · σ,   the law from a fit in which far pulls weigh less
 *
 * @param input  pulls, repeatability [-], prior
 * @param multiple  m [-]
 * @returns pulls kept, and pulls left out with row and reason
 */
export function findOutliers(input: LawFitInput, multiple: number): Agreed {
  const { observations, prior } = input;
  const unknowns = input.withoutDrag ? 1 : 2;
  const law = observations.length < unknowns + (prior ? 1 : 2) ? undefined : robustFit(thinned(input));
  if (!law) return { kept: observations, leftOut: [] };
  const residuals = standardResiduals(input, law);
  const limit = multiple * Math.max(1, spreadOf(residuals));
  const kept: Observation[] = [];
  const leftOut: LeftOut[] = [];
  observations.forEach((observation, index) => {
    if (Math.abs(residuals[index]!) <= limit) kept.push(observation);
    else
      leftOut.push({
        row: observation.row,
        pull: observation.way,
        reason: reasonOf(observation, law, residuals[index]!),
      });
  });
  return { kept, leftOut, law };
}

function reasonOf({ way, tension, force }: Observation, law: LawFit, residual: number): string {
  const expected = Math.max(0, expectedPull(law, tension, way).force);
  const times = figures(Math.abs(residual), 2);
  return `read ${figures(force)} N ${way} where the other readings expect ${figures(expected)} N: ${times} times the expected scatter away`;
}

function thinned(input: LawFitInput): LawFitInput {
  const step = Math.ceil(input.observations.length / mostForSearch);
  return step <= 1 ? input : { ...input, observations: input.observations.filter((_, index) => index % step === 0) };
}

function robustFit(input: LawFitInput): LawFit | undefined {
  const loosened = new Float64Array(input.observations.length).fill(1);
  let law: LawFit | undefined;
  for (let turn = 0; turn < 15; turn++) {
    law = fitLaw({ ...input, loosened, start: law });
    if (!law) return undefined;
    const residuals = standardResiduals(input, law);
    const near = quadraticUpTo * Math.max(1, spreadOf(residuals));
    let moved = 0;
    residuals.forEach((residual, index) => {
      const next = Math.sqrt(Math.max(1, Math.abs(residual) / near));
      moved = Math.max(moved, Math.abs(next / loosened[index]! - 1));
      loosened[index] = next;
    });
    if (moved < 0.01) break;
  }
  return law;
}

function standardResiduals({ observations, repeatability }: LawFitInput, law: LawFit): Float64Array {
  return Float64Array.from(observations, ({ tension, way, force, resolution }) => {
    const expected = expectedPull(law, tension, way).force;
    return (force - expected) / pullSigma(expected, resolution, repeatability);
  });
}

/** Spread of most of the residuals, whatever the few worst are: that of a normal distribution with the same median size. */
function spreadOf(residuals: Float64Array): number {
  const sizes = residuals.map(Math.abs).sort();
  return 1.4826 * sizes[Math.floor(sizes.length / 2)]!;
}
