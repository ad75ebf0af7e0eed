import { splicing } from "../materials/splicing.js";
import { OutsideModelError, ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { figures } from "../quantity/print.js";
import type { Verdict } from "../quantity/verdict.js";
import { type Band, bandOf } from "../sources/band.js";
import { carryingDiameter, type RopeMake, ropeLinearDensity } from "./make.js";
import { wetLinearDensity } from "./wet-mass.js";

/** A line that is covered where it is held and thin where it runs. */
export interface TaperPlan {
  /** Rope with its cover, for cleat and hand. */
  readonly covered: RopeMake;
  /** What runs: the stripped core of the same rope, or a thinner line that is spliced on. */
  readonly bare: RopeMake;
  readonly join: "strip" | "splice";
  /** Rope from the sail end to cleat or hand, hauled in as far as it ever comes [m]; inside a purchase all its parts count. */
  readonly reach: number;
  /** Travel of the sail end from hauled in to let out [m]. */
  readonly travel: number;
  /** Metres of rope through the cleat for a metre at the sail end [-]. */
  readonly velocityRatio: number;
  /** Covered rope that must stand before the cleat when all is hauled in: jaws, a hand's breadth, a ratchet [m]. */
  readonly clearance: number;
  /** Covered rope behind the cleat when all is let out [m]. */
  readonly tail: number;
}

/** Where the taper sits, what to cut, and what it saves. */
export interface Taper {
  /** Length of the whole line, from the sail end [m]. */
  readonly lineLength: number;
  /** Thin part from the sail end to where the cover begins to thicken [m]. */
  readonly bareLength: number;
  /** Length of the join: thinned cover or buried splice [m]. */
  readonly joinLength: Band;
  /** Distance from the join's thick end to the cleat, towards the sail [m]. */
  readonly joinFromCleat: { readonly hauledIn: number; readonly letOut: number };
  /** Rope to cut [m]. */
  readonly cut: { readonly covered: number; readonly bare: number };
  /** Mass saved over a line covered all along [kg], dry and wet. */
  readonly saved: { readonly dry: Band; readonly wet: Band };
  readonly splices: number;
  /** Time to make it [s]. */
  readonly time: Band;
}

/**
 * Places the taper of a line so that it reaches neither cleat nor hand at either end of travel.
 *
 *     at the cleat: hauled in s = reach, let out s = reach + VR · travel
 *     cover begins at s_c = reach − clearance, the join ends there; line length = reach + VR · travel + tail
 *
 * @param plan  ropes, lengths [m], velocity ratio [-]
 * @returns lengths [m], cut list [m], mass saved [kg], splices [-] and time [s]
 * @throws ValueError when a length is not above zero, or when the thin rope is not thinner than the covered one
 * @throws OutsideModelError when the line is too short for the join
 * Valid for one join; a line that is held by two hands far apart needs more cover: give it as clearance.
 * Source: common practice; bury lengths and time are records. Example: taper({ covered: { fibre: "hmpe", construction: "coveredCore", coverFibre: "polyester", diameter: 0.005 }, bare: { fibre: "hmpe", construction: "bareBraid", diameter: 0.002 }, join: "splice", reach: 6, travel: 0.3, velocityRatio: 4, clearance: 0.3, tail: 0.5 }).joinFromCleat.letOut → 1.5
 */
export function taper(plan: TaperPlan): Taper {
  const { covered, bare, join } = plan;
  const reach = within("lineLength", plan.reach);
  const through = within("velocityRatio", plan.velocityRatio) * within("lineLength", plan.travel);
  const clearance = within("lineLength", plan.clearance);
  const tail = within("lineLength", plan.tail);
  if (!(bare.diameter < covered.diameter))
    throw new ValueError({
      quantity: "thin part of a taper",
      value: `${1000 * bare.diameter} mm beside a covered part of ${1000 * covered.diameter} mm`,
      allowed: "thinner than the covered part",
      advice: "Give the diameter of the stripped core or of the thinner line.",
    });
  const joinLength = joinOf(plan);
  const coverStart = reach - clearance;
  if (joinLength.high >= coverStart)
    throw new OutsideModelError({
      quantity: "length for a taper",
      value: `${figures(coverStart)} m from the sail end to the clearance before the cleat`,
      allowed: `more than ${figures(joinLength.high)} m, the length of the join`,
      advice: "Leave the line covered, or splice the eye into the covered rope.",
    });
  const lineLength = reach + through + tail;
  const bareLength = coverStart - joinLength.value;
  const extra = join === "splice" ? joinLength.value : 0;
  const splices = join === "splice" ? 2 : 1;
  const saved = (mass: (make: RopeMake) => Band) =>
    bandOf({ thick: mass(covered), thin: mass(bare) }, ({ thick, thin }) => bareLength * (thick - thin) - extra * thin);
  return {
    lineLength,
    bareLength,
    joinLength,
    joinFromCleat: { hauledIn: clearance, letOut: clearance + through },
    cut: {
      covered: join === "splice" ? lineLength - bareLength : lineLength,
      bare: join === "splice" ? bareLength + 2 * extra : 0,
    },
    saved: { dry: saved(ropeLinearDensity), wet: saved(wetLinearDensity) },
    splices,
    time: bandOf({ one: splicing.taperTime }, ({ one }) => splices * one),
  };
}

/** Length of the join: a cover is thinned, a thinner line is buried in the core. */
function joinOf({ covered, bare, join }: TaperPlan): Band {
  if (join === "strip") return bandOf({ taper: splicing.coverTaper }, (values) => values.taper * covered.diameter);
  return bandOf({ bury: splicing.bury }, ({ bury }) => bury * bare.diameter);
}

/**
 * Whether the join of a taper stays clear of the hardware that it must not reach.
 *
 * @param plan  ropes, lengths [m], velocity ratio [-]
 * @param firstBlock  distance from the cleat to the first block that the thick end does not fit through, along the line [m]
 * @returns verdict; where it fails, the longest travel or the shortest clearance that passes
 * @throws ValueError, OutsideModelError as the taper does
 * Source: common practice.
 */
export function taperVerdict(plan: TaperPlan, firstBlock: number): Verdict {
  const { joinFromCleat } = taper(plan);
  const room = within("lineLength", firstBlock) - joinFromCleat.letOut;
  const subject = `join of ${figures(1000 * plan.covered.diameter)} mm to ${figures(1000 * plan.bare.diameter)} mm`;
  const reason = `let out, the thick end stands ${figures(joinFromCleat.letOut)} m from the cleat; the first block is ${figures(firstBlock)} m away`;
  if (room >= 0) return { subject, outcome: "enough", reason };
  const clearance = plan.clearance + room;
  const least = joinOf(plan).value;
  const change =
    clearance >= least
      ? `start the cover ${figures(clearance)} m before the cleat instead of ${figures(plan.clearance)} m`
      : `shorten the travel to ${figures((firstBlock - plan.clearance) / plan.velocityRatio)} m, or move the block ${figures(-room)} m further from the cleat`;
  return { subject, outcome: "not enough", reason, change };
}

/**
 * Diameter of the core that is left when the cover of a line is stripped off.
 *
 * @param covered  rope with a cover
 * @returns diameter with its range [m]
 * @throws ValueError for a rope without a cover
 * Source: common practice; the share is a record. Example: strippedCore({ fibre: "hmpe", construction: "coveredCore", coverFibre: "polyester", diameter: 0.005 }).value → 0.00325
 */
export function strippedCore(covered: RopeMake): Band {
  if (covered.coverFibre === undefined)
    throw new ValueError({
      quantity: "rope to strip",
      value: "no cover",
      allowed: "a rope with a cover",
      advice: "Splice a thinner line on instead.",
    });
  return carryingDiameter(covered);
}
