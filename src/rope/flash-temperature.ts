import { within } from "../quantity/guard.js";
import { diffusivity, type Solid } from "./effusivity.js";

/** A patch of contact that runs over a body. */
export interface FlashInput {
  /** Into the body [W/m²]. */
  readonly flux: number;
  /** Half the length of the patch along the motion [m]. */
  readonly halfLength: number;
  readonly speed: number;
  readonly solid: Solid;
}

/** Warming under a moving patch. */
export interface Flash {
  readonly peclet: number;
  /** Slow: the warmth runs ahead of the patch. Fast: the body does not know what comes. */
  readonly regime: "slow" | "between" | "fast";
  /** Hottest place [K above the body]. */
  readonly maximum: number;
  /** Mean over the patch [K above the body]. */
  readonly mean: number;
}

/** Mean over hottest place of a round patch at rest with an even flux: 8 / (3 π). */
const restingMean = 8 / (3 * Math.PI);

/** Below and above these Péclet numbers the limits are within about a tenth. */
const slowBelow = 0.1;
const fastAbove = 10;

/**
 * Warming of a body under a small patch of heat that moves over it.
 *
 *     Pe = v b / (2 α)
 *     slow   ΔT = q b / λ,  mean 8/(3π) of it
 *     fast   ΔT = (2 q / λ) · √(2 α b / (π v)) = 1.596 (q/λ) √(α b / v),  mean 2/3 of it
 *     both   ΔT = 2 q b / (λ √(π (4/π + Pe))),  means joined by 1/mean² = 1/slow² + 1/fast²
 *
 * @param flux  q into the body [W/m²], 0 or more
 * @param halfLength  b [m], above 0
 * @param speed  v [m/s], 0 to 100
 * @param solid  conductivity [W/(m K)], density [kg/m³], specific heat [J/(kg K)]
 * @returns Péclet number [-], regime, hottest place [K] and mean [K]
 * @throws ValueError outside these ranges
 * Valid for a steady patch about as long as wide, or fast of any width; no printed worked example was found, so its limits are checks.
 * Source: tian-kennedy-1994, round patch with even flux, from memory. Example: flashRise({ flux: 100000, halfLength: 0.01, speed: 1, solid: { conductivity: 0.2, density: 1380, specificHeat: 1030 } }).regime → "fast"
 */
export function flashRise({ flux, halfLength, speed, solid }: FlashInput): Flash {
  const q = within("heatFlux", flux);
  const b = within("contactLength", halfLength);
  const peclet = (within("ropeSpeed", speed) * b) / (2 * diffusivity(solid));
  const resting = (q * b) / solid.conductivity;
  const maximum = (2 * resting) / Math.sqrt(Math.PI * (4 / Math.PI + peclet));
  const fast = 4 / 3 / Math.sqrt(Math.PI * peclet);
  const mean = peclet === 0 ? restingMean : (restingMean * fast) / Math.hypot(restingMean, fast);
  return {
    peclet,
    regime: peclet < slowBelow ? "slow" : peclet > fastAbove ? "fast" : "between",
    maximum,
    mean: mean * resting,
  };
}
