import { solveLinear } from "../numerics/linear.js";
import { ReevingError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import type { Law } from "./law.js";
import type { Mechanism, PassedTurn } from "./mechanism.js";
import { type Direction, sidesOf, turnLoad } from "./mechanism-loads.js";

/** Tension of every part as a straight line over the load: T = slope · W + offset. */
export interface PartTensions {
  /** [-] */
  readonly slope: Float64Array;
  /** [N] */
  readonly offset: Float64Array;
}

/**
 * Force balance of every moving block and every turn of a mechanism, for one direction of motion.
 *
 *     each turn    T_pulled = k · T_other + c
 *     each block   Σ T · cos = share of the load
 *
 * @param mechanism  geometry and motion
 * @param direction  hauling or easing
 * @param gripping  numbers of the turns whose load-sensing ratchet grips
 * @returns slope [-] and offset [N] of every part's tension over the load
 * @throws ReevingError when a part would have to push
 * Source: statics.
 */
function balance(mechanism: Mechanism, direction: Direction, gripping: ReadonlySet<number>): PartTensions {
  const { parts, turns, moving } = mechanism;
  const size = parts.length;
  const matrix = new Float64Array(size * size);
  const sides = new Float64Array(size * 2);
  turns.forEach((turn, row) => {
    const { pulled, other } = sidesOf(turn, direction);
    const law = lawOf(turn, direction, gripping.has(row));
    matrix[row * size + pulled] = 1;
    matrix[row * size + other] = -law.ratio;
    sides[row * 2 + 1] = law.drag;
  });
  moving.forEach((body, index) => {
    const row = turns.length + index;
    for (const { part, along } of body.pulls) matrix[row * size + part]! += along;
    sides[row * 2] = -body.loadAlong;
  });
  const slope = new Float64Array(size);
  const offset = new Float64Array(size);
  const solved = solveLinear(size, matrix, sides);
  for (let part = 0; part < size; part++) {
    slope[part] = sides[part * 2]!;
    offset[part] = sides[part * 2 + 1]!;
    if (solved && slope[part]! > -1e-9) continue;
    const { rope, from, to } = parts[part]!;
    throw new ReevingError({
      quantity: `rope "${rope}" between ${from} and ${to}`,
      value: solved ? "a part that would have to push" : "a balance without a single answer",
      allowed: "parts that pull",
      advice: "Check the places of the blocks, the direction of the load and the size of the losses.",
    });
  }
  return { slope, offset };
}

/** Law by which a turn passes tension on, for one direction of motion. */
export function lawOf(turn: PassedTurn, direction: Direction, grips: boolean): Law {
  if (turn.passing === 0) return { ratio: 1, drag: 0 };
  if (direction === "hauling") return turn.law.haul;
  return grips && turn.law.grip ? turn.law.grip.gripped : turn.law.ease;
}

/** Tensions of a mechanism under a load. */
export interface MechanismState {
  /** Tension of every part [N], never below zero. */
  readonly tensions: Float64Array;
  /** Hand force before it is cut off at zero [N]: below zero the line does not go out by itself. */
  readonly handForce: number;
  readonly gripping: ReadonlySet<number>;
  readonly straight: PartTensions;
}

/**
 * Tensions in a mechanism under a load, with load-sensing ratchets that grip where their block load asks for it.
 *
 * @param mechanism  geometry and motion
 * @param load  W [N], 0 or more
 * @param direction  hauling or easing
 * @returns tensions [N] and the ratchets that grip
 * A ratchet is judged by its block load with its sheave still free, as on a rising load.
 */
export function stateUnder(mechanism: Mechanism, load: number, direction: Direction): MechanismState {
  const W = within("loadTension", load);
  let gripping = new Set<number>();
  for (;;) {
    const straight = balance(mechanism, direction, gripping);
    const tensions = straight.slope.map((slope, part) => Math.max(0, slope * W + straight.offset[part]!));
    const more = new Set(gripping);
    if (direction === "easing") {
      mechanism.turns.forEach((turn, index) => {
        if (turn.law.grip && turnLoad(mechanism, turn, tensions) >= turn.law.grip.engageLoad) more.add(index);
      });
    }
    if (more.size === gripping.size) {
      const hand = mechanism.handPart;
      return { tensions, handForce: straight.slope[hand]! * W + straight.offset[hand]!, gripping, straight };
    }
    gripping = more;
  }
}
