import { within } from "../quantity/guard.js";

/** How a solid takes up heat, as plain numbers. */
export interface Solid {
  /** [W/(m K)] */
  readonly conductivity: number;
  /** [kg/m³] */
  readonly density: number;
  /** [J/(kg K)] */
  readonly specificHeat: number;
}

/**
 * How eagerly a solid takes up heat at its surface.
 *
 *     e = √(λ · ρ · c)
 *
 * @param solid  conductivity [W/(m K)], density [kg/m³], specific heat [J/(kg K)]
 * @returns effusivity [J/(m² K √s)]
 * @throws ValueError for numbers that no solid has
 * Source: carslaw-jaeger. Example: effusivity({ conductivity: 0.37, density: 1100, specificHeat: 3400 }) → 1176
 */
export function effusivity({ conductivity, density, specificHeat }: Solid): number {
  return Math.sqrt(
    within("conductivity", conductivity) * within("density", density) * within("specificHeat", specificHeat),
  );
}

/**
 * How fast warmth spreads in a solid.
 *
 *     α = λ / (ρ · c)
 *
 * @param solid  conductivity [W/(m K)], density [kg/m³], specific heat [J/(kg K)]
 * @returns diffusivity [m²/s]
 * @throws ValueError for numbers that no solid has
 * Source: carslaw-jaeger. Example: 1e9 * diffusivity({ conductivity: 0.37, density: 1100, specificHeat: 3400 }) → 98.9
 */
export function diffusivity({ conductivity, density, specificHeat }: Solid): number {
  return within("conductivity", conductivity) / (within("density", density) * within("specificHeat", specificHeat));
}

/** A thick body that is about to touch another. */
export interface Touching {
  /** [J/(m² K √s)] */
  readonly effusivity: number;
  /** Before they touch [K]. */
  readonly temperature: number;
}

/**
 * Temperature at which two thick bodies meet when they touch.
 *
 *     T_c = (e₁ T₁ + e₂ T₂) / (e₁ + e₂)
 *
 * @param one  effusivity [J/(m² K √s)] and temperature [K]
 * @param other  effusivity [J/(m² K √s)] and temperature [K]
 * @returns contact temperature [K], between the two
 * @throws ValueError for numbers that no body has
 * Valid at once and as long as the warmth has not reached the far side of either; without a film of air between.
 * Source: cengel-foot, problem 18-82. Example: contactTemperature({ effusivity: 1100, temperature: 305.15 }, { effusivity: 380, temperature: 293.15 }) → 302.07
 */
export function contactTemperature(one: Touching, other: Touching): number {
  const [first, second] = [one, other].map((body) => ({
    e: within("effusivity", body.effusivity),
    temperature: within("contactTemperature", body.temperature),
  })) as [{ e: number; temperature: number }, { e: number; temperature: number }];
  return (first.e * first.temperature + second.e * second.temperature) / (first.e + second.e);
}
