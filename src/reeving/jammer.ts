import type { Jammer } from "../materials/cleats.js";
import type { Cover } from "../materials/covers.js";
import { within } from "../quantity/guard.js";
import type { Band } from "../sources/band.js";
import { type CleatSize, cleatStands, coverStands, leastHeld } from "./cleat-size.js";
import { type JawGrip, jawGrip } from "./jaw.js";
import { frictionRange, type SlipLoad, slipLoadOf } from "./slip-load.js";

/** A jammer with numbers for everything. */
export interface JammerInput {
  readonly camAngle: number;
  /** Rope on jaw [-]. */
  readonly frictionCoefficient: number;
  /** Rope on plate [-]. */
  readonly plateFriction: number;
  /** Force of the lever at the jaw [N]. */
  readonly preload: number;
}

/**
 * Grip of a jaw that a lever presses on the rope against a plate.
 *
 *     T = (μ + μ_p) · F_0 / (sin ψ − μ · cos ψ), unless μ ≥ tan ψ: then it locks
 *
 * @param camAngle  ψ [rad], above 0, to a quarter turn
 * @param frictionCoefficient  μ of rope on jaw [-], 0 to 4
 * @param plateFriction  μ_p of rope on plate [-], 0 to 2
 * @param preload  F_0, force of the lever at the jaw [N], 0 or more
 * @returns whether it locks; normal force of the jaw, and load at slip as friction of both sides [N]
 * @throws ValueError outside these ranges
 * Source: statics, moments about the pivot. Example: jammerGrip({ camAngle: 0.5, frictionCoefficient: 0.3, plateFriction: 0.1, preload: 200 }).friction → 370.112
 */
export function jammerGrip({ camAngle, frictionCoefficient, plateFriction, preload }: JammerInput): JawGrip {
  const angle = within("camAngle", camAngle);
  const jaw = jawGrip({
    preload,
    preloadArm: 1,
    frictionArm: Math.cos(angle),
    normalArm: Math.sin(angle),
    frictionCoefficient,
  });
  return { ...jaw, friction: (frictionCoefficient + within("frictionCoefficient", plateFriction)) * jaw.normalForce };
}

/**
 * How many times the lever's own grip a jaw gets from its friction.
 *
 *     m = 1 / (1 − μ / tan ψ)
 *
 * @param camAngle  ψ [rad], above 0, to a quarter turn
 * @param frictionCoefficient  μ of rope on jaw [-], 0 to 4
 * @returns factor [-], at least 1; infinite when the jaw locks
 * @throws ValueError outside these ranges
 * Source: statics, moments about the pivot. Example: selfEnergising({ camAngle: Math.PI / 4, frictionCoefficient: 0.5 }) → 2
 */
export function selfEnergising({
  camAngle,
  frictionCoefficient,
}: Pick<JammerInput, "camAngle" | "frictionCoefficient">): number {
  const share = within("frictionCoefficient", frictionCoefficient) / Math.tan(within("camAngle", camAngle, 1e-3));
  return share >= 1 ? Number.POSITIVE_INFINITY : 1 / (1 - share);
}

/** A jammer under load, and its lever. */
export interface JammerRelease extends Omit<JammerInput, "preload"> {
  /** Load on the line [N]. */
  readonly load: number;
  /** Hand on the handle at which it snaps over [N]. */
  readonly handle: number;
  readonly leverRatio: number;
}

/**
 * Push on the handle that opens a jammer under load.
 *
 *     H = max(H_0, N · (μ cos ψ − sin ψ) / i),   N = T · μ / ((μ + μ_p) tan ψ)
 *
 * The handle snaps over first; then the jaw has to be turned back against its own friction, under the press that the load makes.
 *
 * @param load  T [N], 0 or more
 * @param camAngle  ψ [rad], above 0, to a quarter turn
 * @param frictionCoefficient  μ of rope on jaw [-], above 0, to 4
 * @param plateFriction  μ_p of rope on plate [-], 0 to 4
 * @param handle  H_0 at which the handle snaps over [N], 0 or more
 * @param leverRatio  i, force at the jaw over force on the handle [-], at least 1
 * @returns push on the handle [N]
 * @throws ValueError outside these ranges
 * Valid for jaw and plate that share the load as their friction; a linkage that lifts the jaw straight off asks less.
 * Source: statics, moments about the pivot. Example: jammerRelease({ load: 1000, camAngle: 0.1, frictionCoefficient: 0.4, plateFriction: 0.1, handle: 50, leverRatio: 10 }) → 237.739
 */
export function jammerRelease({
  load,
  camAngle,
  frictionCoefficient,
  plateFriction,
  handle,
  leverRatio,
}: JammerRelease): number {
  const angle = within("camAngle", camAngle, 1e-3);
  const mu = within("frictionCoefficient", frictionCoefficient, 1e-6);
  const onJaw = (within("loadTension", load) * mu) / (mu + within("frictionCoefficient", plateFriction));
  const press = onJaw / Math.tan(angle);
  const back = press * (mu * Math.cos(angle) - Math.sin(angle));
  return Math.max(within("handTension", handle), back / within("tensionRatio", leverRatio));
}

/** A rope in a jammer. */
export interface JammerRope {
  readonly cleat: Jammer;
  readonly size: CleatSize;
  readonly cover: Cover;
  readonly ropeDiameter: number;
  /** Break load of the rope: asks more of the cover than its area does [N]. */
  readonly breakLoad?: Band;
}

/** Ranges of a jammer with a rope in it, by the names of the model. */
export function jammerRanges({ camAngle, handle, leverRatio, jaw, plate }: Jammer, cover: Cover) {
  return {
    frictionCoefficient: frictionRange(cover, jaw),
    plateFriction: frictionRange(cover, plate),
    camAngle,
    handle,
    leverRatio,
  };
}

/**
 * Load at which a rope slips in a jammer.
 *
 *     T_hold = min(grip, what the jammer holds by its rating or size, what the cover stands); no grip below the least diameter
 *
 * @param cleat  records of the jammer [rad, N, -]
 * @param size  ropes that it is made for [m], and its rated load [N] where there is one
 * @param cover  strands, fibre and state of the cover
 * @param ropeDiameter  d [m]
 * @param breakLoad  of the rope, with its range [N]; absent: the cover is asked by its area alone
 * @returns slip load with its range [N], whether it locks, and what gives way first
 * @throws ValueError for an impossible diameter
 * Source: statics; common practice: it locks by design up to its rated load and slips above. Example: jammerSlipLoad({ cleat: cleats.jammer, size: { thinnest: 0.004, thickest: 0.01 }, cover: { strands: 16, fibre: "polyester", wet: false }, ropeDiameter: 0.006 }).locks → "enough"
 */
export function jammerSlipLoad({ cleat, size, cover, ropeDiameter, breakLoad }: JammerRope): SlipLoad {
  const diameter = within("ropeDiameter", ropeDiameter);
  return slipLoadOf({
    ranges: { ...jammerRanges(cleat, cover), thinnest: leastHeld(size) },
    need: ({ camAngle, frictionCoefficient, thinnest }) =>
      diameter < thinnest ? 2 : Math.tan(camAngle) / frictionCoefficient,
    grip: ({ handle, leverRatio, thinnest, ...values }) =>
      diameter < thinnest ? 0 : jammerGrip({ ...values, preload: handle * leverRatio }).friction,
    limits: {
      cleat: cleatStands(cleat.stands, size),
      cover: coverStands({ jawShare: cleat.jawShare, size, ropeDiameter, breakLoad }),
    },
  });
}
