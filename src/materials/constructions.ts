import { type Coefficient, coefficient } from "../sources/coefficient.js";

/** How yarns are put together to a rope. */
export interface Construction {
  readonly name: string;
  /** Area of fibre over the area of the circle round the rope [-]. */
  readonly fill: Coefficient;
  /** Strength of the rope over the strength of all its yarns [-]. */
  readonly strengthConversion: Coefficient;
  /** Stiffness of the worked rope over the stiffness of all its yarns [-]. */
  readonly stiffnessConversion: Coefficient;
}

type Range = readonly [low: number, value: number, high: number];

function remembered([low, value, high]: Range, place: string): Coefficient {
  return coefficient({ value, unit: "1", low, high, status: "from memory", place });
}

function construction(
  name: string,
  fill: Range,
  strength: Range,
  stiffness: Range,
  place: string,
  stretch = "handbook range; hang a weight and measure to narrow it",
): Construction {
  return {
    name,
    fill: remembered(fill, `${name}: weigh a metre and measure the diameter under light tension to narrow it`),
    strengthConversion: remembered(strength, place),
    stiffnessConversion: remembered(stiffness, `${name}: ${stretch}`),
  };
}

/** Constructions of small-boat ropes. No neutral print of braided ropes of 2 to 8 mm was found: wide ranges. */
export const constructions = {
  /** Twelve strands braided round nothing: what is left when the cover is stripped off. */
  bareBraid: construction(
    "single braid of 12 strands",
    [0.6, 0.72, 0.84],
    [0.35, 0.55, 0.9],
    [0.3, 0.5, 0.78],
    "handbook range of braids 50 to 65 % of yarn strength; ends from prints of HMPE: 6 mm of high-grade 12 strands breaks at 53 kN by its nominal size, 6 and 8 mm braids of another works near 0.6 of the middle",
  ),
  /** The core alone carries; the cover is counted in mass and thickness only. */
  coveredCore: construction(
    "braided core under a cover",
    [0.6, 0.72, 0.84],
    [0.38, 0.6, 0.9],
    [0.33, 0.55, 0.85],
    "middle and upper end from printed HMPE ropes of 6 to 12 mm, which break at 388 to 490 N for each mm² of the square of their size; what the core takes of the size is in it",
  ),
  /** Core and cover of one fibre carry together. */
  doubleBraid: construction(
    "double braid of one fibre",
    [0.6, 0.7, 0.8],
    [0.24, 0.4, 0.55],
    [0.16, 0.25, 0.5],
    "handbook range of braids, widened downward: polyester double braid breaks near 0.33 N/tex, a matt 16-plait of 6 mm at two thirds of the middle",
    "middle from printed stretch at 20 % of the break load: polyester 2.5 %, polyamide 8.5 %; upper end holds big mooring ropes, which stretch half as much",
  ),
  /** Eight strands plaited, or three laid, to a minimum standard. */
  plaited: construction(
    "eight-strand plait",
    [0.6, 0.7, 0.8],
    [0.2, 0.28, 0.53],
    [0.15, 0.25, 0.4],
    "printed tables of polyester rope give 0.20 N/tex, which is 0.24 of the yarn, or less; upper end from polyamide and polypropylene of three strands, which break at half of theirs",
  ),
} as const satisfies Record<string, Construction>;

/** Name of a construction in the table. */
export type ConstructionName = keyof typeof constructions;

/** Break load of a new rope over the strength that its maker rates [-]. */
export const ratedStrengthSpread = coefficient({
  value: 1,
  unit: "1",
  low: 0.9,
  high: 1.15,
  status: "common practice",
  place: "standards accept tests from nine tenths of what is stated; many makers state a least value",
});

/** Diameter of the core over the diameter of the covered rope [-]. */
export const coreDiameterShare = coefficient({
  value: 0.65,
  unit: "1",
  low: 0.55,
  high: 0.75,
  status: "from memory",
  place: "cover of 0.7 to 1 mm on lines of 4 to 6 mm; strip a hand's breadth and measure to narrow it",
});
