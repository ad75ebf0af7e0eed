import { type Coefficient, coefficient } from "../sources/coefficient.js";

function practised(value: number, unit: string, low: number, high: number, place: string): Coefficient {
  return coefficient({ value, unit, low, high, status: "common practice", place });
}

/** How thick a line should be where a hand works it, and how fast it is let out: the custom of small boats. */
export const heldLines = {
  /** Thinnest sheet that a hand holds for hours [m]. */
  heldSheet: practised(0.007, "m", 0.006, 0.008, "sheets held by hand are 7 or 8 mm; light crews take 6 mm"),
  /** Thinnest sheet that a cleat holds and a hand trims [m]. */
  cleatedSheet: practised(0.006, "m", 0.005, 0.007, "sheets in a cleat are 5 to 7 mm on small boats"),
  /** Thinnest other line that a hand holds for a moment [m]. */
  heldLine: practised(0.005, "m", 0.004, 0.006, "drop lines and the like: held for seconds, thinner than a sheet"),
  /** Thinnest other line that is hauled and then cleated [m]. */
  hauledLine: practised(0.004, "m", 0.003, 0.005, "tails of halyards and control lines: 4 mm and up"),
  /** Speed of a line that is let out fast through the hand [m/s]. */
  easeSpeed: practised(1, "m/s", 0.5, 2, "a gust is answered with about a metre of sheet in a second"),
  /** How long it runs [s]. */
  easeDuration: practised(1, "s", 0.5, 1.5, "a gust is answered with about a metre of sheet in a second"),
} as const satisfies Record<string, Coefficient>;
