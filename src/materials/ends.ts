import type { SourceId } from "../sources/bibliography.js";
import { type Coefficient, coefficient } from "../sources/coefficient.js";
import type { FibreName } from "./fibres.js";

/** Cores that bear ends alike: polyester, polyamide and polypropylene; HMPE; the stiff ones, aramid, LCP and PBO. */
export type CoreKind = "soft" | "hmpe" | "stiff";

/** How a rope ends: what is left of its strength at a splice or knot, and the work it takes. */
export interface RopeEnd {
  readonly name: string;
  /** Whether it holds by friction of the rope on itself alone, and may slip in a slippery core. */
  readonly knot: boolean;
  /** Break load with this end over that of the straight rope, by what carries [-]. */
  readonly retained: Readonly<Record<CoreKind, Coefficient>>;
}

type Range = readonly [low: number, value: number, high: number];

const printed = (source: SourceId, [low, value, high]: Range, place: string): Coefficient =>
  coefficient({ value, unit: "1", low, high, status: "published", source, place });

const remembered = ([low, value, high]: Range, place: string): Coefficient =>
  coefficient({ value, unit: "1", low, high, status: "from memory", place });

/** Nothing printed was found for the stiff fibres: they take badly to being bent, like HMPE, and slip less. */
const stiff = (range: Range): Coefficient =>
  remembered(range, "aramid, LCP and PBO: nothing printed was found, hence wide; break one to narrow it");

const knots = "printed range of knots in fibre rope";
const widened = ([printedLow, printedHigh]: readonly [number, number], range: Range, tests: string): Coefficient =>
  printed(
    "knot-test-magazine",
    range,
    `${knots}, ${printedLow} to ${printedHigh}; ends set by tests of other ropes: ${tests}`,
  );

const third =
  "9/16 in single braid: bowline, figure of eight and double fisherman all near a third; upper end from a magazine test of 10 mm ropes, where a bowline halves the strength";

