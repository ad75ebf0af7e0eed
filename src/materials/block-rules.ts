import type { SourceId } from "../sources/bibliography.js";
import { type Coefficient, coefficient } from "../sources/coefficient.js";

function printed(value: number, unit: string, source: SourceId, place: string): Coefficient {
  return coefficient({ value, unit, low: value, high: value, status: "published", source, place });
}

function remembered(low: number, value: number, high: number, place: string, unit = "1"): Coefficient {
  return coefficient({ value, unit, low, high, status: "from memory", place });
}

/** Rules for the least sheave: diameter at the bottom of the groove over diameter of the rope [-]. */
export const sheaveRules = {
  dockWork: printed(5.5, "1", "dock-work-code", "§12.1.2, blocks for fibre rope"),
  braided: remembered(5.5, 8, 10, "braided rope: eight rope diameters, Cordage Institute"),
  twisted: remembered(8, 10, 12, "twisted rope: ten rope diameters, Cordage Institute"),
  stiffFibre: remembered(12, 20, 25, "aramid, LCP, PBO: about twenty rope diameters"),
  wire: printed(20, "1", "steelworker-blocks", "rough rule of thumb where the maker gives no table"),
} as const satisfies Record<string, Coefficient>;

/** Name of a rule for the least sheave. */
export type SheaveRule = keyof typeof sheaveRules;

/** Other printed rules of blocks, and two remembered ones of their grooves. */
export const blockRules = {
  /** Radius of the bend over diameter of the rope, least [-]. */
  bendRadius: printed(4, "1", "delaney-2022", "p. 82: at least four rope diameters"),
  /** Circumferences of the rope in the diameter of the sheave [-]. */
  sheaveCircumferences: printed(2, "1", "steelworker-blocks", "about twice the circumference of the line"),
  /** Circumferences of the rope in the length of the shell [-]. */
  shellCircumferences: printed(3, "1", "army-blocks", "§20-2, the constant of the formula"),
  /** Depth of the groove over diameter of the rope, least [-]. */
  grooveDepth: printed(1 / 3, "1", "dock-work-code", "§12.1.2, a third of the rope's diameter"),
  /** Radius of the groove over half the rope's diameter: more by at least this [m]. */
  grooveMargin: printed(0.001, "m", "dock-work-code", "§12.1.2: half the rope and a millimetre"),
  /** Groove over rope above which the rope lies flat and to one side [-]. */
  grooveTooWide: remembered(1.6, 2.2, 3, "a much wider groove does not hold the rope round: judged"),
  /** Gap between sheave and cheek of a small block [m]. */
  cheekGap: remembered(0.0003, 0.0006, 0.0012, "small plastic blocks: judged; a feeler gauge would tell", "m"),
  /** Rope over gap below which a soft rope can be drawn down beside the sheave [-]. */
  jamRatio: remembered(1.3, 2, 3, "a soft rope flattens to half its thickness: judged"),
} as const satisfies Record<string, Coefficient>;

/** Lengths of shell in which blocks for fibre line come [inch]. */
export const stockShells: readonly number[] = [4, 5, 6, 7, 8, 10, 12, 14];
