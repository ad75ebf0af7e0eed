import { bearings } from "../materials/bearings.js";
import { blockLosses } from "../materials/block-losses.js";
import { coverFriction } from "../materials/covers.js";
import { surfaces, treads } from "../materials/surfaces.js";
import { prepareJoined } from "../reeving/joined-lines.js";
import type { Line, PreparedLine } from "../reeving/line.js";
import type { Station } from "../reeving/reeving.js";
import type { Ratchet, Ring, Sheave } from "../reeving/station.js";
import { tackle } from "../reeving/tackle.js";
import { type Band, bandOf } from "../sources/band.js";
import type { Boat, BoatLine, BoatStation, CatalogueBlock, CatalogueRope, Conditions } from "./boat.js";
import { coverOf, placedStations, stiffnessOfRope } from "./pieces.js";

/** Takes one number of a range by its name: the middle, or what a trial puts in its place. */
type Take = (name: string, range: Band) => number;

/** A line of a boat as the reeving models take it, over all its ranges. */
export interface Reeved {
  /** Ranges of friction, bearings and stiffness, by name. */
  readonly ranges: Readonly<Record<string, Band>>;
  /** Parts of the line at the middle of every range: one for each rope that runs through stations. */
  readonly parts: readonly Line[];
  /** The line at the middle of every range. */
  readonly middle: PreparedLine;
  /** A result over the ranges of the line and of what else is given. */
  readonly over: (others: Readonly<Record<string, Band>>, ask: Ask) => Band;
}

/** A question to a line, with one value of each of the other ranges. */
type Ask = (line: PreparedLine, others: Readonly<Record<string, number>>) => number;

/** What of a boat decides how a line of it runs. */
export interface RunningGear extends Pick<Boat, "catalogue"> {
  readonly conditions: Pick<Conditions, "wet">;
}

/** Makes a line of a boat ready for the reeving models. Lines that were prepared are kept for the next question. */
export function reeved(boat: RunningGear, line: BoatLine): Reeved {
  const ranges: Record<string, Band> = {};
  const parts = partsOf(boat, line, (name, { value, low, high }) => {
    ranges[name] = { value, low, high };
    return value;
  });
  const names = Object.keys(ranges);
  const prepared = new Map<string, PreparedLine>();
  const at = (values: Readonly<Record<string, number>>): PreparedLine => {
    const key = names.map((name) => values[name]).join(" ");
    const known = prepared.get(key) ?? prepareJoined(partsOf(boat, line, (name) => values[name]!));
    prepared.set(key, known);
    return known;
  };
  return {
    ranges,
    parts,
    middle: at(Object.fromEntries(names.map((name) => [name, ranges[name]!.value]))),
    over: (others, ask) => bandOf<string>({ ...ranges, ...others }, (values) => ask(at(values), values)),
  };
}

/** Stations that follow one another on one piece of rope are a part. */
function partsOf({ catalogue, conditions }: RunningGear, line: BoatLine, take: Take): Line[] {
  const parts: { piece: number; rope: Line["rope"]; stations: Station[] }[] = [];
  for (const { station, piece } of placedStations(line)) {
    const rope = catalogue.ropes[line.rope[piece]!.rope]!;
    if (parts.at(-1)?.piece !== piece) parts.push({ piece, rope: runningRope(rope, take), stations: [] });
    parts.at(-1)!.stations.push(stationOf(station, rope, { catalogue, conditions, take }));
  }
  return parts.map(({ rope, stations }) => ({ rope, stations }));
}

function runningRope(rope: CatalogueRope, take: Take): Line["rope"] {
  const law = stiffnessOfRope(rope);
  return {
    diameter: rope.diameter,
    stiffness: {
      tensionTerm: take(`bending of ${law.name}, with tension`, law.tensionTerm),
      constantTerm: take(`bending of ${law.name}, constant`, law.constantTerm),
      diameterTerm: take(`bending of ${law.name}, with diameter`, law.diameterTerm),
    },
  };
}

interface Shop extends RunningGear {
  readonly take: Take;
}

function stationOf(station: BoatStation, rope: CatalogueRope, shop: Shop): Station {
  const { catalogue, conditions, take } = shop;
  const { name } = station;
  if (station.kind === "cleat") return { kind: "cleat", name, closed: false, holdLoad: 0 };
  if (station.kind === "ring") {
    const { diameter, surface } = catalogue.rings[station.ring]!;
    const cover = coverOf(rope, conditions.wet);
    const ring: Ring = {
      kind: "ring",
      name,
      diameter,
      wrapAngle: station.wrap,
      frictionCoefficient: take(
        `${cover.fibre} ${cover.strands} on ${surface}`,
        coverFriction(cover, surfaces[surface]),
      ),
      loadDependence: {
        exponent: take("exponent of rings", blockLosses.ringExponent),
        referenceTension: take("tension of ring friction", blockLosses.ringReferenceTension),
      },
    };
    return station.lines === undefined ? ring : { ...ring, lines: station.lines };
  }
  const block = catalogue.blocks[station.block]!;
  if (station.kind === "block") {
    const turn = sheaveOf({ name, block, wrapAngle: station.wrap, rope, shop });
    return station.lines === undefined ? turn : { ...turn, lines: station.lines };
  }
  const { parts, hauledFrom, leadBlocks = 0 } = station;
  const turn = sheaveOf({ name, block, wrapAngle: Math.PI, rope, shop });
  return { kind: "tackle", name, reeving: tackle({ parts, hauledFrom, turn, leadBlocks }) };
}

interface BlockOnLine {
  readonly name: string;
  readonly block: CatalogueBlock;
  readonly wrapAngle: number;
  readonly rope: CatalogueRope;
  readonly shop: Shop;
}

function sheaveOf({ name, block, wrapAngle, rope, shop }: BlockOnLine): Sheave | Ratchet {
  const { conditions, take } = shop;
  const { friction, radiusShare } = bearings[block.bearing];
  const drag = block.bearing === "ball" ? blockLosses.ballDrag : blockLosses.plainDrag;
  const sheave: Sheave = {
    kind: "sheave",
    name,
    diameter: block.diameter,
    grooveWidth: block.groove,
    wrapAngle,
    pinRadius: (take(`radius of ${block.bearing} bearings`, radiusShare) * block.diameter) / 2,
    bearingFriction: take(`friction of ${block.bearing} bearings`, friction),
    drag: take(`drag of ${block.bearing} bearings`, drag),
  };
  if (block.ratchet === undefined) return sheave;
  const { tread, engageLoad } = block.ratchet;
  const cover = coverOf(rope, conditions.wet);
  return {
    ...sheave,
    kind: "ratchet",
    treadFriction: take(`${cover.fibre} ${cover.strands} on ${tread} tread`, coverFriction(cover, treads[tread])),
    ...(engageLoad !== undefined && { engageLoad }),
  };
}