/** Ends of ropes by what carries in them. */
export const ropeEnds = {
  splice: {
    name: "eye splice",
    knot: false,
    retained: {
      soft: printed(
        "mooring-guidelines",
        [0.8, 0.9, 0.95],
        "note 2: spliced over unspliced about 0.90; spread from other printed splices, 0.85 to 0.95",
      ),
      hmpe: printed(
        "hmpe-splice-page",
        [0.8, 0.9, 1],
        "6 mm of 12 strands: buried without a taper 0.80 to 0.87, with a taper no weaker than the rope; the middle lies between, a long splice kept 0.85 in another test",
      ),
      stiff: stiff([0.65, 0.85, 0.95]),
    },
  },
  stitchedEye: {
    name: "stitched eye",
    knot: false,
    retained: {
      soft: remembered([0.6, 0.8, 0.95], "as strong as its stitches: pull one to narrow it"),
      hmpe: remembered([0.5, 0.75, 0.95], "thread in slippery rope carries more than the rope's own grip: pull one"),
      stiff: stiff([0.5, 0.75, 0.95]),
    },
  },
  softShackle: {
    name: "soft shackle",
    knot: false,
    retained: {
      soft: remembered([0.7, 0.9, 1], "of rope of the same size: four parts at the eye, two at its knot"),
      hmpe: printed(
        "soft-shackle-tests",
        [0.9, 1, 1],
        "whole loops broke at 1.06 to 2.3 times the strength of their rope, so the line breaks first: 1 for a shackle of the line's own size; a wrong stopper knot pulls through at a quarter of that",
      ),
      stiff: stiff([0.5, 0.85, 1]),
    },
  },
  bowline: {
    name: "bowline",
    knot: true,
    retained: {
      soft: widened(
        [0.67, 0.75],
        [0.43, 0.71, 0.83],
        "0.43 to 0.58 in polyester of 10 mm on a machine, 0.60 in an older table, 0.83 of the rated strength of a thin braid",
      ),
      hmpe: printed("hartter-thesis", [0.28, 0.33, 0.5], third),
      stiff: stiff([0.25, 0.5, 0.7]),
    },
  },
  figureEight: {
    name: "figure of eight",
    knot: true,
    retained: {
      soft: printed(
        "knots-in-use",
        [0.48, 0.72, 0.84],
        "p. 9: loses 28 % in polyester yacht rope; ends from an older table, 0.48, and from a thin braid, 0.84 of its rated strength",
      ),
      hmpe: printed("hartter-thesis", [0.28, 0.33, 0.5], third),
      stiff: stiff([0.25, 0.5, 0.7]),
    },
  },
  halfHitches: {
    name: "two half hitches",
    knot: true,
    retained: {
      soft: widened([0.6, 0.7], [0.6, 0.65, 0.75], "0.75 in an older table"),
      hmpe: remembered([0.2, 0.4, 0.6], "slips early in slippery rope; a hitch on a connector once kept 0.59"),
      stiff: stiff([0.25, 0.5, 0.7]),
    },
  },
  cowHitch: {
    name: "cow hitch",
    knot: true,
    retained: {
      soft: remembered([0.5, 0.7, 0.85], "between a bowline and a clove hitch, which is said to keep 0.75"),
      hmpe: printed(
        "hmpe-knot-tests",
        [0.43, 0.57, 0.71],
        "tests quoted on a forum; spread of a quarter: one rope, few pulls",
      ),
      stiff: stiff([0.3, 0.55, 0.75]),
    },
  },
  sheetBend: {
    name: "sheet bend",
    knot: true,
    retained: {
      soft: printed("knot-test-magazine", [0.48, 0.53, 0.58], knots),
      hmpe: remembered([0.15, 0.3, 0.45], "the first of the bends to let go in slippery yarn; pull one"),
      stiff: stiff([0.2, 0.4, 0.6]),
    },
  },
  reefKnot: {
    name: "reef knot",
    knot: true,
    retained: {
      soft: widened([0.43, 0.47], [0.43, 0.45, 0.5], "0.50 in polyester yacht rope"),
      hmpe: remembered([0.1, 0.25, 0.4], "no knot to join slippery ropes: it slips; pull one"),
      stiff: stiff([0.15, 0.35, 0.5]),
    },
  },
  anyKnot: {
    name: "any knot",
    knot: true,
    retained: {
      soft: printed(
        "delaney-2022",
        [0.35, 0.5, 0.85],
        "p. 30: take half for every knot; spread from printed tables of knots, upper end from a thin braid with a figure of eight, which broke at 0.84 of its rated strength",
      ),
      hmpe: remembered([0.25, 0.38, 0.5], "slips or breaks well below half; pull one to narrow it"),
      stiff: stiff([0.2, 0.42, 0.65]),
    },
  },
  straight: {
    name: "straight rope between grips",
    knot: false,
    retained: {
      soft: remembered([1, 1, 1], "the reference"),
      hmpe: remembered([1, 1, 1], "the reference"),
      stiff: remembered([1, 1, 1], "the reference"),
    },
  },
} as const satisfies Record<string, RopeEnd>;

/** Name of a way to end a rope. */
export type RopeEndName = keyof typeof ropeEnds;

/** How each fibre bears ends. */
export const coreKinds = {
  polyamide: "soft",
  polyester: "soft",
  polypropylene: "soft",
  aramid: "stiff",
  aramidHighModulus: "stiff",
  hmpe: "hmpe",
  hmpeHighModulus: "hmpe",
  lcp: "stiff",
  pbo: "stiff",
} as const satisfies Record<FibreName, CoreKind>;

/** Cores so slippery that a knot may slip before it breaks. */
export const slipperyCores: ReadonlySet<FibreName> = new Set<FibreName>(["hmpe", "hmpeHighModulus", "lcp", "pbo"]);
