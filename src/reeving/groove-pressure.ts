import { within } from "../quantity/guard.js";

/** A rope that lies on a sheave. */
export interface GroovePressureInput {
  readonly tension: number;
  readonly ropeDiameter: number;
  readonly sheaveDiameter: number;
}

/**
 * Pressure of a rope on the groove of its sheave.
 *
 *     p = 2 · T / (d · D)
 *
 * @param tension  T [N], 0 or more
 * @param ropeDiameter  d [m], above 0
 * @param sheaveDiameter  D [m], above 0
 * @returns pressure [Pa]
 * @throws ValueError outside these ranges
 * Source: jindal-design, example 24-3. Example: groovePressure({ tension: 600, ropeDiameter: 0.006, sheaveDiameter: 0.04 }) → 5000000
 */
export function groovePressure({ tension, ropeDiameter, sheaveDiameter }: GroovePressureInput): number {
  return (
    (2 * within("tension", tension)) / (within("ropeDiameter", ropeDiameter) * within("sheaveDiameter", sheaveDiameter))
  );
}

/**
 * Load on a sheave that a groove pressure allows, the line turned by half a turn.
 *
 *     W = p · d · D
 *
 * @param groovePressure  p that is allowed [Pa], 0 or more
 * @param ropeDiameter  d [m], above 0
 * @param sheaveDiameter  D [m], above 0
 * @returns block load [N]
 * @throws ValueError outside these ranges
 * Source: jindal-design, example 24-3. Example: loadOfGroovePressure({ groovePressure: 4900000, ropeDiameter: 0.012, sheaveDiameter: 0.48 }) → 28224
 */
export function loadOfGroovePressure({
  groovePressure: allowed,
  ropeDiameter,
  sheaveDiameter,
}: Omit<GroovePressureInput, "tension"> & { readonly groovePressure: number }): number {
  const d = within("ropeDiameter", ropeDiameter);
  return within("groovePressure", allowed) * d * within("sheaveDiameter", sheaveDiameter);
}
