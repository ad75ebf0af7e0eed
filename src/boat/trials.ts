import type { Boat, BoatLine, BoatStation, Catalogue, CatalogueBlock, CatalogueRope, CrewMember } from "./boat.js";
import { otherParts, withParts } from "./parts.js";

/** A single change of a line, to be tried. */
export interface LineTrial {
  readonly words: string;
  /** How far it is from the line as it is: differences of size as logarithms, other differences as judged steps. */
  readonly away: number;
  readonly line: BoatLine;
  /** Whoever works the line, where that changes. */
  readonly crew?: CrewMember;
}

/** Judged: how many such steps a difference that is none of size is worth. */
const steps = {
  fibre: 0.4,
  construction: 0.3,
  strands: 0.15,
  bearing: 0.15,
  ratchet: 0.7,
  ring: 0.4,
  part: 0.35,
  cleat: 0.5,
  turn: 0.2,
  gloves: 0.05,
};

/** Turns that are tried on a horn cleat that takes the place of another. */
const hornTurns: readonly number[] = [2, 3, 4, 5, 6];

/** Crossings over its horns that go with them. */
const hornEights = 2;

const between = (one: number, other: number) => Math.abs(Math.log(one / other));

/**
 * Every single change of a line that the catalogue allows: another rope, block, ring or cleat, one part or turn more or less.
 *
 * @param boat  boat with its catalogue
 * @param line  line to be changed
 * @returns changes, nearest first
 */
export function lineTrials({ catalogue, crew }: Boat, line: BoatLine): LineTrial[] {
  return [
    ...gloveTrials(crew[line.hand]!, line),
    ...ropeTrials(catalogue, line),
    ...line.path.flatMap((_, at) => stationTrials(catalogue, line, at)),
  ].sort((one, other) => one.away - other.away);
}

/**
 * Two changes of different things at once.
 *
 * @param line  line as it is
 * @param one  change of it
 * @param other  change of something else of it
 * @returns both; where both change the same, the first
 */
export function together(line: BoatLine, one: LineTrial, other: LineTrial): LineTrial {
  const pick = <Thing>(was: Thing, first: Thing, second: Thing) => (first === was ? second : first);
  return {
    words: `${one.words}, and ${other.words}`,
    away: one.away + other.away,
    line: {
      ...line,
      rope: pick(line.rope, one.line.rope, other.line.rope),
      path: line.path.map((station, at) => pick(station, one.line.path[at]!, other.line.path[at]!)),
    },
  };
}

/** Gloves, for whoever has none. */
function gloveTrials(hand: CrewMember, line: BoatLine): LineTrial[] {
  if (hand.gloves === true || line.heldBy !== "hand") return [];
  return [{ words: `gloves for ${line.hand}`, away: steps.gloves, line, crew: { ...hand, gloves: true } }];
}

function ropesApart(one: CatalogueRope, other: CatalogueRope): number {
  return (
    between(one.diameter, other.diameter) +
    (one.fibre === other.fibre ? 0 : steps.fibre) +
    (one.construction === other.construction ? 0 : steps.construction) +
    (one.cover?.strands === other.cover?.strands ? 0 : steps.strands) +
    (one.cover?.fibre === other.cover?.fibre ? 0 : steps.fibre)
  );
}

function ropeTrials({ ropes }: Catalogue, line: BoatLine): LineTrial[] {
  return line.rope.flatMap((piece, at) =>
    Object.entries(ropes)
      .filter(([name]) => name !== piece.rope)
      .map(([name, rope]) => ({
        words: `${name} instead of ${piece.rope}`,
        away: ropesApart(rope, ropes[piece.rope]!),
        line: { ...line, rope: line.rope.with(at, { ...piece, rope: name }) },
      })),
  );
}

function blocksApart(one: CatalogueBlock, other: CatalogueBlock): number {
  return (
    between(one.diameter, other.diameter) +
    between(one.groove, other.groove) / 4 +
    (one.bearing === other.bearing ? 0 : steps.bearing) +
    (one.ratchet?.tread === other.ratchet?.tread ? 0 : steps.ratchet)
  );
}

function stationTrials(catalogue: Catalogue, line: BoatLine, at: number): LineTrial[] {
  const station = line.path[at]!;
  const put = (words: string, away: number, changed: BoatStation): LineTrial => ({
    words: `${words} (${station.name})`,
    away,
    line: { ...line, path: line.path.with(at, changed) },
  });
  if (station.kind === "ring") {
    const now = catalogue.rings[station.ring]!;
    const { ring: _, ...place } = station;
    return [
      ...others(catalogue.rings, station.ring).map(([ring, { diameter }]) =>
        put(ring, between(diameter, now.diameter), { ...station, ring }),
      ),
      ...Object.entries(catalogue.blocks)
        .filter(([, block]) => block.builtIn !== true)
        .map(([block, { diameter }]) =>
          put(`${block} instead of the ring`, steps.ring + between(diameter, now.diameter) / 4, {
            ...place,
            kind: "block",
            block,
          }),
        ),
    ];
  }
  if (station.kind === "cleat") return cleatTrials(catalogue, station, put);
  const now = catalogue.blocks[station.block]!;
  const blocks = others(catalogue.blocks, station.block)
    .filter(([, other]) => (other.builtIn === true) === (now.builtIn === true))
    .map(([block, other]) => put(block, blocksApart(other, now), { ...station, block }));
  if (station.kind !== "tackle") return blocks;
  return [...blocks, ...partTrials(line, at)];
}

/** One station of a line with other numbers of parts, where it is a tackle. */
export function partTrials(line: BoatLine, at: number): LineTrial[] {
  const station = line.path[at]!;
  if (station.kind !== "tackle") return [];
  return otherParts(station).map((parts) => ({
    words: `${parts} ${parts === 1 ? "part" : "parts"} instead of ${station.parts} (${station.name})`,
    away: steps.part * Math.abs(parts - station.parts),
    line: withParts(line, at, parts),
  }));
}

function others<Thing>(table: Readonly<Record<string, Thing>>, name: string): [string, Thing][] {
  return Object.entries(table).filter(([other]) => other !== name);
}

function cleatTrials(
  { cleats }: Catalogue,
  station: Extract<BoatStation, { kind: "cleat" }>,
  put: (words: string, away: number, changed: BoatStation) => LineTrial,
): LineTrial[] {
  const { turns, eights: _, hitch: _hitch, ...plain } = station;
  const swaps = others(cleats, station.cleat).flatMap(([cleat, { type }]) =>
    type === "horn"
      ? hornTurns.map((wound, index) =>
          put(`${cleat} with ${wound} turns and ${hornEights} eights`, steps.cleat + steps.turn * index, {
            ...plain,
            cleat,
            turns: wound,
            eights: hornEights,
          }),
        )
      : [put(cleat, steps.cleat, { ...plain, cleat })],
  );
  if (turns === undefined) return swaps;
  const more = [1, 2, 3].map((extra) =>
    put(`${turns + extra} turns instead of ${turns}`, steps.turn * extra, { ...station, turns: turns + extra }),
  );
  return [...more.filter((_, index) => turns + index + 1 <= 15), ...swaps];
}
