import { coefficient } from "../sources/coefficient.js";

/** What is assumed of scale, hand and line before anything is measured. */
export const calibrationRecords = {
  /** Scatter of a pull read again, over the pull, beside the step of the scale. */
  repeatability: coefficient({
    value: 0.02,
    unit: "1",
    low: 0.01,
    high: 0.05,
    status: "from memory",
    place: "a slow, steady pull read at the moment the load moves; read one pull ten times to narrow it",
  }),
  /** A pull that lies this many times its expected scatter from the fit is left out. */
  outlierMultiple: coefficient({
    value: 4,
    unit: "1",
    low: 3,
    high: 5,
    status: "common practice",
    place: "between three and five standard deviations; four leaves out one good pull in sixteen thousand",
  }),
  /** Pull over load, or load over pull, beyond which a reading is taken for a slip of unit or pen. */
  largestRatio: coefficient({
    value: 50,
    unit: "1",
    low: 20,
    high: 200,
    status: "from memory",
    place: "a line that multiplies its load more than this is made fast, not led; nobody looked it up",
  }),
  /** Tension ratio of one turn of a line that nobody knows. */
  turnRatio: coefficient({
    value: 1.09,
    unit: "1",
    low: 1.02,
    high: 1.22,
    status: "from memory",
    place: "from a good ball-bearing sheave to a small ring; a pull and an ease narrow it",
  }),
  /** Tension ratio of a whole line that nobody knows. */
  lineRatio: coefficient({
    value: 1.3,
    unit: "1",
    low: 1.05,
    high: 1.7,
    status: "from memory",
    place: "one to eight turns of mixed hardware; a pull and an ease narrow it",
  }),
  /** Constant drag of a whole line that nobody knows. */
  lineDrag: coefficient({
    value: 2,
    unit: "N",
    low: 0.2,
    high: 5,
    status: "from memory",
    place: "seals, bending of a stiff cover, weight of the rope; a reading under a small load narrows it",
  }),
} as const;
