import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { edgePull } from "./edge.js";
import { insideModel } from "./validity.js";

/** A place or a direction on the boat: ahead, to leeward and up, from any origin [m] or without unit. */
export interface BoatVector {
  readonly ahead: number;
  readonly lee: number;
  readonly up: number;
}

/** Corners and edges of a sail that is held at three corners. */
export interface ClewSheetInput {
  /** Upper corner [m]. */
  readonly head: BoatVector;
  /** Lower fore corner [m]. */
  readonly tack: BoatVector;
  /** Lower aft corner, where the sheet is bent on [m]. */
  readonly clew: BoatVector;
  /** Wind load on a metre of the leech [N/m]. */
  readonly leechLoad: number;
  /** Sag of the leech [m]. */
  readonly leechSag: number;
  /** Wind load on a metre of the foot [N/m]. */
  readonly footLoad: number;
  /** Sag of the foot [m]. */
  readonly footSag: number;
}

/** Load of a sheet at a free clew. */
export interface ClewSheetLoad {
  /** Tension in the sheet [N]. */
  readonly sheetLoad: number;
  /** Direction in which the sheet must pull on the clew, length 1 [-]. */
  readonly sheetDirection: BoatVector;
  /** Tension of the leech at the clew [N]. */
  readonly leechTension: number;
  /** Tension of the foot at the clew [N]. */
  readonly footTension: number;
}

/**
 * Sheet load of a jib or gennaker from the pull of leech and foot at the clew.
 *
 *     T_sheet = −(H_l · u_l + H_f · u_f + (w_l · L_l / 2 + w_f · L_f / 2) · n)
 *
 * @param head, tack, clew  corners of the sail: ahead, to leeward, up [m]
 * @param leechLoad         w_l, wind load on the leech [N/m], 0 to 10 000
 * @param leechSag          s_l [m], 0.2 % to 25 % of the leech
 * @param footLoad          w_f, wind load on the foot [N/m], 0 to 10 000
 * @param footSag           s_f [m], 0.2 % to 25 % of the foot
 * @returns sheet load and the tensions of leech and foot at the clew [N], and the direction in which the sheet must pull
 * Valid for a sail whose cloth pulls on the clew through leech and foot only, both sagging square to the plane of the corners, to leeward; the direction is solved, so put the lead there. A load of zero has the direction of the bisector.
 * Source: statics, balance of forces at the clew and parabolic cable.
 * Example: clewSheetLoad({ head: { ahead: 0, lee: 0, up: 5 }, tack: { ahead: 2, lee: 0, up: 0 }, clew: { ahead: 0, lee: 0, up: 0 }, leechLoad: 10, leechSag: 0.25, footLoad: 0, footSag: 0.1 }).sheetLoad → 127.475
 */
export function clewSheetLoad(input: ClewSheetInput): ClewSheetLoad {
  const toHead = between(checked("clew", input.clew), checked("head", input.head));
  const toTack = between(input.clew, checked("tack", input.tack));
  const lee = leeNormal(toHead, toTack);
  const leech = edgePull({ edgeLoad: input.leechLoad, chord: size(toHead), sag: input.leechSag });
  const foot = edgePull({ edgeLoad: input.footLoad, chord: size(toTack), sag: input.footSag });
  const pull = sum(
    times(toHead, leech.chordTension / size(toHead)),
    times(toTack, foot.chordTension / size(toTack)),
    times(lee, leech.crossPull + foot.crossPull),
  );
  const bisector = sum(times(toHead, 1 / size(toHead)), times(toTack, 1 / size(toTack)));
  const along = size(pull) > leastPull ? pull : bisector;
  return {
    sheetLoad: size(pull),
    sheetDirection: times(along, -1 / size(along)),
    leechTension: leech.endTension,
    footTension: foot.endTension,
  };
}

/** Input of the sheet load at a given lead, in the plane of the sail. */
export interface LeadAngleInput {
  /** Tension of the leech at the clew [N]. */
  readonly leechTension: number;
  /** Angle at the clew between leech and foot [rad]. */
  readonly clewAngle: number;
  /** Angle at the clew between the foot and the sheet carried on into the sail [rad]. */
  readonly leadAngle: number;
}

