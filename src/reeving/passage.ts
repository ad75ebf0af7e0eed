import { within } from "../quantity/guard.js";
import { vocabulary } from "../quantity/vocabulary.js";
import { stateUnder } from "./balance.js";
import { blockLoad } from "./block-load.js";
import { checkPart } from "./known-part.js";
import { type Law, pulledSide, type TurnLaw, yieldingSide } from "./law.js";
import { slidingSteps } from "./load-dependence.js";
import { type Mechanism, mechanismOf } from "./mechanism.js";
import { blockLoads, type Direction, lossOf } from "./mechanism-loads.js";
import { powerLawStep } from "./power-law.js";
import type { Station, Tackle } from "./reeving.js";
import type { Cleat, Ring, Rope, Turn } from "./station.js";
import { turnLoss } from "./turn.js";

/** A block and the vector sum of the tensions that meet there. */
export interface BlockLoad {
  readonly name: string;
  /** [N] */
  readonly load: number;
}

/** What is inside a station. */
export interface Inside {
  readonly blocks: readonly BlockLoad[];
  /** Tension of every rope part that the station adds between its two sides [N]. */
  readonly parts: readonly number[];
  /** Work lost for each metre of line on the load side [N]. */
  readonly loss: number;
}

/** What happens to a tension at one station of a line. */
export interface Passage {
  readonly name: string;
  readonly flags: readonly string[];
  /** Metres of line on the hand side for each metre on the load side. */
  readonly velocityRatio: number;
  /** Load-side tension [N] below which a part hangs slack while hauling: the force found is then an upper bound. */
  readonly tautFrom: number;
  /** Hand-side tension from load-side tension [N]; below zero while easing: the line does not go out by itself. */
  through(loadTension: number, direction: Direction): number;
  /** Least load-side tension [N] that still draws the line out against a hand-side tension [N]. */
  leastLoad(handTension: number): number;
  /** Everything between the two sides, for the tensions that were found there. */
  inside(loadTension: number, handTension: number, direction: Direction): Inside;
}

/**
 * Works out once how a tension passes a station, for both directions.
 *
 * @param station  turn, cleat or tackle
 * @param rope  rope that runs through it
 * @returns the passage of the station [N in, N out]
 * @throws ValueError or ReevingError when the station cannot exist
 */
export function passageOf(station: Station, rope: Rope): Passage {
  checkPart(station);
  if (station.kind === "cleat") return cleatPassage(station);
  if (station.kind === "tackle") return tacklePassage(station, rope);
  return turnPassage(station, rope);
}

function turnPassage(turn: Turn, rope: Rope): Passage {
  const { law, flags } = turnLoss({ turn, rope });
  const wrapAngle = turn.wrapAngle ?? Math.PI;
  const laws = turn.kind === "ring" && turn.loadDependence ? loadDependent(turn, rope) : lawThrough(law, wrapAngle);
  return {
    name: turn.name,
    flags,
    velocityRatio: 1,
    tautFrom: 0,
    ...laws,
    inside: (loadTension, handTension) => ({
      blocks: [{ name: turn.name, load: blockLoad({ loadTension, handTension, wrapAngle }) }],
      parts: [],
      loss: Math.abs(handTension - loadTension),
    }),
  };
}

function lawThrough(law: TurnLaw, wrapAngle: number): Pick<Passage, "through" | "leastLoad"> {
  const { grip } = law;
  /** Judged with the sheave free, as on a rising load. */
  const grips = (loadTension: number) => {
    if (!grip) return false;
    const handTension = Math.max(0, yieldingSide(law.ease, loadTension));
    return blockLoad({ loadTension, handTension, wrapAngle }) >= grip.engageLoad;
  };
  const easing = (loadTension: number): Law => (grip && grips(loadTension) ? grip.gripped : law.ease);
  return {
    through: (loadTension, direction) =>
      direction === "hauling" ? pulledSide(law.haul, loadTension) : yieldingSide(easing(loadTension), loadTension),
    leastLoad: (handTension) => {
      const free = pulledSide(law.ease, handTension);
      return grip && grips(free) ? pulledSide(grip.gripped, handTension) : free;
    },
  };
}

