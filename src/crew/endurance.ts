import {
  type EnduranceLaw,
  enduranceLaws,
  exponentialFatigueRate,
  type MuscleGroup,
  rohmertTerms,
} from "../materials/people-fatigue.js";
import { within } from "../quantity/guard.js";
import { insideModel } from "../wind/validity.js";

/** A steady share of maximum, and whose muscle. */
export interface SteadyHold {
  /** f [-] */
  readonly share: number;
  /** The hand when absent. */
  readonly group?: MuscleGroup;
}

/**
 * Time for which a steady force is kept up, by the power law.
 *
 *     T_e = b0 / f^b1
 *
 * @param share  f, share of maximum [-], above 0, up to 1
 * @param group  hand, elbow or general; the hand when absent
 * @returns endurance time [s]
 * @throws ValueError for a share outside 0 to 1
 * Valid for people in the mean from a tenth to nine tenths of maximum; a person may last half or three times as long.
 * Source: frey-law-avin-2010, table 2.
 * Example: enduranceTime({ share: 0.25 }) → 312.6
 */
export function enduranceTime({ share, group = "hand" }: SteadyHold): number {
  const { factor, exponent }: EnduranceLaw = enduranceLaws[group];
  return factor.value * within("loadShare", share, 1e-6, 1) ** -exponent.value;
}

/**
 * Share of maximum that is kept up for a time, by the power law.
 *
 *     f = (b0 / T_e)^(1 / b1), at most 1
 *
 * @param time  T_e [s], above 0
 * @param group  hand, elbow or general; the hand when absent
 * @returns share of maximum [-]
 * @throws ValueError for a time that is not above 0
 * Valid as the law itself; below the least time of the law, b0, the whole of the maximum.
 * Source: frey-law-avin-2010, table 2, solved for f.
 * Example: enduranceShare({ time: 312.6 }) → 0.25
 */
export function enduranceShare({
  time,
  group = "hand",
}: {
  readonly time: number;
  readonly group?: MuscleGroup;
}): number {
  const { factor, exponent }: EnduranceLaw = enduranceLaws[group];
  return Math.min(1, (within("enduranceTime", time, 1e-9) / factor.value) ** (-1 / exponent.value));
}

/**
 * Endurance time by a curve of the 1960s, for comparison.
 *
 *     T_e = −90 + 126/f − 36/f² + 6/f³  seconds
 *
 * @param share  f, share of maximum [-], 0.15 to 1
 * @returns endurance time [s]
 * @throws OutsideModelError below 15 % of maximum, where the curve calls the effort endless
 * Valid as a second opinion: its terms are remembered, nobody looked them up.
 * Source: common practice, terms from memory.
 * Example: rememberedEndurance(0.5) → 66
 */
export function rememberedEndurance(share: number): number {
  const f = insideModel({
    quantity: "share of maximum",
    value: share,
    unit: "1",
    minimum: 0.15,
    maximum: 1,
    advice: "The remembered curve starts at 15 % of maximum.",
  });
  return rohmertTerms.reduce((sum, term, power) => sum - (term.value * (-1) ** power) / f ** power, 0);
}

/**
 * Endurance time of a model with a single rate, for comparison.
 *
 *     dQ/dt = −k · Q · f  until Q = f:   T_e = −ln(f) / (k · f)
 *
 * @param share  f, share of maximum [-], above 0, up to 1
 * @param fatigueRate  k [1/s], above 0; one a minute when absent
 * @returns endurance time [s]
 * @throws ValueError outside these ranges
 * Valid for steady loads without rest.
 * Source: ma-2009, static case.
 * Example: singleRateEndurance({ share: 0.5 }) → 83.2
 */
export function singleRateEndurance({
  share,
  fatigueRate = exponentialFatigueRate.value,
}: {
  readonly share: number;
  readonly fatigueRate?: number;
}): number {
  const f = within("loadShare", share, 1e-6, 1);
  return -Math.log(f) / (within("fatigueRate", fatigueRate) * f);
}
