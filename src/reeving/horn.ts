import { gripRecords, type HornCleat } from "../materials/cleats.js";
import type { Cover } from "../materials/covers.js";
import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { type CleatSize, cleatStands } from "./cleat-size.js";
import { capstanRatio } from "./sliding.js";
import { frictionRange, type SlipLoad, slipLoadOf } from "./slip-load.js";

const turn = 2 * Math.PI;

/** Turns round a horn or post, and the tail that the hand holds. */
export interface HornInput {
  readonly turns: number;
  readonly frictionCoefficient: number;
  /** Tension that is left in the tail [N]. */
  readonly tail: number;
}

/**
 * Load that turns round a horn or post hold with a given tail.
 *
 *     T = T_tail · exp(2 π N μ)
 *
 * @param turns  N, whole or part turns [-], 0 to 30
 * @param frictionCoefficient  μ [-], 0 to 4
 * @param tail  T_tail, tension in the tail [N], 0 or more
 * @returns load [N]
 * @throws ValueError outside these ranges
 * Valid for turns that lie side by side; turns that cross hold more.
 * Source: euler-1769, capstan equation. Example: hornHold({ turns: 2, frictionCoefficient: 0.175, tail: 50 }) → 450.9
 */
export function hornHold({ turns, frictionCoefficient, tail }: HornInput): number {
  return within("tension", tail) * capstanRatio({ frictionCoefficient, wrapAngle: turn * within("turnCount", turns) });
}

/**
 * Tension that the tail needs for turns to hold a load.
 *
 *     T_tail = T · exp(−2 π N μ)
 *
 * @param turns  N [-], 0 to 30
 * @param frictionCoefficient  μ [-], 0 to 4
 * @param load  T [N], 0 or more
 * @returns tension in the tail [N]
 * @throws ValueError outside these ranges
 * Source: euler-1769, capstan equation. Example: tailNeeded({ turns: 1.5, frictionCoefficient: 0.4, load: 100 }) → 2.305
 */
export function tailNeeded({
  turns,
  frictionCoefficient,
  load,
}: Omit<HornInput, "tail"> & { readonly load: number }): number {
  const wrapAngle = turn * within("turnCount", turns);
  return within("loadTension", load) / capstanRatio({ frictionCoefficient, wrapAngle });
}

/**
 * Turns that hold a load with a given tail.
 *
 *     N = ln(T / T_tail) / (2 π μ)
 *
 * @param load  T [N], above 0
 * @param tail  T_tail [N], above 0
 * @param frictionCoefficient  μ [-], above 0, to 2
 * @returns turns [-]; 0 when the tail alone holds
 * @throws ValueError outside these ranges
 * Source: euler-1769, capstan equation solved for the angle. Example: turnsToHold({ load: 20000, tail: 80, frictionCoefficient: 0.32907 }) → 2.670
 */
export function turnsToHold({
  load,
  tail,
  frictionCoefficient,
}: Omit<HornInput, "turns"> & { readonly load: number }): number {
  const ratio = within("loadTension", load, 1e-9) / within("tension", tail, 1e-9);
  return Math.max(0, Math.log(ratio) / (turn * within("frictionCoefficient", frictionCoefficient, 1e-6)));
}

/** A rope made fast on a horn cleat. */
export interface HornRope {
  readonly cleat: HornCleat;
  readonly size: CleatSize;
  readonly cover: Cover;
  /** Turns round the base [-]. */
  readonly turns: number;
  /** Crossings over the horns after them [-]. */
  readonly eights: number;
  /** Whether a locking hitch over a horn finishes it. */
  readonly hitch: boolean;
  /** Tension left in the tail where no hitch holds it, with its range [N]. */
  readonly tail: Band;
  /** Break load of the rope with its range [N]; absent: the rope is not asked. */
  readonly breakLoad?: Band;
}

/**
 * Load at which a rope slips round a horn cleat, or at which a hitched one gives way.
 *
 *     T_hold = min(T_tail · exp(2 π μ (N + e · n_8)), what the cleat stands);   hitched min(h · F_b, what the cleat stands)
 *
 * @param cleat  records of the cleat [-, N]
 * @param size  ropes that it is made for [m], and its rated load [N] where there is one
 * @param cover  strands, fibre and state of the cover
 * @param turns  N round the base [-], 0 to 15
 * @param eights  n_8, crossings over the horns [-], 0 to 10
 * @param hitch  whether a locking hitch finishes it: it needs at least one crossing
 * @param tail  tension left in the tail, with its range [N]
 * @param breakLoad  F_b of the rope, with its range [N]; absent: the rope is not asked
 * @returns slip load with its range [N], whether it locks, and what gives way first
 * @throws ValueError outside these ranges, and for a hitch without a crossing
 * Valid for a hitch that is drawn up the right way round. Without it the tail must be held.
 * Source: euler-1769, capstan equation; common practice for the hitch. Example: hornSlipLoad({ cleat: cleats.horn, size: { thinnest: 0.003, thickest: 0.01 }, cover: { strands: 24, fibre: "polyester", wet: false }, turns: 2, eights: 0, hitch: false, tail: { value: 50, low: 50, high: 50 } }).value → 175.7
 */
export function hornSlipLoad({ cleat, size, cover, turns, eights, hitch, tail, breakLoad }: HornRope): SlipLoad {
  const base = within("turnCount", turns, 0, 15);
  const crossings = within("turnCount", eights, 0, 10);
  if (hitch && crossings < 1)
    throw new ValueError({
      quantity: "locking hitch on a horn cleat",
      value: `${crossings} crossings`,
      allowed: "at least one crossing over the horns, for the hitch to lie on",
      advice: "Give one figure of eight or more, or leave the hitch out.",
    });
  const stands = cleatStands(cleat.stands, size);
  const rope = breakLoad && bandOf({ breakLoad, share: gripRecords.hitched }, (one) => one.breakLoad * one.share);
  return slipLoadOf({
    ranges: { frictionCoefficient: frictionRange(cover, cleat.surface), eightTurns: cleat.eightTurns, tail },
    need: () => (hitch ? 0 : 2),
    grip: ({ eightTurns, ...values }) =>
      hitch ? Number.POSITIVE_INFINITY : hornHold({ ...values, turns: base + crossings * eightTurns }),
    limits: { cleat: stands, ...(hitch && rope && { rope }) },
  });
}
