import { within } from "../quantity/guard.js";
import { coefficient } from "../sources/coefficient.js";

/** Scale of the Beaufort formula. */
const beaufortScale = coefficient({
  value: 0.836,
  unit: "m/s",
  low: 0.83,
  high: 0.84,
  status: "from memory",
  place: "v = 0.836 B^1.5; every force from 1 to 11 falls inside its published band",
});

/** A force of the Beaufort scale. */
export interface BeaufortInput {
  /** Beaufort number [-], fractions allowed. */
  readonly beaufort: number;
}

/**
 * Wind speed at 10 m in the middle of a Beaufort force.
 *
 *     V = 0.836 · B^1.5
 *
 * @param beaufort  B [-], 0 to 12
 * @returns mean wind speed [m/s]
 * Valid as a round number for a force that was named, not measured; each force spans a band 1 to 4 m/s wide.
 * Source: wmo-beaufort, bands in m/s; the formula itself is from memory.
 * Example: beaufortSpeed({ beaufort: 4 }) → 6.688
 */
export function beaufortSpeed({ beaufort }: BeaufortInput): number {
  const b = within("beaufort", beaufort);
  return beaufortScale.value * b ** 1.5;
}
