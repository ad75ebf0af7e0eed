import { type CoreKind, type RopeEndName, ropeEnds } from "../materials/ends.js";
import type { MeasuredPoint } from "../uncertainty/coverage.js";
import { point } from "./loss-bands.js";

/** Share of strength left, printed in percent. */
const left = (
  words: string,
  end: RopeEndName,
  percent: number,
  halfStep: number,
  core: CoreKind = "soft",
): MeasuredPoint => point(`strength left, ${words}`, percent / 100, halfStep / 100, ropeEnds[end].retained[core]);

/** Loops in four ropes of 10 mm on a calibrated machine, plain bowline and one with its end tucked back. */
export const magazineLoops = (): MeasuredPoint[] =>
  (
    [
      ["three-strand polyester", "soft", 55.7, 53],
      ["polyester braid over a laid core", "soft", 52.3, 57.5],
      ["polyester double braid", "soft", 43.4, 47.4],
      ["HMPE core under a cover", "hmpe", 39, 40.1],
    ] as const
  ).flatMap(([rope, core, bowline, tucked]) => [
    left(`bowline in ${rope}`, "bowline", bowline, 0.05, core),
    left(`tucked bowline in ${rope}`, "bowline", tucked, 0.05, core),
  ]);

/** Ten samples of a thin braid; over its rated strength. */
export const thinBraid = (): MeasuredPoint[] => [
  left("bowline in a 6 mm braid, over its rated strength", "bowline", 83, 0.5),
  left("figure of eight in a 6 mm braid, over its rated strength", "figureEight", 84, 0.5),
];

/** Knots of an older table that have records of their own; the splice and the general knot took their range from it. */
export const olderTable = (): MeasuredPoint[] => [
  left("bowline, older table", "bowline", 60, 0.5),
  left("two half hitches, older table", "halfHitches", 75, 0.5),
  left("reef knot, older table", "reefKnot", 45, 0.5),
];
