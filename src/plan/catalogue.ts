import type { Bearing } from "../materials/bearings.js";
import type { StiffnessLaw } from "../materials/stiffness.js";
import type { RopeMake } from "../rope/make.js";
import type { Band } from "../sources/band.js";

/** A rope that can be had. */
export interface PlanRope {
  readonly id: string;
  readonly words: string;
  readonly make: RopeMake;
  readonly stiffness: StiffnessLaw;
  /** [cent] */
  readonly pricePerMetre: number;
  /** Ways to make its running part thin. */
  readonly tapers?: readonly PlanTaper[];
}

/** A thin running part: the stripped core of the same rope, or a thinner line spliced on. */
export interface PlanTaper {
  readonly id: string;
  readonly words: string;
  readonly join: "strip" | "splice";
  readonly make: RopeMake;
  readonly stiffness: StiffnessLaw;
  /** [cent]; 0 for the core of the same rope. */
  readonly pricePerMetre: number;
}

/** A block that can be had. */
export interface PlanBlock {
  readonly id: string;
  readonly words: string;
  /** Bottom of the groove [m]. */
  readonly sheaveDiameter: number;
  /** [m] */
  readonly grooveWidth: number;
  /** [kg] */
  readonly mass: number;
  /** [cent] */
  readonly price: number;
  /** [N] */
  readonly workingLoad: number;
  readonly bearing: Bearing;
  /** Pull that starts the unloaded sheave [N]. */
  readonly drag: Band;
}

/** Ropes and blocks that a boat may choose from. */
export interface PlanCatalogue {
  readonly ropes: readonly PlanRope[];
  readonly blocks: readonly PlanBlock[];
}
