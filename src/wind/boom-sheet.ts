import { within } from "../quantity/guard.js";
import { insideModel } from "./validity.js";

/** Sail force in the axes of the boat, and where the boom stands. */
export interface BoomForceInput {
  /** Force ahead [N]. */
  readonly drive: number;
  /** Force to leeward [N]. */
  readonly side: number;
  /** Angle of the boom from the centreline, to leeward [rad]. */
  readonly boomAngle: number;
}

/**
 * Part of the sail force that is square to the boom and pushes it outward.
 *
 *     F_n = drive · sin δ + side · cos δ
 *
 * @param drive      force ahead [N]
 * @param side       force to leeward [N]
 * @param boomAngle  δ, of the boom from the centreline [rad], 0 to π/2
 * @returns force square to the boom [N], below zero when the boom is pushed to windward
 * Valid in plan, seen from above on an upright boat.
 * Source: statics, resolution of a force.
 * Example: forceAcrossBoom({ drive: 100, side: 200, boomAngle: 0 }) → 200
 */
export function forceAcrossBoom({ drive, side, boomAngle }: BoomForceInput): number {
  const delta = within("boomAngle", boomAngle);
  return finiteForce("drive", drive) * Math.sin(delta) + finiteForce("side force", side) * Math.cos(delta);
}

function finiteForce(quantity: string, value: number): number {
  const advice = "Give the part of a sail force in newtons.";
  return insideModel({ quantity, value, unit: "N", minimum: -1e6, maximum: 1e6, advice });
}

/** Loads on a boom and where they act, from the mast. */
interface BoomLoads {
  /** Sail force square to the boom [N]. */
  readonly forceAcross: number;
  /** Distance of that force from the mast [m]. */
  readonly forceLever: number;
  /** Distance of the sheet from the mast [m]. */
  readonly sheetLever: number;
}

/** Input of the boom sheet when the leech pull is known. */
export interface BoomSheetInput extends BoomLoads {
  /** Angle in plan between the sheet and the boom [rad]; π/2 when the sheet leaves the boom squarely. */
  readonly sheetAngle?: number;
  /** Upward pull of the leech at the clew [N]. */
  readonly leechPull: number;
  /** Distance of the clew from the mast [m]. */
  readonly clewLever: number;
  /** Part of the moment of the leech that the vang holds [-]. */
  readonly vangShare: number;
}

/** Load of a boom sheet. */
export interface BoomSheetLoad {
  /** Tension that the sail puts into the sheet where it leaves the boom, all parts together [N]. */
  readonly sheetLoad: number;
  /** Level part of the sheet load [N]. */
  readonly levelPull: number;
  /** Downward part of the sheet load [N]. */
  readonly downPull: number;
  /** Slope of the sheet below the level [rad]. */
  readonly sheetSlope: number;
}

/**
 * Load of the sheet of a boomed sail when it holds the boom in and, with the vang, the leech down.
 *
 *     level: T_h · x_s · sin g = F_n · x_c,  upright: T_v · x_s = L_v · E · (1 − vang share),  T = sqrt(T_h² + T_v²)
 *
 * @param forceAcross  F_n, sail force square to the boom [N], 0 to 1 000 000
 * @param forceLever   x_c, of that force from the mast [m], 0.000001 to 50
 * @param sheetLever   x_s, of the sheet from the mast [m], 0.05 to 50
 * @param sheetAngle   g, in plan between sheet and boom [rad], 5° to 175°, by default π/2
 * @param leechPull    L_v, upward pull of the leech at the clew [N], 0 to 1 000 000
 * @param clewLever    E, of the clew from the mast [m], 0.000001 to 50
 * @param vangShare    part of the leech's moment that the vang holds [-], 0 to 1
 * @returns sheet load, its level and downward part [N], and the slope at which the sheet must stand [rad]
 * Valid for a light boom, a luff held along the mast and a lead that may stand at the returned slope, as with a traveller; the load is that of all parts of the tackle together.
 * Source: statics, moments about the mast.
 * Example: boomSheetLoad({ forceAcross: 200, forceLever: 0.9, sheetLever: 2, leechPull: 0, clewLever: 2.5, vangShare: 0 }).sheetLoad → 90
 */
export function boomSheetLoad(input: BoomSheetInput): BoomSheetLoad {
  const { sheetAngle = Math.PI / 2, leechPull, clewLever, vangShare } = input;
  const xs = sheetLeverOf(input);
  const levelPull = levelMoment(input) / (xs * Math.sin(planAngle(sheetAngle)));
  const held = 1 - within("share", vangShare);
  const downPull = (within("tension", leechPull) * within("lever", clewLever) * held) / xs;
  return {
    sheetLoad: Math.hypot(levelPull, downPull),
    levelPull,
    downPull,
    sheetSlope: Math.atan2(downPull, levelPull),
  };
}

/** Input of the boom sheet when its lead is fixed. */
export interface FixedLeadInput extends BoomLoads {
  /** Angle in plan between the sheet and the boom [rad]; π/2 when the sheet leaves the boom squarely. */
  readonly sheetAngle?: number;
  /** Slope of the sheet below the level [rad]. */
  readonly sheetSlope: number;
}

/**
 * Load of the sheet of a boomed sail when the lead fixes the direction of the sheet.
 *
 *     T · cos(slope) · sin g · x_s = F_n · x_c,  T_v = T · sin(slope)
 *
 * @param forceAcross  F_n, sail force square to the boom [N], 0 to 1 000 000
 * @param forceLever   x_c, of that force from the mast [m], 0.000001 to 50
 * @param sheetLever   x_s, of the sheet from the mast [m], 0.05 to 50
 * @param sheetAngle   g, in plan between sheet and boom [rad], 5° to 175°, by default π/2
 * @param sheetSlope   below the level [rad], 0° to 85°
 * @returns sheet load, its level and downward part [N], and the slope [rad]
 * Valid where the boom is held in by the sheet alone; leech and vang take up whatever the downward part asks for.
 * Source: statics, moments about the mast.
 * Example: fixedLeadSheetLoad({ forceAcross: 200, forceLever: 0.9, sheetLever: 2, sheetSlope: Math.PI / 3 }).sheetLoad → 180
 */
export function fixedLeadSheetLoad(input: FixedLeadInput): BoomSheetLoad {
  const { sheetAngle = Math.PI / 2 } = input;
  const slope = insideModel({
    quantity: "slope of the sheet",
    value: within("sheetSlope", input.sheetSlope),
    unit: "rad",
    minimum: 0,
    maximum: (85 * Math.PI) / 180,
    advice: "A sheet that stands upright cannot hold the boom in.",
  });
  const levelPull = levelMoment(input) / (sheetLeverOf(input) * Math.sin(planAngle(sheetAngle)));
  const downPull = levelPull * Math.tan(slope);
  return { sheetLoad: Math.hypot(levelPull, downPull), levelPull, downPull, sheetSlope: slope };
}

function levelMoment({ forceAcross, forceLever }: BoomLoads): number {
  return within("sailForce", forceAcross) * within("lever", forceLever);
}

function sheetLeverOf({ sheetLever }: BoomLoads): number {
  return within("lever", sheetLever, 0.05);
}

function planAngle(value: number): number {
  return insideModel({
    quantity: "angle between sheet and boom, seen from above",
    value: within("sheetAngle", value),
    unit: "rad",
    minimum: (5 * Math.PI) / 180,
    maximum: (175 * Math.PI) / 180,
    advice: "A sheet that runs along the boom cannot hold it in.",
  });
}
