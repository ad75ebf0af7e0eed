import { practice } from "../materials/practice.js";
import { powerLawGain } from "./power-law.js";
import type { Ring } from "./station.js";

/** A ring whose friction falls with load, taken apart: going from load to hand the rope is bent, slides, and is dragged. */
export interface SlidingSteps {
  /** The ring without sliding and without constant drag. */
  readonly bent: Ring;
  /** What sliding adds to T^x [N^x]. */
  readonly gain: number;
  /** x = 1 − n [-]. */
  readonly x: number;
  /** [N] */
  readonly drag: number;
}

/**
 * Takes a ring whose friction falls with load apart, so that it meets the ring of constant friction for n = 1.
 *
 *     T_pulled^x = (bent T_other)^x + x · gain, then the constant drag on top;   x = 1 − n
 *
 * Lines that share the ring lose more: the gain is raised by the shared-lead factor, as the logarithm of a ratio is.
 *
 * @param ring  ring with load dependence (size [m], angle [rad], forces [N])
 * @returns its three steps: ring without sliding, gain [N^x], constant drag [N]
 * @throws ValueError for an impossible exponent, friction, angle or reference tension
 */
export function slidingSteps(ring: Ring): SlidingSteps {
  const { exponent, referenceTension } = ring.loadDependence!;
  const { frictionCoefficient, wrapAngle, drag = 0 } = ring;
  const shared = (ring.lines ?? 1) > 1 ? practice.sharedLeadFactor.value : 1;
  return {
    bent: { ...ring, frictionCoefficient: 0, drag: 0 },
    gain: shared * powerLawGain({ frictionCoefficient, wrapAngle, referenceTension, loadExponent: exponent }),
    x: 1 - exponent,
    drag,
  };
}
