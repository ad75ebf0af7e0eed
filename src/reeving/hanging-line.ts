import { standardGravity } from "../quantity/constants.js";
import { within } from "../quantity/guard.js";
import type { PreparedLine } from "./line.js";

/** A line that hangs free between the sail and its first lead. */
export interface HangingLine {
  /** Mass for each metre, wet where it is wet [kg/m]. */
  readonly linearDensity: number;
  /** Level distance between sail and lead [m]. */
  readonly span: number;
  /** Height of the sail's end above the lead, below 0 where it is lower [m]; 0 when absent. */
  readonly rise?: number;
}

/** Root of u · tanh u = 1, where the end tension of a catenary is least, and that tension over its weight, cosh u / 2u [-]. */
const leastCatenary = (() => {
  let u = 1.2;
  for (let turn = 0; turn < 8; turn += 1) u -= (u * Math.tanh(u) - 1) / (Math.tanh(u) + u / Math.cosh(u) ** 2);
  return Math.cosh(u) / (2 * u);
})();

/**
 * Least tension at the ends of a line that hangs free: with less, no shape carries it, and it falls into the water.
 *
 *     T = w g L · cosh u / 2u,   u tanh u = 1:   0.754 times the weight of a line as long as the span
 *
 * @param linearDensity  w [kg/m], above 0
 * @param span  L, level distance of the ends [m], 0 or more
 * @returns tension [N]
 * @throws ValueError for a density or a span that cannot exist
 * Valid for a limp line with both ends at one height.
 * Source: statics, catenary with the least end tension. Example: hangingTension({ linearDensity: 0.05, span: 3 }) → 1.11
 */
export function hangingTension({ linearDensity, span }: HangingLine): number {
  return within("linearDensity", linearDensity) * standardGravity * within("lineLength", span, 0) * leastCatenary;
}

/**
 * Least load at which a sail takes its sheet out by itself, with the line's own weight.
 *
 *     W = max(T_run, T_hang) + w g h;   T_run as the turns, the stiffness of the rope and the drag of the tail ask for
 *
 * The line between sail and lead must be carried before any of it is taken out, and lifted as far as the sail's end lies
 * above the lead.
 *
 * @param line  prepared line: turns, constant bending terms, drags
 * @param hanging  what hangs free: w [kg/m], span [m], rise h [m], -100 to 100
 * @param tailTension  pull that the tail leaves at the hand's end: on the floor, over a coaming, in the water [N]; none when absent
 * @returns load at the sail [N], never below 0
 * @throws ValueError for sizes that cannot exist
 * Valid for a sheet from the sail to its first lead; a tackle at the sail carries its blocks besides.
 * Source: statics. Example: runOutLoad({ line: prepareLine({ rope: { diameter: 0.007, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [] }), hanging: { linearDensity: 0.05, span: 3, rise: 1 } }) → 1.6
 */
export function runOutLoad({
  line,
  hanging,
  tailTension = 0,
}: {
  readonly line: PreparedLine;
  readonly hanging: HangingLine;
  readonly tailTension?: number;
}): number {
  const { linearDensity, rise = 0 } = hanging;
  const lifted = linearDensity * standardGravity * within("coordinate", rise);
  return Math.max(0, Math.max(line.runOutLoad(tailTension), hangingTension(hanging)) + lifted);
}
