import { integratedErfc } from "../numerics/error-function.js";
import { within } from "../quantity/guard.js";
import { diffusivity, effusivity, type Solid } from "./effusivity.js";

/** A patch of contact on a body that keeps its heat. */
export interface Patch {
  readonly solid: Solid;
  /** Of the contact [m²]. */
  readonly area: number;
  /** Of the whole body [kg]; absent: a body so large that it stays cold as a whole. */
  readonly mass?: number;
}

/**
 * Warming of a patch of a body for a unit of heat flux into it that begins at time 0 and stays.
 *
 *     (2 √t / e) · [ierfc 0 − ierfc(a / (2 √(α t)))] + A t / (m c),   a = √(A/π)
 *
 * The first part is the middle of a round patch: at first the warmth goes straight in, later it spreads and the patch
 * stays at a/λ. The second part is the slow warming of the whole body.
 *
 * @param patch  solid, contact area A [m²], mass m of the body [kg]
 * @param time  t [s], 0 or more
 * @returns temperature rise over flux [m² K/W]
 * @throws ValueError outside these ranges
 * Valid for a patch that is small against the body; the mean over the patch is up to 15 % below its middle.
 * Source: carslaw-jaeger, disc source on a half-space. Example: 1e5 * patchResponse({ solid: { conductivity: 160, density: 2700, specificHeat: 900 }, area: 0.00008 }, 1e6) → 3.15
 */
export function patchResponse({ solid, area, mass }: Patch, time: number): number {
  const t = within("duration", time);
  if (t === 0) return 0;
  const patch = within("contactArea", area);
  const edge = Math.sqrt(patch / Math.PI) / (2 * Math.sqrt(diffusivity(solid) * t));
  const spot = ((2 * Math.sqrt(t)) / effusivity(solid)) * (integratedErfc(0) - integratedErfc(edge));
  return mass === undefined ? spot : spot + (patch * t) / (within("mass", mass, 1e-9) * solid.specificHeat);
}
