import type { CamCleat } from "../materials/cleats.js";
import type { Cover } from "../materials/covers.js";
import { within } from "../quantity/guard.js";
import type { Band } from "../sources/band.js";
import { type CleatSize, cleatStands, coverStands, leastHeld } from "./cleat-size.js";
import { frictionAngle, type JawGrip, jawGrip } from "./jaw.js";
import { frictionRange, type SlipLoad, slipLoadOf } from "./slip-load.js";

/** Shape of a cam and its pivot. */
export interface CamShape {
  readonly camAngle: number;
  readonly pivotShare: number;
  readonly pivotFriction: number;
}

/**
 * Cam angle that friction at the jaw has to beat, with the friction of the pivot that hinders closing.
 *
 *     ψ' = ψ + asin(r_p · sin(atan μ_p))
 *
 * @param camAngle  ψ [rad], 0 to a quarter turn
 * @param pivotShare  r_p, radius of the pivot over the distance from pivot to rope [-], 0 to 1
 * @param pivotFriction  μ_p [-], 0 to 1
 * @returns angle [rad], at least the cam angle
 * @throws ValueError outside these ranges
 * Source: statics, friction circle of a pin. Example: lockingAngle({ camAngle: 0.157, pivotShare: 0.2, pivotFriction: 0.1 }) → 0.1769
 */
export function lockingAngle({ camAngle, pivotShare, pivotFriction }: CamShape): number {
  const pin = Math.sin(frictionAngle(within("bearingFriction", pivotFriction)));
  return within("camAngle", camAngle) + Math.asin(within("pivotShare", pivotShare) * pin);
}

/**
 * Least friction at the jaws with which a cam cleat locks, whatever the load.
 *
 *     μ ≥ tan ψ'
 *
 * @param camAngle  ψ [rad], 0 to a quarter turn
 * @param pivotShare  r_p [-], 0 to 1
 * @param pivotFriction  μ_p [-], 0 to 1
 * @returns friction coefficient [-]
 * @throws ValueError outside these ranges
 * Source: statics, angle of friction. Example: lockingFriction({ camAngle: 0.157, pivotShare: 0, pivotFriction: 0 }) → 0.1583
 */
export function lockingFriction(shape: CamShape): number {
  return Math.tan(lockingAngle(shape));
}

/** A cam cleat with numbers for everything. */
export interface CamInput extends CamShape {
  readonly frictionCoefficient: number;
  /** Force of one spring at the rope [N]. */
  readonly spring: number;
}

/**
 * Grip of the two jaws of a cam cleat.
 *
 *     T = 2 · μ · S / (sin ψ' − μ · cos ψ'), unless μ ≥ tan ψ': then it locks
 *
 * @param camAngle  ψ [rad], above 0, to a quarter turn
 * @param pivotShare  r_p [-], 0 to 1
 * @param pivotFriction  μ_p [-], 0 to 1
 * @param frictionCoefficient  μ of the rope on the jaws [-], 0 to 4
 * @param spring  S of one jaw, at the rope [N], 0 or more
 * @returns whether it locks; normal force of a jaw, and load at slip as friction of both jaws [N]
 * @throws ValueError outside these ranges
 * Valid for jaws that move alike, and a rope that is not squeezed flat.
 * Source: statics, moments about the pivot. Example: camGrip({ camAngle: 0.157, pivotShare: 0, pivotFriction: 0, frictionCoefficient: 0.1, spring: 7 }).friction → 24.312
 */
export function camGrip({ frictionCoefficient, spring, ...shape }: CamInput): JawGrip {
  const angle = lockingAngle(shape);
  const jaw = jawGrip({
    preload: spring,
    preloadArm: 1,
    frictionArm: Math.cos(angle),
    normalArm: Math.sin(angle),
    frictionCoefficient,
  });
  return { ...jaw, friction: 2 * jaw.friction };
}

/** A rope in a cam cleat. */
export interface CamRope {
  readonly cleat: CamCleat;
  readonly size: CleatSize;
  readonly cover: Cover;
  readonly ropeDiameter: number;
  /** Break load of the rope: asks more of the cover than its area does [N]. */
  readonly breakLoad?: Band;
}

/** Ranges of a cam cleat with a rope in it, by the names of the model. */
export function camRanges(cleat: CamCleat, cover: Cover) {
  const { camAngle, pivotShare, pivotFriction, spring } = cleat;
  return { frictionCoefficient: frictionRange(cover, cleat.jaw), camAngle, pivotShare, pivotFriction, spring };
}

/**
 * Load at which a rope slips in a cam cleat.
 *
 *     T_hold = min(grip, what the jaws stand, what the cover stands); no grip below the least diameter
 *
 * @param cleat  records of the cleat [rad, N, -]
 * @param size  ropes that it is made for [m], and its rated load [N] where there is one
 * @param cover  strands, fibre and state of the cover
 * @param ropeDiameter  d [m]
 * @param breakLoad  of the rope, with its range [N]; absent: the cover is asked by its area alone
 * @returns slip load with its range [N], whether it locks, and what gives way first
 * @throws ValueError for an impossible diameter
 * Source: statics; sizes and strengths are records of their own. Example: camSlipLoad({ cleat: cleats.cam, size: { thinnest: 0.003, thickest: 0.01 }, cover: { strands: 16, fibre: "polyester", wet: false }, ropeDiameter: 0.006 }).locks → "enough"
 */
export function camSlipLoad({ cleat, size, cover, ropeDiameter, breakLoad }: CamRope): SlipLoad {
  const diameter = within("ropeDiameter", ropeDiameter);
  return slipLoadOf({
    ranges: { ...camRanges(cleat, cover), thinnest: leastHeld(size) },
    need: ({ frictionCoefficient, thinnest, ...shape }) =>
      diameter < thinnest ? 2 : lockingFriction(shape) / frictionCoefficient,
    grip: ({ thinnest, ...values }) => (diameter < thinnest ? 0 : camGrip(values).friction),
    limits: {
      cleat: cleatStands(cleat.stands, size),
      cover: coverStands({ jawShare: cleat.jawShare, size, ropeDiameter, breakLoad }),
    },
  });
}
