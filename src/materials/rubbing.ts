import { type Coefficient, coefficient } from "../sources/coefficient.js";

/** Fibre on the outside of a line that touches another. */
export type RubbingFibre = "polyester" | "polyamide" | "aramid" | "hmpe";

/** What one fibre is like when it rubs on its own kind. */
export interface Rubbing {
  readonly name: string;
  /** Friction of the fibre on itself, moving [-]. */
  readonly friction: Coefficient;
  /** Fraying of the fibre for the same friction work, over polyester [-]. */
  readonly frailty: Coefficient;
}

const taught = "crossed fibres, moving; the upper end is the printed friction at rest, the lower end is judged";

function onItself(low: number, value: number, high: number): Coefficient {
  return coefficient({
    value,
    unit: "1",
    low,
    high,
    status: "published",
    source: "fibre-friction-lecture",
    place: taught,
  });
}

function frailty(low: number, value: number, high: number, status: Coefficient["status"], place: string): Coefficient {
  return coefficient({ value, unit: "1", low, high, status, place });
}

/** Fibres that rub on fibres. */
export const rubbing = {
  polyester: {
    name: "polyester",
    friction: onItself(0.1, 0.12, 0.15),
    frailty: frailty(1, 1, 1, "common practice", "the reference: stays smooth"),
  },
  polyamide: {
    name: "polyamide",
    friction: onItself(0.35, 0.4, 0.47),
    frailty: frailty(0.6, 1, 2, "from memory", "no printed comparison found for one friction work"),
  },
  aramid: {
    name: "aramid",
    friction: coefficient({
      value: 0.22,
      unit: "1",
      low: 0.18,
      high: 0.35,
      status: "published",
      source: "brown-burgoyne-1999",
      place: "abstract: 0.22 at high pressure, more below it",
    }),
    frailty: frailty(1.2, 2.5, 8, "from memory", "splits into fibrils; a yarn-on-yarn test would narrow it"),
  },
  hmpe: {
    name: "HMPE",
    friction: coefficient({
      value: 0.065,
      unit: "1",
      low: 0.05,
      high: 0.09,
      status: "from memory",
      place: "handbook range for yarn on itself; hangs on the finish",
    }),
    frailty: frailty(0.4, 1, 2, "from memory", "no printed comparison found for one friction work"),
  },
} as const satisfies Record<RubbingFibre, Rubbing>;

/** Largest fraying rate that passes, over polyester on polyester [-]. */
export const fraying: Coefficient = coefficient({
  value: 4,
  unit: "1",
  low: 2.5,
  high: 6,
  status: "common practice",
  place: "polyester stays smooth, aramid on aramid frays fast: the limit lies between their rates",
});
