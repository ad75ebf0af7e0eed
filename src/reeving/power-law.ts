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
 * @param frictionCoefficient  μ_ref [-], 0 to 4
 * @param loadRatio  N / N_ref [-], 1e-6 to 1e6
 * @param loadExponent  n [-], above 0, at most 1
 * @returns friction coefficient [-]
 * @throws ValueError outside these ranges
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
  return within("frictionCoefficient", frictionCoefficient) * within("tensionRatio", loadRatio, 1e-6, 1e6) ** (n - 1);
}

/**
 * Tension on the pulled side when friction follows a power of the pressure.
 *
 *     T2^(1−n) = T1^(1−n) + (1 − n) · μ · T_ref^(1−n) · θ,   and T2 = T1 · exp(μ θ) for n = 1
 *
 * @param tension  T1 [N], 0 or more
 * @param frictionCoefficient  μ at the reference tension [-], 0 to 4
 * @param referenceTension  T_ref [N], above 0
 * @param loadExponent  n [-], above 0, at most 1
 * @param wrapAngle  θ [rad], 0 to 63
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
  const tension = within("tension", input.tension);
  return powerLawStep(tension, sign * powerLawGain(input), 1 - input.loadExponent);
}

/**
 * What one turn adds to T^(1−n): the part of the power law that does not depend on tension.
 *
 *     gain = μ · θ · T_ref^(1−n)
 *
 * @param input  as for the pulled side; its tension is not used
 * @returns gain [N^(1−n)]
 */
export function powerLawGain(input: Omit<PowerLawInput, "tension">): number {
  const reference = within("tension", input.referenceTension, 1e-9);
  const x = 1 - within("share", input.loadExponent, 1e-6);
  return (
    within("frictionCoefficient", input.frictionCoefficient) * within("wrapAngle", input.wrapAngle) * reference ** x
  );
}

/**
 * Tension on the other side of a turn that adds a gain to T^x, for x = 1 − n; the limit of x → 0 is exp(gain).
 *
 * @param tension  [N], 0 or more
 * @param gain  [N^x], below zero towards the yielding side
 * @param x  1 − n [-], 0 to below 1
 * @returns tension [N], 0 where the turn holds by itself
 */
export function powerLawStep(tension: number, gain: number, x: number): number {
  if (x < 1e-12) return tension * Math.exp(gain);
  if (tension === 0) return gain > 0 ? (x * gain) ** (1 / x) : 0;
  const growth = (x * gain) / tension ** x;
  if (growth <= -1) return 0;
  return growth > 1 ? (tension ** x + x * gain) ** (1 / x) : tension * Math.exp(Math.log1p(growth) / x);
}
