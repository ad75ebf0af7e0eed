import type { FibreName } from "../materials/fibres.js";
import { type Exposure, exposures, lampToSun } from "../materials/sunlight.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";

/** A fibre that lies in the sun. */
export interface SunlightInput {
  readonly fibre: FibreName;
  /** Whole days in full sun. */
  readonly days: number;
}

/**
 * Strength that is left to an unprotected fibre after days in full sun.
 *
 *     η = η_exposure ^ (days / days of the exposure),   a day under a lamp counting as several in the sun
 *
 * @param fibre  of the table
 * @param days  in full sun [-], 0 to 36 500
 * @returns strength left over strength before, with its range [-]
 * @throws ValueError outside this range
 * Valid for yarn or bare rope that the light reaches; a core under an opaque cover keeps much more. That loss goes on at one rate is assumed.
 * Source: uv-thesis-2005 for PBO, LCP and aramid; others from memory. Example: sunlightRetained({ fibre: "pbo", days: 0 }).value → 1
 */
export function sunlightRetained({ fibre, days }: SunlightInput): Band {
  const { retained, days: tested, where }: Exposure = exposures[fibre];
  const lying = within("sunDays", days);
  const inputs =
    where === "sun" ? { retained, factor: { value: 1, low: 1, high: 1 } } : { retained, factor: lampToSun };
  const band = bandOf(inputs, (values) => values.retained ** (lying / (tested * values.factor)));
  return { ...band, high: Math.min(1, band.high) };
}
