import { bestSpeedShare, handPower, hillForce } from "../motion/hill.js";
import { haul } from "../motion/hoist.js";
import { letOut } from "../motion/run-out.js";
import { prepareLine } from "../reeving/line.js";
import { publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";
import { turnAngle } from "./turn-models.js";

const limp = { diameter: 0.01, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } };
const free = prepareLine({ rope: limp, stations: [] });

/** Speed of a body that has fallen a long way in air, from 50 m/s at the start [m/s]. */
function fallSpeed(mass: number, gravity: number, drag: number): number {
  const load = { mass: () => mass, weight: () => mass * gravity, drag };
  return letOut({ moving: { line: free, load }, lift: 999, startSpeed: 50 }).points.at(-1)!.handSpeed;
}

/** Work of friction on a chain of 0.80 kg and 1.5 m that slides off a table once a third hangs down [J]. */
function chainFriction(): number {
  const [mass, length, g] = [0.8, 1.5, 9.81];
  const perMetre = (mass / length) * g;
  const over = (travel: number) => Math.min(length, length / 3 - travel);
  const load = {
    mass: () => mass,
    weight: (travel: number) => perMetre * over(travel),
    rub: (travel: number) => 0.5 * perMetre * (length - over(travel)),
  };
  return letOut({ moving: { line: free, load }, lift: (2 / 3) * length, startSpeed: 1e-3 }).energy.sail;
}

function exact(
  id: string,
  quantity: string,
  value: string,
  unit: string,
  place: string,
  compute: () => number,
): CheckRow {
  const common = { evidence: "exact", status: "published", source: "statics" } as const;
  return { ...common, id: `motion-${id}`, quantity, printed: value, unit, place, compute };
}

const rows: readonly CheckRow[] = [
  publishedRow(
    "human-power-page",
    "crank",
    "power of 130 N on a crank of 0.4 m at 25 turns a minute",
    "136",
    "W",
    "crank example",
    () => handPower({ handForce: 130, handSpeed: (0.4 * 25 * turnAngle) / 60 }),
  ),
  publishedRow(
    "muscle-in-orbit-exercise",
    "before",
    "best speed of a muscle over its greatest, a/F = 0.25",
    "0.31",
    "1",
    "printed answer",
    () => bestSpeedShare(0.25),
  ),
  publishedRow(
    "muscle-in-orbit-exercise",
    "after",
    "best speed of a muscle over its greatest, a/F = 0.1",
    "0.23",
    "1",
    "printed answer",
    () => bestSpeedShare(0.1),
  ),
  publishedRow(
    "quadratic-drag-exam",
    "terminal",
    "terminal speed of 75 kg, 0.7 m² and C_D = 1.0 in air of 1.225 kg/m³",
    "41.4",
    "m/s",
    "solution walkthrough",
    () => fallSpeed(75, 9.807, 0.5 * 1.225 * 1.0 * 0.7),
  ),
  publishedRow(
    "falling-object-lesson",
    "terminal",
    "terminal speed of 80 kg with a drag of 0.2 v²",
    "225",
    "km/h",
    "part 2",
    () => 3.6 * fallSpeed(80, 9.8, 0.2),
  ),
  publishedRow(
    "irodov-chain",
    "work",
    "energy that a chain loses to friction while it slides off a table",
    "1.3",
    "J",
    "answer to 1.124",
    chainFriction,
  ),
  exact(
    "half-a-t-squared",
    "time for 4 m of 2 kg drawn by 8 N without friction",
    "1.4142",
    "s",
    "s = a t² / 2",
    () => haul({ moving: { line: free, load: { mass: () => 2 } }, lift: 4, hand: () => 8 }).time,
  ),
  exact(
    "best-power",
    "best power of a pull over greatest pull times greatest speed, a/F = 0.25",
    "0.0954915",
    "1",
    "square of the best speed",
    () =>
      bestSpeedShare(0.25) * hillForce({ greatestPull: 1, greatestSpeed: 1, curvature: 0.25 })(bestSpeedShare(0.25)),
  ),
];

/** Worked examples of falls, pulls and power, and limits of the model. */
export const motionLimits: CheckSet = { topic: "motion", rows };
