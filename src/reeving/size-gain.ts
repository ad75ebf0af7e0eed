import type { MassLaw } from "../materials/block-sizes.js";
import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf, bandsOf } from "../sources/band.js";
import { type MassValues, massAt } from "./block-mass.js";
import { prepareLine } from "./line.js";
import type { Station } from "./reeving.js";
import { type Running, type RunningValues, rangesOf, sized } from "./sized-block.js";
import type { Sheave } from "./station.js";

/** A line whose blocks are all of one size that is left open. */
export interface SizedLine extends Running {
  /** Stations from load to hand, given the sheave that they all have (half a turn; change what differs). */
  readonly stations: (sheave: Sheave) => readonly Station[];
}

/** What the hand feels of a line with blocks of one size, with ranges. */
export interface SizedForces {
  /** [N] */
  readonly hauling: Band;
  /** [N] */
  readonly easing: Band;
  /** Least load at which the line goes out by itself [N]. */
  readonly runOutLoad: Band;
}

function forcesAt(line: SizedLine, sheaveDiameter: number, load: number, values: RunningValues) {
  const { rope, sheave } = sized(line, { sheaveDiameter, wrapAngle: Math.PI }, values);
  return prepareLine({ rope, stations: line.stations(sheave) }).handForces(load);
}

/**
 * Hand forces of a line from the size of its blocks, with ranges.
 *
 * @param line  rope, bearing and stations
 * @param sheaveDiameter  of all its blocks, groove bottom [m]
 * @param load  [N], 0 or more
 * @returns hauling, easing and run-out load with their ranges [N]
 * @throws ValueError or ReevingError for a line that cannot exist
 * Source: statics, with the causes of loss of each turn.
 */
export function handForcesOfSize(line: SizedLine, sheaveDiameter: number, load: number): SizedForces {
  return bandsOf(rangesOf(line), (values) => {
    const { hauling, easing, runOutLoad } = forcesAt(line, sheaveDiameter, load, values);
    return { hauling, easing, runOutLoad };
  });
}

/** From one size of block to the next. */
export interface SizeStep {
  /** [m] */
  readonly from: number;
  /** [m] */
  readonly to: number;
  /** Pull saved at the hand while hauling [N]. */
  readonly saved: Band;
  /** Mass added, all blocks together [kg]. */
  readonly added: Band;
  /** Pull saved for each kilogram added [N/kg]. */
  readonly savedPerMass: Band;
}

/**
 * What each next size of block saves at the hand, and what it weighs.
 *
 *     saved / added = (T_haul(D_1) − T_haul(D_2)) / (N · (m(D_2) − m(D_1)))
 *
 * @param line  rope, bearing and stations
 * @param sheaveDiameters  sizes, rising [m], two or more
 * @param load  [N], 0 or more
 * @param blocks  N, single sheaves that are changed [-], 1 to 30
 * @param mass  mass law of a single block
 * @returns a step for each pair of neighbours, with ranges [N, kg, N/kg]
 * @throws ValueError for fewer than two sizes or sizes that do not rise
 * Source: statics; mass from memory.
 */
export function sizeSteps({
  line,
  sheaveDiameters,
  load,
  blocks,
  mass,
}: {
  readonly line: SizedLine;
  readonly sheaveDiameters: readonly number[];
  readonly load: number;
  readonly blocks: number;
  readonly mass: MassLaw;
}): SizeStep[] {
  refuseUnordered(sheaveDiameters);
  const count = within("turnCount", blocks, 1);
  const { referenceMass, exponent } = mass;
  return sheaveDiameters.slice(1).map((to, index): SizeStep => {
    const from = sheaveDiameters[index]!;
    const save = (values: RunningValues) =>
      forcesAt(line, from, load, values).hauling - forcesAt(line, to, load, values).hauling;
    const add = (values: MassValues) => count * (massAt(mass, to, values) - massAt(mass, from, values));
    const ranges = rangesOf(line);
    return {
      from,
      to,
      saved: bandOf(ranges, save),
      added: bandOf({ referenceMass, exponent }, add),
      savedPerMass: bandOf({ ...ranges, referenceMass, exponent }, (values) => save(values) / add(values)),
    };
  });
}

function refuseUnordered(sizes: readonly number[]): void {
  if (sizes.length >= 2 && sizes.every((size, index) => index === 0 || size > sizes[index - 1]!)) return;
  throw new ValueError({
    quantity: "sheave diameters",
    value: sizes.join(", "),
    allowed: "two or more, each larger than the one before, in metres",
    advice: "Sort the sizes from small to large and take out doubles.",
  });
}
