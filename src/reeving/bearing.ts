import { within } from "../quantity/guard.js";

/**
 * Root of the moment balance, in a form that keeps its digits when the loss is small.
 *
 *     k = (h + 2 m s · sqrt(w + m² s²)) / w,   w = 1 − m²,   h = w + 2 m² s²
 *
 * @param m  μ_b r / R [-], 0 to below 1
 * @param s  sin(θ / 2) [-], 0 to 1
 * @returns ratio of the tensions k [-], at least 1
 */
function turningRatio(m: number, s: number): number {
  const w = 1 - m * m;
  const ms = m * s;
  return (w + 2 * ms * ms + 2 * ms * Math.sqrt(w + ms * ms)) / w;
}

/**
 * Ratio over a sheave, whatever its bearing: one that is held faster than the rope holds the groove stands still, and the rope slides.
 *
 *     k = least of the root of the moment balance and exp(μ_g θ);   the latter from μ_b r / R = 0.99 on
 *
 * @param m  μ_b r / R [-], 0 or more
 * @param s  sin(θ / 2) [-], 0 to 1
 * @param sliding  exp(μ_g θ), ratio of the rope sliding over the groove [-], at least 1
 * @returns ratio of the tensions k [-], at least 1
 */
export function sheaveRatio(m: number, s: number, sliding: number): number {
  return m < seizing ? Math.min(turningRatio(m, s), sliding) : m >= seizing ? sliding : m;
}

/** A sheave on its pin. */
export interface BearingInput {
  readonly bearingFriction: number;
  /** Radius of the pin, or of the circle on which balls run [m]. */
  readonly pinRadius: number;
  /** Diameter at the bottom of the groove plus one rope diameter [m]. */
  readonly pitchDiameter: number;
  readonly wrapAngle: number;
}

/** Friction moment over the moment of the pull at half a turn, μ_b r / R, from which a bearing counts as seized [-]. */
const seizing = 0.99;

/**
 * Tension ratio across a sheave whose only loss is the friction of its bearing.
 *
 *     (k − 1) · R = μ_b · r · sqrt(1 + k² − 2 k cos θ)
 *
 * The right side is the friction moment of the true resultant of both tensions, not of twice the tension.
 * At θ = 180° this is k = (R + μ_b r) / (R − μ_b r).
 *
 * @param bearingFriction  μ_b, at the pin radius [-], 0 to 1
 * @param pinRadius  r [m], less than R / μ_b
 * @param pitchDiameter  2 R [m], above 0
 * @param wrapAngle  θ [rad], 0 to 63; beyond half a turn the resultant is that of the angle left over
 * @returns ratio of the tensions k [-], at least 1
 * @throws ValueError for impossible sizes, and where the bearing would seize (μ_b r ≥ R)
 * Valid for a bearing whose friction follows the load; seals and grit are a constant drag of their own.
 * Source: donzelli-1999, formula for geometry of Table 1. Example: bearingRatio({ bearingFriction: 0.1, pinRadius: 0.009525, pitchDiameter: 0.055118, wrapAngle: Math.PI }) → 1.0716
 */
export function bearingRatio({ bearingFriction, pinRadius, pitchDiameter, wrapAngle }: BearingInput): number {
  const friction = within("bearingFriction", bearingFriction);
  const r = within("pinRadius", pinRadius);
  const R = within("sheaveDiameter", pitchDiameter) / 2;
  const theta = within("wrapAngle", wrapAngle);
  const m = friction * (r / R);
  within("bearingFriction", m, 0, seizing);
  return turningRatio(m, Math.abs(Math.sin(theta / 2)));
}
