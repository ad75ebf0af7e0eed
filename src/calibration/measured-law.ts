import type { Band } from "../sources/band.js";
import { type Estimate, forceBand, normalEstimate, ratioEstimate, sigmaOfBand } from "./estimate.js";
import { expectedPull, type LawFit, type LawPrior } from "./law-fit.js";
import type { Way } from "./reading.js";
import type { EaseLaw } from "./rove-law.js";

/** Ratio and drag of a line as they were measured, with their 95 % intervals. */
export interface MeasuredLaw {
  /** k [-] */
  readonly ratio: Estimate;
  /** c [N] */
  readonly drag: Estimate;
  /** Correlation of the errors of ln k and c [-]. */
  readonly correlation: number;
}

/** What is known of a law before it is measured, as bands. */
export interface LawBands {
  /** k [-] */
  readonly ratio: Band;
  /** c [N] */
  readonly drag: Band;
}

/** A fit in words: estimates with intervals. */
export function lawOf({ logRatio, drag, covariance: [ratioVariance, both, dragVariance] }: LawFit): MeasuredLaw {
  const [ratioError, dragError] = [Math.sqrt(ratioVariance), Math.sqrt(dragVariance)];
  return {
    ratio: ratioEstimate(logRatio, ratioError),
    drag: normalEstimate(drag, dragError),
    correlation: dragError === 0 || ratioError === 0 ? 0 : both / (ratioError * dragError),
  };
}

/** Bands as normal knowledge of ln k and c. */
export function priorOf({ ratio, drag }: LawBands): LawPrior {
  return {
    logRatio: {
      mean: Math.log(ratio.value),
      sigma: sigmaOfBand({ low: Math.log(ratio.low), high: Math.log(ratio.high) }),
    },
    drag: { mean: drag.value, sigma: sigmaOfBand(drag) },
  };
}

/** A prior that nothing was read for, as a law. */
export function lawOfPrior({ logRatio, drag }: LawPrior): MeasuredLaw {
  return {
    ratio: ratioEstimate(logRatio.mean, logRatio.sigma),
    drag: normalEstimate(drag.mean, drag.sigma),
    correlation: 0,
  };
}

/** A load on a line, and the way it moves. */
export interface PullInput {
  /** [N] */
  readonly load: number;
  /** Metres hauled for each metre that the load moves; 1 when absent. */
  readonly purchase?: number;
  readonly way: Way;
  /** What the line leaves while it is eased, of a calibration; the inverse of its hauling law when absent. */
  readonly ease?: EaseLaw | undefined;
}

/** Variance of the pull that a law expects [N²]. */
export function pullVariance(
  { ratio, drag, correlation }: MeasuredLaw,
  { load, purchase = 1, way, ease }: PullInput,
): number {
  const law = { logRatio: Math.log(ratio.value), drag: drag.value };
  const { byLogRatio, byDrag } = expectedPull(law, load / purchase, way, ease);
  const [one, other] = [byLogRatio * ratio.standardError, byDrag * drag.standardError];
  return Math.max(0, one * one + other * other + 2 * correlation * one * other);
}

/**
 * Pull at the hand that a measured law expects, with its 5th and 95th percentile.
 *
 *     T_haul = k T + c,   T_ease = a T − b c,   T = load / purchase;   a = b = 1 / k without a tackle
 *
 * @param law  measured ratio and drag
 * @param pull  load [N], purchase [-], way, and how the reeving eases
 * @returns hand force [N]
 * Valid for the pull itself, not for one more reading of it with a scale.
 * Source: statics. Example: expectedHandForce({ ratio: { value: 1.2, standardError: 0, low: 1.2, high: 1.2 }, drag: { value: 2, standardError: 0, low: 2, high: 2 }, correlation: 0 }, { load: 100, way: "hauling" }).value → 122
 */
export function expectedHandForce(law: MeasuredLaw, pull: PullInput): Band {
  const point = { logRatio: Math.log(law.ratio.value), drag: law.drag.value };
  const { force } = expectedPull(point, pull.load / (pull.purchase ?? 1), pull.way, pull.ease);
  return forceBand(force, Math.sqrt(pullVariance(law, pull)));
}
