import { within } from "../quantity/guard.js";

/** A jaw on a pivot, pressed on the rope by a preload; friction from the rope helps or hinders it. */
export interface JawInput {
  readonly preload: number;
  readonly preloadArm: number;
  /** Above zero when friction helps to close, below zero when it opens. */
  readonly frictionArm: number;
  readonly normalArm: number;
  readonly frictionCoefficient: number;
}

/** What a jaw does with its rope. */
export interface JawGrip {
  /** True when friction alone keeps the jaw shut, whatever the load. */
  readonly selfLocking: boolean;
  /** Force across the rope at which it slips [N]; infinite when the jaw locks. */
  readonly normalForce: number;
  /** Friction at which the rope slips [N]; infinite when the jaw locks. */
  readonly friction: number;
}

/**
 * Grip of a jaw whose own friction helps to close it.
 *
 *     N = F_0 · a_0 / (a_n − μ · a_f),   F = μ · N;   it locks when μ · a_f ≥ a_n
 *
 * @param preload  F_0, spring or hand on the lever [N], 0 to 1 000 000
 * @param preloadArm  a_0 about the pivot [m], 0 or more
 * @param frictionArm  a_f of the friction about the pivot [m], below zero when it opens the jaw
 * @param normalArm  a_n of the normal force about the pivot [m], 0 or more
 * @param frictionCoefficient  μ [-], 0 to 4
 * @returns whether it locks; normal force and friction at slip [N], infinite when it locks
 * @throws ValueError outside these ranges
 * Source: statics, moments about the pivot; the same balance as a block brake. Example: jawGrip({ preload: 600, preloadArm: 6, frictionArm: 6, normalArm: 18, frictionCoefficient: 0.3 }).friction → 66.667
 */
export function jawGrip({ preload, preloadArm, frictionArm, normalArm, frictionCoefficient }: JawInput): JawGrip {
  const mu = within("frictionCoefficient", frictionCoefficient);
  const closing = within("gripPreload", preload) * within("jawArm", preloadArm, 0);
  const opening = within("jawArm", normalArm, 0) - mu * within("jawArm", frictionArm);
  if (opening <= 0)
    return { selfLocking: true, normalForce: Number.POSITIVE_INFINITY, friction: Number.POSITIVE_INFINITY };
  return { selfLocking: false, normalForce: closing / opening, friction: (mu * closing) / opening };
}

/**
 * Steepest angle at which friction alone holds.
 *
 *     φ = atan μ
 *
 * @param frictionCoefficient  μ [-], 0 to 4
 * @returns friction angle [rad]
 * @throws ValueError outside this range
 * Source: statics, angle of friction. Example: frictionAngle(0.65) → 0.5764
 */
export function frictionAngle(frictionCoefficient: number): number {
  return Math.atan(within("frictionCoefficient", frictionCoefficient));
}

/** A curved face that lies on a round thing over an angle. */
export interface CurvedFaceInput {
  readonly frictionCoefficient: number;
  readonly wrapAngle: number;
}

/**
 * Friction of a curved face pressed on a round thing, over the force that presses it.
 *
 *     μ' = 4 · μ · sin(θ/2) / (θ + sin θ)
 *
 * @param frictionCoefficient  μ [-], 0 to 4
 * @param wrapAngle  θ, whole angle of contact [rad], 0 to π; at 0 the face is flat, at π a round groove filled by its rope
 * @returns friction over press [-], from μ to 4 μ / π
 * @throws ValueError outside these ranges
 * Valid for a worn-in face whose pressure follows the cosine.
 * Source: sarkar-machines, block brake with a long shoe. Example: curvedFaceFriction({ frictionCoefficient: 0.35, wrapAngle: Math.PI / 2 }) → 0.3851
 */
export function curvedFaceFriction({ frictionCoefficient, wrapAngle }: CurvedFaceInput): number {
  const mu = within("frictionCoefficient", frictionCoefficient);
  const theta = within("wrapAngle", wrapAngle, 0, Math.PI);
  return theta === 0 ? mu : (4 * mu * Math.sin(theta / 2)) / (theta + Math.sin(theta));
}
