import { gripRecords, type Jammer } from "../materials/cleats.js";
import type { Cover } from "../materials/covers.js";
import { within } from "../quantity/guard.js";
import type { Band } from "../sources/band.js";
import { type JawGrip, jawGrip } from "./jaw.js";
import { coverStandsOf, frictionRange, type SlipLoad, slipLoadOf } from "./slip-load.js";

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

/** A rope in a jammer. */
export interface JammerRope {
  readonly cleat: Jammer;
  readonly cover: Cover;
  /** Break load of the rope: asks whether the cover stands the jaw [N]. */
  readonly breakLoad?: Band;
}

/**
 * Load at which a rope slips in a jammer.
 *
 *     T_hold = min(grip, what the jammer stands, what the cover stands)
 *
 * @param cleat  records of the jammer [rad, N]
 * @param cover  strands, fibre and state of the cover
 * @param breakLoad  of the rope, with its range [N]; absent: the cover is not asked
 * @returns slip load with its range [N], whether it locks, and what gives way first
 * Source: statics; sizes and strengths are records of their own. Example: jammerSlipLoad({ cleat: cleats.jammer, cover: { strands: 16, fibre: "polyester", wet: false } }).limitedBy → "grip"
 */
export function jammerSlipLoad({ cleat, cover, breakLoad }: JammerRope): SlipLoad {
  const { camAngle, handle, leverRatio } = cleat;
  return slipLoadOf({
    ranges: {
      frictionCoefficient: frictionRange(cover, cleat.jaw),
      plateFriction: frictionRange(cover, cleat.plate),
      camAngle,
      handle,
      leverRatio,
    },
    need: (values) => Math.tan(values.camAngle) / values.frictionCoefficient,
    grip: ({ handle: hand, leverRatio: ratio, ...values }) => jammerGrip({ ...values, preload: hand * ratio }).friction,
    stands: cleat.stands,
    coverStands: coverStandsOf(breakLoad, gripRecords.coverShare),
  });
}
