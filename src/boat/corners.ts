import type { Band } from "../sources/band.js";
import { airDensity } from "../wind/air.js";
import type { ApparentWind } from "../wind/apparent.js";
import { fixedLeadSheetLoad, forceAcrossBoom } from "../wind/boom-sheet.js";
import { leadSheetLoad } from "../wind/clew-sheet.js";
import { halyardLoad } from "../wind/corner-load.js";
import { edgePull, windOnEdge } from "../wind/edge.js";
import { halyardOf, outhaulOf, type SailBalance, sailBalance, tackOf } from "../wind/sail-balance.js";
import { coefficientForce, type SailForce } from "../wind/sail-force.js";
import { sailRecords } from "../wind/sail-records.js";
import { sailSet } from "../wind/sail-set.js";
import type { Conditions, SailCorner, SailOnBoat, SheetGeometry } from "./boat.js";

/** Loads of what holds a sail [N], as far as the file says enough for them, and the balance that they come from. */
export type Corners = Partial<Record<SailCorner, number>> & { readonly balance?: SailBalance };

/** Values of uncertain numbers by their names. */
type Values = Readonly<Record<string, number>>;

/** A sail in a wind: the numbers that are not sure, and its loads for any values of them. */
export interface SailInWind {
  /** Nothing where the file does not say enough for the load of that corner. */
  readonly ranges: (corner: SailCorner) => Readonly<Record<string, Band>> | undefined;
  readonly loads: (values: Values) => Corners;
}

/** Ranges of what the file says of a sail where nobody measured it. */
const unmeasured = {
  boom: ["lever", "steepness"],
  clew: ["sag", "share", "lead"],
  measured: ["reading"],
} as const satisfies Record<SheetGeometry["kind"], readonly (keyof typeof sailSet)[]>;

const set = ["luffOverLeech", "footOverLeech", "vangShare"] as const;

/** One set of forces for the corners of a sail. */
export function cornersOf(sail: SailOnBoat, wind: ApparentWind, air: Conditions): SailInWind {
  const { lift, drag } = sailRecords({ edition: sail.edition, sail: sail.table, ...wind });
  const { airTemperature: temperature, airPressure: pressure } = air;
  const onSail = { ...wind, airDensity: airDensity({ temperature, pressure }), sailArea: sail.area };
  const forceAt = (values: Values) =>
    coefficientForce({ ...onSail, liftCoefficient: values.lift!, dragCoefficient: Math.max(0, values.drag!) });
  const pick = (names: readonly (keyof typeof sailSet)[]) =>
    Object.fromEntries(names.map((name) => [name, bare(sailSet[name])]));
  return {
    ranges: (corner) => {
      const { sheet, edges, halyard } = sail;
      const own = { lift, drag, ...(sheet === undefined ? {} : pick(unmeasured[sheet.kind])) };
      if (corner === "sheet") return sheet === undefined ? undefined : own;
      if (corner === "halyard" && edges === undefined && halyard !== undefined)
        return { ...own, ...pick(["sag", "share"]) };
      return sheet === undefined || edges === undefined ? undefined : { ...own, ...pick(set) };
    },
    loads: (values) => loadsAt(sail, wind, forceAt(values), values),
  };
}

function bare({ value, low, high }: Band): Band {
  return { value, low, high };
}

