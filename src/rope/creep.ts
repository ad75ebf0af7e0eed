import type { CreepLaw } from "../materials/creep.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";

/** Creep by the logarithm of time. */
export interface LogCreepInput {
  readonly strainPerDecade: number;
  /** Time under load before the line is marked [s]. */
  readonly settling: number;
  /** Time after that [s]. */
  readonly duration: number;
}

/**
 * Strain that a rope gains by the logarithm of the time under load.
 *
 *     ε = c · log10((t_0 + t) / t_0)
 *
 * @param strainPerDecade  c [-], 0 to 1
 * @param settling  t_0, time under load before the mark [s], 1 s or more
 * @param duration  t after the mark [s]
 * @returns strain [-]
 * @throws ValueError outside these ranges
 * Valid under a steady load, for a rope that was worked before.
 * Source: ericksen-aramid, strain against the logarithm of time. Example: logCreep({ strainPerDecade: 0.001, settling: 60, duration: 3540 }) → 0.001778
 */
export function logCreep({ strainPerDecade, settling, duration }: LogCreepInput): number {
  const start = within("duration", settling, 1);
  return within("strainPerDecade", strainPerDecade) * Math.log10((start + within("duration", duration)) / start);
}

/** A steady rate, and how far load and temperature are from where it was found. */
export interface SteadyCreepInput {
  readonly creepRate: number;
  /** Load over the load at which the rate holds [-]. */
  readonly loadRatio: number;
  readonly loadPower: number;
  /** Activation energy over the gas constant [K]. */
  readonly activation: number;
  readonly temperature: number;
  readonly referenceTemperature: number;
}

/**
 * Steady creep rate at another load and temperature.
 *
 *     ε̇ = ε̇_0 · (T / T_0)^n · exp(Q/R · (1/Θ_0 − 1/Θ))
 *
 * @param creepRate  ε̇_0 [1/s]
 * @param loadRatio  T / T_0 [-], 0 to 100
 * @param loadPower  n [-], 0 to 20
 * @param activation  Q/R [K], 0 to 100 000
 * @param temperature  Θ [K]
 * @param referenceTemperature  Θ_0 [K]
 * @returns strain a second [1/s]
 * @throws ValueError outside these ranges
 * Valid once the first, quick creep is over, and well below break.
 * Source: omae-hmpe-creep, steady rate set by load and temperature. Example: 1e9 * steadyCreepRate({ creepRate: 4e-9, loadRatio: 2, loadPower: 4, activation: 14000, temperature: 293.15, referenceTemperature: 293.15 }) → 64
 */
export function steadyCreepRate(input: SteadyCreepInput): number {
  const inverse = (temperature: number) => 1 / within("temperature", temperature);
  const warmth = inverse(input.referenceTemperature) - inverse(input.temperature);
  return (
    within("creepRate", input.creepRate) *
    within("loadFactor", input.loadRatio, 0, 100) ** within("exponent", input.loadPower, 0, 20) *
    Math.exp(within("activation", input.activation) * warmth)
  );
}

/** A rope under a steady load. */
export interface CreepInput {
  readonly law: CreepLaw;
  /** Tension over break load [-]. */
  readonly loadShare: number;
  readonly settling: number;
  readonly duration: number;
  readonly temperature: number;
}

/**
 * Strain that a rope gains by creep, with its range.
 *
 *     ε = c · s / s_0 · log10((t_0 + t) / t_0) + ε̇ · t
 *
 * @param law  records of the fibre [-, 1/s, K]
 * @param loadShare  s, tension over break load [-], 0 to 1
 * @param settling  t_0, time under load before the line was set or marked [s], 1 s or more
 * @param duration  t after that [s]
 * @param temperature  of the rope [K]
 * @returns strain with its range [-]
 * @throws ValueError outside these ranges
 * Valid for loads well below break. That the part by the logarithm grows in step with load is a modelling choice of this library.
 * Source: ericksen-aramid for the first part, omae-hmpe-creep for the second; the numbers are from memory. Example: creepStrain({ law: creepLaws.polyester, loadShare: 0.2, settling: 60, duration: 3540, temperature: 293.15 }).value → 0.0027
 */
export function creepStrain({ law, loadShare, settling, duration, temperature }: CreepInput): Band {
  const share = within("loadShare", loadShare, 0, 1);
  const { perDecade, referenceShare, steady } = law;
  const first = ({ perDecade: c, referenceShare: s }: { perDecade: number; referenceShare: number }) =>
    logCreep({ strainPerDecade: (c * share) / s, settling, duration });
  if (steady === undefined) return bandOf({ perDecade, referenceShare }, first);
  return bandOf({ perDecade, referenceShare, ...steady }, ({ rate, referenceShare: s, ...values }) => {
    const later = steadyCreepRate({ ...values, creepRate: rate, loadRatio: share / s, temperature });
    return first({ perDecade: values.perDecade, referenceShare: s }) + later * duration;
  });
}
