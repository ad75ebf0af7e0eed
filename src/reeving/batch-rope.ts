import type { AffineColumns } from "./batch-law.js";
import type { Mechanism } from "./mechanism.js";

/**
 * Takes a chunk of tensions from the load side of something to its hand side, for one direction of motion.
 *
 * Reads `source` and writes `target`, which may be the same array, both from the index `from` on.
 */
export type BatchStep = (source: Float64Array, target: Float64Array, from: number, count: number) => void;

/** A rope that is followed in one go: pulling turns of a tackle, then turns that are only passed, all of one law. */
export interface RopeRun extends AffineColumns {
  /** Pull of the first part on the moving block, and of each part after a pulling turn, for a newton of tension. */
  readonly firstShare: number;
  readonly share: number;
  readonly pullingTurns: number;
  readonly passedTurns: number;
}

/**
 * A run of turns that are only passed.
 *
 * @param columns  their law
 * @param turns  how many
 * @returns run without a tackle: the first part carries the load
 */
export function passedRun({ slope, offset }: AffineColumns, turns: number): RopeRun {
  return { slope, offset, firstShare: 1, share: 0, pullingTurns: 0, passedTurns: turns };
}

/**
 * The run of a tackle of one rope whose parts pull alike and whose pulling turns have one law.
 *
 * @param mechanism  geometry and motion
 * @param columns  law of each turn, in the order of the mechanism's turns
 * @returns the run, or undefined when the tackle is not of that kind
 */
export function tackleRun(mechanism: Mechanism, columns: readonly AffineColumns[]): RopeRun | undefined {
  const [body] = mechanism.moving;
  if (mechanism.moving.length !== 1 || mechanism.turns.some(({ passing, law }) => passing <= 0 || law.grip))
    return undefined;
  const pullingTurns = Math.max(...body!.pulls.map(({ part }) => part));
  const shares = new Array<number>(pullingTurns + 1).fill(0);
  for (const { part, along } of body!.pulls) shares[part]! -= along / body!.loadAlong;
  const share = shares.at(-1)!;
  const law = columns[0];
  const alike = columns.slice(0, pullingTurns).every(({ slope }) => slope === law?.slope);
  if (!law || !alike || shares.slice(1).some((other) => Math.abs(other - share) > 1e-12)) return undefined;
  return { ...law, firstShare: shares[0]!, share, pullingTurns, passedTurns: 0 };
}

/**
 * Step along a run: every part of the tackle is a straight line over the first one, and the load is their weighted sum.
 *
 *     T_p = k^p · T_0 + g_p · c,   g_p = 1 + k + … + k^(p−1),   k^p = 1 + (k − 1) · g_p
 *
 * @param run  tackle and turns of one law
 * @returns the step; it allocates nothing
 */
export function runStep(run: RopeRun): BatchStep {
  return (source, target, from, count) => followRun(run, source, target, from, count);
}

function followRun(run: RopeRun, source: Float64Array, target: Float64Array, from: number, count: number): void {
  const { slope, offset, firstShare, share, pullingTurns, passedTurns } = run;
  for (let i = 0; i < count; i++) {
    const k = slope[i]!;
    const c = offset[i]!;
    let series = 0;
    let allSeries = 0;
    for (let turn = 0; turn < pullingTurns; turn++) {
      series = 1 + k * series;
      allSeries += series;
    }
    const first = (source[from + i]! - share * allSeries * c) / (firstShare + share * k * series);
    let tension = (1 + (k - 1) * series) * first + series * c;
    for (let turn = 0; turn < passedTurns; turn++) tension = k * tension + c;
    target[from + i] = Math.max(0, tension);
  }
}
