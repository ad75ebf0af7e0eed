import { hillForce } from "../motion/hill.js";
import { haul, type Motion } from "../motion/hoist.js";
import { letOut } from "../motion/run-out.js";
import { halyardRope, sailComingDown, sailGoingUp } from "../motion/sail.js";
import { prepareLine } from "../reeving/line.js";
import type { CheckRow, CheckSet } from "./row.js";

const lift = 7;
const sail = { sailMass: 2, lift, headShare: 0.1, pressing: 20, rubbing: 0.25, fallDrag: 0.3 };
const halyard = { linearDensity: 0.025, lift, handSide: 8, handDrop: 7 };
const line = prepareLine({
  rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } },
  stations: [
    { kind: "measured", name: "masthead", tensionRatio: 1.1, drag: 0.5 },
    { kind: "measured", name: "mast foot", tensionRatio: 1.2, drag: 0.3 },
  ],
});

const hoist = (): Motion =>
  haul({
    moving: { line, load: sailGoingUp(sail), rope: halyardRope(halyard, "bottom") },
    lift,
    hand: hillForce({ greatestPull: 250, greatestSpeed: 3, curvature: 0.25 }),
  });
const drop = (): Motion =>
  letOut({ moving: { line, load: sailComingDown(sail), rope: halyardRope(halyard, "top") }, lift });

function integrated(id: string, quantity: string, printed: string, unit: string, compute: () => number): CheckRow {
  return {
    id: `scipy-${id}`,
    quantity,
    printed,
    unit,
    evidence: "independent",
    status: "published",
    source: "statics",
    place: "written down anew and integrated with scipy: tests/reference/hoist_and_drop.py",
    compute,
  };
}

/** The same hoist and drop, worked out by another program. */
export const motionIntegrated: CheckSet = {
  topic: "motion",
  rows: [
    integrated(
      "hoist",
      "time of a hoist of 2 kg over 7 m, one pull after Hill's equation",
      "3.4331",
      "s",
      () => hoist().time,
    ),
    integrated("drop", "time of its drop by its own weight", "2.3115", "s", () => drop().time),
    integrated("drop-speed", "largest speed in that drop", "4.1260", "m/s", () => drop().peakSpeed),
  ],
};
