import { type Cover, coverFriction } from "../materials/covers.js";
import type { Surface } from "../materials/surfaces.js";
import type { Outcome } from "../quantity/verdict.js";
import { type Band, bandOf } from "../sources/band.js";

/** Load at which a closed cleat lets its rope slip, with its range. */
export interface SlipLoad extends Band {
  /** Whether friction alone keeps it shut: over the whole range, only at its middle, or not even there. */
  readonly locks: Outcome;
  /** What gives way first at the middle of the range: the grip, or what cleat and cover stand. */
  readonly limitedBy: "grip" | "cleat" | "cover";
}

/** Ranges that a grip is made of, by name. */
export type Ranges = Readonly<Record<string, Band>>;

/** A grip to be put in a range: what it is made of, and how it works. */
export interface GripModel<Name extends string> {
  readonly ranges: Readonly<Record<Name, Band>>;
  /** Friction that the rope needs for the cleat to lock, over the friction that it has; at most 1 when it locks [-]. */
  readonly need: (values: Record<Name, number>) => number;
  /** Load at which it slips [N]; infinite when it locks. */
  readonly grip: (values: Record<Name, number>) => number;
  /** Load that the cleat stands [N]. */
  readonly stands: Band;
  /** Load that the cover stands in the jaws [N]; absent when it is not asked. */
  readonly coverStands?: Band | undefined;
}

/**
 * Slip load of a grip with its range: the grip, or what cleat and cover stand, whichever is less.
 *
 *     T_hold = min(T_grip, T_cleat, T_cover)
 *
 * @param model  ranges and functions of the grip [N, -]
 * @returns slip load with its range [N], whether it locks, and what gives way first
 * Source: statics.
 */
export function slipLoadOf<Name extends string>(model: GripModel<Name>): SlipLoad {
  const limits: Record<"cleat" | "cover", Band> = {
    cleat: model.stands,
    cover: model.coverStands ?? { value: 1e6, low: 1e6, high: 1e6 },
  };
  const inputs = { ...model.ranges, ...limits } as Readonly<Record<Name | "cleat" | "cover", Band>>;
  const { value, low, high } = bandOf(inputs, (values) => Math.min(model.grip(values), values.cleat, values.cover));
  const need = bandOf(model.ranges, model.need);
  return {
    value,
    low: Math.max(0, low),
    high: Math.min(high, limits.cleat.high, limits.cover.high),
    locks: need.high <= 1 ? "enough" : need.value <= 1 ? "can't tell" : "not enough",
    limitedBy: value === limits.cover.value ? "cover" : value === limits.cleat.value ? "cleat" : "grip",
  };
}

/** A cover's friction as a plain range. */
export function frictionRange(cover: Cover, surface: Surface): Band {
  const { value, low, high } = coverFriction(cover, surface);
  return { value, low, high };
}

/** Load that a cover stands in the jaws: a share of the break load of the rope. */
export function coverStandsOf(breakLoad: Band | undefined, share: Band): Band | undefined {
  return breakLoad && bandOf({ breakLoad, share }, (values) => values.breakLoad * values.share);
}
