import { type Coefficient, coefficient } from "../sources/coefficient.js";

/** How stiff a worked rope is for its strength. */
export interface StiffnessRatio {
  readonly name: string;
  /** Slow loading: EA over break load [-]. */
  readonly slow: Coefficient;
  /** Quick loading about a mean: part that does not depend on the mean [-]. */
  readonly quick: Coefficient;
  /** Quick loading: growth with the mean load over the break load [-]. */
  readonly quickGrowth: Coefficient;
}

/** Spread of a rope from rope: a quarter either way, the construction changes that much. */
function ratio(name: string, slow: [number, number, number], quick: number, growth: number): StiffnessRatio {
  const place = `${name}, big mooring rope; spread judged`;
  const record = (low: number, value: number, high: number): Coefficient =>
    coefficient({ value, unit: "1", low, high, status: "published", source: "mooring-rope-properties", place });
  return {
    name,
    slow: record(...slow),
    quick: record(0.75 * quick, quick, 1.25 * quick),
    quickGrowth: record(0.75 * growth, growth, 1.25 * growth),
  };
}

/** Stiffness over break load of big fibre ropes: good for ratios, not for a thin control line. */
export const stiffnessRatios = {
  polyester: ratio("polyester", [9, 14, 18], 11.6, 40),
  polyamide: ratio("polyamide", [2.5, 5, 10], 2.08, 39),
  hmpe: ratio("HMPE", [40, 56, 72], 59, 54),
} as const satisfies Record<string, StiffnessRatio>;

/** Stiffness of a worked rope over that of all its yarns laid straight [-]. */
export const stiffnessConversion: Coefficient = coefficient({
  value: 0.55,
  unit: "1",
  low: 0.3,
  high: 0.8,
  status: "from memory",
  place: "braided yarns lie at an angle and straighten first; hang a weight on 10 m and measure",
});
