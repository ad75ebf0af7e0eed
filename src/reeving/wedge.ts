import { within } from "../quantity/guard.js";
import { frictionAngle } from "./jaw.js";

/** Something squeezed between a wedge's face and what it rests on. */
export interface WedgeInput {
  /** Force across the wedge [N]. */
  readonly squeeze: number;
  readonly slopeAngle: number;
  readonly frictionCoefficient: number;
}

/**
 * Force that drives a wedge in against a squeeze, friction on its sloping face.
 *
 *     F = S · tan(θ + φ),   φ = atan μ
 *
 * @param squeeze  S, force across the wedge [N], 0 to 1 000 000
 * @param slopeAngle  θ of the face to the way it is driven [rad]; θ + φ below a quarter turn
 * @param frictionCoefficient  μ on the face [-], 0 to 4
 * @returns driving force [N]; infinite when friction alone stops the wedge
 * @throws ValueError outside these ranges
 * Source: statics, wedge and screw. Example: wedgeDrive({ squeeze: 1000, slopeAngle: 0.1, frictionCoefficient: 0.2 }) → 306.485
 */
export function wedgeDrive({ squeeze, slopeAngle, frictionCoefficient }: WedgeInput): number {
  const angle = within("slopeAngle", slopeAngle) + frictionAngle(frictionCoefficient);
  const force = within("tension", squeeze);
  return angle < Math.PI / 2 ? force * Math.tan(angle) : Number.POSITIVE_INFINITY;
}

/**
 * Force that draws a wedge out again; below zero the wedge comes out by itself and must be held with that force.
 *
 *     F = S · tan(φ − θ),   φ = atan μ
 *
 * @param squeeze  S, force across the wedge [N], 0 to 1 000 000
 * @param slopeAngle  θ of the face to the way it is driven [rad], 0 to a quarter turn
 * @param frictionCoefficient  μ on the face [-], 0 to 4
 * @returns drawing force [N], below zero when μ is too small to hold the wedge
 * @throws ValueError outside these ranges
 * Source: statics, wedge and screw. Example: wedgeRelease({ squeeze: 490.5, slopeAngle: Math.PI / 6, frictionCoefficient: 0.25 }) → -140.313
 */
export function wedgeRelease({ squeeze, slopeAngle, frictionCoefficient }: WedgeInput): number {
  return within("tension", squeeze) * Math.tan(frictionAngle(frictionCoefficient) - within("slopeAngle", slopeAngle));
}
