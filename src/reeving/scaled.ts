import { vocabulary } from "../quantity/vocabulary.js";
import type { Line } from "./line.js";
import type { Reeving, Station } from "./reeving.js";
import type { Rope, Sheave, Turn } from "./station.js";

/** Causes whose coefficients can be scaled, all stations of a line together: same rope, same make of bearing. */
export const factorNames = ["bearing", "bending", "sliding", "tread", "drag"] as const;

/** One of the causes. */
export type FactorName = (typeof factorNames)[number];

/** Factor on the coefficients of each cause [-]; 1 when absent. */
export type Factors = Readonly<Partial<Record<FactorName, number>>>;

/**
 * A line with the coefficients of its causes multiplied by factors.
 *
 * @param line  rope and stations
 * @param factors  [-], 0 or more: bearing friction (and the loss of measured turns), bending terms, friction on rings, friction on treads, constant drags
 * @returns a new line; the given one is untouched
 * Source: statics, every coefficient times its factor. Example: scaledLine({ rope: { diameter: 0.006, stiffness: { tensionTerm: 60, constantTerm: 0, diameterTerm: 0 } }, stations: [] }, { bending: 2 }).rope.stiffness.tensionTerm → 120
 */
export function scaledLine(line: Line, factors: Factors): Line {
  return {
    rope: scaledRope(line.rope, factors),
    stations: line.stations.map((station): Station => {
      if (station.kind === "tackle") return { ...station, reeving: scaledReeving(station.reeving, factors) };
      return station.kind === "cleat" ? station : scaledTurn(station, factors);
    }),
  };
}

function scaledRope(rope: Rope, { bending = 1 }: Factors): Rope {
  const { tensionTerm, constantTerm, diameterTerm } = rope.stiffness;
  return {
    ...rope,
    stiffness: {
      tensionTerm: bending * tensionTerm,
      constantTerm: bending * constantTerm,
      diameterTerm: bending * diameterTerm,
    },
  };
}

function scaledReeving(reeving: Reeving, factors: Factors): Reeving {
  const ropes = reeving.ropes.map((rope) => ({
    ...rope,
    turns: rope.turns.map(({ body, turn }) => ({ body, turn: scaledTurn(turn, factors) })),
  }));
  return { ...reeving, ropes };
}

function scaledTurn(turn: Turn, { bearing = 1, sliding = 1, tread = 1, drag = 1 }: Factors): Turn {
  const scaledDrag = { drag: drag * (turn.drag ?? 0) };
  switch (turn.kind) {
    case "measured":
      return { ...turn, ...scaledDrag, tensionRatio: 1 + bearing * (turn.tensionRatio - 1) };
    case "ring":
      return { ...turn, ...scaledDrag, frictionCoefficient: sliding * turn.frictionCoefficient };
    case "sheave":
      return { ...turn, ...scaledDrag, ...scaledBearing(turn, bearing) };
    case "ratchet":
      return {
        ...turn,
        ...scaledDrag,
        ...scaledBearing(turn, bearing),
        treadFriction: tread * turn.treadFriction,
      };
  }
}

/** Friction times the factor; what would make a coefficient above 1 the radius takes, as only their product counts. */
function scaledBearing({ bearingFriction, pinRadius }: Pick<Sheave, "bearingFriction" | "pinRadius">, factor: number) {
  const wanted = factor * bearingFriction;
  return wanted <= 1
    ? { bearingFriction: wanted, pinRadius }
    : { bearingFriction: 1, pinRadius: Math.min(vocabulary.pinRadius.maximum, wanted * pinRadius) };
}
