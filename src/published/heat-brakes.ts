import { bulkRise, frictionHeat, frictionPower } from "../rope/friction-heat.js";
import { publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";

const gravity = 9.81;

/** Energy of a body that is stopped [J]. */
const motion = (mass: number, speed: number) => (mass * speed ** 2) / 2;

/** Printed to two figures. */
const twoFigures = (row: CheckRow): CheckRow => ({ ...row, readingError: 50 });

const flywheelSpeed = (500 / 60) * 2 * Math.PI;
const flywheelRadius = 0.35;

const rows: readonly CheckRow[] = [
  publishedRow(
    "work-rate-answer",
    "watts",
    "friction power of 5 kg sliding at 5 m/s, μ = 0.4",
    "98.1",
    "W",
    "answer",
    () => frictionPower({ lostForce: 0.4 * 5 * gravity, speed: 5 }),
  ),
  twoFigures(
    publishedRow(
      "poysti-2020",
      "lowering",
      "heat of lowering 100 kg by 10 m",
      "9800",
      "J",
      "energy of a lowering; printed to two figures, hence ± 50 J",
      () => frictionHeat({ lostForce: 100 * gravity, distance: 10 }),
    ),
  ),
  publishedRow(
    "poysti-2020",
    "block",
    "warming of a 56 g aluminium block by 1960 J",
    "39",
    "K",
    "all of the heat into the block, 900 J/(kg K)",
    () => bulkRise({ heat: 1960, mass: 0.056, specificHeat: 900 }),
  ),
  twoFigures(
    publishedRow(
      "light-and-matter",
      "pole",
      "heat of a 50 kg firefighter sliding down 5 m",
      "2500",
      "J",
      "example 2.3.2; printed to two figures, hence ± 50 J",
      () => frictionHeat({ lostForce: 50 * gravity, distance: 5 }),
    ),
  ),
  publishedRow(
    "openstax-brakes",
    "truck",
    "warming of 100 kg of brakes, 10 000 kg down 75.0 m, 800 J/(kg K)",
    "92",
    "K",
    "example 14.2",
    () =>
      bulkRise({
        heat: frictionHeat({ lostForce: 10_000 * 9.8, distance: 75 }),
        mass: 100,
        specificHeat: 800,
      }),
  ),
  publishedRow(
    "hot-wheels-problem",
    "car",
    "warming of 15 kg of iron brakes, 750 kg from 24 m/s",
    "32",
    "K",
    "solution",
    () => bulkRise({ heat: motion(750, 24), mass: 15, specificHeat: 450 }),
  ),
  publishedRow(
    "iron-brakes-answer",
    "car",
    "warming of 15.0 kg of iron brakes, 750 kg from 23 m/s",
    "29.4",
    "K",
    "answer",
    () => bulkRise({ heat: motion(750, 23), mass: 15, specificHeat: 450 }),
  ),
  publishedRow(
    "steel-brakes-example",
    "car",
    "warming of 4 kg of steel brakes, 1200 kg from 30 m/s",
    "270",
    "K",
    "example 4",
    () => bulkRise({ heat: motion(1200, 30), mass: 4, specificHeat: 500 }),
  ),
  publishedRow(
    "vehicle-brake-exercise",
    "vehicle",
    "warming of a 15 kg brake, 1500 kg from 60 km/h, 0.46 kJ/(kg K)",
    "30",
    "K",
    "solution",
    () => bulkRise({ heat: motion(1500, 60 / 3.6), mass: 15, specificHeat: 460 }),
  ),
  publishedRow(
    "lead-bullet-answer",
    "bullet",
    "warming of a lead bullet that keeps a tenth of its energy, 500 m/s",
    "96.15",
    "K",
    "answer",
    () => bulkRise({ heat: 0.1 * motion(1, 500), mass: 1, specificHeat: 130 }),
  ),
  {
    ...publishedRow(
      "bhandari-log",
      "drum",
      "warming of a 5 kg brake drum by a flywheel of 100 kg at 500 rpm",
      "7.300885",
      "K",
      "example 12.14; another program's output, the book itself prints another number",
      () => bulkRise({ heat: motion(100, flywheelRadius * flywheelSpeed), mass: 5, specificHeat: 460 }),
    ),
    evidence: "independent",
  },
];

/** Worked examples of friction heat and of bodies that keep it. */
export const heatBrakes: CheckSet = { topic: "heat", rows };
