import type { BoatStation, CatalogueBlock, CatalogueRope } from "../boat/boat.js";
import { type Feel, feelOf } from "../boat/judge-hand.js";
import { withParts } from "../boat/parts.js";
import { placedStations } from "../boat/pieces.js";
import { reeved } from "../boat/reeved.js";
import type { Band } from "../sources/band.js";
import type { LineFacts } from "./line-facts.js";

/** Sizes of a line by what is nearest to the hand [mm], and the parts of its first tackle; absent where it has none. */
export interface LineSizes {
  readonly rope: number;
  readonly sheave?: number;
  readonly parts?: number;
}

const millimetres = (metres: number) => Number((1000 * metres).toPrecision(9));

/** What the hand holds, and the last sheave before it. */
function nearestToHand({ line, catalogue }: LineFacts): { rope: CatalogueRope; block?: CatalogueBlock } {
  const last = placedStations(line).at(-1);
  const rope = catalogue.ropes[line.rope[last?.piece ?? line.rope.length - 1]!.rope]!;
  const station = line.path.findLast((one) => "block" in one);
  const block = station !== undefined && "block" in station ? catalogue.blocks[station.block] : undefined;
  return { rope, ...(block !== undefined && { block }) };
}

/** The sizes of a line as it is. */
export function sizesOf(facts: LineFacts): LineSizes {
  const { rope, block } = nearestToHand(facts);
  const first = facts.line.path.find((one) => one.kind === "tackle");
  return {
    rope: millimetres(rope.diameter),
    ...(block !== undefined && { sheave: millimetres(block.diameter) }),
    ...(first?.kind === "tackle" && { parts: first.parts }),
  };
}

/**
 * A line in other sizes: all its ropes, and all its sheaves, in proportion to the one nearest to the hand.
 *
 * @param facts  the line
 * @param sizes  what shall be otherwise [mm]
 * @returns the line as changed; grooves are as much wider than the rope as they were
 */
export function resized(facts: LineFacts, sizes: Partial<LineSizes>): LineFacts {
  const now = sizesOf(facts);
  const thicker = (sizes.rope ?? now.rope) / now.rope;
  const larger = now.sheave === undefined ? 1 : (sizes.sheave ?? now.sheave) / now.sheave;
  const at = facts.line.path.findIndex((one) => one.kind === "tackle");
  const { parts = now.parts } = sizes;
  return {
    ...facts,
    line: at < 0 || parts === undefined ? facts.line : withParts(facts.line, at, parts),
    catalogue: {
      ...facts.catalogue,
      ropes: each(facts.catalogue.ropes, (rope) => ({ ...rope, diameter: thicker * rope.diameter })),
      blocks: each(facts.catalogue.blocks, (block) => ({
        ...block,
        diameter: larger * block.diameter,
        groove: thicker * block.groove,
      })),
    },
  };
}

/** A line whose sheaves all turn on other bearings. */
export function withBearings(facts: LineFacts, bearing: CatalogueBlock["bearing"]): LineFacts {
  const blocks = each(facts.catalogue.blocks, (block) => ({ ...block, bearing }));
  return { ...facts, catalogue: { ...facts.catalogue, blocks } };
}

/** A line whose ropes all have another cover; a stripped one has none, and bends as bare braid. */
export function withCover(facts: LineFacts, cover: NonNullable<CatalogueRope["cover"]> | "stripped"): LineFacts {
  const changed = ({ cover: _old, construction, ...rope }: CatalogueRope): CatalogueRope =>
    cover === "stripped"
      ? { ...rope, fibre: "hmpe", construction: "bareBraid" }
      : { ...rope, construction: construction === "bareBraid" ? "coveredCore" : construction, cover };
  return { ...facts, catalogue: { ...facts.catalogue, ropes: each(facts.catalogue.ropes, changed) } };
}

function each<Thing>(things: Readonly<Record<string, Thing>>, change: (thing: Thing) => Thing): Record<string, Thing> {
  return Object.fromEntries(Object.entries(things).map(([name, thing]) => [name, change(thing)]));
}

/** Whether the cover of a rope matters to a line: where it slides or grips. */
export function feelsCover({ line, catalogue }: LineFacts): boolean {
  const grips = (one: BoatStation) => "block" in one && catalogue.blocks[one.block]!.ratchet !== undefined;
  return line.path.some((one) => one.kind === "ring" || grips(one));
}

/** What the hand feels on a line, by its load [N]; the line is made ready once. */
export function feelAt({ line, catalogue, conditions }: LineFacts): (load: Band) => Feel {
  const run = reeved({ catalogue, conditions }, line);
  return (load) => feelOf({ ...run, line, loads: { design: load } });
}

/** A band, each of its three numbers times a factor. */
export function times({ value, low, high }: Band, factor: number): Band {
  return { value: factor * value, low: factor * low, high: factor * high };
}