/** Sheet load and foot tension at a given lead. */
export interface LeadAngleLoad {
  /** Tension in the sheet [N]. */
  readonly sheetLoad: number;
  /** Tension of the foot at the clew [N]. */
  readonly footTension: number;
}

/**
 * Sheet load of a jib or gennaker for a lead that is given, from the tension of its leech.
 *
 *     T_sheet = T_l · sin κ / sin φ,  T_f = T_l · sin(κ − φ) / sin φ
 *
 * @param leechTension  T_l, tension of the leech at the clew [N], 0 to 1 000 000
 * @param clewAngle     κ, between leech and foot at the clew [rad], 20° to 160°
 * @param leadAngle     φ, between the foot and the sheet carried on into the sail [rad], 5° up to κ
 * @returns sheet load and tension of the foot [N]
 * Valid in the plane of the sail at the clew; the foot takes what the lead asks for: the whole at a low φ, nothing at φ = κ.
 * Source: statics, triangle of forces at the clew.
 * Example: leadSheetLoad({ leechTension: 100, clewAngle: Math.PI / 2, leadAngle: Math.PI / 4 }).sheetLoad → 141.42
 */
export function leadSheetLoad({ leechTension, clewAngle, leadAngle }: LeadAngleInput): LeadAngleLoad {
  const tension = within("tension", leechTension);
  const kappa = insideModel({
    quantity: "angle between leech and foot at the clew",
    value: within("clewAngle", clewAngle),
    unit: "rad",
    minimum: (20 * Math.PI) / 180,
    maximum: (160 * Math.PI) / 180,
    advice: "Measure it on the sail: 60° to 100° is usual.",
  });
  const phi = insideModel({
    quantity: "angle between the foot and the line of the sheet",
    value: within("clewAngle", leadAngle),
    unit: "rad",
    minimum: (5 * Math.PI) / 180,
    maximum: kappa,
    advice: "The line of the sheet must run into the sail between foot and leech, or one of them goes slack.",
  });
  return {
    sheetLoad: (tension * Math.sin(kappa)) / Math.sin(phi),
    footTension: (tension * Math.sin(kappa - phi)) / Math.sin(phi),
  };
}

/** Below this pull [N] the sheet is slack and its direction is that of the bisector. */
const leastPull = 1e-9;

function checked(corner: string, { ahead, lee, up }: BoatVector): BoatVector {
  if ([ahead, lee, up].every((x) => Math.abs(x) <= 100)) return { ahead, lee, up };
  throw new ValueError({
    quantity: `place of the ${corner}`,
    value: `ahead ${ahead} m, lee ${lee} m, up ${up} m`,
    allowed: "three finite numbers from -100 m to 100 m",
    advice: "Give the corners of the sail in metres from one origin.",
  });
}

/** Unit vector square to the plane of the corners, on its lee side; ahead where that plane stands athwart. */
function leeNormal(a: BoatVector, b: BoatVector): BoatVector {
  const normal = {
    ahead: a.lee * b.up - a.up * b.lee,
    lee: a.up * b.ahead - a.ahead * b.up,
    up: a.ahead * b.lee - a.lee * b.ahead,
  };
  if (!(size(normal) > 1e-6 * size(a) * size(b))) {
    throw new ValueError({
      quantity: "corners of the sail",
      value: "three points on one line",
      allowed: "a triangle",
      advice: "Give head, tack and clew at three different places.",
    });
  }
  const side = normal.lee !== 0 ? normal.lee : normal.ahead;
  return times(normal, Math.sign(side || 1) / size(normal));
}

function between(from: BoatVector, to: BoatVector): BoatVector {
  return { ahead: to.ahead - from.ahead, lee: to.lee - from.lee, up: to.up - from.up };
}

function times({ ahead, lee, up }: BoatVector, factor: number): BoatVector {
  return { ahead: ahead * factor, lee: lee * factor, up: up * factor };
}

function sum(...parts: readonly BoatVector[]): BoatVector {
  return parts.reduce((a, b) => ({ ahead: a.ahead + b.ahead, lee: a.lee + b.lee, up: a.up + b.up }));
}

function size({ ahead, lee, up }: BoatVector): number {
  return Math.hypot(ahead, lee, up);
}
