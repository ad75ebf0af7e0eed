import type { StiffnessRatio } from "../materials/elasticity.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";

/** A piece of rope under tension. */
export interface Segment {
  readonly length: number;
  readonly axialStiffness: number;
  /** Tension at one end [N]. */
  readonly tension: number;
  /** Tension at the other end, where it changes evenly on the way: own weight [N]; the same when absent. */
  readonly farTension?: number;
}

/**
 * Stretch of one piece of rope.
 *
 *     ΔL = (T_1 + T_2) / 2 · L / EA
 *
 * @param length  L [m], above 0, to 100 000
 * @param axialStiffness  EA of the worked rope [N], above 0
 * @param tension  T_1 at one end [N], 0 to 1e9
 * @param farTension  T_2 at the other end [N]; T_1 when absent
 * @returns stretch [m]
 * @throws ValueError outside these ranges
 * Valid for a worked rope, whose strands have bedded in, loaded not much further than before.
 * Source: statics, law of Hooke. Example: segmentStretch({ length: 9.3, axialStiffness: 15.708e6, tension: 1070 }) → 0.000633
 */
export function segmentStretch({ length, axialStiffness, tension, farTension = tension }: Segment): number {
  const pull = (force: number) => within("tension", force, 0, 1e9);
  const mean = (pull(tension) + pull(farTension)) / 2;
  return (mean * within("lineLength", length, 1e-6, 1e5)) / within("axialStiffness", axialStiffness, 1, 1e12);
}

/**
 * Stretch of pieces spliced one after the other.
 *
 *     ΔL = Σ ΔL_i
 *
 * @param segments  pieces [m, N, N]
 * @returns stretch [m]
 * @throws ValueError for an impossible piece
 * Source: statics, springs in series. Example: seriesStretch([{ length: 1, axialStiffness: 1000, tension: 10 }, { length: 2, axialStiffness: 500, tension: 10 }]) → 0.05
 */
export function seriesStretch(segments: readonly Segment[]): number {
  return segments.reduce((sum, segment) => sum + segmentStretch(segment), 0);
}

/** A pull and the stretch that it made. */
export interface StretchTest {
  readonly tension: number;
  readonly length: number;
  readonly stretch: number;
}

/**
 * Axial stiffness of a rope from one pull.
 *
 *     EA = T · L / ΔL
 *
 * @param tension  T, load added [N], above 0
 * @param length  L of the rope between the marks [m]
 * @param stretch  ΔL between the marks [m]
 * @returns axial stiffness [N]
 * @throws ValueError outside these ranges
 * Source: statics, law of Hooke. Example: stiffnessFromTest({ tension: 98.1, length: 10, stretch: 0.02 }) → 49050
 */
export function stiffnessFromTest({ tension, length, stretch }: StretchTest): number {
  return (within("tension", tension, 1e-9) * within("lineLength", length)) / within("stretch", stretch);
}

/** A rope by its strength. */
export interface RatioInput {
  readonly ratio: StiffnessRatio;
  readonly breakLoad: number;
}

/**
 * Axial stiffness of a big fibre rope that is loaded slowly, from its break load.
 *
 *     EA = r · F_b
 *
 * @param ratio  records of the rope's kind [-]
 * @param breakLoad  F_b [N], above 0
 * @returns axial stiffness with its range [N]
 * @throws ValueError outside this range
 * Source: mooring-rope-properties, stiffness over break load. Example: slowStiffness({ ratio: stiffnessRatios.polyester, breakLoad: 10000 }).value → 140000
 */
export function slowStiffness({ ratio, breakLoad }: RatioInput): Band {
  const strength = within("breakLoad", breakLoad, 1e-9);
  return bandOf({ slow: ratio.slow }, ({ slow }) => slow * strength);
}

/**
 * Axial stiffness of a big fibre rope in gusts or waves about a mean load, from its break load.
 *
 *     EA = (α + β · T_m / F_b) · F_b
 *
 * @param ratio  records of the rope's kind [-]
 * @param breakLoad  F_b [N], above 0
 * @param loadShare  T_m / F_b, mean load over break load [-], 0 to 1
 * @returns axial stiffness with its range [N]
 * @throws ValueError outside these ranges
 * Source: mooring-rope-properties, dynamic stiffness. Example: quickStiffness({ ratio: stiffnessRatios.polyester, breakLoad: 1, loadShare: 0.2 }).value → 19.6
 */
export function quickStiffness({ ratio, breakLoad, loadShare }: RatioInput & { readonly loadShare: number }): Band {
  const strength = within("breakLoad", breakLoad, 1e-9);
  const share = within("loadShare", loadShare, 0, 1);
  const { quick, quickGrowth } = ratio;
  return bandOf({ quick, quickGrowth }, (values) => (values.quick + values.quickGrowth * share) * strength);
}
