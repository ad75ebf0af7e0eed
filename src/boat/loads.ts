import { standardGravity } from "../quantity/constants.js";
import { ValueError } from "../quantity/errors.js";
import { type Band, bandOf } from "../sources/band.js";
import { airDensity } from "../wind/air.js";
import { apparentWind } from "../wind/apparent.js";
import { fixedLeadSheetLoad, forceAcrossBoom } from "../wind/boom-sheet.js";
import { leadSheetLoad } from "../wind/clew-sheet.js";
import { halyardLoad } from "../wind/corner-load.js";
import { edgePull, windOnEdge } from "../wind/edge.js";
import { gustLoadFactor } from "../wind/gust.js";
import { coefficientForce, type SailForce } from "../wind/sail-force.js";
import { sailRecords } from "../wind/sail-records.js";
import type { Boat, BoatLine, SailOnBoat, SheetGeometry } from "./boat.js";

/** Loads at the sail end of a line, with their ranges [N]. */
export interface LineLoads {
  /** In the design wind, between gusts. */
  readonly design: Band;
  /** In a gust of the design wind. */
  readonly gust: Band;
  /** In the wind from which the line must go out by itself; absent when nobody asks. */
  readonly light?: Band;
}

/** Winds in which a boat is looked at. */
type Weather = "design" | "light";

/**
 * Loads of a line of a boat: from the sail, or as the file states them.
 *
 * @param boat  boat
 * @param line  one of its lines
 * @returns loads in the design wind, in its gusts and in light air, with their ranges [N]
 * @throws ValueError, OutsideModelError where the models of the sail refuse its numbers
 */
export function lineLoads(boat: Boat, { load }: BoatLine): LineLoads {
  const { conditions, limits } = boat;
  const inGust = gustLoadFactor(conditions);
  const inRunOutWind = ((limits.runOutWind ?? conditions.lightWind) / conditions.lightWind) ** 2;
  if (load.kind === "stated") {
    const spread = load.spread ?? 0;
    const band = (value: number): Band => ({ value, low: (1 - spread) * value, high: (1 + spread) * value });
    return {
      design: band(load.design),
      gust: band(load.design * inGust),
      ...(load.light !== undefined && { light: band(load.light * inRunOutWind) }),
    };
  }
  const { sail: name, corner, share = 1 } = load;
  const sail = boat.sails[name]!;
  const at = (weather: Weather) => scaled(cornerLoad(boat, sail, corner, weather), share);
  const design = at("design");
  const loads = { design, gust: scaled(design, inGust) };
  if (corner === "sheet") return { ...loads, light: scaled(at("light"), inRunOutWind) };
  // A halyard goes out under the weight of its sail, when the wind is out of it.
  const weight = share * (sail.mass ?? 0) * standardGravity;
  return sail.mass === undefined ? loads : { ...loads, light: { value: weight, low: weight, high: weight } };
}

function scaled({ value, low, high }: Band, factor: number): Band {
  return { value: factor * value, low: factor * low, high: factor * high };
}

function windOn({ conditions }: Boat, { course, boatSpeed }: SailOnBoat, weather: Weather) {
  const windSpeed = weather === "design" ? conditions.designWind : conditions.lightWind;
  return apparentWind({ windSpeed, trueWindAngle: course, boatSpeed: boatSpeed[weather] });
}

function cornerLoad(boat: Boat, sail: SailOnBoat, corner: "sheet" | "halyard", weather: Weather): Band {
  const wind = windOn(boat, sail, weather);
  const geometry = sail[corner];
  if (geometry === undefined)
    throw new ValueError({
      quantity: `load of the ${corner}`,
      value: `a sail without "${corner}"`,
      allowed: `a sail whose geometry for the ${corner} is given, or a stated load`,
      advice: `Add "${corner}" to the sail.`,
    });
  if ("kind" in geometry && geometry.kind === "measured") {
    const load = geometry.load * (wind.apparentWindSpeed / geometry.at) ** 2;
    return { value: load, low: load, high: load };
  }
  const { lift, drag } = sailRecords({ edition: sail.edition, sail: sail.table, ...wind });
  const { airTemperature: temperature, airPressure: pressure } = boat.conditions;
  const air = { airDensity: airDensity({ temperature, pressure }), sailArea: sail.area };
  return bandOf({ lift, drag }, (values) => {
    const force = coefficientForce({
      ...wind,
      ...air,
      liftCoefficient: values.lift,
      dragCoefficient: Math.max(0, values.drag),
    });
    if ("kind" in geometry) return sheetOf(geometry, force);
    const { luff, luffSag, luffShare } = geometry;
    const luffLoad = windOnEdge({ share: luffShare, sailForce: force.sailForce, edgeLength: luff });
    return halyardLoad({ luffLoad, luffLength: luff, luffSag, sailMass: sail.mass ?? 0 });
  });
}

function sheetOf(geometry: Exclude<SheetGeometry, { kind: "measured" }>, force: SailForce): number {
  if (geometry.kind === "boom") {
    const forceAcross = Math.max(0, forceAcrossBoom({ ...force, boomAngle: geometry.boomAngle }));
    return fixedLeadSheetLoad({ ...geometry, forceAcross }).sheetLoad;
  }
  const { leech, leechSag, leechShare, clewAngle, leadAngle } = geometry;
  const edgeLoad = windOnEdge({ share: leechShare, sailForce: force.sailForce, edgeLength: leech });
  const { endTension } = edgePull({ edgeLoad, chord: leech, sag: leechSag });
  return leadSheetLoad({ leechTension: endTension, clewAngle, leadAngle }).sheetLoad;
}
