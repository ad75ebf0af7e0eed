import fc from "fast-check";
import type { Strokes } from "../../src/motion/hill.js";
import { hillForce } from "../../src/motion/hill.js";
import type { MovingLine } from "../../src/motion/moving-line.js";
import { type HoistedSail, halyardRope, sailComingDown, sailGoingUp } from "../../src/motion/sail.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import type { Sheave } from "../../src/reeving/station.js";
import { evenly } from "../numerics/evenly.js";
import { limp, stiff } from "../reeving/builders.js";

/** A line without any station: no friction, and the hand moves as the load does. */
export const free = prepareLine({ rope: limp, stations: [] });

export const crew = { greatestPull: 250, greatestSpeed: 3, curvature: 0.25 };
export const hand = hillForce(crew);
export const strokes: Strokes = { strokeLength: 0.6, cycleRate: 1.5, pullingShare: 0.6 };

const block = (name: string, wrapAngle: number, bearingFriction: number): Sheave => ({
  kind: "sheave",
  name,
  diameter: 0.03,
  wrapAngle,
  pinRadius: 0.004,
  bearingFriction,
});

/** A halyard over two sheaves. */
export const halyardLine = (bearingFriction = 0.15): Line => ({
  rope: { ...stiff, diameter: 0.006 },
  stations: [block("masthead", Math.PI, bearingFriction), block("foot", Math.PI / 2, bearingFriction)],
});

export const sail: HoistedSail = {
  sailMass: 1.8,
  lift: 7,
  headShare: 0.05,
  pressing: 30,
  rubbing: 0.25,
  fallDrag: 0.3,
};

const halyard = { linearDensity: 0.025, lift: 7, handSide: 8, handDrop: 7 };

export function up(changes: Partial<HoistedSail> = {}, line = halyardLine(), density = 0.025): MovingLine {
  const rope = halyardRope({ ...halyard, linearDensity: density }, "bottom");
  return { line: prepareLine(line), load: sailGoingUp({ ...sail, ...changes }), rope };
}

export function down(changes: Partial<HoistedSail> = {}, line = halyardLine(), density = 0.025): MovingLine {
  const rope = halyardRope({ ...halyard, linearDensity: density }, "top");
  return { line: prepareLine(line), load: sailComingDown({ ...sail, ...changes }), rope };
}

/** Random rigs: sail, rope, friction, crew. */
export const rigs = fc.record({
  sailMass: evenly(0.3, 15),
  headShare: evenly(0.02, 1),
  pressing: evenly(0, 150),
  rubbing: evenly(0, 0.5),
  fallDrag: evenly(0, 2),
  density: evenly(0.002, 0.06),
  friction: evenly(0, 0.4),
  pull: evenly(60, 500),
  top: evenly(1.5, 5),
});
