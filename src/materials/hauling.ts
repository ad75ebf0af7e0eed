import { type Coefficient, coefficient } from "../sources/coefficient.js";

function remembered(value: number, unit: string, low: number, high: number, place: string): Coefficient {
  return coefficient({ value, unit, low, high, status: "from memory", place });
}

/** What a crew on a small boat can haul, hand over hand. No printed numbers were found but for the shape of the curve. */
export const hauling = {
  /** Constant a of Hill's equation over the greatest pull, the same as b over the greatest speed [-]. */
  curvature: coefficient({
    value: 0.25,
    unit: "1",
    low: 0.15,
    high: 0.4,
    status: "published",
    source: "mcmahon-1984",
    place: "p. 24, as a lecture page gives it: a = b = 0.25 of greatest force and speed; spread judged",
  }),
  /** Pull of one person on a line that does not move [N]. */
  greatestPull: remembered(
    250,
    "N",
    130,
    450,
    "one person with poor footing, both hands in turn; pull on a hand scale to narrow it",
  ),
  /** Speed of the hand at which it no longer pulls [m/s]. */
  greatestSpeed: remembered(
    3,
    "m/s",
    2,
    4.5,
    "haul a line with nothing on it: three strokes against the clock would narrow it",
  ),
  /** Line taken in with one pull [m]. */
  strokeLength: remembered(0.6, "m", 0.4, 0.9, "mark the line and count strokes to narrow it"),
  /** Pulls a second when nothing resists [1/s]. */
  cycleRate: remembered(1.5, "1/s", 1, 2.2, "count strokes against the clock to narrow it"),
  /** Share of such a cycle in which a hand pulls; in the rest the other hand only holds [-]. */
  pullingShare: remembered(0.6, "1", 0.45, 0.8, "film a hoist to narrow it"),
  /** What a second person on the same line adds, over the pull of the first [-]. */
  secondPerson: remembered(0.7, "1", 0.4, 0.9, "two on one line get in each other's way"),
  /** Force with which a hand slows a line that slides through it [N]. */
  slowingGrip: remembered(60, "N", 20, 150, "a hand that lets the line slip without letting go"),
} as const;

/** How wind and rig hold a sail that goes up or down. */
export const hoisting = {
  /** Friction of cloth, hanks or luff tape on rig and stays [-]. */
  rubbing: remembered(
    0.25,
    "1",
    0.12,
    0.45,
    "cloth and luff tape on metal and wire; pull the sail along its stay to narrow it",
  ),
  /** Force that presses a sail that does not draw against the rig, over dynamic pressure and area [-]. */
  pressing: remembered(0.3, "1", 0.1, 0.6, "a sail that flogs or is half full; no printed number found"),
  /** Part of that force that is gone in the lee of the mainsail [-]. */
  blanketed: remembered(0.7, "1", 0.4, 0.9, "downwind, behind the mainsail"),
  /** Drag of cloth that is drawn up or down along itself, over dynamic pressure of its own speed and area [-]. */
  fallDrag: remembered(0.03, "1", 0.01, 0.1, "cloth moving along itself, crumpled"),
  /** Drag of a sail whose sheet is let go, over dynamic pressure of the clew's speed and area [-]. */
  clewDrag: remembered(0.3, "1", 0.1, 0.6, "the clew swings out, the luff stays: about a third of the sail moves"),
  /** Share of a sail's mass that moves as its clew does [-]. */
  clewMass: remembered(0.3, "1", 0.15, 0.5, "the clew swings out, the luff stays"),
} as const;
