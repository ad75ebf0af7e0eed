import { type Cover, type CoverFriction, coverFriction } from "../materials/covers.js";
import type { Surface } from "../materials/surfaces.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { capstanRatio } from "./sliding.js";

/** A cover on the tread of a locked ratchet. */
export interface RatchetInput {
  readonly tread: Surface;
  readonly cover: Cover;
  readonly wrapAngle: number;
}

/** How much a locked ratchet holds. */
export interface RatchetHold {
  /** Friction of the cover on the tread [-]. */
  readonly friction: CoverFriction;
  /** Tension on the load side over tension on the hand side while easing [-]. */
  readonly ratio: Band;
  /** Tension on the hand side over tension on the load side while easing [-]. */
  readonly handShare: Band;
}

/**
 * Hold ratio of a locked ratchet for a cover, with its range.
 *
 *     T_load / T_hand = exp(μ · θ) while easing; while hauling the sheave turns and the tread holds nothing
 *
 * The loss of bending comes on top; a whole line counts it.
 *
 * @param tread  tread with its friction for a smooth dry polyester cover [-]
 * @param cover  strands, fibre and state
 * @param wrapAngle  θ, angle of contact [rad], 0 to 63
 * @returns friction, hold ratio and its inverse [-], each with its range: the ratio follows the friction from end to end
 * @throws ValueError outside these ranges
 * Valid for a sheave that is locked: always on, or above its engage load. No hold ratio of a ratchet with a named cover was found in print.
 * Source: euler-1769, capstan equation; friction judged by coverFriction. Example: ratchetHold({ tread: treads.smooth, cover: { strands: 24, fibre: "polyester", wet: false }, wrapAngle: Math.PI }).ratio.value → 1.602
 */
export function ratchetHold({ tread, cover, wrapAngle }: RatchetInput): RatchetHold {
  const friction = coverFriction(cover, tread);
  const ratioAt = (frictionCoefficient: number) => capstanRatio({ frictionCoefficient, wrapAngle });
  return {
    friction,
    ratio: bandOf({ mu: friction }, ({ mu }) => ratioAt(mu)),
    handShare: bandOf({ mu: friction }, ({ mu }) => 1 / ratioAt(mu)),
  };
}

/** A tension ratio that a surface of known friction must hold. */
export interface WrapInput {
  readonly tensionRatio: number;
  readonly frictionCoefficient: number;
}

/**
 * Wrap angle at which a surface just holds a tension ratio.
 *
 *     θ = ln(T_2 / T_1) / μ
 *
 * @param tensionRatio  T_2 / T_1 [-], 1 to 1e12
 * @param frictionCoefficient  μ [-], above 0, up to 2
 * @returns wrap angle [rad]
 * @throws ValueError outside these ranges
 * Source: euler-1769, capstan equation solved for θ. Example: holdingWrap({ tensionRatio: 2, frictionCoefficient: 0.25 }) → 2.7726
 */
export function holdingWrap({ tensionRatio, frictionCoefficient }: WrapInput): number {
  return Math.log(within("tensionRatio", tensionRatio)) / within("frictionCoefficient", frictionCoefficient, 1e-6);
}
