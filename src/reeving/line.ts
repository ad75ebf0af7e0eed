import { ReevingError } from "../quantity/errors.js";
import { guard, within, withUnit } from "../quantity/guard.js";
import { checkWhole } from "./known-part.js";
import type { Direction } from "./mechanism-loads.js";
import { type BlockLoad, type Passage, passageOf } from "./passage.js";
import type { Station } from "./reeving.js";
import type { Rope } from "./station.js";

/** A rope through stations, in order from the load end to the hand end. */
export interface Line {
  readonly rope: Rope;
  readonly stations: readonly Station[];
}

/** One station of a line under load. */
export interface StationState {
  readonly name: string;
  readonly loadTension: number;
  readonly handTension: number;
  /** Tension of every rope part inside a tackle [N]. */
  readonly parts: readonly number[];
  readonly blocks: readonly BlockLoad[];
  /** Metres of line that come out at the hand side for each metre at the hand end. */
  readonly lineSpeed: number;
  /** Work lost here for each metre at the hand end [N]. */
  readonly loss: number;
  readonly flags: readonly string[];
}

/** A line under load, moving one way. */
export interface LineState {
  readonly direction: Direction;
  readonly load: number;
  /** Hand force [N]: what must be pulled to haul, or what is left to hold while easing; never below 0. */
  readonly handForce: number;
  /** False when the line is eased but does not go out by itself: the load is below the run-out load. */
  readonly moves: boolean;
  readonly stations: readonly StationState[];
}

/** What the hand feels. */
export interface HandForces {
  readonly hauling: number;
  readonly easing: number;
  /** Hauling less easing: in between, the line stays where it is [N]. */
  readonly deadBand: number;
  /** Least load at which the line goes out by itself [N]. */
  readonly runOutLoad: number;
  /** Metres hauled for each metre that the load moves. */
  readonly velocityRatio: number;
  /** Work got out over work put in while hauling; 0 without load. */
  readonly efficiency: number;
  readonly flags: readonly string[];
}

/** A line ready to be asked, many times, at different loads. */
export interface PreparedLine {
  readonly velocityRatio: number;
  /** What the hand feels under a load [N], both ways. */
  handForces(load: number): HandForces;
  /** Hand force for one direction alone [N]; never below 0. */
  handForce(load: number, direction: Direction): number;
  /** Every station under a load [N], one way. */
  state(load: number, direction: Direction): LineState;
  /** Least load at which the line goes out with a hand tension of `left` [N], by default none. */
  runOutLoad(left?: number): number;
}

const handTension = guard("handTension");
const loadTension = guard("loadTension");

/**
 * Makes a line ready: works out every station once.
 *
 *     hauling T_hand = k · T_load + c,   easing T_hand = (T_load − c) / k, station by station from load to hand
 *
 * @param line  rope and stations [m, rad, N]
 * @returns functions from load [N] to hand force [N]
 * @throws ReevingError for a line that is put together wrong, ValueError for impossible numbers
 * Source: statics. Example: prepareLine({ rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1 }] }).handForces(100).hauling → 110
 */
export function prepareLine(line: Line): PreparedLine {
  checkWhole(line);
  within("ropeDiameter", line.rope.diameter);
  refuseRepeats(line.stations);
  const passages = line.stations.map((station) => passageOf(station, line.rope));
  const velocityRatio = passages.reduce((product, passage) => product * passage.velocityRatio, 1);
  const fromHand = [...passages].reverse();
  const runOutLoad = (left = 0) => {
    let tension = handTension(left);
    for (const passage of fromHand) tension = passage.leastLoad(tension);
    return tension;
  };
  const handForce = (load: number, direction: Direction) => {
    let tension = loadTension(load);
    for (const passage of passages) tension = Math.max(0, passage.through(tension, direction));
    return tension;
  };
  return {
    velocityRatio,
    runOutLoad,
    handForce,
    state: (load, direction) => stateOf(passages, load, direction),
    handForces: (load) => {
      const hauling = handForce(load, "hauling");
      const easing = handForce(load, "easing");
      return {
        hauling,
        easing,
        deadBand: hauling - easing,
        runOutLoad: runOutLoad(),
        velocityRatio,
        efficiency: hauling === 0 ? 0 : load / (velocityRatio * hauling),
        flags: flagsWhileHauling(passages, load),
      };
    },
  };
}

function flagsWhileHauling(passages: readonly Passage[], load: number): string[] {
  let tension = load;
  return passages.flatMap((passage) => {
    const flags = flagsOf(passage, tension, "hauling");
    tension = passage.through(tension, "hauling");
    return flags;
  });
}

function flagsOf(passage: Passage, loadTension: number, direction: Direction): string[] {
  if (direction === "easing" || loadTension >= passage.tautFrom) return [...passage.flags];
  const limit = `${withUnit(passage.tautFrom, "N")} on its load side`;
  return [...passage.flags, `${passage.name}: a part hangs slack below ${limit}; the hauling force is an upper bound`];
}

function stateOf(passages: readonly Passage[], load: number, direction: Direction): LineState {
  let tension = within("loadTension", load);
  let moves = true;
  const halfway = passages.map((passage) => {
    const loadTension = tension;
    const through = passage.through(loadTension, direction);
    moves &&= through >= 0;
    tension = Math.max(0, through);
    return { passage, loadTension, handTension: tension };
  });
  let lineSpeed = 1;
  const stations = halfway.reverse().map(({ passage, loadTension, handTension }): StationState => {
    const inside = passage.inside(loadTension, handTension, direction);
    const handSpeed = lineSpeed;
    lineSpeed /= passage.velocityRatio;
    return {
      name: passage.name,
      loadTension,
      handTension,
      parts: inside.parts,
      blocks: inside.blocks,
      lineSpeed: handSpeed,
      loss: moves ? inside.loss * lineSpeed : 0,
      flags: flagsOf(passage, loadTension, direction),
    };
  });
  return { direction, load, handForce: tension, moves, stations: stations.reverse() };
}

/** The same station twice would be a loop in the line; two stations of one name cannot be told apart. */
function refuseRepeats(stations: readonly Station[]): void {
  const seen = new Set<string>();
  for (const station of stations) {
    if (seen.has(station.name)) {
      throw new ReevingError({
        quantity: `station "${station.name}"`,
        value: "met twice: a loop in the line",
        allowed: "every station once, each with a name of its own",
        advice: "A block that the line passes twice is part of a tackle: describe it as one.",
      });
    }
    seen.add(station.name);
  }
}
