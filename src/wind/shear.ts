import type { SourceId } from "../sources/bibliography.js";
import { type Coefficient, coefficient } from "../sources/coefficient.js";

function exponent(value: number, low: number, high: number, source: SourceId, place: string): Coefficient {
  return coefficient({ value, unit: "1", low, high, status: "published", source, place });
}

function roughness(value: number, low: number, high: number, place: string): Coefficient {
  return coefficient({ value, unit: "m", low, high, status: "published", source: "wind-profile-table", place });
}

/** Exponents of the power law, by surface and stability of the air; the spread is that of the neighbouring rows. */
export const shearExponents = {
  openSeaUnstable: exponent(0.06, 0.06, 0.1, "wind-profile-table", "open water, unstable air"),
  openSeaNeutral: exponent(0.1, 0.06, 0.14, "wind-profile-table", "open water, neutral air"),
  openSeaStable: exponent(0.27, 0.1, 0.4, "wind-profile-table", "open water, stable air"),
  openCoastUnstable: exponent(0.11, 0.06, 0.16, "wind-profile-table", "flat open coast, unstable air"),
  openCoastNeutral: exponent(0.16, 0.11, 0.2, "wind-profile-table", "flat open coast, neutral air"),
  openCoastStable: exponent(0.4, 0.27, 0.4, "wind-profile-table", "flat open coast, stable air"),
  openLand: exponent(1 / 7, 0.11, 0.2, "wind-profile-table", "one-seventh rule on land"),
  designLand: exponent(0.2, 1 / 7, 0.2, "iec-61400", "61400-1, normal wind profile on land"),
  designSea: exponent(0.14, 0.1, 0.16, "iec-61400", "61400-3, normal wind profile at sea"),
  extremeWind: exponent(0.11, 0.1, 0.14, "iec-61400", "61400-1, extreme wind model"),
} as const;

/** Roughness lengths of the log law, by surface; the spread is that of the neighbouring rows. */
export const roughnessLengths = {
  openWater: roughness(0.0002, 0.0002, 0.0024, "sea or lake"),
  smoothOpenGround: roughness(0.0024, 0.0002, 0.03, "smooth open ground"),
  openFarmland: roughness(0.03, 0.0024, 0.03, "open farmland"),
} as const;
