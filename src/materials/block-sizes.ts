import { type Coefficient, coefficient } from "../sources/coefficient.js";

function remembered(low: number, value: number, high: number, unit: string, place: string): Coefficient {
  return coefficient({ value, unit, low, high, status: "from memory", place });
}

/** How the mass of a single block, or of a ring, grows with its size: m = m_0 · (D / D_0)^n. */
export interface MassLaw {
  /** D_0 [m]. */
  readonly referenceDiameter: number;
  /** m_0 [kg]. */
  readonly referenceMass: Coefficient;
  /** n [-]. */
  readonly exponent: Coefficient;
}

/** Mass laws. A kitchen scale and three blocks of one make would narrow them. */
export const massLaws = {
  block: {
    referenceDiameter: 0.04,
    referenceMass: remembered(0.025, 0.04, 0.06, "kg", "single plastic block with a 40 mm sheave"),
    exponent: remembered(1.8, 2.2, 2.8, "1", "between a sheet (2) and a body (3) of one shape"),
  },
  ring: {
    referenceDiameter: 0.014,
    referenceMass: remembered(0.006, 0.01, 0.016, "kg", "metal ring, rope bent round 14 mm"),
    exponent: remembered(2.3, 2.7, 3, "1", "a body of one shape grows with the cube"),
  },
} as const satisfies Record<string, MassLaw>;

/** A block or ring that somebody could buy. */
export interface Fitting {
  readonly name: string;
  /** Bottom of the groove, or diameter round which a ring bends the rope [m]. */
  readonly diameter: number;
  /** [m] */
  readonly grooveWidth: number;
  /** [kg] */
  readonly mass: number;
  /** [N] */
  readonly workingLoad: number;
}

function fitting(name: string, millimetres: [number, number], grams: number, workingLoad: number): Fitting {
  const [diameter, grooveWidth] = millimetres;
  return { name, diameter: diameter / 1000, grooveWidth: grooveWidth / 1000, mass: grams / 1000, workingLoad };
}

/** Blocks of the demo, smallest first: invented, to have something to choose from. */
export const demoBlocks: readonly Fitting[] = [
  fitting("16 mm block", [16, 5.2], 7, 800),
  fitting("20 mm block", [20, 6.3], 11, 1200),
  fitting("29 mm block", [29, 8.4], 21, 1600),
  fitting("40 mm block", [40, 10.5], 40, 2500),
  fitting("57 mm block", [57, 12.6], 88, 3600),
  fitting("75 mm block", [75, 15], 165, 5000),
];

/** Blocks of the demo with a narrow groove, for thin line: invented as well. */
export const demoNarrowBlocks: readonly Fitting[] = [
  fitting("40 mm narrow block", [40, 6.3], 34, 2000),
  fitting("57 mm narrow block", [57, 8.4], 75, 3000),
  fitting("75 mm narrow block", [75, 8.4], 140, 4000),
  fitting("75 mm halyard sheave", [75, 5.2], 120, 4000),
];

/** Rings of the demo, smallest first: invented as well. */
export const demoRings: readonly Fitting[] = [
  fitting("10 mm ring", [10, 9], 4, 5000),
  fitting("14 mm ring", [14, 13], 10, 12_000),
  fitting("20 mm ring", [20, 18], 26, 25_000),
];
