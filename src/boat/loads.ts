import { standardGravity } from "../quantity/constants.js";
import { ValueError } from "../quantity/errors.js";
import { figures } from "../quantity/print.js";
import { type Band, bandOf } from "../sources/band.js";
import { apparentWind } from "../wind/apparent.js";
import type { Boat, BoatLine, LoadSource, SailCorner, SailOnBoat } from "./boat.js";
import { type Corners, cornersOf } from "./corners.js";

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
type Weather = "design" | "gust" | "light";

/**
 * Loads of a line of a boat: from the sail, or as the file states them.
 *
 * A gust is put on the true wind, and the wind on board is worked out again at the speed that the boat has; only what the wind makes
 * grows in it.
 *
 * @param boat  boat
 * @param line  one of its lines
 * @returns loads in the design wind, in its gusts and in light air, with their ranges [N]
 * @throws ValueError, OutsideModelError where the models of the sail refuse its numbers
 */
export function lineLoads(boat: Boat, { kind, load }: BoatLine): LineLoads {
  const { conditions, limits } = boat;
  const inRunOutWind = ((limits.runOutWind ?? conditions.lightWind) / conditions.lightWind) ** 2;
  if (load.kind === "stated") return statedLoads(boat, kind, load, inRunOutWind);
  const { sail: name, corner, share = 1, lock = false } = load;
  const sail = boat.sails[name]!;
  const weight = exact(share * (sail.mass ?? 0) * standardGravity);
  // A lock carries the set sail: the line only hoists it.
  if (lock) return { design: weight, gust: weight, light: weight };
  const at = (weather: Weather) => scaled(cornerLoad(boat, sail, corner, weather), share);
  const loads = { design: at("design"), gust: at("gust") };
  if (corner === "sheet") return { ...loads, light: scaled(at("light"), inRunOutWind) };
  // A halyard goes out under the weight of its sail, when the wind is out of it; tack and outhaul are eased with the sail full.
  if (corner !== "halyard") return { ...loads, light: scaled(at("light"), inRunOutWind) };
  return sail.mass === undefined ? loads : { ...loads, light: weight };
}

function statedLoads(
  boat: Boat,
  kind: BoatLine["kind"],
  load: Extract<LoadSource, { kind: "stated" }>,
  inRunOutWind: number,
): LineLoads {
  const spread = load.spread ?? 0;
  const grows = load.grows ?? (kind === "sheet" || kind === "vang" ? "wind" : "set");
  const band = (value: number): Band => ({ value, low: (1 - spread) * value, high: (1 + spread) * value });
  return {
    design: band(load.design),
    gust: band(load.design * (grows === "wind" ? gustOnBoard(boat) : 1)),
    ...(load.light !== undefined && { light: band(load.light * inRunOutWind) }),
  };
}

/** Load that the wind makes in a gust over that between gusts [-]: on the course where it grows most. */
export function gustOnBoard(boat: Boat): number {
  const growth = Object.values(boat.sails).map(
    (sail) => (windOn(boat, sail, "gust").apparentWindSpeed / windOn(boat, sail, "design").apparentWindSpeed) ** 2,
  );
  return growth.length === 0 ? boat.conditions.gustFactor ** 2 : Math.max(...growth);
}

function exact(value: number): Band {
  return { value, low: value, high: value };
}

function scaled({ value, low, high }: Band, factor: number): Band {
  return { value: factor * value, low: factor * low, high: factor * high };
}

function windOn({ conditions }: Boat, { course, boatSpeed }: SailOnBoat, weather: Weather) {
  const mean = weather === "light" ? conditions.lightWind : conditions.designWind;
  return apparentWind({
    windSpeed: weather === "gust" ? conditions.gustFactor * mean : mean,
    trueWindAngle: course,
    boatSpeed: boatSpeed[weather === "light" ? "light" : "design"],
  });
}

function cornerLoad(boat: Boat, sail: SailOnBoat, corner: SailCorner, weather: Weather): Band {
  const wind = windOn(boat, sail, weather);
  const corners = cornersOf(sail, wind, boat.conditions);
  const ranges = corners.ranges(corner);
  if (ranges === undefined)
    throw new ValueError({
      quantity: `load of the ${corner}`,
      value: `a sail that does not say enough for its ${corner}`,
      allowed: `a sail with "sheet"${corner === "sheet" ? "" : ' and "edges"'}, or a stated load`,
      advice: `Add ${corner === "sheet" ? '"sheet"' : '"edges: { luff: …, leech: …, foot: … }"'} to the sail.`,
    });
  return bandOf<string>(ranges, (values) => (corners.loads(values) as Corners)[corner] ?? 0);
}

/**
 * Loads that a file states and that the balance of the sail of the same name contradicts.
 *
 * @param boat  boat whose sails have edges
 * @returns sentences with both figures; none where nothing is contradicted
 * Example: loadConflicts(boat)[0] → "main halyard: the file states 340 N; the balance of the main asks for 2100 N, likely 1500 to 2900 N"
 */
export function loadConflicts(boat: Boat): string[] {
  return Object.entries(boat.lines).flatMap(([name, { kind, load }]) => {
    if (load.kind !== "stated" || kind !== "halyard") return [];
    const named = Object.entries(boat.sails).find(([sail]) => name.split(" ").includes(sail));
    if (named === undefined || named[1].edges === undefined || named[1].sheet === undefined) return [];
    const asked = cornerLoad(boat, named[1], "halyard", "design");
    const spread = load.spread ?? 0;
    if (load.design * (1 + spread) >= asked.low && load.design * (1 - spread) <= asked.high) return [];
    const likely = `${figures(asked.low, 2)} to ${figures(asked.high, 2)} N`;
    return [
      `${name}: the file states ${figures(load.design)} N; the balance of the ${named[0]} asks for ${figures(asked.value, 2)} N, likely ${likely}`,
    ];
  });
}
