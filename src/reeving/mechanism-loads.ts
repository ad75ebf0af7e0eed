import type { Mechanism, PassedTurn } from "./mechanism.js";
import { handEnd } from "./reeving.js";

/** Which way the line moves, or is about to. */
export type Direction = "hauling" | "easing";

/** The parts on the pulled and on the other side of a turn; a turn that rope does not pass loses nothing. */
export function sidesOf(turn: PassedTurn, direction: Direction): { pulled: number; other: number } {
  const towardsEnd = direction === "hauling" ? turn.passing >= 0 : turn.passing <= 0;
  return towardsEnd ? { pulled: turn.after, other: turn.before } : { pulled: turn.before, other: turn.after };
}

/** Load that one turn puts on its block [N]: vector sum of the two parts' tensions. */
export function turnLoad(mechanism: Mechanism, turn: PassedTurn, tensions: Float64Array): number {
  const before = mechanism.parts[turn.before]!.direction;
  const after = mechanism.parts[turn.after]!.direction;
  const first = tensions[turn.before]!;
  const second = tensions[turn.after]!;
  return Math.hypot(second * after[0] - first * before[0], second * after[1] - first * before[1]);
}

/**
 * Work lost at all turns of a tackle for each metre hauled.
 *
 *     Σ |rope passing the turn| · (T_pulled − T_other)
 *
 * @param mechanism  geometry and motion
 * @param tensions  of every part [N]
 * @param direction  hauling or easing
 * @returns work a metre [N]
 */
export function lossOf(mechanism: Mechanism, tensions: Float64Array, direction: Direction): number {
  return mechanism.turns.reduce((sum, turn) => {
    const { pulled, other } = sidesOf(turn, direction);
    return sum + Math.abs(turn.passing) * (tensions[pulled]! - tensions[other]!);
  }, 0);
}

/** Load of every block of a tackle [N], the vector sum of all parts that meet there. */
export function blockLoads(mechanism: Mechanism, tensions: Float64Array): Map<string, number> {
  const sums = new Map<string, [number, number]>();
  mechanism.parts.forEach(({ from, to, direction: [x, y] }, index) => {
    const tension = tensions[index]!;
    for (const [name, sign] of [
      [from, 1],
      [to, -1],
    ] as const) {
      const [sx, sy] = sums.get(name) ?? [0, 0];
      sums.set(name, [sx + sign * tension * x, sy + sign * tension * y]);
    }
  });
  sums.delete(handEnd);
  return new Map([...sums].map(([name, [x, y]]) => [name, Math.hypot(x, y)]));
}
