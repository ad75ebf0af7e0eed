import type { AffineColumns, LawColumns } from "./batch-law.js";

/** Takes a chunk of tensions from the load side to the hand side, in place, for one direction. */
export type OneWayStep = (tensions: Float64Array, count: number) => void;

/** Columns of a turn: free, and gripped for a ratchet. */
export interface TurnColumns {
  readonly free: LawColumns;
  readonly gripped: LawColumns;
}

/** Neighbouring turns of one law. */
export interface Run extends AffineColumns {
  readonly turns: number;
}

/**
 * Joins neighbours of one law into runs, so that its numbers are read once for all of them.
 *
 * @param columns  law of each turn in order
 * @returns runs in order; together they have as many turns
 */
export function runsOf(columns: readonly AffineColumns[]): Run[] {
  const runs: Run[] = [];
  for (const { slope, offset } of columns) {
    const last = runs.at(-1);
    if (last?.slope === slope) runs[runs.length - 1] = { ...last, turns: last.turns + 1 };
    else runs.push({ slope, offset, turns: 1 });
  }
  return runs;
}
