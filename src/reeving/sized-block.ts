import type { Bearing } from "../materials/bearings.js";
import { practice } from "../materials/practice.js";
import type { StiffnessLaw } from "../materials/stiffness.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { cheekContact } from "./cheek.js";
import { pulledSide } from "./law.js";
import type { Rope, Sheave } from "./station.js";
import { turnLoss } from "./turn.js";

/** What a rope and the bearings of its blocks are like, with ranges: the size of the sheaves is left open. */
export interface Running {
  readonly ropeDiameter: number;
  readonly stiffness: StiffnessLaw;
  readonly bearing: Bearing;
  /** Pull that starts an unloaded sheave [N]. */
  readonly drag: Band;
}

/** One value of everything that has a range. */
export type RunningValues = Record<
  "tensionTerm" | "constantTerm" | "diameterTerm" | "bearingFriction" | "radiusShare" | "drag",
  number
>;

/**
 * The ranges behind a running rope, by name, ready for `bandOf`.
 *
 * @param running  rope and bearing with ranges
 * @returns band of each [SI]
 */
export function rangesOf({ stiffness, bearing, drag }: Running): Record<keyof RunningValues, Band> {
  const { tensionTerm, constantTerm, diameterTerm } = stiffness;
  return {
    tensionTerm,
    constantTerm,
    diameterTerm,
    bearingFriction: bearing.friction,
    radiusShare: bearing.radiusShare,
    drag,
  };
}

/** Size of a sheave and how far the line lies on it. */
export interface SheaveSize {
  readonly sheaveDiameter: number;
  readonly wrapAngle: number;
}

/**
 * A rope and a sheave of a given size from one value of everything that has a range.
 *
 * @param running  rope diameter [m]
 * @param size  diameter [m] and wrap [rad]
 * @param values  one value of each range [SI]
 * @returns rope and sheave for the models of a turn [m, rad, N]
 */
export function sized(running: Running, size: SheaveSize, values: RunningValues): { rope: Rope; sheave: Sheave } {
  const { tensionTerm, constantTerm, diameterTerm } = values;
  return {
    rope: { diameter: running.ropeDiameter, stiffness: { tensionTerm, constantTerm, diameterTerm } },
    sheave: {
      kind: "sheave",
      name: "sheave",
      diameter: size.sheaveDiameter,
      wrapAngle: size.wrapAngle,
      pinRadius: (values.radiusShare * size.sheaveDiameter) / 2,
      bearingFriction: values.bearingFriction,
      drag: values.drag,
    },
  };
}

/** A rope hauled over one block. */
export interface BlockLossInput extends Running, SheaveSize {
  readonly load: number;
  /** Absent: wide enough. */
  readonly grooveWidth?: number;
}

/**
 * Pull that one block costs while hauling, from all its causes, with its range.
 *
 *     ΔT = k · T + c − T,   k and c of bending, bearing, cheeks and drag
 *
 * @param sheaveDiameter  groove bottom [m]
 * @param ropeDiameter  [m]
 * @param stiffness  law of the rope, with ranges
 * @param bearing  friction [-] and its radius over that of the sheave [-], with ranges
 * @param drag  pull that starts an unloaded sheave, with its range [N]
 * @param wrapAngle  [rad]
 * @param load  T on the side that is not pulled [N]
 * @param grooveWidth  [m]; wide enough when absent
 * @returns extra pull with its range [N]
 * @throws ValueError for an impossible size, angle or load
 * Source: britannica-1911 for bending, donzelli-1999 for bearings; cheeks from memory. Example: blockLoss({ sheaveDiameter: 0.04, ropeDiameter: 0.006, stiffness: stiffnessLaws.braidedCover, bearing: bearings.ball, drag: { value: 0, low: 0, high: 0 }, wrapAngle: Math.PI, load: 300 }).value → 17.17
 */
export function blockLoss(input: BlockLossInput): Band {
  const { ropeDiameter, grooveWidth, wrapAngle } = input;
  const load = within("loadTension", input.load);
  const cheeks = grooveWidth === undefined ? 1 : cheekContact({ ropeDiameter, grooveWidth, wrapAngle }).ratio;
  const { cheekPressureShare, cheekFriction } = practice;
  const middle = cheekPressureShare.value * cheekFriction.value;
  return bandOf({ ...rangesOf(input), cheekPressureShare, cheekFriction }, (values) => {
    const { rope, sheave } = sized(input, input, values);
    const { haul } = turnLoss({ turn: sheave, rope, leaveOut: ["drag"] }).law;
    const rubbed = cheeks ** ((values.cheekPressureShare * values.cheekFriction) / middle);
    return pulledSide(haul, load) * rubbed + values.drag - load;
  });
}
