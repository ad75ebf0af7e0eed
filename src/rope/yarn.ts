import { standardGravity } from "../quantity/constants.js";
import { within } from "../quantity/guard.js";

/**
 * Strength of a material by mass, from its strength by area.
 *
 *     σ_m = σ / ρ
 *
 * @param stress  breaking stress σ [Pa], 0 to 1 TPa
 * @param density  ρ [kg/m³], 1 to 25 000
 * @returns specific strength [N/(kg/m)], which is also J/kg
 * Valid for a solid material, voids left out.
 * Source: specific-strength-table, definition. Example: specificStrength({ stress: 505e6, density: 8000 }) → 63125
 */
export function specificStrength({ stress, density }: { readonly stress: number; readonly density: number }): number {
  return within("stress", stress) / within("density", density);
}

/**
 * Length at which a hanging yarn or rope breaks under its own weight.
 *
 *     L_b = σ_m / g
 *
 * @param specificStrength  σ_m [N/(kg/m)], 0 to 1e9
 * @returns breaking length [m]
 * Source: specific-strength-table, definition. Example: breakingLength(840_000) → 85656
 */
export function breakingLength(specificStrength: number): number {
  return within("specificStrength", specificStrength) / standardGravity;
}

/**
 * Mass of a metre of round fibre or wire.
 *
 *     m' = ρ · π d² / 4
 *
 * @param diameter  d [m], above 0
 * @param density  ρ [kg/m³], 1 to 25 000
 * @param fill  area of fibre over the area of the circle [-], 0.05 to 1, by default 1
 * @returns linear density [kg/m]
 * Source: gate-textile, 2003 question 44. Example: roundLinearDensity({ diameter: 0.01, density: 1380, fill: 0.7 }) → 0.07587
 */
export function roundLinearDensity({
  diameter,
  density,
  fill = 1,
}: {
  readonly diameter: number;
  readonly density: number;
  readonly fill?: number;
}): number {
  return (within("fillFactor", fill) * within("density", density) * Math.PI * diameter ** 2) / 4;
}

/**
 * Diameter of a round fibre or wire of a given mass a metre.
 *
 *     d = √(4 m' / (π ρ))
 *
 * @param linearDensity  m' [kg/m], above 0
 * @param density  ρ [kg/m³], 1 to 25 000
 * @returns diameter [m]
 * Source: textile-formulas, fibre diameter. Example: roundDiameter({ linearDensity: 0.0076, density: 1380 }) → 0.002648
 */
export function roundDiameter({
  linearDensity,
  density,
}: {
  readonly linearDensity: number;
  readonly density: number;
}): number {
  return Math.sqrt((4 * linearDensity) / (Math.PI * within("density", density)));
}
