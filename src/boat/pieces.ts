import type { Cover, CoverFibre } from "../materials/covers.js";
import type { FibreName } from "../materials/fibres.js";
import type { RubbingFibre } from "../materials/rubbing.js";
import { type StiffnessLaw, stiffnessLaws } from "../materials/stiffness.js";
import type { RopeMake } from "../rope/make.js";
import type { BoatLine, BoatStation, Catalogue, CatalogueRope } from "./boat.js";

/** A rope of the catalogue as the rope models take it. */
export function makeOf(ropes: Catalogue["ropes"], name: string): RopeMake {
  const { fibre, construction, diameter, cover, ratedStrength } = ropes[name]!;
  return {
    fibre,
    construction,
    diameter,
    ...(cover !== undefined && { coverFibre: cover.fibre }),
    ...(ratedStrength !== undefined && { ratedStrength }),
  };
}

const slippery: ReadonlySet<FibreName> = new Set<FibreName>(["hmpe", "hmpeHighModulus", "pbo", "lcp"]);
const aramids: ReadonlySet<FibreName> = new Set<FibreName>(["aramid", "aramidHighModulus"]);

/** Fibre on the outside of a rope. */
function outside({ fibre, cover }: CatalogueRope): FibreName {
  return cover?.fibre ?? fibre;
}

/** The outside of a rope as the friction records know it: polyester stands for the other soft fibres. */
export function coverOf(rope: CatalogueRope, wet: boolean): Cover {
  const fibre = outside(rope);
  const kind: CoverFibre = slippery.has(fibre) ? "bareCore" : aramids.has(fibre) ? "aramidBlend" : "polyester";
  return { strands: rope.cover?.strands ?? 16, fibre: kind, wet };
}

/** The outside of a rope as the chafe records know it: LCP and PBO fray as aramid does. */
export function rubbingOf(rope: CatalogueRope): RubbingFibre {
  const fibre = outside(rope);
  if (fibre === "hmpe" || fibre === "hmpeHighModulus") return "hmpe";
  if (fibre === "polyamide") return "polyamide";
  return aramids.has(fibre) || fibre === "lcp" || fibre === "pbo" ? "aramid" : "polyester";
}

/** How a rope resists being bent. */
export function stiffnessOfRope({ construction }: CatalogueRope): StiffnessLaw {
  return construction === "bareBraid" ? stiffnessLaws.bareCore : stiffnessLaws.braidedCover;
}

/** Number of the piece that lies at a length from the sail end. */
function pieceAt(line: BoatLine, length: number): number {
  let end = 0;
  const found = line.rope.findIndex((piece) => {
    end += piece.length;
    return length <= end;
  });
  return found < 0 ? line.rope.length - 1 : found;
}

/** A station with the piece of rope that runs through it, hauled in, and the piece that comes to it. */
export interface PlacedStation {
  readonly station: BoatStation;
  readonly piece: number;
  readonly pieceBefore: number;
}

/** The stations of a line, each with its piece of rope. */
export function placedStations(line: BoatLine): PlacedStation[] {
  let from = 0;
  return line.path.map((station) => {
    const reached = from + (station.distance ?? 0);
    const inside = station.kind === "tackle" ? (station.length ?? 0) * station.parts : 0;
    const placed = {
      station,
      piece: pieceAt(line, reached + inside / 2),
      pieceBefore: pieceAt(line, (from + reached) / 2),
    };
    from = reached + inside;
    return placed;
  });
}
