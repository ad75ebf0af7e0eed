import { within } from "../quantity/guard.js";

/** A rope that runs over something. */
export interface RopeStreamInput {
  /** Of the yarn [J/(m² K √s)]. */
  readonly effusivity: number;
  readonly contactLength: number;
  readonly speed: number;
  /** Part of the contact where strands really touch. */
  readonly touchingShare: number;
}

/** Mean over the contact of 2 √(t/π) for a bit of rope that stays for the dwell time: 4 / (3 √π) of its root. */
const meanOfRoot = 4 / (3 * Math.sqrt(Math.PI));

/** Slowest and fastest rope that is looked at [m/s]. */
export const ropeSpeeds = { least: 1e-3, most: 20 } as const;

/** Where a bit of rope leaves the contact it is hotter than on the mean of the contact: by 3/2. */
export const exitOverMean = 1.5;

/**
 * How well a running rope carries heat away from what it rubs.
 *
 *     h = φ · (3 √π / 4) · e · √(v / L)
 *
 * Each bit of rope passes the contact in the time L / v and takes up heat as a thick body does meanwhile; the strands
 * that touch are a share φ of the contact. What is rubbed stays, so to it the rope is a stream of heat transfer h.
 *
 * @param effusivity  e of the yarn [J/(m² K √s)]
 * @param contactLength  L along the rope [m]
 * @param speed  v [m/s], 0 to 100
 * @param touchingShare  φ [-], above 0, at most 1
 * @returns heat transfer [W/(m² K)], 0 at rest
 * @throws ValueError outside these ranges
 * Valid when the rope passes fast: a Péclet number above 10, which a rope reaches at a millimetre a second.
 * Source: jaeger-1942, fast band source, mean over the contact. Example: ropeHeatTransfer({ effusivity: 400, contactLength: 0.085, speed: 2, touchingShare: 0.45 }) → 1160.7
 */
export function ropeHeatTransfer({ effusivity, contactLength, speed, touchingShare }: RopeStreamInput): number {
  const dwellRate = within("ropeSpeed", speed) / within("contactLength", contactLength);
  return (
    (within("touchingShare", touchingShare) * within("effusivity", effusivity) * Math.sqrt(dwellRate)) / meanOfRoot
  );
}
