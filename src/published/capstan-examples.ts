import { loadDependentFriction, powerLawPulledSide } from "../reeving/power-law.js";
import { capstanRatio, holdingFriction, wedgeFriction } from "../reeving/sliding.js";
import { publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";
import { cordOver, drum, turnAngle } from "./turn-models.js";

const gravity = 9.81;

function exact(id: string, quantity: string, value: string, place: string, compute: () => number): CheckRow {
  return {
    id,
    quantity,
    printed: value,
    unit: "1",
    evidence: "exact",
    status: "published",
    source: "statics",
    place,
    compute,
  };
}

const eased = (mu: number, wrapAngle: number, load: number) =>
  cordOver(drum("drum", mu, wrapAngle)).handForces(load).easing;
const hauled = (mu: number, wrapAngle: number, load: number) =>
  cordOver(drum("drum", mu, wrapAngle)).handForces(load).hauling;

const twoDrums = cordOver(
  drum("drum B", 0.25, 0.75 * Math.PI),
  { kind: "measured", name: "free pulley A", tensionRatio: 1 },
  drum("drum C", 0.25, 0.75 * Math.PI),
);

const rows: readonly CheckRow[] = [
  publishedRow(
    "exercise-27",
    "hold",
    "force that holds 100 kg over three quarters of a turn, μ = 0.2",
    "382.26",
    "N",
    "solution",
    () => eased(0.2, 0.75 * turnAngle, 100 * gravity),
  ),
  publishedRow(
    "capstan-article",
    "five-turns",
    "tension ratio of five turns, μ = 0.6",
    "153552935",
    "1",
    "table of ratios",
    () => capstanRatio({ frictionCoefficient: 0.6, wrapAngle: 5 * turnAngle }),
  ),
  publishedRow(
    "knot-guild-test",
    "holds",
    "friction of cord on pine that just holds a ratio of 14 over one and a half turns",
    "0.280",
    "1",
    "thread 6933",
    () => holdingFriction({ tensionRatio: 14, wrapAngle: 1.5 * turnAngle }),
  ),
  publishedRow(
    "knot-guild-test",
    "slips",
    "friction of cord on pine that just holds a ratio of 19 over one and a half turns",
    "0.312",
    "1",
    "thread 6933",
    () => holdingFriction({ tensionRatio: 19, wrapAngle: 1.5 * turnAngle }),
  ),
  publishedRow(
    "brown-thesis",
    "sixteen-fold",
    "growth of friction under sixteen times the load, F ∝ N^0.75",
    "8",
    "1",
    "§3.2.2",
    () => 16 * loadDependentFriction({ frictionCoefficient: 1, loadRatio: 16, loadExponent: 0.75 }),
  ),
  publishedRow(
    "schaum-mechanics",
    "four-turns",
    "friction at which four turns and 10 lbf hold 1000 lbf",
    "0.18",
    "1",
    "example 9-19, p. 142",
    () => holdingFriction({ tensionRatio: 100, wrapAngle: 4 * turnAngle }),
  ),
  publishedRow(
    "schaum-mechanics",
    "two-turns",
    "force that holds 900 kg (g = 9.8) over two turns, μ = 0.2",
    "714",
    "N",
    "example 9-20, p. 142",
    () => eased(0.2, 2 * turnAngle, 900 * 9.8),
  ),
  publishedRow(
    "schaum-mechanics",
    "belt",
    "slack side of a belt over half a turn, μ = 0.25, 200 N on the tight side",
    "91.2",
    "N",
    "example 9-17, p. 141",
    () => eased(0.25, Math.PI, 200),
  ),
  publishedRow(
    "drum-example",
    "least",
    "least force that one and a half turns hold against 1000 N, μ = 0.25",
    "94.78",
    "N",
    "example",
    () => eased(0.25, 1.5 * turnAngle, 1000),
  ),
  publishedRow(
    "drum-example",
    "most",
    "largest force that 1000 N holds over one and a half turns, μ = 0.25",
    "10550.72",
    "N",
    "example",
    () => hauled(0.25, 1.5 * turnAngle, 1000),
  ),
  publishedRow(
    "hibbeler-drums",
    "first-drum",
    "tension after the first of two drums, 135° each, μ = 0.25, 500 N before it",
    "277.4",
    "N",
    "problem 1",
    () => twoDrums.state(500, "easing").stations[0]!.handTension,
  ),
  publishedRow(
    "hibbeler-drums",
    "load",
    "load that 500 N can just lift over two drums and a free pulley",
    "153.9",
    "N",
    "problem 1",
    () => twoDrums.handForces(500).easing,
  ),
  publishedRow(
    "hibbeler-drums",
    "mass",
    "mass of that load",
    "15.7",
    "kg",
    "problem 1",
    () => twoDrums.handForces(500).easing / gravity,
  ),
  exact("wedge-70", "wedge factor of a V groove of 70° over a flat surface", "1.743", "1 / sin 35°", () =>
    wedgeFriction({ frictionCoefficient: 1, grooveAngle: (70 * Math.PI) / 180 }),
  ),
  exact("wedge-40", "wedge factor of a V groove of 40°", "2.924", "1 / sin 20°", () =>
    wedgeFriction({ frictionCoefficient: 1, grooveAngle: (40 * Math.PI) / 180 }),
  ),
  exact(
    "power-law-limit",
    "power-law capstan near n = 1 against exp(μ θ), μ = 0.2, half a turn",
    "1.8745",
    "limit",
    () =>
      powerLawPulledSide({
        tension: 1,
        frictionCoefficient: 0.2,
        referenceTension: 1,
        loadExponent: 1 - 1e-9,
        wrapAngle: Math.PI,
      }),
  ),
];

/** Worked examples of lines that slide on something that does not turn. */
export const capstanExamples: CheckSet = { topic: "turn", rows };
