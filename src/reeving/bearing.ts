import { within } from "../quantity/guard.js";

/** A sheave on its pin. */
export interface BearingInput {
  readonly bearingFriction: number;
  /** Radius of the pin, or of the circle on which balls run [m]. */
  readonly pinRadius: number;
  /** Diameter at the bottom of the groove plus one rope diameter [m]. */
  readonly pitchDiameter: number;
  readonly wrapAngle: number;
}

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
 * @param wrapAngle  θ [rad], 0 to 200; beyond half a turn the resultant is that of the angle left over
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
  within("bearingFriction", m, 0, 0.99);
  const half = 1 - m * m * Math.cos(theta);
  const whole = 1 - m * m;
  return (half + Math.sqrt(Math.max(0, (half - whole) * (half + whole)))) / whole;
}
