import type { Line } from "../reeving/line.js";
import { scaledLine } from "../reeving/scaled.js";

/**
 * A line with one factor on all that grows with load, and one on all that does not.
 *
 * @param line  rope and stations [m, rad, N]; untouched
 * @param loss  factor on bearing, bending and sliding, and on the loss of measured turns [-], 0 or more
 * @param drag  factor on constant drags and on the bending that does not grow with load [-], 0 or more
 * @returns a new line
 * Source: statics, every coefficient times its factor. Example: withFactors({ rope: { diameter: 0.006, stiffness: { tensionTerm: 10, constantTerm: 2, diameterTerm: 0 } }, stations: [] }, 2, 3).rope.stiffness.constantTerm → 6
 */
export function withFactors(line: Line, loss: number, drag: number): Line {
  const scaled = scaledLine(line, { bearing: loss, bending: loss, sliding: loss, drag });
  const { constantTerm, diameterTerm } = line.rope.stiffness;
  const stiffness = {
    ...scaled.rope.stiffness,
    constantTerm: drag * constantTerm,
    diameterTerm: drag * diameterTerm,
  };
  return { ...scaled, rope: { ...scaled.rope, stiffness } };
}
