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
    referenceDiameter: 0.016,
    referenceMass: remembered(0.009, 0.014, 0.022, "kg", "metal ring, rope bent round 16 mm"),
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

function block(name: string, diameter: number, grooveWidth: number): Fitting {
  return fitting(name, diameter, grooveWidth, 0.022 * diameter ** 2, 60 * diameter);
}

function ring(diameter: number): Fitting {
  return fitting(`${diameter} mm ring`, diameter, 0.9 * diameter, 0.003 * diameter ** 3, 50 * diameter ** 2);
}

/** Millimetres, grams and newtons, as the invented laws give them: whole grams, tenths of a millimetre in the groove. */
function fitting(name: string, diameter: number, grooveWidth: number, grams: number, workingLoad: number): Fitting {
  return {
    name,
    diameter: diameter / 1000,
    grooveWidth: Math.round(10 * grooveWidth) / 10_000,
    mass: Math.round(grams) / 1000,
    workingLoad,
  };
}

/**
 * Blocks of the demo, smallest first: invented, to have something to choose from. Diameters D [mm] are steps of ISO 3, series R10.
 * Made-up laws give mass (0.022 D² g), working load (60 D N) and groove (2 mm + D / 5).
 */
export const demoBlocks: readonly Fitting[] = [16, 20, 32, 40, 63, 80].map((diameter) =>
  block(`${diameter} mm block`, diameter, 2 + diameter / 5),
);

/**
 * Blocks of the demo with a narrow groove, for thin line: invented as well. Groove 2 mm + D / 10; the halyard sheave has a groove of
 * 2 mm + D / 25, 0.7 times the mass of a block and twice its working load.
 */
export const demoNarrowBlocks: readonly Fitting[] = [
  ...[40, 63, 80].map((diameter) => block(`${diameter} mm narrow block`, diameter, 2 + diameter / 10)),
  fitting("80 mm halyard sheave", 80, 2 + 80 / 25, 0.7 * 0.022 * 80 ** 2, 120 * 80),
];

/** Rings of the demo, smallest first: invented as well. Opening 0.9 D, mass 0.003 D³ g, working load 50 D² N. */
export const demoRings: readonly Fitting[] = [16, 20, 25].map(ring);
