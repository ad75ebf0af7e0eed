import { type AffineColumns, chunkSize } from "./batch-law.js";
import { type OneWayStep, type Run, runsOf } from "./batch-step.js";
import type { Mechanism } from "./mechanism.js";

/**
 * Step through turns one after the other.
 *
 *     T = max(0, slope · T + offset) at each
 *
 * @param columns  law of each turn, from load to hand
 * @returns the step; it allocates nothing
 */
export function turnsStep(columns: readonly AffineColumns[]): OneWayStep {
  const runs = runsOf(columns);
  return (tensions, count) => {
    for (const run of runs) passRun(run, tensions, count);
  };
}

function passRun({ slope, offset, turns }: Run, tensions: Float64Array, count: number): void {
  for (let i = 0; i < count; i++) {
    const k = slope[i]!;
    const c = offset[i]!;
    let tension = tensions[i]!;
    for (let turn = 0; turn < turns; turn++) tension = k * tension + c;
    tensions[i] = Math.max(0, tension);
  }
}

/** For each case: the part reached, T = slope · T_first + offset, and the same for the weighted sum of the parts so far. */
interface RopeSums {
  readonly slope: Float64Array;
  readonly offset: Float64Array;
  readonly slopes: Float64Array;
  readonly offsets: Float64Array;
}

/**
 * Step of a tackle of one rope on one moving block: every part is a straight line over the first one, and the load is
 * the weighted sum of the parts.
 *
 *     within a run of equal turns T_p = k^p · T_0 + (1 + k + … + k^(p−1)) · c
 *
 * Turns after the last part that pulls on the block are passed like any others.
 *
 * @param mechanism  geometry and motion, with one moving block
 * @param columns  law of each turn, in the order of the mechanism's turns
 * @returns the step; it allocates nothing
 */
export function ropeStep(mechanism: Mechanism, columns: readonly AffineColumns[]): OneWayStep {
  const weight = pullShares(mechanism);
  const runs = runsOf(columns.slice(0, weight.length - 1));
  const column = () => new Float64Array(chunkSize);
  const sums: RopeSums = { slope: column(), offset: column(), slopes: column(), offsets: column() };
  return (tensions, count) => {
    sums.slope.fill(1);
    sums.offset.fill(0);
    sums.slopes.fill(weight[0]!);
    sums.offsets.fill(0);
    let part = 1;
    for (const run of runs) {
      followRun(run, weight, part, sums, count);
      part += run.turns;
    }
    solveRope(sums, tensions, count);
  };
}

/** Number of turns of a tackle that lie between parts which pull on the moving block. */
export function pullingTurns(mechanism: Mechanism): number {
  return pullShares(mechanism).length - 1;
}

/** Pull of every part on the moving block for each newton of tension, over the load's share; up to the last that pulls. */
function pullShares({ moving: [body] }: Mechanism): number[] {
  const shares: number[] = [];
  for (const { part, along } of body!.pulls) shares[part] = (shares[part] ?? 0) - along / body!.loadAlong;
  return Array.from(shares, (share) => share ?? 0);
}

/** Follows the rope through one run, for all cases of the chunk. */
function followRun(run: Run, weight: readonly number[], firstPart: number, sums: RopeSums, count: number): void {
  const { slope: ratio, offset: drag } = run;
  const { slope, offset, slopes, offsets } = sums;
  const endPart = firstPart + run.turns;
  for (let i = 0; i < count; i++) {
    const k = ratio[i]!;
    let power = 1;
    let series = 0;
    let powers = 0;
    let allSeries = 0;
    for (let part = firstPart; part < endPart; part++) {
      const share = weight[part]!;
      series += power;
      power *= k;
      powers += share * power;
      allSeries += share * series;
    }
    const c = drag[i]!;
    slopes[i]! += powers * slope[i]!;
    offsets[i]! += powers * offset[i]! + allSeries * c;
    offset[i] = power * offset[i]! + series * c;
    slope[i]! *= power;
  }
}

/** Finds the first part from the load, and from that the last part followed. */
function solveRope({ slope, offset, slopes, offsets }: RopeSums, tensions: Float64Array, count: number): void {
  for (let i = 0; i < count; i++) {
    const last = ((tensions[i]! - offsets[i]!) / slopes[i]!) * slope[i]! + offset[i]!;
    tensions[i] = Math.max(0, last);
  }
}
