import type { SourceId } from "../sources/bibliography.js";

/** A small sheave whose efficiency somebody measured: to be set beside the models, not a check, for its bearing is not known. */
export interface MeasuredSheave {
  readonly words: string;
  /** [m] */
  readonly ropeDiameter: number;
  /** Groove bottom, smallest and largest that the source allows [m]. */
  readonly sheaveDiameter: readonly [smallest: number, largest: number];
  readonly rope: "braidedCover" | "bareCore";
  /** [N] */
  readonly load: number;
  /** Load over pull, as printed [-]. */
  readonly efficiency: number;
  readonly source: SourceId;
}

/** Small sheaves measured at half a turn by hand. */
export const measuredSheaves: readonly MeasuredSheave[] = [
  {
    words: "9 mm low-stretch rope, 25 mm rolling sheave, 0.1 kN",
    ropeDiameter: 0.009,
    sheaveDiameter: [0.025, 0.025],
    rope: "braidedCover",
    load: 100,
    efficiency: 0.83,
    source: "prattley-2016",
  },
  {
    words: "3.2 mm HMPE braid, ball-bearing sheave of 15 to 20 mm, 23.7 N",
    ropeDiameter: 0.0032,
    sheaveDiameter: [0.015, 0.02],
    rope: "bareCore",
    load: 23.7,
    efficiency: 0.89,
    source: "stockman-tests",
  },
];