/** A ring whose friction falls with load: bending first, then the power law, then the constant drag. */
function loadDependent(ring: Ring, rope: Rope): Pick<Passage, "through" | "leastLoad"> {
  const { bent, gain, x, drag } = slidingSteps(ring);
  const bending = turnLoss({ turn: bent, rope }).law.haul;
  /** Tension that the ring holds by sliding friction alone. */
  const held = powerLawStep(0, gain, x);
  const pulled = (tension: number) => powerLawStep(pulledSide(bending, tension), gain, x) + drag;
  const yielding = (tension: number) =>
    yieldingSide(bending, tension > held ? powerLawStep(tension, -gain, x) : tension - held);
  return {
    through: (loadTension, direction) => (direction === "hauling" ? pulled(loadTension) : yielding(loadTension - drag)),
    leastLoad: pulled,
  };
}

function cleatPassage(cleat: Cleat): Passage {
  const hold = within("holdLoad", cleat.holdLoad);
  const drag = within("constantDrag", cleat.drag ?? 0);
  return {
    name: cleat.name,
    flags: cleat.closed ? [`${cleat.name}: closed, holds up to its slip load`] : [],
    velocityRatio: 1,
    tautFrom: 0,
    through: (tension, direction) => {
      if (!cleat.closed) return tension;
      return direction === "hauling" ? tension + drag : tension - hold;
    },
    leastLoad: (handTension) => (cleat.closed ? handTension + hold : handTension),
    inside: (loadTension, handTension) => {
      const held = Math.abs(handTension - loadTension);
      return { blocks: [{ name: cleat.name, load: held }], parts: [], loss: held };
    },
  };
}

function tacklePassage(station: Tackle, rope: Rope): Passage {
  const mechanism = mechanismOf(station.reeving, rope);
  return {
    name: station.name,
    flags: mechanism.turns.flatMap(({ body, flags }) => flags.map((flag) => `${station.name}, ${body}: ${flag}`)),
    velocityRatio: mechanism.velocityRatio,
    tautFrom: tautLoad(mechanism),
    through: (tension, direction) => stateUnder(mechanism, tension, direction).handForce,
    leastLoad: (handTension) => leastLoadOf(mechanism, handTension),
    inside: (tension, _handTension, direction) => {
      const { tensions } = stateUnder(mechanism, tension, direction);
      return {
        blocks: [...blockLoads(mechanism, tensions)].map(([name, load]) => ({
          name: `${station.name}: ${name}`,
          load,
        })),
        parts: [...tensions],
        loss: lossOf(mechanism, tensions, direction) * mechanism.velocityRatio,
      };
    },
  };
}

/** Least load at which every part is taut while hauling: below it the drags alone would lift the load. */
function tautLoad(mechanism: Mechanism): number {
  const { slope, offset } = stateUnder(mechanism, 0, "hauling").straight;
  return slope.reduce((least, rise, part) => (rise > 0 ? Math.max(least, -offset[part]! / rise) : least), 0);
}

/** Load at which the hand side just carries the given tension while easing; ratchets may grip on the way. */
function leastLoadOf(mechanism: Mechanism, handTension: number): number {
  let state = stateUnder(mechanism, 0, "easing");
  for (;;) {
    const { slope, offset } = state.straight;
    const rise = slope[mechanism.handPart]!;
    const load = rise > 0 ? Math.max(0, (handTension - offset[mechanism.handPart]!) / rise) : Number.POSITIVE_INFINITY;
    if (load > vocabulary.loadTension.maximum) return load;
    const next = stateUnder(mechanism, load, "easing");
    if (next.gripping.size <= state.gripping.size) return load;
    state = next;
  }
}
