import type { SourceId } from "../sources/bibliography.js";
import { type Coefficient, coefficient } from "../sources/coefficient.js";

/** Group of muscles whose endurance is known. */
export type MuscleGroup = "hand" | "elbow" | "general";

/** How people differ from the printed rates. */
export const personalSpread = {
  /** Fatigue rate of a person over the printed one [-]. */
  fatigue: coefficient({
    value: 1,
    unit: "1",
    low: 0.5,
    high: 1.5,
    status: "published",
    source: "fatigue-rate-2018",
    place: "30 people, elbow: fatigue rate 0.96 a minute with a standard deviation of 0.29; taken over to the hand",
  }),
  /** Recovery rate of a person over the printed one [-]. */
  recovery: coefficient({
    value: 1,
    unit: "1",
    low: 0.5,
    high: 2,
    status: "from memory",
    place: "no printed spread found; timed holds with breaks would narrow it",
  }),
  /** Endurance time of a person over that of the law [-]. */
  endurance: coefficient({
    value: 1,
    unit: "1",
    low: 0.5,
    high: 3,
    status: "from memory",
    place:
      "judged: at a quarter of maximum the law says 5.2 minutes, another curve 3.7, and one laboratory measured 16.2",
  }),
} as const;

/** A printed value with the spread of the people round it. */
function printed(
  value: number,
  unit: string,
  source: SourceId,
  place: string,
  { low, high }: Coefficient,
): Coefficient {
  return coefficient({ value, unit, low: low * value, high: high * value, status: "published", source, place });
}

/** Power law of the endurance time: T = factor / f^exponent. */
export interface EnduranceLaw {
  /** [s] */
  readonly factor: Coefficient;
  readonly exponent: Coefficient;
}

/** Exponent of the law for a person over the printed one [-]. */
const exponentSpread = coefficient({
  value: 1,
  unit: "1",
  low: 0.9,
  high: 1.1,
  status: "from memory",
  place: "judged; joints differ by more, from 1.6 to 2.3",
});

function law(factor: number, exponent: number, who: string): EnduranceLaw {
  const place = `${who}; fit to endurance times of 194 studies; the range is judged`;
  return {
    factor: printed(factor, "s", "frey-law-avin-2010", place, personalSpread.endurance),
    exponent: printed(exponent, "1", "frey-law-avin-2010", place, exponentSpread),
  };
}

/** Printed laws of static endurance. */
export const enduranceLaws = {
  hand: law(33.55, 1.61, "hand and grip"),
  elbow: law(17.98, 2.21, "elbow"),
  general: law(21.92, 1.98, "all joints"),
} as const satisfies Record<MuscleGroup, EnduranceLaw>;

/** Rates of the three-compartment model. */
export interface FatigueSet {
  /** F [1/s] */
  readonly fatigueRate: Coefficient;
  /** R [1/s] */
  readonly recoveryRate: Coefficient;
  /** Recovery at rest over recovery under load [-]. */
  readonly restFactor: Coefficient;
}

function set(who: string, fatigueRate: number, recoveryRate: number, restFactor: number): FatigueSet {
  const { fatigue, recovery } = personalSpread;
  return {
    fatigueRate: printed(fatigueRate, "1/s", "frey-law-2012", `F, ${who}; range of people who were measured`, fatigue),
    recoveryRate: printed(recoveryRate, "1/s", "frey-law-2012", `R, ${who}; the range is judged`, recovery),
    restFactor: coefficient({
      value: restFactor,
      unit: "1",
      low: 15,
      high: 30,
      status: "published",
      source: "looft-2018",
      place: "15 for several joints, 30 said to be better for the hand",
    }),
  };
}

/** Printed sets of rates. */
export const fatigueSets = {
  hand: set("hand and grip", 0.0098, 0.00064, 30),
  elbow: set("elbow", 0.00912, 0.00094, 15),
  general: set("all joints", 0.0097, 0.00091, 15),
} as const satisfies Record<MuscleGroup, FatigueSet>;

/** Share of maximum above which the endurance law replaces the model [-]. */
export const seamShare = coefficient({
  value: 0.7,
  unit: "1",
  low: 0.6,
  high: 0.7,
  status: "published",
  source: "fatigue-validation-page",
  place: "above 70 % the model's endurance is 25 to 71 % short of the law",
});

/** Fatigue rate of a second model, one a minute [1/s]. */
export const exponentialFatigueRate = coefficient({
  value: 1 / 60,
  unit: "1/s",
  low: 0.008,
  high: 0.024,
  status: "published",
  source: "ma-2009",
  place: "k = 1 a minute; range from people measured later, 0.96 with a standard deviation of 0.29",
});

/** Curve of static endurance as remembered: T = −a0 + a1/f − a2/f² + a3/f³ [s]. */
export const rohmertTerms = [1.5, 2.1, 0.6, 0.1].map((minutes, power) =>
  coefficient({
    value: 60 * minutes,
    unit: "s",
    low: 57 * minutes,
    high: 63 * minutes,
    status: "from memory",
    place: `divided by f to the power of ${power}; nobody looked it up, the range is judged`,
  }),
);
