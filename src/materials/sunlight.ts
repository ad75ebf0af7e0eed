import { type Coefficient, coefficient } from "../sources/coefficient.js";
import type { FibreName } from "./fibres.js";

/** What is left of the strength of a fibre after an exposure. */
export interface Exposure {
  /** Strength left over strength before [-]. */
  readonly retained: Coefficient;
  /** Length of the exposure in days, out of doors in full sun or under the lamp of a weatherometer. */
  readonly days: number;
  readonly where: "sun" | "weatherometer";
}

const lampDays = 6;
const year = 365;

function underLamp(low: number, bound: number, printed: string): Exposure {
  const place = `bare yarn, 6 days of weatherometer light: ${printed}, so this is the most that is left; the lower end is judged`;
  const retained = coefficient({
    value: bound,
    unit: "1",
    low,
    high: bound,
    status: "published",
    source: "uv-thesis-2005",
    place,
  });
  return { retained, days: lampDays, where: "weatherometer" };
}

function outside(low: number, value: number, high: number, what: string): Exposure {
  const place = `${what}, a year out of doors; no printed value found`;
  return {
    retained: coefficient({ value, unit: "1", low, high, status: "from memory", place }),
    days: year,
    where: "sun",
  };
}

const aramid = underLamp(0.6, 0.85, "loses more than 15 %");
const hmpe = outside(0.7, 0.85, 0.95, "thin rope");

/** Strength left after an exposure, by fibre, unprotected. */
export const exposures = {
  polyester: outside(0.75, 0.88, 0.96, "thin rope"),
  polyamide: outside(0.55, 0.75, 0.9, "thin rope"),
  polypropylene: outside(0.2, 0.5, 0.8, "thin rope, by its stabiliser"),
  hmpe,
  hmpeHighModulus: hmpe,
  aramid,
  aramidHighModulus: aramid,
  lcp: underLamp(0.1, 0.3, "loses more than 70 %"),
  pbo: underLamp(0.1, 0.3, "loses more than 70 %"),
} as const satisfies Record<FibreName, Exposure>;

/** Days of full sun that harm a yarn as much as one day under the lamp of a weatherometer [-]. */
export const lampToSun: Coefficient = coefficient({
  value: 6,
  unit: "1",
  low: 3,
  high: 15,
  status: "from memory",
  place: "lamps differ; a yarn left on a deck beside one under the lamp would narrow it",
});
