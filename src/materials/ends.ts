import type { SourceId } from "../sources/bibliography.js";
import { type Coefficient, coefficient } from "../sources/coefficient.js";

/** How a rope ends: what is left of its strength at a splice or knot, and the work it takes. */
export interface RopeEnd {
  readonly name: string;
  /** Break load with this end over that of the straight rope [-]. */
  readonly retained: Coefficient;
}

function printed(name: string, low: number, high: number, source: SourceId, place: string): RopeEnd {
  const value = (low + high) / 2;
  return { name, retained: coefficient({ value, unit: "1", low, high, status: "published", source, place }) };
}

/** A printed range of knots that tests on other ropes went beyond. */
function widened(
  name: string,
  [printedLow, printedHigh]: readonly [number, number],
  [low, high]: readonly [number, number],
  tests: string,
): RopeEnd {
  const place = `${knots}, ${printedLow} to ${printedHigh}; ends set by tests of other ropes: ${tests}`;
  const value = (printedLow + printedHigh) / 2;
  return {
    name,
    retained: coefficient({ value, unit: "1", low, high, status: "published", source: "knot-test-magazine", place }),
  };
}

function remembered(name: string, low: number, value: number, high: number, place: string): RopeEnd {
  return { name, retained: coefficient({ value, unit: "1", low, high, status: "from memory", place }) };
}

function tested(name: string, value: number): RopeEnd {
  const place = "tests quoted on a forum; spread of a quarter: one rope, few pulls";
  const record = { value, unit: "1", low: 0.75 * value, high: Math.min(1, 1.25 * value), place };
  return { name, retained: coefficient({ ...record, status: "published", source: "hmpe-knot-tests" }) };
}

const knots = "printed range of knots in fibre rope";

/** Ends of ropes. Knots in slippery HMPE are rows of their own: they slip before they break. */
export const ropeEnds = {
  splice: {
    name: "eye splice",
    retained: coefficient({
      value: 0.9,
      unit: "1",
      low: 0.8,
      high: 0.95,
      status: "published",
      source: "mooring-guidelines",
      place: "note 2: spliced over unspliced about 0.90; spread from other printed splices, 0.85 to 0.95",
    }),
  },
  bowline: widened(
    "bowline",
    [0.67, 0.75],
    [0.43, 0.83],
    "0.43 to 0.58 in polyester of 10 mm on a machine, 0.60 in an older table, 0.83 of the rated strength of a thin braid",
  ),
  halfHitches: widened("two half hitches on a ring", [0.6, 0.7], [0.6, 0.75], "0.75 in an older table"),
  sheetBend: printed("sheet bend", 0.48, 0.58, "knot-test-magazine", knots),
  reefKnot: printed("reef knot", 0.43, 0.47, "knot-test-magazine", knots),
  anyKnot: {
    name: "any knot",
    retained: coefficient({
      value: 0.5,
      unit: "1",
      low: 0.35,
      high: 0.85,
      status: "published",
      source: "delaney-2022",
      place:
        "p. 30: take half for every knot; spread from printed tables of knots, upper end from a thin braid with a figure of eight, which broke at 0.84 of its rated strength",
    }),
  },
  hmpeBowline: tested("bowline in HMPE", 0.33),
  hmpeCowHitch: tested("cow hitch in HMPE", 0.57),
  hmpeLongSplice: tested("long splice in HMPE", 0.85),
  hmpeKnot: remembered("knot in bare HMPE", 0.25, 0.38, 0.5, "slips or breaks well below half; pull one to narrow it"),
  straight: remembered("straight rope between grips", 1, 1, 1, "the reference"),
} as const satisfies Record<string, RopeEnd>;

/** Name of a way to end a rope. */
export type RopeEndName = keyof typeof ropeEnds;
