import { type Coefficient, coefficient } from "../sources/coefficient.js";
import type { CoverFibre, StrandCount } from "./covers.js";

/** Deviations from the mean to the 95th percentile of a normal spread. */
const toNinetyFive = 1.645;

function palmOn(mean: number, deviation: number, what: string): Coefficient {
  return coefficient({
    value: mean,
    unit: "1",
    low: mean - toNinetyFive * deviation,
    high: mean + toNinetyFive * deviation,
    status: "published",
    source: "buchholz-1988",
    place: `${what}, range from the standard deviation`,
  });
}

/** Printed friction of palm skin on things that are no rope [-], to judge a rope by. */
export const palmAnchors = {
  aluminium: palmOn(0.38, 0.13, "aluminium, dry and moist"),
  vinyl: palmOn(0.53, 0.18, "smooth vinyl, dry and moist"),
  clothTapeDry: palmOn(0.41, 0.1, "cloth tape, dry"),
  clothTapeMoist: palmOn(0.66, 0.14, "cloth tape, moist"),
  suedeDry: palmOn(0.39, 0.06, "suede, dry"),
  suedeMoist: palmOn(0.66, 0.11, "suede, moist"),
} as const;

function gloved(value: number, what: string): Coefficient {
  return coefficient({
    value,
    unit: "1",
    low: 0.8 * value,
    high: 1.2 * value,
    status: "published",
    source: "glove-breakaway",
    place: `${what} on aluminium; no spread printed, the range is judged`,
  });
}

/** Printed friction of hands in gloves on aluminium [-], to judge a sailing glove by. */
export const gloveAnchors = {
  polyester: gloved(0.32, "polyester glove"),
  bare: gloved(0.5, "bare hand"),
  latex: gloved(0.74, "latex glove"),
} as const;

const narrow =
  "no printed value found for rope; judged between cloth tape and aluminium: hang a known weight on the line and pull a hand scale until the hand slips";

function judged(low: number, value: number, high: number, place: string): Coefficient {
  return coefficient({ value, unit: "1", low, high, status: "from memory", place });
}

/** Friction of a bare dry palm on a cover, per face of the hand [-]. */
export const palmOnCover = {
  8: judged(0.28, 0.5, 0.8, narrow),
  16: judged(0.24, 0.45, 0.75, narrow),
  24: judged(0.2, 0.4, 0.7, narrow),
} as const satisfies Record<StrandCount, Coefficient>;

/** Friction of a palm on another fibre over that on polyester [-]. */
export const palmOnFibre = {
  polyester: coefficient({
    value: 1,
    unit: "1",
    low: 1,
    high: 1,
    status: "common practice",
    place: "the reference",
  }),
  aramidBlend: judged(0.85, 1.1, 1.4, "no printed value found; a blend feels rougher"),
  bareCore: judged(0.4, 0.65, 0.9, "no printed value found; HMPE is slippery to the hand"),
} as const satisfies Record<CoverFibre, Coefficient>;

/** What changes the hold of a hand on a rope. */
export const palmFactors = {
  /** Friction on a wet cover over that on a dry one [-]. */
  wet: judged(
    0.6,
    1,
    1.6,
    "moisture raised friction on suede by 68 % and lowered it on sandpaper by 13 %; a soaked rope was not measured",
  ),
  /** Friction of a gloved hand over that of a bare one [-]. */
  glove: judged(
    0.64,
    1.1,
    1.48,
    "on aluminium a polyester glove gave 0.32, a bare hand 0.50, latex 0.74; a sailing glove was not measured",
  ),
  /** Strength of one hand over that of both [-]. */
  oneOverTwo: coefficient({
    value: 0.84,
    unit: "1",
    low: 0.64,
    high: 1.04,
    status: "published",
    source: "fothergill-1991",
    place: "range of one-handed over two-handed strength; the middle of the range is taken",
  }),
  /** Grip on a 4 mm line over that on a handle of 22 to 32 mm [-]. */
  thinLine: judged(
    0.25,
    0.5,
    0.9,
    "no printed grip on thin rope found: squeeze a hand scale through a line of your own to narrow it",
  ),
  /** Grip on a 51 mm handle over that on one of 22 to 32 mm [-]. */
  thickHandle: coefficient({
    value: 0.895,
    unit: "1",
    low: 0.87,
    high: 0.92,
    status: "published",
    source: "young-2012",
    place: "51 mm is 8 to 13 % below 22 to 32 mm",
  }),
} as const;

function onHandle(mean: number, deviation: number, size: string): Coefficient {
  return coefficient({
    value: mean,
    unit: "N",
    low: mean - toNinetyFive * deviation,
    high: mean + toNinetyFive * deviation,
    status: "published",
    source: "irwin-2013",
    place: `16 people, cylinder of ${size} mm; range from the standard deviation`,
  });
}

/** Printed grip on thick cylinders [N]; only their ratios are used. */
export const thickGrips = {
  50.8: onHandle(236, 72.9, "50.8"),
  63.5: onHandle(208, 72.5, "63.5"),
  76.2: onHandle(158, 45.7, "76.2"),
} as const;

/** Printed pull along a vertical cylinder at which one hand lets go: the case nearest to a rope [N]. */
export const axialHold = coefficient({
  value: 435,
  unit: "N",
  low: 391,
  high: 479,
  status: "published",
  source: "young-2009",
  place: "vertical cylinder, one hand: 435 N, standard deviation 27 N",
});
