import { apparentFriction } from "../reeving/apparent-friction.js";
import { capstanRatio } from "../reeving/sliding.js";
import type { CheckRow, CheckSet } from "./row.js";
import { cordOver, drum, turnAngle } from "./turn-models.js";

/** One printed test: the pulls that raise and lower 75 kg over a bar. */
export interface RaiseLowerTest {
  readonly rope: "A" | "B";
  readonly bar: string;
  /** Diameter of a round bar [m]; absent for timber and concrete. */
  readonly barDiameter?: number;
  /** [kg] as printed; only ratios matter. */
  readonly raise: number;
  readonly lower: number;
  readonly wrapDegrees: 90 | 180;
  /** Friction coefficient as printed. */
  readonly printed: string;
}

/** Low-stretch ropes with a polyester sheath over bars of several kinds, 75 kg. */
export const raiseLowerTests: readonly RaiseLowerTest[] = [
  { rope: "A", bar: "50 mm aluminium", barDiameter: 0.05, raise: 98, lower: 50, wrapDegrees: 90, printed: "0.21" },
  { rope: "B", bar: "50 mm aluminium", barDiameter: 0.05, raise: 88, lower: 35, wrapDegrees: 180, printed: "0.15" },
  { rope: "B", bar: "50 mm aluminium", barDiameter: 0.05, raise: 89, lower: 49, wrapDegrees: 90, printed: "0.19" },
  { rope: "A", bar: "60 mm anodised", barDiameter: 0.06, raise: 92, lower: 53, wrapDegrees: 90, printed: "0.18" },
  { rope: "B", bar: "60 mm anodised", barDiameter: 0.06, raise: 87, lower: 36, wrapDegrees: 180, printed: "0.14" },
  { rope: "B", bar: "60 mm anodised", barDiameter: 0.06, raise: 92, lower: 52, wrapDegrees: 90, printed: "0.18" },
  { rope: "A", bar: "43 mm galvanised", barDiameter: 0.043, raise: 103, lower: 47, wrapDegrees: 90, printed: "0.25" },
  { rope: "B", bar: "43 mm galvanised", barDiameter: 0.043, raise: 125, lower: 37, wrapDegrees: 180, printed: "0.19" },
  { rope: "B", bar: "43 mm galvanised", barDiameter: 0.043, raise: 92, lower: 47, wrapDegrees: 90, printed: "0.21" },
  { rope: "B", bar: "10 mm steel", barDiameter: 0.01, raise: 127, lower: 29, wrapDegrees: 180, printed: "0.24" },
  { rope: "B", bar: "12 mm steel", barDiameter: 0.012, raise: 140, lower: 31, wrapDegrees: 180, printed: "0.24" },
  { rope: "B", bar: "flat timber", raise: 179, lower: 17, wrapDegrees: 180, printed: "0.37" },
  { rope: "B", bar: "tall timber", raise: 140, lower: 15, wrapDegrees: 180, printed: "0.36" },
  { rope: "B", bar: "concrete", raise: 135, lower: 34, wrapDegrees: 90, printed: "0.44" },
];

/**
 * Wrap angle of a raise-and-lower test.
 *
 * @param test  printed test
 * @returns wrap angle [rad]
 * Example: wrapOf(raiseLowerTests[1]) → 3.1416
 */
export function wrapOf(test: RaiseLowerTest): number {
  return (test.wrapDegrees * Math.PI) / 180;
}

/**
 * Apparent friction coefficient of a raise-and-lower test.
 *
 * @param test  printed test
 * @returns apparent friction coefficient [-]
 * Source: delaney-2022, p. 88. Example: frictionOf(raiseLowerTests[0]) → 0.2142
 */
export function frictionOf(test: RaiseLowerTest): number {
  return apparentFriction({ raisingForce: test.raise, loweringForce: test.lower, wrapAngle: wrapOf(test) });
}

/** Printed tension ratios and held masses for turns round an aluminium bar, μ = 0.175, 100 kg. */
const turnsTable: readonly (readonly [turns: number, ratio: string, held: string])[] = [
  [0.25, "1.32", "75.97"],
  [0.5, "1.73", "57.71"],
  [1, "3.00", "33.30"],
  [2, "9.02", "11.09"],
  [3, "27.08", "3.69"],
  [4, "81.31", "1.23"],
  [5, "244.15", "0.41"],
  [6, "733.15", "0.14"],
];

const common = { evidence: "published", status: "published", source: "delaney-2022", place: "p. 88" } as const;

const frictionRows = raiseLowerTests.map(
  (test): CheckRow => ({
    ...common,
    id: `delaney-2022-${test.rope}-${test.bar}-${test.wrapDegrees}`.toLowerCase().replaceAll(" ", "-"),
    quantity: `apparent friction, rope ${test.rope} over ${test.bar}, ${test.wrapDegrees}°`,
    printed: test.printed,
    unit: "1",
    compute: () => frictionOf(test),
  }),
);

const turnRows = turnsTable.flatMap(([turns, ratio, held]): CheckRow[] => [
  {
    ...common,
    id: `delaney-2022-ratio-${turns}-turns`,
    quantity: `tension ratio of ${turns} turns, μ = 0.175`,
    printed: ratio,
    unit: "1",
    compute: () => capstanRatio({ frictionCoefficient: 0.175, wrapAngle: turns * turnAngle }),
  },
  {
    ...common,
    id: `delaney-2022-held-${turns}-turns`,
    quantity: `mass that holds 100 kg over ${turns} turns, μ = 0.175`,
    printed: held,
    unit: "kg",
    compute: () => cordOver(drum("bar", 0.175, turns * turnAngle)).handForces(100).easing,
  },
]);

const setUp = (direction: "hauling" | "easing", printed: string): CheckRow => ({
  id: `delaney-2022-set-up-${direction}`,
  quantity: `mass at the hand, ${direction} 100 kg over half a turn, μ = 0.2`,
  printed,
  unit: "kg",
  evidence: "independent",
  status: "published",
  source: "delaney-2022",
  place: "set-up on p. 83, worked by hand",
  compute: () => cordOver(drum("tube", 0.2, Math.PI)).handForces(100)[direction],
});

/** Raise-and-lower tests and the table of turns. */
export const raiseAndLower: CheckSet = {
  topic: "turn",
  rows: [...frictionRows, ...turnRows, setUp("hauling", "187.4"), setUp("easing", "53.3")],
};
