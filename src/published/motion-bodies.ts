import { haul, type Motion } from "../motion/hoist.js";
import type { MovingLine } from "../motion/moving-line.js";
import { letOut } from "../motion/run-out.js";
import { type PreparedLine, prepareLine } from "../reeving/line.js";
import { tackle } from "../reeving/tackle.js";
import { publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";

const g = 9.81;
const limp = { diameter: 0.01, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } };
const degrees = Math.PI / 180;

/** A cord over a wheel without friction, with a constant drag [N] on its hand side where one is given. */
function cord(drag = 0): PreparedLine {
  return prepareLine({ rope: limp, stations: [{ kind: "measured", name: "wheel", tensionRatio: 1, drag }] });
}

const double = prepareLine({
  rope: limp,
  stations: [
    {
      kind: "tackle",
      name: "moving pulley",
      reeving: tackle({
        parts: 2,
        hauledFrom: "fixed",
        turn: { kind: "measured", name: "wheel", tensionRatio: 1 },
      }),
    },
  ],
});

/** Two bodies on one cord: weight and rubbing at the load end, force and weight at the hand [N]. */
interface Bodies {
  readonly load: number;
  /** Part of its weight that pulls along the cord [-]; all when absent. */
  readonly slope?: number;
  readonly rub?: number;
  /** Weight of the body at the hand end. */
  readonly hand: number;
  readonly force: number;
  readonly line?: PreparedLine;
  readonly gravity?: number;
}

function bodies({ load, slope = 1, rub = 0, hand, line = cord(), gravity = g }: Bodies): MovingLine {
  return {
    line,
    load: { mass: () => load / gravity, weight: () => load * slope, rub: () => rub },
    handMass: hand / gravity,
  };
}

/** Acceleration of a run from rest, from way and time [m/s²]. */
const acceleration = ({ way, time }: Motion) => (2 * way) / time ** 2;
const hauled = (two: Bodies, lift = 1, startSpeed = 0) =>
  haul({ moving: bodies(two), lift, hand: () => two.force, startSpeed });

/** Tension at the hand body, whose own weight is the force there [N]. */
const tensionAtHand = (two: Bodies) => two.force - (two.hand / (two.gravity ?? g)) * acceleration(hauled(two));

const incline: Bodies = {
  load: 1200,
  slope: Math.sin(12 * degrees),
  rub: 0.2 * 1200 * Math.cos(12 * degrees),
  hand: 800,
  force: 800,
};
const level: Bodies = { load: 200, slope: 0, rub: 0.3 * 200, hand: 800, force: 400, line: cord(0.3 * 800) };
const twoPlanes: Bodies = {
  load: 50,
  slope: Math.sin(30 * degrees),
  rub: (50 * Math.cos(30 * degrees)) / 3,
  hand: 100,
  force: 100 * Math.sin(60 * degrees),
  line: cord((100 * Math.cos(60 * degrees)) / 3),
};
const hanging: Bodies = { load: 300, hand: 450, force: 450 };
const atwood = (light: number, heavy: number): Bodies => ({
  load: light * 9.8,
  hand: heavy * 9.8,
  force: heavy * 9.8,
  gravity: 9.8,
});

/** 1500 N on a moving pulley go down and lift 500 N at the other end of the cord. */
const onPulley = letOut({
  moving: bodies({ load: 1500, hand: 500, force: 0, line: double }),
  lift: 1,
  hand: () => 500,
});
const steepBody: Bodies = { load: 2000, slope: 0.6, rub: 0.2 * 2000 * 0.8, hand: 1500, force: 1200, line: double };

/** Way of the hand until it goes 3 m/s; the cord slides 1500 N down its own slope with friction. */
function wayToSpeed(): number {
  const held = { ...steepBody, force: 1200 - 0.2 * 1500 * 0.6 };
  const { peakSpeed, way } = hauled(held);
  return (2 * way * 3 ** 2) / peakSpeed ** 2;
}

/** A block slides down a slope of 3 in 5 and 5 m long, then on level ground until it stops. */
function slideAndStop(): number {
  const length = 5;
  const weight = (travel: number) => (-travel < length ? 0.6 : 0);
  const rub = (travel: number) => 0.3 * (-travel < length ? 0.8 : 1);
  const moving = { line: cord(), load: { mass: () => 1 / g, weight, rub } };
  return letOut({ moving, lift: 50, tolerance: 1e-9 }).way - length;
}

const companion = (id: string, quantity: string, printed: string, unit: string, place: string, compute: () => number) =>
  publishedRow("engineering-mechanics-companion", id, quantity, printed, unit, place, compute);
const rounded = (row: CheckRow, readingError: number): CheckRow => ({ ...row, readingError });

