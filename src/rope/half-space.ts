import { erfc, integratedErfc, scaledErfc } from "../numerics/error-function.js";
import { within } from "../quantity/guard.js";
import { diffusivity, effusivity, type Solid } from "./effusivity.js";

/** Where and when in a thick body. */
interface Place {
  /** Below the surface [m]. */
  readonly depth: number;
  /** Since the heating began [s]. */
  readonly time: number;
}

/**
 * Warming of a thick body whose surface takes up a steady heat flux.
 *
 *     ΔT = (2 q √t / e) · ierfc(z / (2 √(α t))),   at the surface 2 q √(t / (π λ ρ c))
 *
 * @param flux  q [W/m²], 0 or more
 * @param depth  z [m], 0 or more
 * @param time  t [s], 0 or more
 * @param solid  conductivity [W/(m K)], density [kg/m³], specific heat [J/(kg K)]
 * @returns temperature rise [K]
 * @throws ValueError outside these ranges
 * Valid until the warmth reaches the far side.
 * Source: carslaw-jaeger, constant flux. Example: fluxRise({ flux: 100000, depth: 0, time: 1, solid: { conductivity: 0.2, density: 1380, specificHeat: 1030 } }) → 211.6
 */
export function fluxRise({
  flux,
  depth,
  time,
  solid,
}: Place & { readonly flux: number; readonly solid: Solid }): number {
  const t = within("duration", time);
  const z = within("depth", depth);
  if (t === 0) return 0;
  const scale = (2 * within("heatFlux", flux) * Math.sqrt(t)) / effusivity(solid);
  return scale * integratedErfc(z / (2 * Math.sqrt(diffusivity(solid) * t)));
}

/**
 * Temperature inside a thick body whose surface was brought to another temperature and is held there.
 *
 *     T = T_0 + (T_s − T_0) · erfc(z / (2 √(α t)))
 *
 * @param initialTemperature  T_0 [K]
 * @param surfaceTemperature  T_s [K]
 * @param depth  z [m], 0 or more
 * @param time  t [s], above 0
 * @param thermalDiffusivity  α [m²/s]
 * @returns temperature [K]
 * @throws ValueError outside these ranges
 * Valid until the warmth reaches the far side.
 * Source: nellis-klein, Table 3-2. Example: heldSurfaceTemperature({ initialTemperature: 378, surfaceTemperature: 303, depth: 0.05, time: 2, thermalDiffusivity: 0.00009547 }) → 377.2
 */
export function heldSurfaceTemperature({
  initialTemperature,
  surfaceTemperature,
  depth,
  time,
  thermalDiffusivity,
}: Place & {
  readonly initialTemperature: number;
  readonly surfaceTemperature: number;
  readonly thermalDiffusivity: number;
}): number {
  const initial = within("contactTemperature", initialTemperature);
  const reach = 2 * Math.sqrt(within("diffusivity", thermalDiffusivity) * within("duration", time, 1e-12));
  return initial + (within("contactTemperature", surfaceTemperature) - initial) * erfc(within("depth", depth) / reach);
}

/** A thick body in a stream that carries heat to or from its surface. */
export interface StreamInput extends Place {
  readonly initialTemperature: number;
  readonly streamTemperature: number;
  readonly heatTransfer: number;
  readonly conductivity: number;
  readonly thermalDiffusivity: number;
}

/**
 * Temperature inside a thick body past which a stream carries heat; a rope that runs over a hand is such a stream.
 *
 *     T = T_0 + (T_∞ − T_0) · [erfc X − exp(h z/λ + H²) · erfc(X + H)],   X = z / (2 √(α t)),  H = h √(α t) / λ
 *
 * @param initialTemperature  T_0 [K]
 * @param streamTemperature  T_∞ [K]
 * @param heatTransfer  h [W/(m² K)], 0 or more
 * @param conductivity  λ of the body [W/(m K)]
 * @param thermalDiffusivity  α of the body [m²/s]
 * @param depth  z [m], 0 or more
 * @param time  t [s], 0 or more
 * @returns temperature [K]
 * @throws ValueError outside these ranges
 * Valid until the warmth reaches the far side.
 * Source: nellis-klein, Table 3-2. Example: streamTemperatureAt({ initialTemperature: 393, streamTemperature: 355, heatTransfer: 50, conductivity: 10, thermalDiffusivity: 0.000004029, depth: 0.003, time: 100 }) → 389.5
 */
export function streamTemperatureAt(input: StreamInput): number {
  const initial = within("contactTemperature", input.initialTemperature);
  const stream = within("contactTemperature", input.streamTemperature);
  const t = within("duration", input.time);
  if (t === 0) return initial;
  const reach = Math.sqrt(within("diffusivity", input.thermalDiffusivity) * t);
  const x = within("depth", input.depth) / (2 * reach);
  const h = (within("heatTransfer", input.heatTransfer) * reach) / within("conductivity", input.conductivity);
  // exp(2 x h + h²) · erfc(x + h) = exp(−x²) · scaledErfc(x + h): nothing overflows.
  return initial + (stream - initial) * (erfc(x) - Math.exp(-x * x) * scaledErfc(x + h));
}
