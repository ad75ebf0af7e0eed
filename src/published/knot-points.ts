import { type RopeEndName, ropeEnds } from "../materials/ends.js";
import type { MeasuredPoint } from "../uncertainty/coverage.js";
import { point } from "./loss-bands.js";

/** Share of strength left, printed in percent. */
const left = (words: string, end: RopeEndName, percent: number, halfStep: number): MeasuredPoint =>
  point(`strength left, ${words}`, percent / 100, halfStep / 100, ropeEnds[end].retained);

/** Loops in four ropes of 10 mm on a calibrated machine, plain bowline and one with its end tucked back. */
export const magazineLoops = (): MeasuredPoint[] =>
  (
    [
      ["three-strand polyester", "bowline", 55.7, 53],
      ["polyester braid over a laid core", "bowline", 52.3, 57.5],
      ["polyester double braid", "bowline", 43.4, 47.4],
      ["HMPE core under a cover", "hmpeBowline", 39, 40.1],
    ] as const
  ).flatMap(([rope, end, bowline, tucked]) => [
    left(`bowline in ${rope}`, end, bowline, 0.05),
    left(`tucked bowline in ${rope}`, end, tucked, 0.05),
  ]);

/** Ten samples of a thin braid; over its rated strength. */
export const thinBraid = (): MeasuredPoint[] => [
  left("bowline in a 6 mm braid, over its rated strength", "bowline", 83, 0.5),
  left("figure of eight in a 6 mm braid, over its rated strength", "anyKnot", 84, 0.5),
];

/** Knots of an older table that have records of their own; the splice and the general knot took their range from it. */
export const olderTable = (): MeasuredPoint[] => [
  left("bowline, older table", "bowline", 60, 0.5),
  left("two half hitches, older table", "halfHitches", 75, 0.5),
  left("reef knot, older table", "reefKnot", 45, 0.5),
];
