import { lineSets } from "./line-sets.js";
import type { LazySet, MeasuredSet } from "./measured-set.js";
import { peopleSets } from "./people-sets.js";
import { wideningSets } from "./widening-sets.js";

const workedOut = (sets: readonly LazySet[], about: MeasuredSet["about"]): MeasuredSet[] =>
  sets.map((set) => ({ ...set, about, points: set.points() }));

/**
 * The measured sets that stand against the bands, with the bands foretold for them.
 *
 * No point is among them that set the spread of a record: bars of 43 to 60 mm set the bending of braided rope and the
 * friction of rings, concrete has no record that another source set, and a hold of a quarter of maximum set the spread
 * of endurance. No set is among them for which a spread was widened.
 *
 * @returns sets with their points
 * Example: measuredSets().length > 6 → true
 */
export function measuredSets(): MeasuredSet[] {
  return [...workedOut(lineSets, "lines"), ...workedOut(peopleSets, "people")];
}

/** A set that is not counted, with what was widened for it. */
export interface SetAside extends MeasuredSet {
  readonly widened: string;
}

/**
 * The measured sets that are not counted, because a spread was widened after they lay outside.
 *
 * @returns sets with their points and what was widened for each
 * Example: setsAside().length → 6
 */
export function setsAside(): SetAside[] {
  return wideningSets.map((set) => ({ ...set, about: "lines", points: set.points() }));
}
