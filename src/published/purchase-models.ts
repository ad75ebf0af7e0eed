import type { Line, PreparedLine } from "../reeving/line.js";
import { prepareLine } from "../reeving/line.js";
import { mechanismOf } from "../reeving/mechanism.js";
import type { Reeving } from "../reeving/reeving.js";
import type { Turn } from "../reeving/station.js";
import { tackle } from "../reeving/tackle.js";

/** A rope whose own stiffness plays no part: the tables give one ratio for the whole turn. */
const limpRope: Line["rope"] = { diameter: 0.01, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } };

/** A sheave known by its printed ratio. */
function sheaveOf(tensionRatio: number): Turn {
  return { kind: "measured", name: "sheave", tensionRatio };
}

/** A turn without friction. */
export const frictionless = sheaveOf(1);

/** Lines of tackles only, the hauling part of one being the load of the next. */
export function cascade(...reevings: readonly Reeving[]): PreparedLine {
  const stations = reevings.map((reeving, index) => ({
    kind: "tackle" as const,
    name: `tackle ${index + 1}`,
    reeving,
  }));
  return prepareLine({ rope: limpRope, stations });
}

/** Pull over load of a simple tackle by force balance. */
export function pullOverLoad(parts: number, hauledFrom: "moving" | "fixed", ratio: number, leadBlocks = 0): number {
  return cascade(tackle({ parts, hauledFrom, turn: sheaveOf(ratio), leadBlocks })).handForces(1).hauling;
}

/** Parts and sheaves of a simple tackle, counted on its reeving. */
export function counted(
  parts: number,
  hauledFrom: "moving" | "fixed",
  leadBlocks = 0,
): { parts: number; sheaves: number } {
  const mechanism = mechanismOf(tackle({ parts, hauledFrom, turn: frictionless, leadBlocks }), limpRope);
  return { parts: mechanism.velocityRatio, sheaves: mechanism.turns.length };
}
