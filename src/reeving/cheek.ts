import { practice } from "../materials/practice.js";
import { within } from "../quantity/guard.js";

/** A rope in a groove. */
export interface CheekInput {
  readonly ropeDiameter: number;
  readonly grooveWidth: number;
  readonly wrapAngle: number;
}

/** The loss at the cheeks, and whether the rope touches them at all. */
export interface CheekContact {
  readonly touches: boolean;
  /** Tension ratio of the rubbing alone [-]. */
  readonly ratio: number;
}

/**
 * Rubbing of a rope on the cheeks of its block when the groove is too narrow.
 *
 *     k = exp(μ_cheek · s · θ),   s = s_0 · (1.10 − g) / 0.10 for g = b/d below 1.10, otherwise 0
 *
 * The rope's outward pressure a radian is its tension; the share s of it goes sideways. A rope wider than its groove
 * (g below 1) is allowed: it rubs more, and is flagged.
 *
 * @param ropeDiameter  d [m], above 0
 * @param grooveWidth  b [m], g = b/d from 0.5 to 20
 * @param wrapAngle  θ [rad], 0 to 63
 * @returns whether it touches, and the ratio [-]
 * @throws ValueError when the groove is less than half as wide as the rope: it cannot enter
 * Source: common practice for the limit 1.10; s_0 and μ_cheek come from memory with a wide range. Example: cheekContact({ ropeDiameter: 0.006, grooveWidth: 0.006, wrapAngle: Math.PI }).ratio → 1.207
 */
export function cheekContact({ ropeDiameter, grooveWidth, wrapAngle }: CheekInput): CheekContact {
  const limit = practice.cheekContactRatio.value;
  const g = within("grooveRatio", within("grooveWidth", grooveWidth) / within("ropeDiameter", ropeDiameter));
  const share = (practice.cheekPressureShare.value * Math.max(0, limit - g)) / (limit - 1);
  const ratio = Math.exp(practice.cheekFriction.value * share * within("wrapAngle", wrapAngle));
  return { touches: g < limit, ratio };
}
