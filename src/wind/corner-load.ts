import { standardGravity } from "../quantity/constants.js";
import { within } from "../quantity/guard.js";
import { edgePull } from "./edge.js";
import { insideModel } from "./validity.js";

/** Input of the halyard load. */
export interface HalyardLoadInput {
  /** Wind load on a metre of the luff [N/m]. */
  readonly luffLoad: number;
  /** Length of the luff [m]. */
  readonly luffLength: number;
  /** Sag of the luff [m]. */
  readonly luffSag: number;
  /** Mass of the sail [kg]. */
  readonly sailMass: number;
}

/**
 * Load of the halyard at the head of a sail that is set.
 *
 *     T = sqrt((w · L² / (8 · s) + m · g)² + (w · L / 2)²)
 *
 * @param luffLoad    w, wind load on the luff [N/m], 0 to 10 000
 * @param luffLength  L [m], 0.05 to 50
 * @param luffSag     s [m], 0.2 % to 25 % of the luff
 * @param sailMass    m [kg], 0 to 100 000
 * @returns tension of the halyard at the head, below the masthead [N]
 * Valid for an upright luff that carries its own wind load: a jib or gennaker set flying. On a stay or in a track the stay or mast takes part of it, and the load is lower. The turn at the masthead is not in it.
 * Source: statics, parabolic cable and weight.
 * Example: halyardLoad({ luffLoad: 10, luffLength: 5, luffSag: 0.25, sailMass: 0 }) → 127.475
 */
export function halyardLoad({ luffLoad, luffLength, luffSag, sailMass }: HalyardLoadInput): number {
  const luff = edgePull({ edgeLoad: luffLoad, chord: luffLength, sag: luffSag });
  return Math.hypot(luff.chordTension + within("mass", sailMass) * standardGravity, luff.crossPull);
}

/** Input of the outhaul load. */
export interface OuthaulLoadInput {
  /** Wind load on a metre of the foot [N/m]. */
  readonly footLoad: number;
  /** Length of the foot [m]. */
  readonly footLength: number;
  /** Sag of the foot [m]. */
  readonly footSag: number;
  /** Tension of the leech at the clew [N]. */
  readonly leechTension: number;
  /** Angle at the clew between leech and boom [rad]. */
  readonly leechAngle: number;
}

/**
 * Load of the outhaul of a sail with a loose foot on a boom.
 *
 *     T = w · L² / (8 · s) + T_l · cos κ
 *
 * @param footLoad      w, wind load on the foot [N/m], 0 to 10 000
 * @param footLength    L [m], 0.05 to 50
 * @param footSag       s [m], 0.2 % to 25 % of the foot
 * @param leechTension  T_l, tension of the leech at the clew [N], 0 to 1 000 000
 * @param leechAngle    κ, between leech and boom at the clew [rad], 45° to 90°
 * @returns tension along the boom [N]
 * Valid for a clew whose lift is held by a strap or slide on the boom, without friction; that strap takes T_l · sin κ.
 * Source: statics, balance of forces at the clew and parabolic cable.
 * Example: outhaulLoad({ footLoad: 10, footLength: 2, footSag: 0.2, leechTension: 100, leechAngle: Math.PI / 3 }) → 75
 */
export function outhaulLoad({ footLoad, footLength, footSag, leechTension, leechAngle }: OuthaulLoadInput): number {
  const foot = edgePull({ edgeLoad: footLoad, chord: footLength, sag: footSag });
  const kappa = insideModel({
    quantity: "angle between leech and boom at the clew",
    value: within("clewAngle", leechAngle),
    unit: "rad",
    minimum: Math.PI / 4,
    maximum: Math.PI / 2,
    advice: "Measure it on the sail: 65° to 85° is usual.",
  });
  return foot.chordTension + within("tension", leechTension) * Math.cos(kappa);
}
