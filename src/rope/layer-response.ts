import { integratedErfc } from "../numerics/error-function.js";
import { within } from "../quantity/guard.js";
import { diffusivity, effusivity, type Solid } from "./effusivity.js";

/** A layer on a thick body: a glove on skin. */
export interface Layered {
  readonly layer: Solid;
  /** [m] */
  readonly thickness: number;
  readonly body: Solid;
}

/** Above this ierfc is below 1e-17. */
const negligible = 6.2;

/**
 * Warming of a layer on a thick body, for a unit of heat flux into the layer that begins at time 0 and stays.
 *
 *     surface  (2 √t / e₁) · [ierfc 0 + 2 Σ rⁿ ierfc(n δ / √(α₁ t))],   r = (e₁ − e₂) / (e₁ + e₂)
 *     body     (4 √t / (e₁ + e₂)) · Σ rⁿ ierfc(((2n + 1) δ / √α₁ + z / √α₂) / (2 √t))
 *
 * @param layered  layer with thickness δ [m], and the body behind it
 * @param time  t [s], 0 or more
 * @param depth  z below the top of the body [m]; absent: at the outer surface of the layer
 * @returns temperature rise over flux [m² K/W]
 * @throws ValueError outside these ranges
 * Valid for a layer that touches the body without a gap.
 * Source: carslaw-jaeger, composite solid, by images. Example: layerResponse({ layer: { conductivity: 0.37, density: 1100, specificHeat: 3400 }, thickness: 0.001, body: { conductivity: 0.37, density: 1100, specificHeat: 3400 } }, 1) → 0.00096
 */
export function layerResponse({ layer, thickness, body }: Layered, time: number, depth?: number): number {
  const t = within("duration", time);
  const delta = within("depth", thickness, 1e-9);
  if (t === 0) return 0;
  const e1 = effusivity(layer);
  const e2 = effusivity(body);
  const r = (e1 - e2) / (e1 + e2);
  const lag = delta / Math.sqrt(diffusivity(layer));
  if (depth === undefined) {
    const images = sumOf(
      (n) => r ** n * integratedErfc((n * lag) / Math.sqrt(t)),
      negligible / (lag / Math.sqrt(t)),
      1,
    );
    return ((2 * Math.sqrt(t)) / e1) * (integratedErfc(0) + 2 * images);
  }
  const below = within("depth", depth) / Math.sqrt(diffusivity(body));
  const argument = (n: number) => ((2 * n + 1) * lag + below) / (2 * Math.sqrt(t));
  const images = sumOf((n) => r ** n * integratedErfc(argument(n)), (negligible * Math.sqrt(t)) / lag, 0);
  return ((4 * Math.sqrt(t)) / (e1 + e2)) * images;
}

function sumOf(term: (n: number) => number, last: number, first: number): number {
  let sum = 0;
  for (let n = first; n <= last + 1; n += 1) {
    const next = term(n);
    sum += next;
    if (n > first && Math.abs(next) < 1e-16 * Math.abs(sum)) break;
  }
  return sum;
}
