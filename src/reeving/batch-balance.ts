import { solveLinear } from "../numerics/linear.js";
import type { LawColumns } from "./batch-law.js";
import type { BatchStep } from "./batch-rope.js";
import type { Mechanism, PassedTurn } from "./mechanism.js";
import { type Direction, sidesOf, turnLoad } from "./mechanism-loads.js";

/** Columns of a turn: free, and gripped for a ratchet. */
export interface TurnColumns {
  readonly free: LawColumns;
  readonly gripped: LawColumns;
}

/**
 * Step of a tackle of any kind: the force balance of every case, on arrays made once.
 *
 * @param mechanism  geometry and motion
 * @param laws  columns of each turn, in the order of the mechanism's turns
 * @param direction  hauling or easing
 * @returns the step; it allocates nothing
 */
export function balancedStep(mechanism: Mechanism, laws: readonly TurnColumns[], direction: Direction): BatchStep {
  const { turns, moving, handPart } = mechanism;
  const size = mechanism.parts.length;
  const matrix = new Float64Array(size * size);
  const answer = new Float64Array(size);
  const clipped = new Float64Array(size);
  const gripping = new Uint8Array(turns.length);
  const sides = turns.map((turn) => sidesOf(turn, direction));

  /** A turn's row: T_pulled − k · T_other = c. */
  const fillTurn = ({ passing }: PassedTurn, row: number, i: number): void => {
    const { slope, offset } = laws[row]![gripping[row] === 1 ? "gripped" : "free"].hauling;
    matrix[row * size + sides[row]!.pulled] = 1;
    matrix[row * size + sides[row]!.other] = passing === 0 ? -1 : -slope[i]!;
    answer[row] = passing === 0 ? 0 : offset[i]!;
  };
  const solveCase = (load: number, i: number): void => {
    matrix.fill(0);
    for (let row = 0; row < turns.length; row++) fillTurn(turns[row]!, row, i);
    for (let body = 0; body < moving.length; body++) {
      const row = turns.length + body;
      const { pulls, loadAlong } = moving[body]!;
      for (let k = 0; k < pulls.length; k++) matrix[row * size + pulls[k]!.part]! += pulls[k]!.along;
      answer[row] = -loadAlong * load;
    }
    if (!solveLinear(size, matrix, answer)) answer.fill(Number.NaN);
  };
  /** Engages further load-sensing ratchets; true when there were any. */
  const engage = (): boolean => {
    let changed = false;
    for (let part = 0; part < size; part++) clipped[part] = Math.max(0, answer[part]!);
    for (let row = 0; row < turns.length; row++) {
      const { grip } = turns[row]!.law;
      if (!grip || gripping[row] === 1 || turnLoad(mechanism, turns[row]!, clipped) < grip.engageLoad) continue;
      gripping[row] = 1;
      changed = true;
    }
    return changed;
  };
  const release = (): void => {
    for (let row = 0; row < turns.length; row++) {
      const { turn, law } = turns[row]!;
      gripping[row] = direction === "easing" && turn.kind === "ratchet" && !law.grip ? 1 : 0;
    }
  };
  return (source, target, from, count) => {
    for (let i = 0; i < count; i++) {
      release();
      do solveCase(source[from + i]!, i);
      while (direction === "easing" && engage());
      target[from + i] = Math.max(0, answer[handPart]!);
    }
  };
}
