import { OutsideModelError } from "../quantity/errors.js";

/** Where the energy of a motion came from and where it went [J]. */
export interface MotionEnergy {
  /** Work of the hand on the line: above zero while it hauls, below zero while it slows the line. */
  readonly hand: number;
  /** Work of a crew that draws at the load end. */
  readonly retrieval: number;
  readonly gravity: number;
  readonly wind: number;
  /** Kinetic energy gained from start to end. */
  readonly kinetic: number;
  /** Lost to friction and air at the sail. */
  readonly sail: number;
  /** Lost in the stations of the line. */
  readonly stations: number;
  /** Lost where rope or sail is set moving or comes to rest: tail, bag, deck. */
  readonly joining: number;
  /** Kinetic energy that a hand or an end stop took up. */
  readonly stopped: number;
  /** Work in less what it went into, over all work that was done [-]. */
  readonly imbalance: number;
}

/** Largest share of the work that may be missing from a balance [-]. */
export const imbalanceAllowed = 1e-3;

/**
 * Closes the balance of a motion and refuses one that does not close.
 *
 *     work of hand, crew, gravity and wind = kinetic energy + losses, within 0.1 % of all work done
 *
 * @param works  all works and losses [J] without the imbalance
 * @returns the same with its imbalance [-]
 * @throws OutsideModelError when more than 0.1 % is missing
 * Source: statics, balance of energy.
 */
export function closedBalance(works: Omit<MotionEnergy, "imbalance">): MotionEnergy {
  const { hand, retrieval, gravity, wind, kinetic, sail, stations, joining, stopped } = works;
  const missing = hand + retrieval + gravity + wind - kinetic - sail - stations - joining - stopped;
  const turnover = Object.values(works).reduce((sum, work) => sum + Math.abs(work), 0) / 2;
  const imbalance = turnover === 0 ? 0 : missing / turnover;
  if (Math.abs(imbalance) <= imbalanceAllowed) return { ...works, imbalance };
  throw new OutsideModelError({
    quantity: "balance of energy of a motion",
    value: `${(100 * imbalance).toPrecision(3)} % missing`,
    allowed: `at most ${100 * imbalanceAllowed} %`,
    advice: "Ask for a smaller tolerance.",
  });
}
