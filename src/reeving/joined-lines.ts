import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { type HandForces, type Line, type LineState, type PreparedLine, prepareLine } from "./line.js";
import type { Direction } from "./mechanism-loads.js";

/** Hand forces of ropes that are joined one after the other. */
export interface JoinedForces {
  readonly hauling: number;
  readonly easing: number;
  /** Least load at which the line goes out by itself [N]. */
  readonly runOutLoad: number;
}

/**
 * What the hand feels on a line that changes its rope on the way: thin where it runs, covered where it is held.
 *
 *     the hand tension of each part is the load of the next; the run-out load of the first is that which leaves the
 *     others just enough to go out
 *
 * @param parts  lines from the sail to the hand, each with its own rope and the stations that it runs through
 * @param load  load at the sail end [N], 0 to 1 MN
 * @returns hauling and easing force and run-out load [N]
 * @throws ValueError for no parts, or as a line does
 * Valid while no join runs through a station of another part.
 * Source: statics, tension in series. Example: joinedForces([{ rope: { diameter: 0.004, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "block", tensionRatio: 1.1 }] }, { rope: { diameter: 0.007, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "block", tensionRatio: 1.2 }] }], 100).hauling → 132
 */
export function joinedForces(parts: readonly Line[], load: number): JoinedForces {
  const { hauling, easing, runOutLoad } = prepareJoined(parts).handForces(load);
  return { hauling, easing, runOutLoad };
}

/**
 * Makes a line of several ropes ready, so that it can be asked like a line of one.
 *
 *     VR = Π VR_i; stations one after the other, each with the speed that the parts behind it leave
 *
 * @param parts  lines from the sail to the hand, each with its own rope and the stations that it runs through
 * @returns functions from load [N] to hand force [N]
 * @throws ValueError for no parts, or as a line does
 * Valid while no join runs through a station of another part.
 * Source: statics, tension in series. Example: prepareJoined([{ rope: { diameter: 0.004, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "block", tensionRatio: 1.1 }] }, { rope: { diameter: 0.007, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "block", tensionRatio: 1.2 }] }]).state(100, "hauling").handForce → 132
 */
export function prepareJoined(parts: readonly Line[]): PreparedLine {
  if (parts.length === 0)
    throw new ValueError({
      quantity: "parts of a line",
      value: "none",
      allowed: "at least one",
      advice: "Give each rope with the stations that it runs through.",
    });
  const prepared = parts.map(prepareLine);
  const velocityRatio = prepared.reduce((product, part) => product * part.velocityRatio, 1);
  const runOutLoad = (left = 0) => prepared.reduceRight((tension, part) => part.runOutLoad(tension), left);
  return {
    velocityRatio,
    runOutLoad,
    handForce: (load, direction) =>
      prepared.reduce((tension, part) => part.handForce(tension, direction), within("loadTension", load)),
    state: (load, direction) => joinedState(prepared, load, direction),
    handForces: (load) => {
      const hauling: HandForces[] = [];
      let easing = within("loadTension", load);
      for (const part of prepared) {
        hauling.push(part.handForces(hauling.at(-1)?.hauling ?? load));
        easing = part.handForces(easing).easing;
      }
      const pull = hauling.at(-1)?.hauling ?? load;
      return {
        hauling: pull,
        easing,
        deadBand: pull - easing,
        runOutLoad: runOutLoad(),
        velocityRatio,
        efficiency: pull === 0 ? 0 : load / (velocityRatio * pull),
        flags: hauling.flatMap(({ flags }) => flags),
      };
    },
  };
}

function joinedState(prepared: readonly PreparedLine[], load: number, direction: Direction): LineState {
  let tension = load;
  const states = prepared.map((part) => {
    const state = part.state(tension, direction);
    tension = state.handForce;
    return state;
  });
  const stations = states.map((state, index) => {
    const behind = prepared.slice(index + 1).reduce((product, part) => product * part.velocityRatio, 1);
    return state.stations.map((one) => ({ ...one, lineSpeed: one.lineSpeed / behind, loss: one.loss / behind }));
  });
  return {
    direction,
    load,
    handForce: tension,
    moves: states.every(({ moves }) => moves),
    stations: stations.flat(),
  };
}
