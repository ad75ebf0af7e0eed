import { enduranceLaws, fatigueSets, type MuscleGroup, seamShare } from "../materials/people-fatigue.js";
import { within } from "../quantity/guard.js";
import { enduranceTime } from "./endurance.js";

/** Rates of a muscle that tires and recovers. */
export interface FatigueRates {
  /** F [1/s] */
  readonly fatigueRate: number;
  /** R [1/s] */
  readonly recoveryRate: number;
}

/** Rates under a steady load. */
export interface SteadyLoad extends FatigueRates {
  /** f [-] */
  readonly share: number;
}

/** The printed rates of a group, as plain numbers. */
export function ratesOf(group: MuscleGroup): FatigueRates & { readonly restFactor: number } {
  const { fatigueRate, recoveryRate, restFactor } = fatigueSets[group];
  return { fatigueRate: fatigueRate.value, recoveryRate: recoveryRate.value, restFactor: restFactor.value };
}

/**
 * Share of maximum that a muscle keeps up for ever in the three-compartment model.
 *
 *     f = R / (F + R)
 *
 * @param fatigueRate  F [1/s], 1e-6 to 10
 * @param recoveryRate  R [1/s], 1e-6 to 10
 * @returns share of maximum [-]
 * @throws ValueError outside these ranges
 * Valid for the model; people tire of everything in the end.
 * Source: xia-frey-law-2008, steady state.
 * Example: endlessShare({ fatigueRate: 0.0098, recoveryRate: 0.00064 }) → 0.0613
 */
export function endlessShare({ fatigueRate, recoveryRate }: FatigueRates): number {
  const R = within("recoveryRate", recoveryRate);
  return R / (within("fatigueRate", fatigueRate) + R);
}

/**
 * Endurance time of the three-compartment model under a steady load, in closed form.
 *
 *     T_e = −ln(1 − R·(1 − f) / (F·f)) / R,   without end for f ≤ R/(F + R)
 *
 * @param share  f, share of maximum [-], above 0, up to 1
 * @param fatigueRate  F [1/s], 1e-6 to 10
 * @param recoveryRate  R [1/s], 1e-6 to 10
 * @returns endurance time [s], infinite for a load that is kept up for ever
 * @throws ValueError outside these ranges
 * Valid up to 70 % of maximum; above, it falls 25 to 71 % short of the endurance law.
 * Source: xia-frey-law-2008, sustained load with a controller that keeps the force exactly.
 * Example: modelEndurance({ share: 0.5, fatigueRate: 0.0098, recoveryRate: 0.00064 }) → 105.5
 */
export function modelEndurance({ share, fatigueRate, recoveryRate }: SteadyLoad): number {
  const f = within("loadShare", share, 1e-6, 1);
  const F = within("fatigueRate", fatigueRate);
  const R = within("recoveryRate", recoveryRate);
  const left = 1 - (R * (1 - f)) / (F * f);
  return left <= 0 ? Number.POSITIVE_INFINITY : -Math.log(left) / R;
}

/**
 * Endurance time of the three-compartment model, integrated in steps, with a controller that fills the gap of each step.
 *
 *     dM_A/dt = C − F·M_A,  dM_R/dt = −C + R·M_F,  dM_F/dt = F·M_A − R·M_F,  C·Δt = f − M_A, at most M_R;  ends at M_A + M_R < f
 *
 * @param share  f, share of maximum [-], above 0, up to 1
 * @param fatigueRate  F [1/s], 1e-6 to 10
 * @param recoveryRate  R [1/s], 1e-6 to 10
 * @param step  Δt [s], 0.001 to 10
 * @param longest  time after which it stops and answers without end [s]; a day when absent
 * @returns endurance time [s], infinite when the load is kept up longer than that
 * @throws ValueError outside these ranges
 * Valid for comparing with printed integrations of the same step.
 * Source: xia-frey-law-2008, as the fatigue-validation-page integrates it.
 * Example: steppedEndurance({ share: 0.5, fatigueRate: 0.0098, recoveryRate: 0.00064, step: 0.02 }) → 105.6
 */
export function steppedEndurance({
  share,
  fatigueRate,
  recoveryRate,
  step,
  longest = 86_400,
}: SteadyLoad & { readonly step: number; readonly longest?: number }): number {
  const f = within("loadShare", share, 1e-6, 1);
  const tired = within("fatigueRate", fatigueRate) * within("duration", step, 0.001, 10);
  const recovered = within("recoveryRate", recoveryRate) * step;
  let active = 0;
  let resting = 1;
  let fatigued = 0;
  for (let steps = 0; steps * step <= longest; steps++) {
    if (active + resting < f) return steps * step;
    const called = Math.min(f - active, resting);
    const tires = tired * active - recovered * fatigued;
    active += called - tired * active;
    resting += recovered * fatigued - called;
    fatigued += tires;
  }
  return Number.POSITIVE_INFINITY;
}

/**
 * Endurance time of the hand as the day is worked out: the model up to the seam, the endurance law above it.
 *
 *     model for f ≤ 0.7, law for f > 0.7
 *
 * @param share  f, share of maximum [-], above 0, up to 1
 * @param group  hand, elbow or general; the hand when absent
 * @returns endurance time [s]; it jumps at the seam
 * @throws ValueError for a share outside 0 to 1
 * Valid for people in the mean; a person may last half or three times as long.
 * Source: frey-law-2012 below the seam, frey-law-avin-2010 above it.
 * Example: holdTime({ share: 0.8 }) → 48.1
 */
export function holdTime({ share, group = "hand" }: { readonly share: number; readonly group?: MuscleGroup }): number {
  if (share > seamShare.value) return enduranceTime({ share, group });
  return modelEndurance({ share, ...ratesOf(group) });
}

/**
 * Factor on the fatigue rate above the seam that makes the model meet the endurance law.
 *
 *     R·(1 − f) / (f·F·(1 − e^(−R·T_law)))  with the printed rates of the group, 1 up to the seam
 *
 * @param share  f, share of maximum [-], 0 to 1
 * @param group  whose rates and law
 * @returns factor [-], 0 at the whole of the maximum
 * @throws ValueError for a share above 1
 * Valid for a rested muscle; a tired one is taken to tire at the same reduced rate.
 * Source: frey-law-avin-2010 and frey-law-2012, combined.
 * Example: seamFactor(0.9, "hand") → 0.289
 */
export function seamFactor(share: number, group: MuscleGroup): number {
  return seamFactorOf(group)(within("loadShare", share, 0, 1));
}

/** The same for one group, with its numbers looked up once: for inner loops, unchecked. */
export function seamFactorOf(group: MuscleGroup): (share: number) => number {
  const seam = seamShare.value;
  const { fatigueRate, recoveryRate } = ratesOf(group);
  const factor = enduranceLaws[group].factor.value;
  const exponent = enduranceLaws[group].exponent.value;
  return (share) => {
    if (share <= seam) return 1;
    const lost = -Math.expm1(-recoveryRate * factor * share ** -exponent);
    return (recoveryRate * (1 - share)) / (share * fatigueRate * lost);
  };
}
