import { gripRecords } from "../materials/cleats.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { leastOf } from "./slip-load.js";

/** Ropes that a cleat is made for, and what its maker allows. */
export interface CleatSize {
  /** [m] */
  readonly thinnest: number;
  /** [m] */
  readonly thickest: number;
  /** Load that the maker allows [N]; absent: judged from the size. */
  readonly ratedLoad?: number;
}

/** Thickest rope of the cleats whose loads stand in the records [m]. */
const recordedSize = 0.008;

/**
 * Load that a cleat of a size stands.
 *
 *     T_cleat = r · T_rated, or where nobody rated it T_8 · (d_max / 8 mm)²
 *
 * @param stands  T_8, load that a cleat for ropes up to 8 mm stands, with its range [N]
 * @param size  thickest rope d_max [m], and rated load T_rated [N] where there is one
 * @returns load with its range [N]
 * @throws ValueError for an impossible size
 * Valid for cleats of one make: sections of jaws, pins and screws grow with the square of their size, which is a modelling choice of this library.
 * Source: common practice: the rated load decides. Example: cleatStands({ value: 1500, low: 700, high: 3500 }, { thinnest: 0.004, thickest: 0.016 }).value → 6000
 */
export function cleatStands(stands: Band, { thickest, ratedLoad }: CleatSize): Band {
  const size = within("ropeDiameter", thickest);
  if (ratedLoad === undefined) return bandOf({ stands }, (values) => values.stands * (size / recordedSize) ** 2);
  const rated = within("workingLoad", ratedLoad);
  return bandOf({ ratedHold: gripRecords.ratedHold }, ({ ratedHold }) => ratedHold * rated);
}

/** Jaws and the rope between them. */
export interface BittenRope {
  /** Length of a jaw over the thickest rope of the cleat, with its range [-]. */
  readonly jawShare: Band;
  readonly size: CleatSize;
  readonly ropeDiameter: number;
  /** Break load of the rope with its range [N]; absent: asked of the area alone. */
  readonly breakLoad?: Band | undefined;
}

/**
 * Load that a cover stands between two jaws.
 *
 *     T_cover = min(2 · p · s · d_max · d, b · F_b)
 *
 * @param jawShare  s, length of a jaw over the thickest rope of the cleat [-]
 * @param size  thickest rope d_max [m]
 * @param ropeDiameter  d [m]
 * @param breakLoad  F_b of the rope, with its range [N]
 * @returns load with its range [N]; p and b are records: load on the bitten area, and part of the break load
 * @throws ValueError for an impossible diameter
 * Valid for jaws that bite along their whole length; that a cover stands a load by area is a modelling choice of this library.
 * Source: common practice: a longer jaw spares the cover. Example: coverStands({ jawShare: { value: 2, low: 2, high: 2 }, size: { thinnest: 0.004, thickest: 0.01 }, ropeDiameter: 0.005 }).value → 2000
 */
export function coverStands({ jawShare, size, ropeDiameter, breakLoad }: BittenRope): Band {
  const { bite, coverShare } = gripRecords;
  const area = 2 * within("ropeDiameter", size.thickest) * within("ropeDiameter", ropeDiameter);
  const byArea = bandOf({ bite, jawShare }, (values) => values.bite * values.jawShare * area);
  if (breakLoad === undefined) return byArea;
  return leastOf({ byArea, byShare: bandOf({ breakLoad, coverShare }, (one) => one.coverShare * one.breakLoad) });
}

/**
 * Diameter below which a rope is not held, because jaws meet or walls end.
 *
 *     d_min = ρ · d_thinnest
 *
 * @param size  thinnest rope that the cleat is made for [m]
 * @returns diameter with its range [m]; ρ is a record
 * @throws ValueError for an impossible size
 * Source: common practice. Example: leastHeld({ thinnest: 0.005, thickest: 0.008 }).value → 0.004
 */
export function leastHeld({ thinnest }: CleatSize): Band {
  const label = within("ropeDiameter", thinnest);
  return bandOf({ reach: gripRecords.reach }, ({ reach }) => reach * label);
}
