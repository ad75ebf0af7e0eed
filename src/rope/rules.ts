import { within } from "../quantity/guard.js";

/**
 * Break or working load by a rule of thumb that grows with the square of a size.
 *
 *     F = k · s²
 *
 * @param factor  k [N/m²], above 0, for the size that the rule uses
 * @param size  rope diameter, circumference or shackle bar [m], above 0
 * @returns load [N]
 * Valid within the sizes and ropes that the rule was made for.
 * Source: en-564, strength table: 0.2 kN/mm² of the diameter squared. Example: squareRule({ factor: 2e8, size: 0.004 }) → 3200
 */
export function squareRule({ factor, size }: { readonly factor: number; readonly size: number }): number {
  return factor * within("lineLength", size) ** 2;
}

/**
 * Size that a rule of thumb asks for under a load: the same rule solved back.
 *
 *     s = √(F / k)
 *
 * @param factor  k [N/m²], above 0
 * @param load  F [N], 0 to 1 MN
 * @returns rope diameter, circumference or shackle bar [m]
 * Source: navy-builder, size of fibre line for a load. Example: squareRuleSize({ factor: 2e8, load: 3200 }) → 0.004
 */
export function squareRuleSize({ factor, load }: { readonly factor: number; readonly load: number }): number {
  return Math.sqrt(within("tension", load) / factor);
}

/**
 * Working load from a break load.
 *
 *     F_w = η_s · F_b / SF
 *
 * @param breakLoad  F_b [N], 0 to 1 MN
 * @param safetyFactor  SF [-], 1 to 100
 * @param retained  strength left with ends, bends and age η_s [-], by default 1
 * @returns working load [N]
 * Source: cordage-institute-1401, section 4. Example: workingLoad({ breakLoad: 5000, safetyFactor: 5 }) → 1000
 */
export function workingLoad({
  breakLoad,
  safetyFactor,
  retained = 1,
}: {
  readonly breakLoad: number;
  readonly safetyFactor: number;
  readonly retained?: number;
}): number {
  return (within("retainedStrength", retained) * within("breakLoad", breakLoad)) / within("safetyFactor", safetyFactor);
}
