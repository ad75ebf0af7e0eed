import { type Cover, coverFriction } from "../materials/covers.js";
import type { Surface } from "../materials/surfaces.js";
import type { Outcome } from "../quantity/verdict.js";
import { type Band, bandOf } from "../sources/band.js";

/** Load at which a closed cleat lets its rope slip, with its range. */
export interface SlipLoad extends Band {
  /** Whether friction alone keeps it shut: over the whole range, only at its middle, or not even there. */
  readonly locks: Outcome;
  /** What gives way first at the middle of the range: the grip, or what cleat, cover and rope stand. */
  readonly limitedBy: "grip" | Limit;
}

/** What limits a grip that would hold more. */
type Limit = "cleat" | "cover" | "rope";

/** Ranges that a grip is made of, by name. */
export type Ranges = Readonly<Record<string, Band>>;

/** A grip to be put in a range: what it is made of, and how it works. */
export interface GripModel<Name extends string> {
  readonly ranges: Readonly<Record<Name, Band>>;
  /** Friction that the rope needs for the cleat to lock, over the friction that it has; at most 1 when it locks [-]. */
  readonly need: (values: Record<Name, number>) => number;
  /** Load at which it slips [N]; infinite when it locks. */
  readonly grip: (values: Record<Name, number>) => number;
  /** Loads that cleat, cover and rope stand [N]; absent where they are not asked. */
  readonly limits: Readonly<Partial<Record<Limit, Band>>>;
}

/**
 * Slip load of a grip with its range: the grip, or what cleat, cover and rope stand, whichever is least.
 *
 *     T_hold = min(T_grip, T_cleat, T_cover, T_rope)
 *
 * @param model  ranges and functions of the grip [N, -]
 * @returns slip load with its range [N], whether it locks, and what gives way first
 * Source: statics.
 */
export function slipLoadOf<Name extends string>({ ranges, need, grip, limits }: GripModel<Name>): SlipLoad {
  const standing = leastOf(limits);
  const inputs = { ...ranges, standing } as Readonly<Record<Name | "standing", Band>>;
  const { value, low } = bandOf(inputs, (values) => Math.min(grip(values), values.standing));
  const { high } = bandOf(ranges, (values) => Math.min(grip(values), standing.high));
  const asked = bandOf(ranges, need);
  const first = (Object.keys(limits) as Limit[]).find((name) => limits[name]?.value === value);
  return {
    value,
    low: Math.max(0, low),
    high: Math.max(value, Math.min(high, standing.high)),
    locks: asked.high <= 1 ? "enough" : asked.value <= 1 ? "can't tell" : "not enough",
    limitedBy: first ?? "grip",
  };
}

/**
 * The least of several loads, with its range.
 *
 *     T = min(T_1, T_2, …); the high end is the least of the high ends
 *
 * @param loads  by name, with their ranges [N]
 * @returns the least [N]: downwards their shifts are added in squares, upwards one alone moves nothing where another stands just above
 * Source: statics, the weakest gives way first. Example: leastOf({ a: { value: 2, low: 1, high: 4 }, b: { value: 3, low: 3, high: 3 } }).high → 3
 */
export function leastOf(loads: Readonly<Partial<Record<string, Band>>>): Band {
  const asked = Object.fromEntries(Object.entries(loads).flatMap(([name, load]) => (load ? [[name, load]] : [])));
  const { value, low } = bandOf<string>(asked, (values) => Math.min(...Object.values(values)));
  return { value, low, high: Math.min(...Object.values(asked).map(({ high }) => high)) };
}

/** A cover's friction as a plain range. */
export function frictionRange(cover: Cover, surface: Surface): Band {
  const { value, low, high } = coverFriction(cover, surface);
  return { value, low, high };
}
