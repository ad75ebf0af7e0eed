import { ReevingError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { prepareLine } from "./line.js";
import type { Station } from "./reeving.js";
import { type RingValues, type RunningRing, ringOf, ringRanges } from "./running-ring.js";
import { type Running, type RunningValues, rangesOf, sized } from "./sized-block.js";
import type { Rope } from "./station.js";

/** A ring and a block that could do the same job, on one rope. */
export interface RingOrSheave extends Running, RunningRing {
  /** Sheave of the block, groove bottom [m]. */
  readonly sheaveDiameter: number;
}

/** Where both are compared. */
export interface Duty {
  readonly load: number;
  readonly wrapAngle: number;
}

/** What each of them costs while hauling. */
export interface BothLosses {
  /** Extra pull at the ring [N]. */
  readonly ring: Band;
  /** Extra pull at the block [N]. */
  readonly block: Band;
  /** Ring less block; what they have in common, the rope, moves both [N]. */
  readonly difference: Band;
}

type Values = RunningValues & RingValues;

function extra(rope: Rope, turn: Station, load: number): number {
  return prepareLine({ rope, stations: [turn] }).handForces(load).hauling - load;
}

function lossesAt(pair: RingOrSheave, { load, wrapAngle }: Duty, values: Values): { ring: number; block: number } {
  const { rope, sheave } = sized(pair, { sheaveDiameter: pair.sheaveDiameter, wrapAngle }, values);
  return { ring: extra(rope, ringOf(pair, wrapAngle, values).ring, load), block: extra(rope, sheave, load) };
}

const allRanges = (pair: RingOrSheave): Record<keyof Values, Band> => ({ ...rangesOf(pair), ...ringRanges(pair) });

/**
 * What a ring and a block cost while hauling the same rope round the same angle.
 *
 *     ring   bend, then T^(1−n) grows by (1 − n) · μ · T_ref^(1−n) · θ
 *     block  bend and bearing, then a constant drag
 *
 * @param pair  ring, block, rope, with ranges [m, N]
 * @param duty  load [N] and wrap angle [rad]
 * @returns extra pull of each, and their difference, with ranges [N]
 * @throws ValueError for an impossible size, load or angle
 * Valid at any slow speed: friction is taken as the same at every speed.
 * Source: brown-thesis for friction that falls with load, britannica-1911 for bending, donzelli-1999 for bearings.
 */
export function ringAgainstBlock(pair: RingOrSheave, duty: Duty): BothLosses {
  const ranges = allRanges(pair);
  const band = (pick: (losses: { ring: number; block: number }) => number) =>
    bandOf(ranges, (values) => pick(lossesAt(pair, duty, values)));
  return {
    ring: band(({ ring }) => ring),
    block: band(({ block }) => block),
    difference: band(({ ring, block }) => ring - block),
  };
}

/**
 * Largest angle at which a ring costs hardly more than the block: the hand would not tell them apart.
 *
 *     ΔT_ring(θ) − ΔT_block(θ) ≤ share · T, solved for θ up to half a turn
 *
 * @param pair  ring, block, rope, with ranges [m, N]
 * @param load  T [N], above 0
 * @param share  how much more of the load may be lost, with its range [-], 0 to 1
 * @returns wrap angle with its range [rad]: π when the ring never costs too much
 * @throws ValueError for an impossible size or load
 * Source: statics, the two losses compared.
 */
export function ringEnoughAngle(pair: RingOrSheave, load: number, share: Band): Band {
  within("loadTension", load, 1e-6);
  within("share", share.low);
  within("share", share.high);
  return bandOf({ ...allRanges(pair), share }, (values) => {
    const enough = (wrapAngle: number) => {
      const { ring, block } = lossesAt(pair, { load, wrapAngle }, values);
      return ring - block <= values.share * load;
    };
    return enough(Math.PI) ? Math.PI : edge(0, Math.PI, enough);
  });
}

/** Values of the middle of every range. */
function middles(pair: RingOrSheave): Values {
  const ranges = allRanges(pair);
  return Object.fromEntries(Object.entries(ranges).map(([name, { value }]) => [name, value])) as Values;
}

/**
 * Load at which a ring and a block cost the same, when there is one between two loads.
 *
 * @param pair  ring, block, rope [m, N]; middle values are used
 * @param wrapAngle  [rad]
 * @param between  two loads, the second larger [N]
 * @returns load [N], or undefined when one of them costs less at both loads
 * @throws ReevingError when the loads do not rise, ValueError for an impossible size or angle
 * Source: statics, the two losses compared.
 */
export function equalLossLoad(
  pair: RingOrSheave,
  wrapAngle: number,
  between: readonly [least: number, most: number],
): number | undefined {
  const [least, most] = between;
  if (!(least < most)) {
    throw new ReevingError({
      quantity: "loads to look between",
      value: `${least} N and ${most} N`,
      allowed: "the second larger than the first",
      advice: "Give the smaller load first.",
    });
  }
  const values = middles(pair);
  const ringCostsMore = (load: number) => {
    const { ring, block } = lossesAt(pair, { load, wrapAngle }, values);
    return ring > block;
  };
  const first = ringCostsMore(least);
  if (first === ringCostsMore(most)) return undefined;
  return edge(least, most, (load) => ringCostsMore(load) === first);
}

/** Where a condition that holds at the first end stops to hold on the way to the other. */
function edge(from: number, to: number, holds: (value: number) => boolean): number {
  let low = from;
  let high = to;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}
