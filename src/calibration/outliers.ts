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

/** Of more pulls than this, evenly spread ones tell the law that all are held against. */
const mostForLaw = 20_000;

/** Of more pulls than this, evenly spread ones are joined in pairs. */
const mostForPairs = 40;
/** The same where each law is a balance to be solved. */
const mostForTackles = 12;

const mostTurns = 20;

/**
 * Finds pulls that lie far from the law of all the others.
 *
 *     |reading − law| > m · max(1, 1.4826 · median |z|) · √(σ² + gᵀ Σ g)
 *
 * The search begins at the law of the two pulls whose law lies nearest to most of the others, fits all that agree
 * with it, and goes on until the same pulls agree. The last term, the error of the law, counts for a pull that the
 * law does not rest on.
 *
 * @param input  pulls, repeatability [-]
 * @param multiple  m [-]
 * @returns pulls kept, and pulls left out with row and reason
 */
export function findOutliers(input: LawFitInput, multiple: number): Agreed {
  const { observations } = input;
  if (observations.length < (input.withoutDrag ? 1 : 2) + 2) return { kept: observations, leftOut: [] };
  const law = agreedLaw({ ...input, observations: thinned(observations, mostForLaw) }, multiple);
  if (!law) return { kept: observations, leftOut: [] };
  const { limit, of } = deviationFrom(law, input, multiple);
  const kept: Observation[] = [];
  const leftOut: LeftOut[] = [];
  for (const observation of observations) {
    const size = of(observation);
    if (size <= limit) kept.push(observation);
    else
      leftOut.push({
        row: observation.row,
        pull: observation.way,
        reason: reasonOf(observation, law, size, input.ease),
      });
  }
  return { kept, leftOut, law };
}

function reasonOf({ way, tension, force }: Observation, law: LawFit, size: number, ease: LawFitInput["ease"]): string {
  const expected = Math.max(0, expectedPull(law, tension, way, ease).force);
  return `read ${figures(force)} N ${way} where the other readings expect ${figures(expected)} N: ${figures(size, 2)} times the expected scatter away`;
}

function thinned<Item>(items: readonly Item[], most: number): readonly Item[] {
  const step = Math.ceil(items.length / most);
  return step <= 1 ? items : items.filter((_, index) => index % step === 0);
}

/** The law of the pulls that agree with it. */
function agreedLaw(input: LawFitInput, multiple: number): LawFit | undefined {
  let law = nearestToMost(input);
  let before = "";
  for (let turn = 0; law !== undefined && turn < mostTurns; turn++) {
    const { limit, of } = deviationFrom(law, input, multiple);
    const agreeing = input.observations.filter((observation) => of(observation) <= limit);
    const now = agreeing.map(({ row, way }) => `${row}${way}`).join();
    if (now === before) return law;
    before = now;
    law = fitLaw({ ...input, observations: agreeing, start: law }) ?? law;
  }
  return law;
}

/** How far each pull lies from a law, in expected scatters, and how far it may. */
function deviationFrom(law: LawFit, input: LawFitInput, multiple: number) {
  const plain = Float64Array.from(input.observations, (observation) => sizeOf(law, observation, input, 0));
  const limit = multiple * Math.max(1, spreadOf(plain));
  /** Within the limit by its own scatter alone, or at least by that and the error of the law. */
  const of = (observation: Observation) => {
    const own = sizeOf(law, observation, input, 0);
    return own <= limit ? own : sizeOf(law, observation, input, 1);
  };
  return { limit, of };
}

type Pulled = Pick<LawFitInput, "repeatability" | "ease">;

function sizeOf(law: LawFit, observation: Observation, { repeatability, ease }: Pulled, lawShare: 0 | 1): number {
  const { tension, way, force, resolution } = observation;
  const { force: expected, byLogRatio, byDrag } = expectedPull(law, tension, way, ease);
  const [ratio, both, drag] = law.covariance;
  const ofLaw = ratio * byLogRatio ** 2 + drag * byDrag ** 2 + 2 * both * byLogRatio * byDrag;
  return Math.abs(force - expected) / Math.sqrt(pullSigma(expected, resolution, repeatability) ** 2 + lawShare * ofLaw);
}

/** Of the laws that two pulls make, or one where there is no drag, the one with the least median deviation. */
function nearestToMost(input: LawFitInput): LawFit | undefined {
  const { observations, ease, withoutDrag = false } = input;
  const few = thinned(observations, ease === undefined ? mostForPairs : mostForTackles);
  let best: { readonly law: LawFit; readonly middle: number } | undefined;
  for (const [index, one] of few.entries()) {
    for (const other of withoutDrag ? [undefined] : few.slice(index + 1)) {
      const near = lawThrough(one, other);
      const pulls = other === undefined ? [one] : [one, other];
      const law = near && ease ? fitLaw({ ...input, observations: pulls, start: near }) : near;
      if (!law) continue;
      const middle = spreadOf(Float64Array.from(few, (pull) => sizeOf(law, pull, input, 0)));
      if (best === undefined || middle < best.middle) best = { law, middle };
    }
  }
  return best?.law;
}

/** The law that goes through one pull without drag, or through two, where both ways it is pulled = k · other + c. */
function lawThrough(one: Observation, other: Observation | undefined): LawFit | undefined {
  const [x, y] = sides(one);
  const [u, v] = other === undefined ? [0, 0] : sides(other);
  const ratio = (y - v) / (x - u);
  if (!(ratio > 0 && Number.isFinite(ratio))) return undefined;
  const drag = other === undefined ? 0 : y - ratio * x;
  return { logRatio: Math.log(ratio), drag, covariance: [0, 0, 0], sumOfSquares: 0, degreesOfFreedom: 0 };
}

/** Tension that yields, and tension that pulls. */
function sides({ way, tension, force }: Observation): readonly [number, number] {
  return way === "hauling" ? [tension, force] : [force, tension];
}

/** Spread of most of the deviations, whatever the few worst are: that of a normal distribution with the same median size. */
function spreadOf(sizes: Float64Array): number {
  return 1.4826 * sizes.slice().sort()[Math.floor(sizes.length / 2)]!;
}
