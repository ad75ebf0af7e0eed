import { within } from "../quantity/guard.js";
import { whole } from "./whole.js";

/** A simple purchase for the closed forms: parts and every sheave that the rope meets. */
export interface PurchaseInput {
  /** Rope parts on the moving block, N [-]. */
  readonly parts: number;
  /** All sheaves including lead blocks, S [-]. */
  readonly sheaves: number;
}

/**
 * Lead-line factor of the geometric model: pull on the hauling part over load.
 *
 *     LLF = K^S · (K − 1) / (K^N − 1) = K^S / (1 + K + … + K^(N−1)),   1/N without friction
 *
 * @param tensionRatio  K at each sheave [-], 1 to 1e12
 * @param parts  N [-], whole number 1 to 20
 * @param sheaves  S [-], whole number 0 to 40: N when the hauling part leaves the fixed block, N − 1 from the moving one, and one for each lead block
 * @returns pull over load [-]
 * @throws ReevingError when a count is not whole, ValueError for an impossible ratio
 * A check on the force balance, not the solver.
 * Source: wire-rope-users-manual, p. 87. Example: leadLineFactor({ tensionRatio: 1.09, parts: 4, sheaves: 4 }) → 0.3087
 */
export function leadLineFactor({
  tensionRatio,
  parts,
  sheaves,
}: PurchaseInput & { readonly tensionRatio: number }): number {
  const K = within("tensionRatio", tensionRatio);
  const N = whole({ quantity: "parts on the moving block", value: parts, least: 1, most: 20 });
  const S = whole({ quantity: "sheaves", value: sheaves, least: 0, most: 40 });
  let sum = 0;
  for (let part = 0; part < N; part++) sum += K ** part;
  return K ** S / sum;
}

/**
 * Pull on the hauling part by the seaman's rule of a tenth of the load for every sheave.
 *
 *     P = W · (1 + S / 10) / N
 *
 * @param load  W [any force unit], 0 or more
 * @param parts  N [-], 1 to 144
 * @param sheaves  S [-], whole number 0 to 40
 * @param sharePerSheave  lost at every sheave, as part of the load [-], 0 to 1; 0.1 when absent
 * @returns pull in the unit of the load
 * A rule of its own: it adds where the geometric model multiplies, and is not used by the solver.
 * Source: nicholls-seamanship, purchases. Example: tenthRulePull({ load: 12, parts: 6, sheaves: 6 }) → 3.2
 */
export function tenthRulePull({
  load,
  parts,
  sheaves,
  sharePerSheave = 0.1,
}: PurchaseInput & { readonly load: number; readonly sharePerSheave?: number }): number {
  const S = whole({ quantity: "sheaves", value: sheaves, least: 0, most: 40 });
  return (within("tension", load) * (1 + S * within("share", sharePerSheave))) / within("velocityRatio", parts, 1, 144);
}

/**
 * Efficiency of a purchase from what was measured at its two ends.
 *
 *     η = W / (VR · P)
 *
 * @param load  W [N], 0 or more
 * @param pull  P [N], above 0
 * @param velocityRatio  VR [-], above 0
 * @returns efficiency [-]
 * @throws ValueError when more work would come out than went in
 * Source: statics, virtual work. Example: efficiency({ load: 1, pull: 0.45, velocityRatio: 3 }) → 0.7407
 */
export function efficiency({
  load,
  pull,
  velocityRatio,
}: {
  readonly load: number;
  readonly pull: number;
  readonly velocityRatio: number;
}): number {
  const put = within("tension", pull, 1e-12) * within("velocityRatio", velocityRatio);
  return within("efficiency", within("tension", load) / put, 0, 1 + 1e-12);
}

/**
 * Tension ratio of one sheave that gives a purchase its measured pull, in the geometric model.
 *
 *     LLF(K) = P / W, solved for K
 *
 * @param pullOverLoad  P / W [-], at least 1/N
 * @param parts  N [-], 1 to 20
 * @param sheaves  S [-], 1 to 40
 * @returns K [-]
 * @throws ValueError when the pull is below that of a purchase without friction, or needs more than K = 3
 * Source: wire-rope-users-manual, the factor solved for K. Example: ratioFromPull({ pullOverLoad: 0.45, parts: 3, sheaves: 3 }) → 1.166
 */
export function ratioFromPull({
  pullOverLoad,
  parts,
  sheaves,
}: PurchaseInput & { readonly pullOverLoad: number }): number {
  const factor = (K: number) => leadLineFactor({ tensionRatio: K, parts, sheaves });
  let low = 1;
  let high = 3;
  within("share", pullOverLoad, factor(low) - 1e-12, factor(high));
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (factor(middle) < pullOverLoad) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Efficiency of one turn from the pull that raises a load and the pull that lowers it.
 *
 *     k = sqrt(T_raise / T_lower),   η = 1 / k
 *
 * @param raisingForce  T_raise [N]
 * @param loweringForce  T_lower [N], above 0, not above T_raise
 * @returns tension ratio k [-]
 * Source: delaney-2022, efficiency from raising and lowering. Example: ratioFromRaiseLower({ raisingForce: 110, loweringForce: 90 }) → 1.1055
 */
export function ratioFromRaiseLower({
  raisingForce,
  loweringForce,
}: {
  readonly raisingForce: number;
  readonly loweringForce: number;
}): number {
  const low = within("easingForce", loweringForce, 1e-9);
  return Math.sqrt(within("haulingForce", raisingForce, low) / low);
}
