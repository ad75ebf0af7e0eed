import type { Boat, BoatLine, BoatStation } from "./boat.js";
import { placedStations } from "./pieces.js";

/**
 * Whether the hardware of a line is what a rigger would fit there.
 *
 * A piece does the work that the catalogue says it is for, its rope goes through it, a ratchet stands only where a hand holds a sheet,
 * nothing that can slip takes a halyard, nothing that jams under load takes a sheet or a vang, and no sheave is out of all proportion to
 * its rope. What the line has now stays possible where it is.
 *
 * @param boat  boat with its catalogue
 * @param line  line as it shall be
 * @param now  line as it is
 * @returns false where a rigger would shake the head
 */
export function suitsWork(boat: Pick<Boat, "catalogue">, line: BoatLine, now: BoatLine): boolean {
  return placedStations(line).every(({ station, piece }, at) => {
    const { diameter } = boat.catalogue.ropes[line.rope[piece]!.rope]!;
    return (
      goesThrough(boat, station, diameter) &&
      (sameThing(station, now.path[at]) || fitsPlace(boat, line, station, diameter))
    );
  });
}

/** Name of the thing of the catalogue at a station. */
export function thingAt(station: BoatStation): string {
  return station.kind === "cleat" ? station.cleat : station.kind === "ring" ? station.ring : station.block;
}

function sameThing(station: BoatStation, now: BoatStation | undefined): boolean {
  return now !== undefined && station.kind === now.kind && thingAt(station) === thingAt(now);
}

/** Whether the rope goes through its hardware. */
function goesThrough({ catalogue }: Pick<Boat, "catalogue">, station: BoatStation, rope: number): boolean {
  if (station.kind === "ring") return rope <= catalogue.rings[station.ring]!.opening;
  if (station.kind !== "cleat") return rope <= catalogue.blocks[station.block]!.groove;
  const { thinnest, thickest } = catalogue.cleats[station.cleat]!;
  return rope >= thinnest && rope <= thickest;
}

/** Sheave diameters over rope diameter that a crew would take [-]: common practice, judged. */
const proportion = { least: 4, most: 14 };

/** Cleats that come free under load, for sheets and vangs; cleats that do not slip, for halyards. */
const cleatsFor = {
  sheet: ["cam"],
  vang: ["cam"],
  control: ["cam", "vee"],
  halyard: ["horn", "jammer"],
} as const satisfies Record<BoatLine["kind"], readonly string[]>;

function fitsPlace(
  { catalogue }: Pick<Boat, "catalogue">,
  line: BoatLine,
  station: BoatStation,
  rope: number,
): boolean {
  if (station.kind === "cleat") {
    const { type, for: works } = catalogue.cleats[station.cleat]!;
    const suited: readonly string[] = cleatsFor[line.kind];
    return suited.includes(type) && isFor(works, line);
  }
  if (station.kind === "ring") return isFor(catalogue.rings[station.ring]!.for, line);
  const { diameter, ratchet, for: works } = catalogue.blocks[station.block]!;
  const ratio = diameter / rope;
  if (ratchet !== undefined && (line.kind !== "sheet" || line.heldBy !== "hand")) return false;
  return isFor(works, line) && ratio >= proportion.least && ratio <= proportion.most;
}

function isFor(works: readonly BoatLine["kind"][] | undefined, { kind }: BoatLine): boolean {
  return works === undefined || works.includes(kind);
}
