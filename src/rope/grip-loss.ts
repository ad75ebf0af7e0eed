import { hand } from "../materials/skin.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";

/** Palm and fingers press on the rope from two sides. */
const faces = 2;

/**
 * Tension that a squeezing hand takes out of a rope that runs through it.
 *
 *     F_lost = 2 · μ · N
 *
 * @param gripForce  N with which the hand squeezes [N], 0 or more
 * @returns lost force with its range [N]
 * @throws ValueError outside this range
 * Valid for a rope that runs straight through the hand; one that is bent round it loses more.
 * Source: statics, two faces; the friction coefficient is from memory. Example: gripLoss(100).value → 70
 */
export function gripLoss(gripForce: number): Band {
  const grip = within("tension", gripForce);
  return bandOf({ friction: hand.friction }, ({ friction }) => faces * friction * grip);
}
