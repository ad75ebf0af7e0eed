import { type PreparedLine, prepareLine } from "../reeving/line.js";
import type { Station } from "../reeving/reeving.js";
import type { Rope } from "../reeving/station.js";

/** A cord so thin and soft that its bending costs nothing, as textbooks assume. */
const idealCord: Rope = { diameter: 0.001, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } };

/** A fixed round thing with a cord over it. */
export function drum(name: string, frictionCoefficient: number, wrapAngle: number): Station {
  return { kind: "ring", name, diameter: 0.2, frictionCoefficient, wrapAngle };
}

/** A line of an ideal cord. */
export function cordOver(...stations: readonly Station[]): PreparedLine {
  return prepareLine({ rope: idealCord, stations });
}

/** One full turn [rad]. */
export const turnAngle = 2 * Math.PI;
