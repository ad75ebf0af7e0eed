import { type RopeUse, useFactors, wetStrength } from "../materials/ageing.js";
import { coreKinds, type RopeEndName, ropeEnds, slipperyCores } from "../materials/ends.js";
import type { FibreName } from "../materials/fibres.js";
import { type Band, bandOf } from "../sources/band.js";
import { bendStrength } from "./bend-strength.js";
import { sunlightRetained } from "./sunlight.js";

/** What weakens a rope: at places, and as a whole. */
export interface Weakening {
  readonly fibre: FibreName;
  /** Ends and knots in the rope. */
  readonly ends: readonly RopeEndName[];
  /** Tightest bend under load: groove-bottom diameter over rope diameter [-]; absent: none. */
  readonly diameterRatio?: number;
  readonly use: RopeUse;
  readonly wet: boolean;
  /** Whole days in full sun without a cover, on top of use [-]; none when absent. */
  readonly daysInSun?: number;
}

/** What is left of the strength, and which place decides. */
export interface RetainedStrength extends Band {
  readonly weakestPlace: string;
  /** Whether the weakest place is a knot in a slippery core, which may slip before it breaks. */
  readonly slips: boolean;
}

/**
 * Strength left in a rope with its ends, its tightest bend, its age and water.
 *
 *     η_s = min over places (end, knot, bend) · use · sun · wet
 *
 * What an end leaves depends on the fibre that carries: a knot costs HMPE twice what it costs polyester.
 *
 * Places do not add up: a rope breaks at the weakest. Age, sun and water weaken all of it.
 *
 * @param weakening  ends, bend [-], use, sun [days], wet
 * @returns retained strength with its range [-], and the weakest place
 * @throws ValueError for a diameter ratio outside its range
 * Valid for one load that is pulled slowly to the break. A knot at the bend is weaker than either.
 * Source: mooring-guidelines, note 2, for the splice; each factor is a record. Example: retainedStrength({ fibre: "polyester", ends: ["splice"], use: "new", wet: false }).value → 0.9
 */
export function retainedStrength(weakening: Weakening): RetainedStrength {
  const { fibre, ends, diameterRatio, use, wet, daysInSun: days = 0 } = weakening;
  const places: Place[] = [
    { name: "nowhere in particular", knot: false, value: 1, low: 1, high: 1 },
    ...ends.map((end): Place => {
      const { name, knot, retained } = ropeEnds[end];
      return { ...band(retained[coreKinds[fibre]]), name, knot };
    }),
    ...(diameterRatio === undefined
      ? []
      : [{ ...bendStrength({ material: fibre, diameterRatio }), name: "bend", knot: false }]),
  ];
  const least = places.reduce((weakest, place) => (place.value < weakest.value ? place : weakest));
  const lowest = Math.min(...places.map(({ low }) => low));
  const age = useFactors[use];
  const water = wet ? wetStrength[fibre] : { value: 1, low: 1, high: 1 };
  const sun = sunlightRetained({ fibre, days });
  const whole = bandOf(
    { place: { ...least, low: lowest }, age, sun, water },
    (values) => values.place * values.age * values.sun * values.water,
  );
  return { ...whole, weakestPlace: least.name, slips: least.knot && slipperyCores.has(fibre) };
}

/** A place where a rope may break. */
interface Place extends Band {
  readonly name: string;
  readonly knot: boolean;
}

function band({ value, low, high }: Band): Band {
  return { value, low, high };
}
