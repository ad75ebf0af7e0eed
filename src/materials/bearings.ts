import { type Coefficient, coefficient } from "../sources/coefficient.js";

/** How a sheave turns on its pin. */
export interface Bearing {
  readonly name: string;
  /** Friction coefficient at the radius where the parts slide or roll [-]. */
  readonly friction: Coefficient;
  /** That radius over the radius of the sheave at the bottom of its groove [-]. */
  readonly radiusShare: Coefficient;
}

function bearing(
  name: string,
  friction: [number, number, number],
  share: [number, number, number],
  place: string,
): Bearing {
  const record = ([low, value, high]: [number, number, number]) =>
    coefficient({ value, unit: "1", low, high, status: "from memory", place });
  return { name, friction: record(friction), radiusShare: record(share) };
}

/** Bearings of small-boat blocks. */
export const bearings = {
  ball: bearing("ball bearing", [0.004, 0.01, 0.025], [0.4, 0.55, 0.7], "range of small plastic and steel ball races"),
  plain: bearing(
    "plain bearing",
    [0.06, 0.15, 0.45],
    [0.15, 0.22, 0.35],
    "sleeve of plastic or bronze on a steel pin; a published test of tree-work blocks found 0.049 to 0.99 at rest",
  ),
} as const satisfies Record<string, Bearing>;
