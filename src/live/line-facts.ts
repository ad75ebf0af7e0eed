import type { Boat, BoatLine, Catalogue } from "../boat/boat.js";
import { lineOf } from "../boat/ready.js";
import type { PanelFacts } from "../notebook/output.js";
import { knot } from "../quantity/constants.js";
import type { Band } from "../sources/band.js";

/** A line of a boat with what decides how it runs: all that a panel needs of the boat's file. */
export interface LineFacts extends PanelFacts {
  readonly about: "line of a boat";
  /** Name of the boat. */
  readonly boat: string;
  /** Name of the line. */
  readonly name: string;
  readonly line: BoatLine;
  /** What the line is made of. */
  readonly catalogue: Catalogue;
  readonly conditions: { readonly wet: boolean };
  /** At the sail end in the design wind, between gusts [N]. */
  readonly load: Band;
  /** The design wind, true [kn]. */
  readonly wind: number;
}

/**
 * A line of a boat as a panel takes it: plain data, without the rest of the file.
 *
 * @param boat  boat
 * @param name  name of one of its lines
 * @returns the line with its ropes and hardware, its load [N] and the design wind [kn]
 * @throws ValueError for a name that no line has
 */
export function lineFacts(boat: Boat, name: string): LineFacts {
  const { line, loads } = lineOf(boat, name);
  const { designWind, wet } = boat.conditions;
  return {
    about: "line of a boat",
    boat: boat.name,
    name,
    line,
    catalogue: usedBy(line, boat.catalogue),
    conditions: { wet },
    load: loads.design,
    wind: Number((designWind / knot).toPrecision(9)),
  };
}

/** What of a catalogue a line is made of. */
function usedBy({ rope, path }: BoatLine, { ropes, blocks, rings, cleats }: Catalogue): Catalogue {
  const only = <Thing>(things: Readonly<Record<string, Thing>>, names: readonly string[]) =>
    Object.fromEntries(Object.entries(things).filter(([name]) => names.includes(name)));
  return {
    ropes: only(
      ropes,
      rope.map((piece) => piece.rope),
    ),
    blocks: only(
      blocks,
      path.flatMap((one) => ("block" in one ? [one.block] : [])),
    ),
    rings: only(
      rings,
      path.flatMap((one) => (one.kind === "ring" ? [one.ring] : [])),
    ),
    cleats: only(
      cleats,
      path.flatMap((one) => (one.kind === "cleat" ? [one.cleat] : [])),
    ),
  };
}

const free = { amount: 0, currency: "" };

/** A line for a panel whose page gives none: a mainsheet of an invented skiff. */
export const demoLine: LineFacts = {
  about: "line of a boat",
  boat: "the demo skiff",
  name: "mainsheet",
  line: {
    kind: "sheet",
    load: { kind: "stated", design: 400 },
    rope: [{ rope: "sheet 7 mm", length: 9 }],
    path: [
      { kind: "tackle", name: "boom tackle", parts: 3, hauledFrom: "fixed", block: "50 mm block" },
      { kind: "block", name: "floor ratchet", block: "63 mm ratchet with facets", wrap: (150 * Math.PI) / 180 },
    ],
    heldBy: "hand",
    hand: "crew",
    ends: { sail: "bowline" },
    use: "season",
  },
  catalogue: {
    ropes: {
      "sheet 7 mm": {
        fibre: "polyester",
        construction: "doubleBraid",
        cover: { fibre: "polyester", strands: 16 },
        diameter: 0.007,
        price: free,
      },
    },
    blocks: {
      "50 mm block": { diameter: 0.05, groove: 0.0083, bearing: "ball", workingLoad: 3000, mass: 0.055, price: free },
      "63 mm ratchet with facets": {
        diameter: 0.063,
        groove: 0.0099,
        bearing: "ball",
        workingLoad: 3780,
        ratchet: { tread: "faceted" },
        mass: 0.109,
        price: free,
      },
    },
    rings: {},
    cleats: {},
  },
  conditions: { wet: false },
  load: { value: 400, low: 320, high: 500 },
  wind: 12,
};
