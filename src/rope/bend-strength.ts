import { type BentMaterial, bendCurveOf } from "../materials/bend-strength.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";

/** A rope under load round a sheave or pin that does not move. */
export interface BendStrengthInput {
  /** Diameter of the bend at the bottom of the groove over that of the rope. */
  readonly diameterRatio: number;
  /** Fibre that carries the load, or wire. */
  readonly material: BentMaterial;
}

/**
 * Strength that a rope keeps where it is bent round a sheave or pin.
 *
 *     η = 1 / (1 + (q / (D/d))^p),   q ratio at which half is left, p how fast the loss falls
 *
 * @param diameterRatio  D/d, groove bottom over rope diameter [-], 0.1 to 1000
 * @param material  fibre that carries the load, or wire
 * @returns share of the straight strength with its range [-], above 0, below 1, rising with D/d
 * @throws ValueError outside these ranges
 * Valid for one steady pull over a bend of at least a quarter turn; wear of a rope that runs over it often is not in it. The printed
 * points of wire set its curve, so no published value is left to check it; those of fibres are remembered.
 * Source: wire-rope-training for wire; fibres from memory. Example: bendStrength({ diameterRatio: 8, material: "polyester" }).value → 0.924
 */
export function bendStrength({ diameterRatio, material }: BendStrengthInput): Band {
  const ratio = within("diameterRatio", diameterRatio);
  const { halfRatio, exponent } = bendCurveOf[material];
  // The range is that of lost over left: so neither of its ends can pass the strength of the straight rope.
  const lost = bandOf({ halfRatio, exponent }, (curve) => (curve.halfRatio / ratio) ** curve.exponent);
  const left = (lostOverLeft: number) => 1 / (1 + lostOverLeft);
  return { value: left(lost.value), low: left(lost.high), high: left(lost.low) };
}

/**
 * Least sheave, in rope diameters, that leaves a wanted share of the strength.
 *
 *     D/d = q · (η / (1 − η))^(1/p)
 *
 * @param retainedStrength  η [-], 0.05 to 0.99
 * @param material  fibre that carries the load, or wire
 * @returns D/d with its range [-]
 * @throws ValueError outside this range
 * Source: wire-rope-training for wire; fibres from memory. Example: leastBendRatio({ retainedStrength: 0.5, material: "wire" }).value → 1
 */
export function leastBendRatio({
  retainedStrength,
  material,
}: {
  readonly retainedStrength: number;
  readonly material: BentMaterial;
}): Band {
  const share = within("retainedStrength", retainedStrength, 0.05, 0.99);
  const { halfRatio, exponent } = bendCurveOf[material];
  return bandOf({ halfRatio, exponent }, (curve) => curve.halfRatio * (share / (1 - share)) ** (1 / curve.exponent));
}
