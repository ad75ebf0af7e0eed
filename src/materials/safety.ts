import { coefficient } from "../sources/coefficient.js";

/** Break load over working load that is asked for [-]. */
export const safetyFactors = {
  /** Printed range for ropes in general use; the middle stands for lines whose failure only costs a race. */
  general: coefficient({
    value: 5,
    unit: "1",
    low: 5,
    high: 12,
    status: "published",
    source: "cordage-institute-1401",
    place: "section 4: design factors from 5 to 12; 5 is the least of them",
  }),
  /** Share of the safety factor that must still be there at the weak end of an estimated break load [-]. */
  weakEndShare: coefficient({
    value: 0.5,
    unit: "1",
    low: 0.4,
    high: 0.6,
    status: "from memory",
    place: "the factor is there for a weak rope as well as for gusts and chafe; judged",
  }),
  /** Share of the rated load of hardware that must be there at the strong end of an estimated load [-]. */
  hardwareWeakEnd: coefficient({
    value: 0.75,
    unit: "1",
    low: 0.6,
    high: 1,
    status: "common practice",
    place:
      "hardware breaks at about twice its rated load; at the strong end of a load that is only estimated it may be a third over",
  }),
} as const;

/** Force a metre of rope diameter that a bare hand holds in comfort [N/m]. */
export const handComfort = coefficient({
  value: 25_000,
  unit: "N/m",
  low: 12_000,
  high: 50_000,
  status: "from memory",
  place: "200 N on an 8 mm sheet is held in comfort; no printed value found: ask a crew with a hand scale",
});

/** Least rope diameter over groove width at which a thin rope still keeps out of the gap beside the sheave [-]. */
export const grooveFilling = coefficient({
  value: 0.4,
  unit: "1",
  low: 0.25,
  high: 0.6,
  status: "from memory",
  place: "a rope thinner than the gap between sheave and cheek jams there; measure the gap of your own block",
});
