import { within } from "../quantity/guard.js";

/** Two pulls measured over one turn at the same load. */
export interface RaiseLowerInput {
  readonly raisingForce: number;
  readonly loweringForce: number;
  readonly wrapAngle: number;
}

/**
 * Apparent friction coefficient of a turn from the pull that raises and the pull that lowers the same load.
 *
 *     μ = ln(T_raise / T_lower) / (2 θ)
 *
 * Apparent, because the loss of bending is counted as if it were sliding.
 *
 * @param raisingForce  T_raise [N], not below T_lower
 * @param loweringForce  T_lower [N], above 0
 * @param wrapAngle  θ [rad], above 0
 * @returns apparent friction coefficient [-]
 * @throws ValueError when a pull is impossible, or the lowering force is the larger
 * Source: delaney-2022, p. 88. Example: apparentFriction({ raisingForce: 98, loweringForce: 50, wrapAngle: Math.PI / 2 }) → 0.2142
 */
export function apparentFriction({ raisingForce, loweringForce, wrapAngle }: RaiseLowerInput): number {
  const low = within("easingForce", loweringForce, 1e-9);
  const high = within("haulingForce", raisingForce, low);
  return Math.log(high / low) / (2 * within("wrapAngle", wrapAngle, 1e-6));
}

/** A bending share and a sliding share found from two wrap angles on the same bar. */
export interface TwoAngleFit {
  /** Friction coefficient of sliding alone [-]. */
  readonly frictionCoefficient: number;
  /** Tension ratio of bending alone [-]. */
  readonly bendingRatio: number;
}

/** Apparent friction of the same line on the same bar at two wrap angles. */
export interface TwoAngleInput {
  readonly smallWrap: number;
  readonly smallWrapFriction: number;
  readonly largeWrap: number;
  readonly largeWrapFriction: number;
}

/**
 * Splits an apparent friction that falls with the wrap angle into sliding, which grows with the angle, and bending, which does not.
 *
 *     θ · μ_apparent(θ) = μ · θ + ln k_bend, at both angles
 *
 * @param smallWrap  [rad], above 0
 * @param smallWrapFriction  apparent μ there [-], 0 to 2
 * @param largeWrap  [rad], above the small wrap
 * @param largeWrapFriction  apparent μ there [-], 0 to 2
 * @returns μ of sliding [-] and ratio of bending [-]
 * @throws ValueError when the wraps are not in order
 * Source: delaney-2022, p. 88 gives such pairs; the split is elementary. Example: splitTwoAngles({ smallWrap: Math.PI / 2, smallWrapFriction: 0.19, largeWrap: Math.PI, largeWrapFriction: 0.1467 }).frictionCoefficient → 0.1034
 */
export function splitTwoAngles(input: TwoAngleInput): TwoAngleFit {
  const small = within("wrapAngle", input.smallWrap, 1e-6);
  const large = within("wrapAngle", input.largeWrap, small * (1 + 1e-9));
  const lossAtSmall = small * within("frictionCoefficient", input.smallWrapFriction);
  const lossAtLarge = large * within("frictionCoefficient", input.largeWrapFriction);
  const frictionCoefficient = (lossAtLarge - lossAtSmall) / (large - small);
  return { frictionCoefficient, bendingRatio: Math.exp(lossAtSmall - frictionCoefficient * small) };
}
