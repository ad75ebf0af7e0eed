import { type Coefficient, coefficient } from "../sources/coefficient.js";
import type { SolidName } from "./thermal.js";

/** A piece of hardware over which a rope is made to slide. */
export interface RubbedHardware {
  readonly name: string;
  readonly material: SolidName;
  /** What warms up with the contact [kg]. */
  readonly mass: Coefficient;
  /** Length of rope that lies on it [m]. */
  readonly contactLength: Coefficient;
  /** Width of the contact over the rope diameter [-]. */
  readonly widthShare: Coefficient;
}

type Spread = readonly [low: number, value: number, high: number];

function piece(name: string, material: SolidName, mass: Spread, length: Spread, width: Spread): RubbedHardware {
  const record = ([low, value, high]: Spread, unit: string, place: string) =>
    coefficient({ value, unit, low, high, status: "invented for the demo", place: `${name}: ${place}` });
  return {
    name,
    material,
    mass: record(mass, "kg", "weigh your own"),
    contactLength: record(length, "m", "measure your own"),
    widthShare: record(width, "1", "chalk the rope and look at the mark"),
  };
}

/** Demo hardware for a line of 6 to 10 mm; invented, with the sizes that such parts have. */
export const rubbedHardware = {
  ring: piece("aluminium ring", "anodised", [0.012, 0.02, 0.03], [0.014, 0.02, 0.028], [0.3, 0.5, 0.7]),
  plasticRing: piece("plastic ring", "plastic", [0.006, 0.01, 0.015], [0.014, 0.02, 0.028], [0.3, 0.5, 0.7]),
  ratchet: piece("ratchet tread", "aluminium", [0.01, 0.018, 0.03], [0.06, 0.075, 0.09], [0.3, 0.5, 0.7]),
  jammer: piece("jammer", "stainlessSteel", [0.02, 0.04, 0.06], [0.012, 0.02, 0.03], [0.4, 0.7, 1]),
} as const satisfies Record<string, RubbedHardware>;

/** Name of a piece of demo hardware. */
export type RubbedHardwareName = keyof typeof rubbedHardware;
