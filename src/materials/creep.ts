import { type Coefficient, coefficient } from "../sources/coefficient.js";

/** How a rope goes on stretching under a steady load. */
export interface CreepLaw {
  readonly name: string;
  /** Strain for each tenfold of time, at the reference load [-]. */
  readonly perDecade: Coefficient;
  /** Load over break load at which the two rates hold [-]. */
  readonly referenceShare: Coefficient;
  /** Steady rate at the reference load and temperature [1/s]; absent: none is known at the loads of a boat. */
  readonly steady?: {
    readonly rate: Coefficient;
    /** Power of the load with which the rate grows [-]. */
    readonly loadPower: Coefficient;
    /** Activation energy over the gas constant [K]. */
    readonly activation: Coefficient;
    readonly referenceTemperature: Coefficient;
  };
}

/** No number was found in print: remembered, with the widest honest range. */
function remembered(low: number, value: number, high: number, unit: string, place: string): Coefficient {
  return coefficient({ value, unit, low, high, status: "from memory", place });
}

const hang = "no number found in print; hang a weight for a week and mark the line each day";

function law(name: string, low: number, value: number, high: number, place: string): CreepLaw {
  return {
    name,
    perDecade: remembered(low, value, high, "1", `${place}; ${hang}`),
    referenceShare: remembered(0.18, 0.2, 0.22, "1", "load over break load at which the creep a decade is remembered"),
  };
}

/**
 * Creep by fibre. That aramid creeps by the logarithm of time, and HMPE at a steady rate set by load and temperature, is
 * printed; no number is.
 */
export const creepLaws = {
  polyester: law("polyester", 0.0005, 0.0015, 0.004, "worked polyester rope, 0.1 to 0.3 % a decade is usual"),
  aramid: law("aramid", 0.0001, 0.00025, 0.0008, "yarn, 0.01 to 0.05 % a decade, braid on top"),
  lcp: law("LCP", 0.00005, 0.00015, 0.0006, "less than aramid"),
  hmpe: {
    ...law("HMPE", 0.0002, 0.0006, 0.002, "first hours, comes back slowly when unloaded"),
    steady: {
      rate: remembered(
        1e-10,
        1e-9,
        2e-8,
        "1/s",
        `20 °C at a fifth of the rope's break load; grades differ tenfold; ${hang}`,
      ),
      loadPower: remembered(2, 4, 6, "1", "steeper than the load; two weights side by side narrow it"),
      activation: remembered(10_000, 14_000, 18_000, "K", "three to five times faster for each 10 °C"),
      referenceTemperature: remembered(291, 293.15, 295, "K", "20 °C, where the rate is remembered"),
    },
  },
} as const satisfies Record<string, CreepLaw>;
