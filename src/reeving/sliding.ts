import { within } from "../quantity/guard.js";

/** A line that slides on a surface that does not turn. */
export interface CapstanInput {
  readonly frictionCoefficient: number;
  readonly wrapAngle: number;
}

/**
 * Tension ratio across a line bent around a surface that does not turn.
 *
 *     T_haul / T_load = exp(μ · θ)
 *
 * @param frictionCoefficient  μ, line on surface [-], 0 to 4
 * @param wrapAngle  θ, angle of contact [rad], 0 to 63
 * @returns ratio [-], at least 1
 * @throws ValueError outside these ranges
 * Valid for a flexible line that slides; the loss of bending is kept apart.
 * Source: euler-1769, capstan equation. Example: capstanRatio({ frictionCoefficient: 0.1, wrapAngle: Math.PI }) → 1.369
 */
export function capstanRatio({ frictionCoefficient: mu, wrapAngle: theta }: CapstanInput): number {
  return Math.exp(within("frictionCoefficient", mu) * within("wrapAngle", theta));
}

/** A tension ratio over a known wrap. */
export interface HoldInput {
  readonly tensionRatio: number;
  readonly wrapAngle: number;
}

/**
 * Friction coefficient at which a turn just holds a tension ratio.
 *
 *     μ = ln(T_2 / T_1) / θ
 *
 * @param tensionRatio  T_2 / T_1 [-], 1 to 1e12
 * @param wrapAngle  θ [rad], above 0, up to 63
 * @returns friction coefficient [-]
 * @throws ValueError outside these ranges
 * Source: euler-1769, capstan equation solved for μ. Example: holdingFriction({ tensionRatio: 100, wrapAngle: 8 * Math.PI }) → 0.1832
 */
export function holdingFriction({ tensionRatio, wrapAngle }: HoldInput): number {
  return Math.log(within("tensionRatio", tensionRatio)) / within("wrapAngle", wrapAngle, 1e-6);
}

/**
 * Theoretical friction of a rope wedged in a V groove.
 *
 *     μ_eff = μ / sin(half angle)
 *
 * @param frictionCoefficient  μ [-], 0 to 4
 * @param grooveAngle  full angle of the V [rad], above 0, at most π
 * @returns effective friction coefficient [-]; published rope tests found far less: about 1.25 μ at 70°
 * Source: statics, wedge. Example: wedgeFriction({ frictionCoefficient: 0.1, grooveAngle: 1.2217 }) → 0.1743
 */
export function wedgeFriction({
  frictionCoefficient,
  grooveAngle,
}: {
  readonly frictionCoefficient: number;
  readonly grooveAngle: number;
}): number {
  return (
    within("frictionCoefficient", frictionCoefficient) / Math.sin(within("wrapAngle", grooveAngle, 1e-3, Math.PI) / 2)
  );
}
