import type { Cover } from "../materials/covers.js";
import { drumSurface, type Winch, winchRecords } from "../materials/winches.js";
import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { type Band, bandsOf } from "../sources/band.js";
import { tailNeeded } from "./horn.js";
import { frictionRange } from "./slip-load.js";

/** Handle, gear and drum. */
export interface Gearing {
  readonly handleLength: number;
  readonly drumRadius: number;
  readonly gearRatio: number;
}

/**
 * Load on a winch over force on its handle, without loss.
 *
 *     R = i · L / r
 *
 * @param handleLength  L, middle of the winch to the hand [m]
 * @param drumRadius  r, middle of the winch to the rope [m]
 * @param gearRatio  i, turns of the handle for one of the drum [-]
 * @returns power ratio [-]
 * @throws ValueError outside the ranges of the vocabulary
 * Source: winches-101; statics, a lever and gears. Example: powerRatio({ handleLength: 0.25, drumRadius: 0.05, gearRatio: 5 }) → 25
 */
export function powerRatio({ handleLength, drumRadius, gearRatio }: Gearing): number {
  return (within("gearRatio", gearRatio) * within("handleLength", handleLength)) / within("drumRadius", drumRadius);
}

/** A load on a drum, its tail, and the ratio of the winch. */
export interface HandleInput {
  readonly load: number;
  /** Tension that tails the drum [N]. */
  readonly tail: number;
  readonly powerRatio: number;
  readonly efficiency: number;
}

/**
 * Force on the handle that winds a load in.
 *
 *     F = (T − T_tail) / (η · R)
 *
 * @param load  T on the drum [N], 0 or more
 * @param tail  T_tail [N], 0 or more
 * @param powerRatio  R [-]
 * @param efficiency  η [-], above 0, to 1
 * @returns force on the handle [N]; 0 when the tail alone carries the load
 * @throws ValueError outside these ranges
 * Valid for a drum that grips: the turns on it must hold the load with that tail.
 * Source: statics, moments about the drum. Example: handleForce({ load: 100, tail: 0, powerRatio: 25, efficiency: 1 }) → 4
 */
export function handleForce({ load, tail, powerRatio: ratio, efficiency }: HandleInput): number {
  const moved = Math.max(0, within("loadTension", load) - within("tension", tail));
  return moved / (within("efficiency", efficiency, 1e-3) * within("powerRatio", ratio));
}

/** A line on a winch. */
export interface WinchLine {
  readonly winch: Winch;
  readonly cover: Cover;
  /** Turns on the drum [-]. */
  readonly turns: number;
  /** Load on the drum, with its range [N]. */
  readonly load: Band;
}

/** What hands feel at a winch. */
export interface WinchForces {
  /** Gear in which it is wound: the quickest whose handle asks no more than crews push before they change, otherwise the slowest [-]. */
  readonly gearRatio: number;
  /** On the handle, winding in [N]. */
  readonly handle: Band;
  /** On the tail, winding in: none where the winch holds it itself [N]. */
  readonly tailing: Band;
  /** On the tail, easing by surging the turns [N]. */
  readonly easing: Band;
}

/**
 * Forces on handle and tail of a winch, winding in and easing.
 *
 *     T_tail = T · exp(−2 π N μ),   F = (T − T_tail) / (η · R)
 *
 * @param winch  drum and handle [m], gears [-], whether it tails itself
 * @param cover  strands, fibre and state of the cover
 * @param turns  N on the drum [-], 0 to 10
 * @param load  T with its range [N]
 * @returns gear, force on the handle, on the tail while winding and while easing, with their ranges [N]
 * @throws ValueError outside these ranges, and for a winch without a gear
 * Valid for turns that lie side by side. A hand that tails pulls at least what keeps the drum from slipping.
 * Source: euler-1769, winch-ratios. Example: winchForces({ winch: { kind: "winch", drumRadius: 0.036, handleLength: 0.2, gearRatios: [1, 3], selfTailing: true }, cover: { strands: 16, fibre: "polyester", wet: false }, turns: 3, load: { value: 1000, low: 800, high: 1300 } }).gearRatio → 3
 */
export function winchForces({ winch, cover, turns, load }: WinchLine): WinchForces {
  const { handleLength, drumRadius, gearRatios, selfTailing } = winch;
  const wound = within("turnCount", turns, 0, 10);
  const inputs = {
    load,
    frictionCoefficient: frictionRange(cover, drumSurface),
    efficiency: winchRecords.efficiency,
  };
  const at = (gearRatio: number) =>
    bandsOf(inputs, ({ efficiency, ...values }) => {
      const tail = tailNeeded({ ...values, turns: wound });
      const ratio = powerRatio({ handleLength, drumRadius, gearRatio });
      return { tail, handle: handleForce({ load: values.load, tail, powerRatio: ratio, efficiency }) };
    });
  const gears = [...gearRatios].sort((one, other) => one - other);
  const slowest = gears.at(-1);
  if (slowest === undefined)
    throw new ValueError({
      quantity: "gears of a winch",
      value: "none",
      allowed: "at least one gear ratio",
      advice: "Give [1] for a drum that the handle turns directly.",
    });
  const gearRatio = gears.find((gear) => at(gear).handle.value <= winchRecords.gearChange.value) ?? slowest;
  const { handle, tail } = at(gearRatio);
  return { gearRatio, handle, tailing: selfTailing ? { value: 0, low: 0, high: 0 } : tail, easing: tail };
}
