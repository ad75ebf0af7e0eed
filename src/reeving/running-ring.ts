import type { StiffnessLaw } from "../materials/stiffness.js";
import type { Surface } from "../materials/surfaces.js";
import type { Band } from "../sources/band.js";
import type { Ring, Rope } from "./station.js";

/** A ring and the rope that runs through it, with ranges: the angle is left open. */
export interface RunningRing {
  readonly ropeDiameter: number;
  readonly stiffness: StiffnessLaw;
  /** Diameter round which the ring bends the rope [m]. */
  readonly ringDiameter: number;
  /** What the rope slides on. */
  readonly surface: Surface;
  /** Exponent n of F ∝ N^n on the ring, with its range [-]; 1 for friction that does not fall with load. */
  readonly ringExponent: Band;
  /** Tension at which the friction of the surface holds, with its range [N]. */
  readonly referenceTension: Band;
}

/** One value of everything about a ring that has a range. */
export type RingValues = Record<
  "tensionTerm" | "constantTerm" | "diameterTerm" | "friction" | "exponent" | "referenceTension",
  number
>;

/**
 * The ranges behind a ring and its rope, by name, ready for `bandOf`.
 *
 * @param ring  ring and rope with ranges
 * @returns band of each [SI]
 */
export function ringRanges(ring: RunningRing): Record<keyof RingValues, Band> {
  const { tensionTerm, constantTerm, diameterTerm } = ring.stiffness;
  const { surface, ringExponent, referenceTension } = ring;
  return {
    tensionTerm,
    constantTerm,
    diameterTerm,
    friction: surface.friction,
    exponent: ringExponent,
    referenceTension,
  };
}

/**
 * A ring and its rope from one value of everything that has a range.
 *
 * @param ring  diameters [m]
 * @param wrapAngle  [rad]
 * @param values  one value of each range [SI]
 * @returns rope and ring for the models of a turn [m, rad, N]
 */
export function ringOf(ring: RunningRing, wrapAngle: number, values: RingValues): { rope: Rope; ring: Ring } {
  const { tensionTerm, constantTerm, diameterTerm, friction, exponent, referenceTension } = values;
  const plain: Ring = {
    kind: "ring",
    name: "ring",
    diameter: ring.ringDiameter,
    wrapAngle,
    frictionCoefficient: friction,
  };
  return {
    rope: { diameter: ring.ropeDiameter, stiffness: { tensionTerm, constantTerm, diameterTerm } },
    ring: exponent === 1 ? plain : { ...plain, loadDependence: { exponent, referenceTension } },
  };
}
