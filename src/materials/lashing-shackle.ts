import { coefficient } from "../sources/coefficient.js";

/** Rules and shapes of shackles, and of lashings that replace them. */
export const fastening = {
  /** Working load of a steel shackle over the square of its bar [N/m²]: three short tons a square inch. */
  shackleWorkingStress: coefficient({
    value: (3 * 2000 * 4.4482216152605) / 0.0254 ** 2,
    unit: "N/m^2",
    low: (2.5 * 2000 * 4.4482216152605) / 0.0254 ** 2,
    high: (4 * 2000 * 4.4482216152605) / 0.0254 ** 2,
    status: "published",
    source: "navy-steelworker",
    place: "safe working load 3 D² tons, D in inches; spread over grades of steel",
  }),
  /** Length of bar in a shackle with its pin, over the diameter of the bar [-]. */
  shackleBarLength: coefficient({
    value: 20,
    unit: "1",
    low: 14,
    high: 28,
    status: "from memory",
    place: "bow, eyes and pin of a short shackle unrolled; weigh one to narrow it",
  }),
  /** Density of stainless steel [kg/m³]. */
  steelDensity: coefficient({
    value: 8000,
    unit: "kg/m^3",
    low: 7700,
    high: 8000,
    status: "published",
    source: "specific-strength-table",
    place: "stainless steel 304: 8.00 g/cm³",
  }),
  /** Load that the parts of a lashing carry over that of equal shares [-]. */
  lashingSharing: coefficient({
    value: 0.7,
    unit: "1",
    low: 0.5,
    high: 0.9,
    status: "from memory",
    place: "parts are never drawn equally tight; no printed value found",
  }),
  /** Length of one round of a lashing over the gap that it spans [-]. */
  lashingRound: coefficient({
    value: 2.5,
    unit: "1",
    low: 2.1,
    high: 3.2,
    status: "from memory",
    place: "there and back, and round both eyes",
  }),
  /** Twine left for hitches and tucked ends, over the gap [-]. */
  lashingTail: coefficient({
    value: 6,
    unit: "1",
    low: 3,
    high: 12,
    status: "from memory",
    place: "frapping and hitches",
  }),
  /** Twine that the trade ties lashings with [m]. */
  lashingTwine: coefficient({
    value: 0.00135,
    unit: "m",
    low: 0.0009,
    high: 0.0018,
    status: "common practice",
    place: "0.9 to 1.8 mm: easy to inspect and to replace",
  }),
} as const;
