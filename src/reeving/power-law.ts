import { within } from "../quantity/guard.js";

/** A line whose friction coefficient falls as the pressure rises. */
export interface PowerLawInput {
  /** Tension on the side that is not pulled [N]. */
  readonly tension: number;
  /** μ at the reference tension [-]. */
  readonly frictionCoefficient: number;
  readonly referenceTension: number;
  /** n in F ∝ N^n [-], above 0, at most 1. */
  readonly loadExponent: number;
  readonly wrapAngle: number;
}

/**
 * Friction coefficient at another pressure when friction follows a power of the load.
 *
 *     F ∝ N^n, so μ(N) = μ_ref · (N / N_ref)^(n − 1)
 *
 * @param frictionCoefficient  μ_ref [-], 0 to 2
 * @param loadRatio  N / N_ref [-], above 0
 * @param loadExponent  n [-], above 0, at most 1
 * @returns friction coefficient [-]
 * Source: brown-thesis, §3.2.2 (n = 0.75 for polymers). Example: loadDependentFriction({ frictionCoefficient: 0.2, loadRatio: 16, loadExponent: 0.75 }) → 0.1
 */
export function loadDependentFriction({
  frictionCoefficient,
  loadRatio,
  loadExponent,
}: {
  readonly frictionCoefficient: number;
  readonly loadRatio: number;
  readonly loadExponent: number;
}): number {
  const n = within("share", loadExponent, 1e-6);
  return within("frictionCoefficient", frictionCoefficient) * loadRatio ** (n - 1);
}

/**
 * Tension on the pulled side when friction follows a power of the pressure.
 *
 *     T2^(1−n) = T1^(1−n) + (1 − n) · μ · T_ref^(1−n) · θ,   and T2 = T1 · exp(μ θ) for n = 1
 *
 * @param tension  T1 [N], 0 or more
 * @param frictionCoefficient  μ at the reference tension [-], 0 to 2
 * @param referenceTension  T_ref [N], above 0
 * @param loadExponent  n [-], above 0, at most 1
 * @param wrapAngle  θ [rad], 0 to 200
 * @returns T2 [N]
 * Source: howell-1954, from memory; the derivation is elementary. Example: powerLawPulledSide({ tension: 100, frictionCoefficient: 0.1, referenceTension: 100, loadExponent: 0.75, wrapAngle: Math.PI }) → 135.3
 */
export function powerLawPulledSide(input: PowerLawInput): number {
  return powerLaw(input, 1);
}

/**
 * Tension on the yielding side when friction follows a power of the pressure; zero when the turn holds the pull alone.
 *
 *     T1^(1−n) = T2^(1−n) − (1 − n) · μ · T_ref^(1−n) · θ
 *
 * @param tension  T2 [N], 0 or more; the other inputs as for the pulled side
 * @returns T1 [N], 0 where the turn holds by itself
 * Source: howell-1954, from memory. Example: powerLawYieldingSide({ tension: 135.3, frictionCoefficient: 0.1, referenceTension: 100, loadExponent: 0.75, wrapAngle: Math.PI }) → 100
 */
export function powerLawYieldingSide(input: PowerLawInput): number {
  return powerLaw(input, -1);
}

function powerLaw(input: PowerLawInput, sign: 1 | -1): number {
  const T = within("tension", input.tension);
  const mu = within("frictionCoefficient", input.frictionCoefficient);
  const reference = within("tension", input.referenceTension, 1e-9);
  const x = 1 - within("share", input.loadExponent, 1e-6);
  const theta = within("wrapAngle", input.wrapAngle);
  // With x → 0 the power law becomes the exponential: both are one formula in expm1 and log1p.
  const growth = (sign * mu * theta * x * reference ** x) / T ** x;
  if (T === 0) return sign > 0 && x > 0 ? (mu * theta * x) ** (1 / x) * reference : 0;
  if (x < 1e-12) return T * Math.exp(sign * mu * theta);
  return growth <= -1 ? 0 : T * Math.exp(Math.log1p(growth) / x);
}
