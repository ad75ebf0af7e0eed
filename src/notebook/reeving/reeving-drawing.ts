import { type Arrangement, narrowArrangement, sheetArrangement, wideArrangement } from "./arrangement.js";
import { wayOf } from "./course.js";
import { type DrawnLine, stripsOf } from "./strips.js";
import { describedStrips, type EndWords } from "./words.js";

/** What is drawn. */
export interface DrawingInput {
  /** Rope and stations from the load to the hand, or several ropes joined in this order. */
  readonly line: DrawnLine;
  /** Load at the sail end [N]. */
  readonly load: number;
  /** Words for the two ends. */
  readonly words?: EndWords | undefined;
}

/** A drawing as data: shapes with places, for a wide page, for a part of a sheet of paper, and for a narrow page. */
export interface Drawing {
  /** Load, tension behind each station and force at the hand, in sentences. */
  readonly description: string;
  /** The widest first. */
  readonly arrangements: readonly Arrangement[];
}

/**
 * Draws a line from the load to the hand: how it is rove, and how hard the rope pulls at each place.
 *
 *     width of the rope = 1.5 px + 6 px · T / T_largest
 *
 * @param line  rope and stations, or several ropes joined from the load to the hand
 * @param load  load at the sail end [N], 0 to 1 MN
 * @param words  words for the two ends; load and hand when absent
 * @returns the drawing, hauling above easing; on a wide page beside it, where both fit
 * @throws ReevingError for a line that is put together wrong, ValueError for impossible numbers
 * Example: reevingDrawing({ line: { rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [] }, load: 100 }).arrangements.length → 3
 */
export function reevingDrawing({ line, load, words = {} }: DrawingInput): Drawing {
  const strips = stripsOf(line, load);
  const way = wayOf(strips);
  return {
    description: describedStrips(strips, words),
    arrangements: [wideArrangement, sheetArrangement, narrowArrangement].map((arrange) => arrange(strips, way, words)),
  };
}
