import { coefficient } from "../sources/coefficient.js";
import type { Surface } from "./surfaces.js";

/** A drum that a handle turns through gears. */
export interface Winch {
  readonly kind: "winch";
  /** Radius of the drum where the rope lies [m]. */
  readonly drumRadius: number;
  /** From the handle to the middle of the drum [m]. */
  readonly handleLength: number;
  /** Turns of the handle for one of the drum, quickest gear first; 1 turns the drum directly [-]. */
  readonly gearRatios: readonly number[];
  /** Whether jaws over the drum hold the tail. */
  readonly selfTailing: boolean;
}

/** What winches have in common. */
export const winchRecords = {
  /** Work got out over work put in [-]. */
  efficiency: coefficient({
    value: 0.9,
    unit: "1",
    low: 0.8,
    high: 0.95,
    status: "published",
    source: "winch-ratios",
    place: "about 10 % lost in a well kept winch, middle of its load range; salt and old grease judged",
  }),
  /** Force on the handle at which crews change to the slower gear, one hand on it [N]. */
  gearChange: coefficient({
    value: 111,
    unit: "N",
    low: 89,
    high: 178,
    status: "published",
    source: "winch-ratios",
    place: "about 25 lbf with one hand; with both on a longer handle about 40 lbf, the upper end",
  }),
} as const;

/** A drum that is made to hold rope. */
export const drumSurface: Surface = {
  name: "winch drum",
  friction: coefficient({
    value: 0.16,
    unit: "1",
    low: 0.1,
    high: 0.25,
    status: "from memory",
    place: "between a smooth and a ribbed tread; no printed value found; a scale on the tail narrows it",
  }),
};
