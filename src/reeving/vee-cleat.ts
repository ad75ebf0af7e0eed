import { gripRecords, type VeeCleat } from "../materials/cleats.js";
import type { Cover } from "../materials/covers.js";
import { within } from "../quantity/guard.js";
import type { Band } from "../sources/band.js";
import { type CleatSize, cleatStands, coverStands, leastHeld } from "./cleat-size.js";
import { type JawGrip, jawGrip } from "./jaw.js";
import { wedgeFriction } from "./sliding.js";
import { frictionRange, type SlipLoad, slipLoadOf } from "./slip-load.js";
import { wedgeDrive } from "./wedge.js";

const testedAngle = (70 * Math.PI) / 180;

/** A groove, and what tests found at 70°. */
export interface GrooveInput {
  readonly grooveAngle: number;
  /** Hold of a V of 70° over that of a flat surface, as tested [-]. */
  readonly testedFactor: number;
}

/**
 * Hold of a V groove over that of a flat surface, scaled from tests at 70°.
 *
 *     w = (1 / sin(β/2))^p,   p = ln w_70 / ln(1 / sin 35°)
 *
 * @param grooveAngle  β, full angle [rad], 0.2 to π
 * @param testedFactor  w_70 [-], 1 or more; 1.743 gives the theory back
 * @returns factor [-], at least 1
 * @throws ValueError outside these ranges
 * Valid for a rope that touches both walls. That other angles keep the share p of the theory is a modelling choice of this library.
 * Source: albro-liu-1985, groove of 70°. Example: grooveFactor({ grooveAngle: 1.2217, testedFactor: 1.25 }) → 1.2500
 */
export function grooveFactor({ grooveAngle, testedFactor }: GrooveInput): number {
  const theory = (angle: number) => wedgeFriction({ frictionCoefficient: 1, grooveAngle: angle });
  const share = Math.log(within("tensionRatio", testedFactor)) / Math.log(theory(testedAngle));
  return theory(within("grooveAngle", grooveAngle, 0.2)) ** share;
}

/** A V cleat with numbers for everything. */
export interface VeeInput {
  readonly frictionCoefficient: number;
  /** Hold of the groove over that of a flat surface [-]. */
  readonly grooveFactor: number;
  readonly ridgeAngle: number;
  readonly wallFriction: number;
  readonly press: number;
}

/**
 * Part of the load that sloping ridges turn into a force down into the groove.
 *
 *     g = 1 / tan(ω + φ),   φ = atan μ_w
 *
 * @param ridgeAngle  ω, between ridges and rope [rad], above 0
 * @param wallFriction  μ_w, friction along the ridges [-], 0 to 2
 * @returns force down over load [-]
 * @throws ValueError outside these ranges
 * Source: statics, wedge. Example: ridgeDraw({ ridgeAngle: Math.PI / 4, wallFriction: 0.2 }) → 0.6667
 */
export function ridgeDraw({
  ridgeAngle,
  wallFriction,
}: {
  readonly ridgeAngle: number;
  readonly wallFriction: number;
}): number {
  const slopeAngle = within("ridgeAngle", ridgeAngle, 0.02);
  return 1 / wedgeDrive({ squeeze: 1, slopeAngle, frictionCoefficient: wallFriction });
}

/**
 * Grip of a V cleat, whose ridges draw the rope down the harder it is pulled.
 *
 *     T = μ · w · F_0 / (1 − μ · w · g); it locks when μ · w · g ≥ 1
 *
 * @param frictionCoefficient  μ of rope on ridges [-], 0 to 4
 * @param grooveFactor  w [-], 1 or more
 * @param ridgeAngle  ω [rad], above 0
 * @param wallFriction  μ_w along the ridges [-], 0 to 2
 * @param press  F_0, force with which the rope was snapped in [N], 0 or more
 * @returns whether it locks; force down into the groove, and load at slip as friction [N]
 * @throws ValueError outside these ranges
 * Valid for a rope that touches both walls. How ridges draw the rope is a modelling choice of this library.
 * Source: statics, the same balance as a jaw that closes itself. Example: veeGrip({ frictionCoefficient: 0.5, grooveFactor: 1.5, ridgeAngle: Math.PI / 4, wallFriction: 0.2, press: 60 }).friction → 90
 */
export function veeGrip({ frictionCoefficient, grooveFactor: w, press, ...ridges }: VeeInput): JawGrip {
  const factor = within("tensionRatio", w);
  const jaw = jawGrip({
    preload: press,
    preloadArm: 1,
    frictionArm: factor * ridgeDraw(ridges),
    normalArm: 1,
    frictionCoefficient,
  });
  return { ...jaw, friction: factor * jaw.friction };
}

/** A rope in a V cleat. */
export interface VeeRope {
  readonly cleat: VeeCleat;
  readonly size: CleatSize;
  readonly cover: Cover;
  readonly ropeDiameter: number;
  /** Break load of the rope: asks more of the cover than its area does [N]. */
  readonly breakLoad?: Band;
}

/**
 * Load at which a rope slips in a V cleat.
 *
 *     T_hold = min(grip, what the cleat stands, what the cover stands); a rope on the bottom of the groove gets μ · F_0 only
 *
 * @param cleat  records of the cleat [rad, N, -]
 * @param size  ropes that it is made for [m], and its rated load [N] where there is one
 * @param cover  strands, fibre and state of the cover
 * @param ropeDiameter  d [m]
 * @param breakLoad  of the rope, with its range [N]; absent: the cover is asked by its area alone
 * @returns slip load with its range [N], whether it locks, and what gives way first
 * @throws ValueError for an impossible diameter
 * Source: albro-liu-1985 for the groove; sizes and strengths are records of their own. Example: veeSlipLoad({ cleat: cleats.vee, size: { thinnest: 0.005, thickest: 0.008 }, cover: { strands: 16, fibre: "polyester", wet: false }, ropeDiameter: 0.002 }).locks → "not enough"
 */
export function veeSlipLoad({ cleat, size, cover, ropeDiameter, breakLoad }: VeeRope): SlipLoad {
  const diameter = within("ropeDiameter", ropeDiameter);
  const { grooveAngle, ridgeAngle, wallFriction, press } = cleat;
  const { veeOverRound, roundOverFlat } = gripRecords;
  const frictionCoefficient = frictionRange(cover, cleat.ridges);
  const shape = { grooveAngle, ridgeAngle, wallFriction, press, veeOverRound, roundOverFlat };
  return slipLoadOf({
    ranges: { frictionCoefficient, ...shape, thinnest: leastHeld(size) },
    need: (values) =>
      diameter < values.thinnest ? 2 : 1 / (values.frictionCoefficient * factorIn(values) * ridgeDraw(values)),
    grip: (values) =>
      diameter < values.thinnest
        ? values.frictionCoefficient * values.press
        : veeGrip({ ...values, grooveFactor: factorIn(values) }).friction,
    limits: {
      cleat: cleatStands(cleat.stands, size),
      cover: coverStands({ jawShare: cleat.jawShare, size, ropeDiameter, breakLoad }),
    },
  });
}

function factorIn(values: Record<"grooveAngle" | "veeOverRound" | "roundOverFlat", number>): number {
  return grooveFactor({
    grooveAngle: values.grooveAngle,
    testedFactor: values.veeOverRound * values.roundOverFlat,
  });
}
