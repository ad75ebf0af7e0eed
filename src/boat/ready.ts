import type { RopeEndName } from "../materials/ends.js";
import { ValueError } from "../quantity/errors.js";
import type { Direction } from "../reeving/mechanism-loads.js";
import type { Span } from "../reeving/set-shape.js";
import { ropeStiffness } from "../rope/break-load.js";
import type { RopeMake } from "../rope/make.js";
import type { LineJob } from "../rope/thin-limits.js";
import type { Band } from "../sources/band.js";
import type { Boat, BoatLine, BoatStation, CatalogueRope, CrewMember } from "./boat.js";
import { type LineLoads, lineLoads } from "./loads.js";
import { makeOf, type PlacedStation, placedStations } from "./pieces.js";
import { type Reeved, reeved } from "./reeved.js";
import { didYouMean, quoted } from "./schema-words.js";

/** A piece of rope of a line, and what it has to do. */
export interface ReadyPiece {
  /** Name in the catalogue. */
  readonly name: string;
  readonly rope: CatalogueRope;
  readonly make: RopeMake;
  readonly length: number;
  /** Strength that is asked of it; the largest tension in a gust is its working load. */
  readonly job: LineJob;
}

/** A line of a boat, ready for every question. */
export interface ReadyLine extends Reeved {
  readonly name: string;
  readonly line: BoatLine;
  readonly loads: LineLoads;
  readonly pieces: readonly ReadyPiece[];
  readonly placed: readonly PlacedStation[];
  readonly hand: CrewMember;
  /** Pieces under load from the sail to the last station, for stretch; none where distances are left out. */
  readonly spans: readonly Span[];
}

/**
 * Makes a line of a boat ready: loads, reeving with its ranges, ropes with their jobs.
 *
 * @param boat  boat
 * @param name  name of one of its lines
 * @returns the line; `parts` are lines for the reeving models, `pieces` ropes and jobs for the rope models
 * @throws ValueError for a name that no line has
 */
export function lineOf(boat: Boat, name: string): ReadyLine {
  const line = Object.hasOwn(boat.lines, name) ? boat.lines[name] : undefined;
  if (line !== undefined) return readyLine(boat, name, line);
  const known = Object.keys(boat.lines);
  throw new ValueError({
    quantity: `line of ${boat.name}`,
    value: JSON.stringify(name),
    allowed: quoted(known),
    advice: didYouMean(name, known),
  });
}

/**
 * The same boat with one line changed, to try something out.
 *
 * @param boat  boat
 * @param name  name of the line
 * @param line  the line as it shall be
 * @returns a new boat; the given one stays as it is
 */
export function withLine(boat: Boat, name: string, line: BoatLine): Boat {
  return { ...boat, lines: { ...boat.lines, [name]: line } };
}

function readyLine(boat: Boat, name: string, line: BoatLine): ReadyLine {
  const loads = lineLoads(boat, line);
  const run = reeved(boat, line);
  const placed = placedStations(line);
  const tensions = line.rope.map((_, piece) => largestTension({ run, placed, loads, piece }));
  const pieces = line.rope.map(({ rope, length }, piece) => ({
    name: rope,
    rope: boat.catalogue.ropes[rope]!,
    make: makeOf(boat.catalogue.ropes, rope),
    length,
    job: jobOf({ boat, line, placed, piece, workingLoad: tensions[piece]! }),
  }));
  const spans = spansOf(placed, pieces);
  return { ...run, name, line, loads, pieces, placed, hand: boat.crew[line.hand]!, spans };
}

interface PieceOnWay {
  readonly placed: readonly PlacedStation[];
  readonly piece: number;
}

/** Largest tension in a piece in a gust, hauling or easing [N]; a tackle at the sail takes the load on its block. */
function largestTension({
  run,
  placed,
  loads,
  piece,
}: PieceOnWay & { readonly run: Reeved; readonly loads: LineLoads }): number {
  const directions: readonly Direction[] = ["hauling", "easing"];
  const found = directions.flatMap((direction) =>
    run.middle.state(loads.gust.value, direction).stations.flatMap(({ loadTension, handTension, parts }, at) => {
      const { station, piece: here, pieceBefore } = placed[at]!;
      const before = pieceBefore === piece && !(at === 0 && station.kind === "tackle") ? [loadTension] : [];
      return here === piece ? [...before, handTension, ...parts] : before;
    }),
  );
  return Math.max(1e-9, ...found);
}

function jobOf({
  boat,
  line,
  placed,
  piece,
  workingLoad,
}: PieceOnWay & { readonly boat: Boat; readonly line: BoatLine; readonly workingLoad: number }): LineJob {
  const bends = placed
    .filter((one) => one.piece === piece)
    .flatMap(({ station }) => bendsOf(boat, station))
    .sort((one, other) => one.diameter - other.diameter);
  const [tightest] = bends;
  return {
    workingLoad,
    safetyFactor: line.safetyFactor ?? boat.limits.safetyFactor,
    ends: endsOf(line, piece),
    use: line.inspected?.found ?? line.use,
    wet: boat.conditions.wet,
    ...(line.daysInSun !== undefined && { daysInSun: line.daysInSun }),
    ...(tightest !== undefined && { sheave: tightest }),
    ...cleatOf(boat, placed, piece),
  };
}

/** Ends and knots of one piece: the sail end of the first, the hand end of the last, splices where pieces meet, and what lies between. */
function endsOf({ rope, ends, form }: BoatLine, piece: number): RopeEndName[] {
  const last = piece === rope.length - 1;
  const joined = rope.length > 1 || form === "endless" ? (["splice"] as const) : [];
  return [
    ...(piece === 0 && form !== "endless" ? [ends.sail] : []),
    ...(last && ends.hand !== undefined ? [ends.hand] : []),
    ...(ends.between ?? []),
    ...joined,
  ];
}

/** What bends a rope at a station: sheave or ring. */
function bendsOf({ catalogue }: Boat, station: BoatStation): NonNullable<LineJob["sheave"]>[] {
  if (station.kind === "cleat") return [];
  if (station.kind === "ring") {
    const { diameter, opening } = catalogue.rings[station.ring]!;
    return [{ diameter, grooveWidth: opening }];
  }
  const { diameter, groove } = catalogue.blocks[station.block]!;
  return [{ diameter, grooveWidth: groove }];
}

/** Sizes of rope that the cleat on a piece takes. */
function cleatOf({ catalogue }: Boat, placed: readonly PlacedStation[], piece: number): Pick<LineJob, "cleat"> {
  const found = placed.find((one) => one.piece === piece && one.station.kind === "cleat")?.station;
  if (found?.kind !== "cleat") return {};
  const { thinnest, thickest } = catalogue.cleats[found.cleat]!;
  return { cleat: { thinnest, thickest } };
}

/** Free pieces before each station and the parts inside each tackle, with the stiffness of their rope. */
function spansOf(placed: readonly PlacedStation[], pieces: readonly ReadyPiece[]): Span[] {
  const stiffness = pieces.map(({ make }): Band => ropeStiffness(make));
  return placed.flatMap(({ station, piece, pieceBefore }, after) => {
    const spans: Span[] = [];
    if (station.distance !== undefined)
      spans.push({ after, length: station.distance, axialStiffness: stiffness[pieceBefore]!.value });
    if (station.kind === "tackle" && station.length !== undefined)
      spans.push({ after, length: station.length, axialStiffness: stiffness[piece]!.value, inside: true });
    return spans;
  });
}