/** Loads for one value of everything; what is not asked about keeps its middle. */
function loadsAt(sail: SailOnBoat, wind: ApparentWind, force: SailForce, values: Values): Corners {
  const one = (name: keyof typeof sailSet) => values[name] ?? sailSet[name].value;
  const { sheet, edges, halyard } = sail;
  const held = sheet === undefined ? undefined : sheetAt(sail, sheet, wind, force, one);
  if (edges === undefined || held === undefined) {
    const flying =
      halyard === undefined
        ? undefined
        : halyardLoad({
            luffLoad: windOnEdge({
              share: Math.min(1, halyard.luffShare * one("share")),
              sailForce: force.sailForce,
              edgeLength: halyard.luff,
            }),
            luffLength: halyard.luff,
            luffSag: halyard.luffSag * one("sag"),
            sailMass: sail.mass ?? 0,
          });
    return { ...(held && { sheet: held.sheet }), ...(flying !== undefined && { halyard: flying }) };
  }
  const luffOn = sail.luffOn ?? (sheet?.kind === "boom" ? "mast" : "flying");
  const luff =
    luffOn === "flying" && halyard !== undefined
      ? edgePull({
          edgeLoad: windOnEdge({
            share: Math.min(1, halyard.luffShare * one("share")),
            sailForce: force.sailForce,
            edgeLength: edges.luff,
          }),
          chord: edges.luff,
          sag: halyard.luffSag * one("sag"),
        }).chordTension
      : one("luffOverLeech") * held.leech;
  const leechShare = Math.min(0.6, held.leechShare);
  const balance = sailBalance({
    lengths: edges,
    pulls: { luff, leech: held.leech, foot: held.foot ?? one("footOverLeech") * held.leech },
    windForce: force.sailForce,
    shares: { luff: Math.min(1 - leechShare, halyard?.luffShare ?? 0.3), leech: leechShare },
    sailMass: sail.mass ?? 0,
    luffOn,
  });
  return {
    sheet: held.sheet,
    halyard: halyardOf(balance, luffOn),
    tack: tackOf(balance, luffOn),
    outhaul: outhaulOf(balance),
    balance,
  };
}

/** The sheet, and the pull of leech and foot that goes with it [N]. */
interface HeldClew {
  readonly sheet: number;
  readonly leech: number;
  readonly foot?: number;
  readonly leechShare: number;
}

/** Part of the sail force that the leech of a boomed sail carries: its halves go to head and clew, whatever it is. */
const boomedShare = 0.4;

/** Steepest sheet that still holds the boom in [rad]. */
const steepest = (84 / 180) * Math.PI;

function sheetAt(
  { edges }: SailOnBoat,
  sheet: SheetGeometry,
  wind: ApparentWind,
  force: SailForce,
  one: (name: keyof typeof sailSet) => number,
): HeldClew {
  if (sheet.kind === "measured") {
    const load = sheet.load * one("reading") * (wind.apparentWindSpeed / sheet.at) ** 2;
    return { sheet: load, leech: load, leechShare: boomedShare };
  }
  if (sheet.kind === "boom") {
    const forceAcross = Math.max(0, forceAcrossBoom({ ...force, boomAngle: sheet.boomAngle }));
    const { sheetLoad, downPull } = fixedLeadSheetLoad({
      forceAcross,
      forceLever: sheet.forceLever * one("lever"),
      sheetLever: sheet.sheetLever,
      sheetSlope: Math.min(steepest, Math.atan(one("steepness") * Math.tan(sheet.sheetSlope))),
    });
    if (edges === undefined) return { sheet: sheetLoad, leech: 0, leechShare: boomedShare };
    const { luff, leech, foot } = edges;
    const steep = (luff ** 2 + leech ** 2 - foot ** 2) / (2 * luff * leech);
    const lift = (downPull * sheet.sheetLever) / (foot * (1 - one("vangShare")));
    return { sheet: sheetLoad, leech: lift / Math.max(0.3, steep), leechShare: boomedShare };
  }
  const leechShare = Math.min(1, sheet.leechShare * one("share"));
  const edgeLoad = windOnEdge({ share: leechShare, sailForce: force.sailForce, edgeLength: sheet.leech });
  const sag = Math.min(0.25 * sheet.leech, sheet.leechSag * one("sag"));
  const { endTension, chordTension } = edgePull({ edgeLoad, chord: sheet.leech, sag });
  const leadAngle = Math.min(sheet.clewAngle, sheet.leadAngle * one("lead"));
  const { sheetLoad, footTension } = leadSheetLoad({ leechTension: endTension, clewAngle: sheet.clewAngle, leadAngle });
  return { sheet: sheetLoad, leech: chordTension, foot: footTension, leechShare };
}
