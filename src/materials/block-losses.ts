import { type Coefficient, coefficient } from "../sources/coefficient.js";

function remembered(low: number, value: number, high: number, unit: string, place: string): Coefficient {
  return coefficient({ value, unit, low, high, status: "from memory", place });
}

/** Losses of blocks and rings besides bearing friction, bending and sliding. */
export const blockLosses = {
  /** Pull that starts an unloaded sheave, at the rope [N]. */
  ballDrag: remembered(0.02, 0.1, 0.4, "N", "balls, grease and salt of a small open block; a hung weight would tell"),
  plainDrag: remembered(0.05, 0.25, 0.8, "N", "sleeve, grit and salt of a small block; a hung weight would tell"),
  /** Friction of a rope over the groove of a sheave that stands still [-]. */
  grooveFriction: remembered(
    0.15,
    0.3,
    0.5,
    "1",
    "a cover in a round groove of plastic or metal, which holds it better than a bar; bounds what a bad bearing can cost",
  ),
  /** Friction of a lip seal for each length of lip [N/m]. */
  lipSeal: coefficient({
    value: 10,
    unit: "N/m",
    low: 10,
    high: 200,
    status: "published",
    source: "feyrer-wire-ropes",
    place: "0.01 N/mm for seals of roller bearings, 0.07 to 0.20 for lips pressed by a spring",
  }),
  /** Friction of a plain bearing that is seldom used, and what breaking loose adds to it [-]. */
  seldomUsedPlain: coefficient({
    value: 0.1,
    unit: "1",
    low: 0.1,
    high: 0.15,
    status: "published",
    source: "feyrer-wire-ropes",
    place: "below eq. 3.100; half as much again to break loose",
  }),
  /** Exponent n of sliding friction F ∝ N^n on a ring [-]. */
  ringExponent: coefficient({
    value: 0.75,
    unit: "1",
    low: 0.67,
    high: 1,
    status: "published",
    source: "brown-thesis",
    place: "§3.2.2, polymers; spread judged, 1 is friction that does not depend on load",
  }),
  /** Tension at which the sliding friction of the surfaces holds [N]. */
  ringReferenceTension: coefficient({
    value: 735,
    unit: "N",
    low: 300,
    high: 750,
    status: "published",
    source: "delaney-2022",
    place: "75 kg in the tests behind the surfaces; spread judged, for thinner rope presses harder",
  }),
  /** Least difference in pull that a hand tells, over the pull [-]. */
  feltShare: remembered(0.06, 0.1, 0.15, "1", "about a tenth; pulls compared blindfold would narrow it"),
  /** Friction of a sheave's side on its cheek [-]. */
  sideFriction: remembered(0.1, 0.2, 0.35, "1", "plastic sheave on a plastic or metal cheek"),
} as const satisfies Record<string, Coefficient>;
