import type { BoatVector, ClewSheetInput } from "../wind/clew-sheet.js";
import { formulas } from "./catalogue.js";
import { formula } from "./formula.js";
import type { WorkedInput } from "./symbol-value.js";
import { worked } from "./worked.js";
import type { Working } from "./working.js";

/** A sail held at three corners, and the wind on it. */
export interface FreeClewInput extends Omit<ClewSheetInput, "leechLoad" | "footLoad"> {
  /** Force of the wind on the sail [N]. */
  readonly sailForce: WorkedInput;
  /** Part of it that each edge carries [-]; a third is usual for a sail held at three corners. */
  readonly share: number;
  /** Lengths along which leech and foot carry it [m]. */
  readonly leech: number;
  readonly foot: number;
}

const loadAtClew = formula({
  id: "clew-of-gennaker",
  title: "Sheet load at a free clew",
  text: "sqrt(leechPull^2 + footPull^2 + 2 * leechPull * footPull * cos(clewAngle) + (leechLoad * leech / 2 + footLoad * foot / 2)^2)",
  symbols: {
    leechPull: { quantity: "tension", sign: "H_l", words: "pull of the leech along its corners" },
    footPull: { quantity: "tension", sign: "H_f", words: "pull of the foot along its corners" },
    clewAngle: { quantity: "clewAngle", words: "angle at the clew between leech and foot" },
    leechLoad: { quantity: "edgeLoad", sign: "w_l", words: "wind load on the leech" },
    leech: { quantity: "lineLength", sign: "L_l", words: "length of the leech" },
    footLoad: { quantity: "edgeLoad", sign: "w_f", words: "wind load on the foot" },
    foot: { quantity: "lineLength", sign: "L_f", words: "length of the foot" },
  },
  result: "sheetLoad",
  source: "statics",
  valid: "cloth that pulls on the clew through leech and foot",
  mirrors: "clewSheetLoad",
});

const axes = ["ahead", "lee", "up"] as const;
const between = (one: BoatVector, other: BoatVector) => axes.map((axis) => other[axis] - one[axis]);

/**
 * The working of the sheet load of a sail held at three corners, such as a gennaker: wind on its edges, their pull on the clew.
 *
 *     W² = H_l² + H_f² + 2 H_l H_f cos γ + (w_l L_l / 2 + w_f L_f / 2)²
 *
 * @param sail  corners [m], lengths [m] and sags [m] of leech and foot, force of the wind [N], part of it on each edge [-]
 * @returns the working of the sheet load [N]
 * @throws OutsideModelError for corners that make no clew
 * Valid where leech and foot alone pull on the clew.
 */
export function freeClewWorking(sail: FreeClewInput): Working {
  const { head, tack, clew, leechSag, footSag, sailForce, share } = sail;
  const [toHead, toTack] = [between(clew, head), between(clew, tack)];
  const [leech, foot] = [Math.hypot(...toHead), Math.hypot(...toTack)];
  const leechLoad = worked(formulas.windOnEdge, { share, sailForce, lineLength: sail.leech });
  const footLoad = worked(formulas.windOnEdge, { share, sailForce, lineLength: sail.foot });
  return worked(loadAtClew, {
    leechPull: worked(formulas.edgeTension, { edgeLoad: leechLoad, lineLength: leech, sag: leechSag }),
    footPull: worked(formulas.edgeTension, { edgeLoad: footLoad, lineLength: foot, sag: footSag }),
    clewAngle: Math.acos(toHead.reduce((sum, one, axis) => sum + one * toTack[axis]!, 0) / leech / foot),
    leechLoad,
    leech,
    footLoad,
    foot,
  });
}
