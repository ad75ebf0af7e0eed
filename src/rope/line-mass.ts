import { within } from "../quantity/guard.js";
import type { Band } from "../sources/band.js";
import { type RopeMake, ropeLinearDensity } from "./make.js";
import { wetLinearDensity } from "./wet-mass.js";

/** A length of one rope. */
export interface RopeSegment {
  readonly make: RopeMake;
  /** [m] */
  readonly length: number;
}

/** Mass of rope, dry and after it was under water and shaken [kg]. */
export interface LineMass {
  readonly dry: Band;
  readonly wet: Band;
}

/**
 * Mass of a line of one or more ropes, or of all lines of a boat.
 *
 *     m = Σ m' · L, dry and wet
 *
 * The ends of the range add up as they are: fibre, fill and water are the same for all segments, so they are off together.
 *
 * @param segments  ropes with their lengths [m]
 * @returns mass with its range [kg]; nothing weighs nothing
 * @throws ValueError for a length or rope that cannot be
 * Source: common practice; each rope's records. Example: lineMass([{ make: { fibre: "hmpe", construction: "bareBraid", diameter: 0.002 }, length: 10 }]).dry.value → 0.0216
 */
export function lineMass(segments: readonly RopeSegment[]): LineMass {
  return { dry: sum(segments, ropeLinearDensity), wet: sum(segments, wetLinearDensity) };
}

function sum(segments: readonly RopeSegment[], density: (make: RopeMake) => Band): Band {
  return segments.reduce<Band>(
    (total, { make, length }) => {
      const metres = within("lineLength", length);
      const { value, low, high } = density(make);
      return {
        value: total.value + metres * value,
        low: total.low + metres * low,
        high: total.high + metres * high,
      };
    },
    { value: 0, low: 0, high: 0 },
  );
}
