import { type Cover, type CoverFriction, coverName } from "../materials/covers.js";
import { palmFactors, palmOnCover, palmOnFibre, thickGrips } from "../materials/people-palm.js";
import { monotoneCurve } from "../numerics/pchip.js";
import { within } from "../quantity/guard.js";
import { bandOf } from "../sources/band.js";
import type { Coefficient } from "../sources/coefficient.js";

/** A hand, or two, on a rope. */
export interface HandHold {
  readonly cover: Cover;
  /** Diameter of the rope under the hand [m]. */
  readonly diameter: number;
  readonly hands: 1 | 2;
  /** False when absent. */
  readonly glove?: boolean;
  /** Angle over which the rope bends round the edge of the hand [rad]; none when absent. */
  readonly wrapAngle?: number;
}

/**
 * Friction of a palm, bare or gloved, on a cover, per face of the hand.
 *
 *     μ = palm on the cover · fibre factor · wet factor · glove factor
 *
 * @param cover  strands, fibre, wet or dry
 * @param glove  true for a gloved hand
 * @returns friction coefficient with its range [-] and the records behind it: spreads added in squares of their logarithms
 * Valid per contact face: the functional grip of two faces together, printed in some papers, is about twice as high.
 * Source: common practice for the order of covers; judged between the printed frictions of buchholz-1988.
 * Example: palmFriction({ cover: { strands: 24, fibre: "polyester", wet: false } }).value → 0.4
 */
export function palmFriction({ cover, glove = false }: Pick<HandHold, "cover" | "glove">): CoverFriction {
  const parts: Coefficient[] = [palmOnCover[cover.strands], palmOnFibre[cover.fibre]];
  if (cover.wet) parts.push(palmFactors.wet);
  if (glove) parts.push(palmFactors.glove);
  const inputs = Object.fromEntries(parts.map((part, index) => [index, part]));
  return { ...bandOf(inputs, (values) => Object.values(values).reduce((product, one) => product * one, 1)), parts };
}

/** Diameters at which the grip is known or judged [m]. */
const sizes = [0.004, 0.022, 0.032, 0.0508, 0.0635, 0.0762].map(Math.log);

/**
 * Grip on a rope or handle over grip on a handle of 22 to 32 mm.
 *
 *     monotone curve over ln d: judged at 4 mm, 1 from 22 to 32 mm, printed from there on
 *
 * @param diameter  d [m], 0.004 to 0.0762
 * @param thinLine  share at 4 mm [-], 0 to 2; the judged one when absent
 * @returns share [-]
 * @throws ValueError outside these ranges
 * Valid for closed hands; a rope that is folded or knotted is a thicker handle.
 * Source: young-2012 at 51 mm, irwin-2013 beyond; judged below 22 mm.
 * Example: gripOnDiameter({ diameter: 0.0508 }) → 0.895
 */
export function gripOnDiameter({
  diameter,
  thinLine = palmFactors.thinLine.value,
}: {
  readonly diameter: number;
  readonly thinLine?: number;
}): number {
  within("ropeDiameter", diameter, 0.004, 0.0762);
  within("loadShare", thinLine, 0, 2);
  const thick = palmFactors.thickHandle.value;
  const over = (size: keyof typeof thickGrips) => (thick * thickGrips[size].value) / thickGrips[50.8].value;
  const curve = monotoneCurve({ positions: sizes, values: [thinLine, 1, 1, thick, over(63.5), over(76.2)] });
  return curve(Math.min(Math.max(Math.log(diameter), sizes[0]!), sizes[sizes.length - 1]!));
}

/**
 * Words for a hold, for tables and verdicts.
 *
 * @param hold  cover, diameter [m], hands, glove
 * @returns text such as `one bare hand on 7 mm 16-strand polyester, dry`
 * Source: common practice, words of the trade. Example: holdName({ cover: { strands: 16, fibre: "polyester", wet: false }, diameter: 0.007, hands: 1 }) → "one bare hand on 7 mm 16-strand polyester, dry"
 */
export function holdName({ cover, diameter, hands, glove = false }: HandHold): string {
  const who = `${hands === 1 ? "one" : "two"} ${glove ? "gloved" : "bare"} ${hands === 1 ? "hand" : "hands"}`;
  return `${who} on ${Number((1000 * diameter).toPrecision(3))} mm ${coverName(cover)}`;
}