const rows: readonly CheckRow[] = [
  companion(
    "incline-acceleration",
    "acceleration of 1200 N drawn up 12° by 800 N over a pulley, μ = 0.2",
    "1.549",
    "m/s^2",
    "example 15.6",
    () => acceleration(hauled(incline)),
  ),
  rounded(
    companion(
      "incline-tension",
      "tension of that cord",
      "673.68",
      "N",
      "example 15.6; worked on from 1.549 m/s², which is allowed for",
      () => tensionAtHand(incline),
    ),
    0.05,
  ),
  rounded(
    companion(
      "incline-way",
      "way in 3 s",
      "6.971",
      "m",
      "example 15.6; worked on from 1.549 m/s², which is allowed for",
      () => (acceleration(hauled(incline, 6.971)) * 3 ** 2) / 2,
    ),
    0.003,
  ),
  companion(
    "level-acceleration",
    "acceleration of 200 N and 800 N in a row drawn by 400 N, μ = 0.3",
    "0.981",
    "m/s^2",
    "example 15.7",
    () => acceleration(hauled(level)),
  ),
  companion(
    "level-tension",
    "tension between them",
    "80.00",
    "N",
    "example 15.7",
    () => 400 - 240 - (800 / g) * acceleration(hauled(level)),
  ),
  rounded(
    companion(
      "two-planes-acceleration",
      "acceleration of 100 N on 60° that draws 50 N up 30°, μ = 1/3",
      "1.9947",
      "m/s^2",
      "example 15.8; worked from forces rounded to 0.01 N, which is allowed for",
      () => acceleration(hauled(twoPlanes)),
    ),
    0.0007,
  ),
  companion(
    "two-planes-tension",
    "tension of that cord",
    "49.60",
    "N",
    "example 15.8",
    () =>
      100 * Math.sin(60 * degrees) - (100 * Math.cos(60 * degrees)) / 3 - (100 / g) * acceleration(hauled(twoPlanes)),
  ),
  companion(
    "hanging-acceleration",
    "acceleration of 450 N and 300 N over a pulley",
    "1.9620",
    "m/s^2",
    "example 15.10",
    () => acceleration(hauled(hanging)),
  ),
  companion("hanging-tension", "tension of that cord", "360", "N", "example 15.10", () => tensionAtHand(hanging)),
  companion(
    "moving-pulley-acceleration",
    "acceleration of 1500 N on a moving pulley that lifts 500 N",
    "1.401",
    "m/s^2",
    "example 15.11",
    () => acceleration(onPulley),
  ),
  rounded(
    companion(
      "moving-pulley-tension",
      "tension of that cord",
      "642.89",
      "N",
      "example 15.11; worked on from 1.401 m/s², which is allowed for",
      () => 500 + (500 / g) * 2 * acceleration(onPulley),
    ),
    0.05,
  ),
  companion(
    "slide-and-stop",
    "way on level ground of a block that slid down 5 m, 3 in 5, μ = 0.3",
    "6.00",
    "m",
    "example 16.8",
    slideAndStop,
  ),
  companion(
    "two-slopes-way",
    "way until 1500 N that draw 2000 N on a moving pulley go 3 m/s, two slopes, μ = 0.2",
    "3.529",
    "m",
    "example 16.10",
    wayToSpeed,
  ),
  companion(
    "two-speeds",
    "way in which 450 N and 300 N over a pulley go from 2 to 4 m/s",
    "3.058",
    "m",
    "example 16.11",
    () => {
      const { peakSpeed, way } = hauled(hanging, 3, 2);
      return (way * (4 ** 2 - 2 ** 2)) / (peakSpeed ** 2 - 2 ** 2);
    },
  ),
  rounded(
    companion(
      "heavy-pulley",
      "acceleration of 600 N on a cord round a pulley that counts as 200 N at its rim",
      "7.358",
      "m/s^2",
      "example 20.8; half a digit lies on the edge, so a whole one is allowed",
      () => acceleration(letOut({ moving: bodies({ load: 600, hand: 200, force: 0 }), lift: 1 })),
    ),
    0.001,
  ),
  publishedRow(
    "two-hanging-bodies",
    "acceleration",
    "acceleration of 2.00 kg and 4.00 kg over a pulley",
    "3.27",
    "m/s^2",
    "printed answer, g = 9.80",
    () => acceleration(hauled(atwood(2, 4))),
  ),
  publishedRow("two-hanging-bodies", "tension", "tension of that cord", "26.1", "N", "printed answer, g = 9.80", () =>
    tensionAtHand(atwood(2, 4)),
  ),
  publishedRow(
    "motion-practice-questions",
    "acceleration",
    "acceleration of 5 kg and 2 kg over a pulley",
    "4.2",
    "m/s^2",
    "explanation, g = 9.8",
    () => acceleration(hauled(atwood(2, 5))),
  ),
  publishedRow("motion-practice-questions", "tension", "tension of that cord", "28", "N", "explanation, g = 9.8", () =>
    tensionAtHand(atwood(2, 5)),
  ),
];

/** Worked examples of bodies on cords, with and without friction. */
export const motionBodies: CheckSet = { topic: "motion", rows };
