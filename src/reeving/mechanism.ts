import { solveLinear } from "../numerics/linear.js";
import { ReevingError } from "../quantity/errors.js";
import type { TurnLaw } from "./law.js";
import { type Body, handEnd, type Place, type Reeving } from "./reeving.js";
import type { Rope, Turn } from "./station.js";
import { checkStructure, ropePath } from "./structure.js";
import { turnLoss } from "./turn.js";

/** A stretch of rope between two neighbouring places. */
export interface Part {
  readonly rope: string;
  readonly from: string;
  readonly to: string;
  /** Unit vector from the first place to the second. */
  readonly direction: readonly [number, number];
}

/** A turn between two parts, with the speed at which rope passes it. */
export interface PassedTurn {
  readonly body: string;
  readonly turn: Turn;
  readonly law: TurnLaw;
  readonly flags: readonly string[];
  /** Part before and after the turn, counted along the rope. */
  readonly before: number;
  readonly after: number;
  /** Metres of rope that pass towards the rope's end for each metre hauled; below zero: towards its start. */
  readonly passing: number;
}

/** A pull of a part on a moving body along its axis. */
export interface Pull {
  readonly part: number;
  readonly along: number;
}

/** A moving block: what pulls on it, and how fast it goes. */
export interface MovingBody {
  readonly name: string;
  readonly pulls: readonly Pull[];
  /** Share of the load that acts along the axis. */
  readonly loadAlong: number;
  /** Metres along the axis for each metre hauled. */
  readonly speed: number;
}

/** A reeving made ready for the force balance: geometry and motion are worked out. */
export interface Mechanism {
  readonly parts: readonly Part[];
  readonly turns: readonly PassedTurn[];
  readonly moving: readonly MovingBody[];
  readonly handPart: number;
  /** Metres hauled for each metre that the load moves. */
  readonly velocityRatio: number;
}

/**
 * Works out how a reeving moves: directions of its parts, speed of every moving block, rope passing every turn.
 *
 *     every rope keeps its length: Σ dL/dt = 0, with the hand moving at 1 m/s
 *
 * @param reeving  bodies and ropes
 * @param rope  rope that runs through all turns [m]
 * @returns the mechanism; speeds [m/m hauled]
 * @throws ReevingError when the parts do not make one purchase with one definite motion
 * Source: statics, virtual work.
 */
export function mechanismOf(reeving: Reeving, rope: Rope): Mechanism {
  checkStructure(reeving);
  const paths = reeving.ropes.map((rope) => ropePath(reeving, rope.name));
  const parts = paths.flatMap((path, rope) =>
    path.slice(1).map((to, index) => partBetween(reeving, reeving.ropes[rope]!.name, path[index]!, to)),
  );
  const names = Object.keys(reeving.bodies).filter((name) => reeving.bodies[name]!.moves);
  const speeds = speedsOf(reeving, names, parts);
  const speedOf = (name: string) => speeds.get(name) ?? 0;
  const lengthening = parts.map((part) => {
    const handTerm = part.to === handEnd ? 1 : 0;
    return (
      handTerm + along(reeving, part, part.to) * speedOf(part.to) - along(reeving, part, part.from) * speedOf(part.from)
    );
  });
  const load = reeving.bodies[reeving.load.body]!;
  const pull = unit(reeving.load.direction ?? [1, 0]);
  const loadSpeed = dot(axisOf(load), pull) * speedOf(reeving.load.body);
  if (!(loadSpeed < -1e-9)) {
    refuse(
      "load",
      loadSpeed > 1e-9 ? "a load that moves away from the haul" : "a load that does not move",
      "a load that comes in when the hand hauls",
      "Check which block carries the load and which way it pulls.",
    );
  }
  return {
    parts,
    turns: turnsOf(reeving, rope, lengthening),
    moving: names.map((name) => ({
      name,
      pulls: pullsOn(reeving, parts, name),
      loadAlong: name === reeving.load.body ? dot(axisOf(reeving.bodies[name]!), pull) : 0,
      speed: speedOf(name),
    })),
    handPart: parts.findIndex(({ to }) => to === handEnd),
    velocityRatio: -1 / loadSpeed,
  };
}

function speedsOf(reeving: Reeving, names: readonly string[], parts: readonly Part[]): Map<string, number> {
  const ropes = reeving.ropes.map(({ name }) => name);
  const size = names.length;
  if (ropes.length !== size) {
    const more = ropes.length > size ? "ropes hold the blocks fast" : "blocks hang free";
    refuse(
      "reeving",
      `${ropes.length} ropes for ${size} moving blocks: ${more}`,
      "as many ropes as moving blocks",
      "Add or remove a rope, or fix a block.",
    );
  }
  const matrix = new Float64Array(size * size);
  const sides = new Float64Array(size);
  for (const part of parts) {
    const row = ropes.indexOf(part.rope);
    for (const [end, sign] of [
      [part.to, 1],
      [part.from, -1],
    ] as const) {
      if (end === handEnd) sides[row]! -= 1;
      const column = names.indexOf(end);
      if (column >= 0) matrix[row * size + column]! += sign * along(reeving, part, end);
    }
  }
  if (!solveLinear(size, matrix, sides)) {
    refuse(
      "reeving",
      "ropes that leave the motion of a block open",
      "one definite motion for every block",
      "Check each rope's path: a loop among moving blocks holds nothing.",
    );
  }
  return new Map(names.map((name, index) => [name, sides[index]!]));
}

/** Rope passes a turn at the rate at which the stretch between the rope's start and the turn gets shorter. */
function turnsOf(reeving: Reeving, line: Rope, lengthening: readonly number[]): PassedTurn[] {
  const turns: PassedTurn[] = [];
  let part = 0;
  for (const rope of reeving.ropes) {
    let passing = 0;
    for (const { body, turn } of rope.turns) {
      passing -= lengthening[part]!;
      refuseLoadDependence(turn);
      const { law, flags } = turnLoss({ turn, rope: line });
      turns.push({
        body,
        turn,
        law,
        flags,
        before: part,
        after: part + 1,
        passing: Math.abs(passing) < 1e-12 ? 0 : passing,
      });
      part += 1;
    }
    part += 1;
  }
  return turns;
}

/** The force balance of a tackle is linear in the load: friction that falls with load has no place in it. */
function refuseLoadDependence(turn: Turn): void {
  if (turn.kind !== "ring" || turn.loadDependence === undefined) return;
  refuse(
    `ring "${turn.name}"`,
    "friction that falls with load inside a tackle",
    "one friction coefficient for all loads inside a tackle",
    "Give the ring its friction coefficient at the tension that it meets, or make it a station of the line.",
  );
}

function pullsOn(reeving: Reeving, parts: readonly Part[], name: string): Pull[] {
  return parts.flatMap((part, index) => {
    const pulls: Pull[] = [];
    if (part.from === name) pulls.push({ part: index, along: along(reeving, part, name) });
    if (part.to === name) pulls.push({ part: index, along: -along(reeving, part, name) });
    return pulls;
  });
}

/** Component of a part's direction along the axis of a body; 0 for a fixed one. */
function along(reeving: Reeving, part: Part, name: string): number {
  const body = reeving.bodies[name];
  return body?.moves ? dot(axisOf(body), part.direction) : 0;
}

function partBetween(reeving: Reeving, rope: string, from: string, to: string): Part {
  const [x1, y1] = point(reeving.bodies[from]!.at);
  const [x2, y2] = point(to === handEnd ? reeving.hand : reeving.bodies[to]!.at);
  if (x1 === x2 && y1 === y2) {
    refuse(
      `rope "${rope}"`,
      `"${from}" and "${to}" in the same place`,
      "places apart from each other",
      "Give one of them another place.",
    );
  }
  return { rope, from, to, direction: unit([x2 - x1, y2 - y1]) };
}

function point(place: Place): readonly [number, number] {
  return typeof place === "number" ? [place, 0] : place;
}

function axisOf(body: Body): readonly [number, number] {
  return unit(body.axis ?? [1, 0]);
}

function unit([x, y]: readonly [number, number]): readonly [number, number] {
  const length = Math.hypot(x, y);
  if (!(length > 0 && Number.isFinite(length))) {
    refuse("direction", `(${x}, ${y})`, "two finite numbers, not both zero", "Give a direction such as [1, 0].");
  }
  return [x / length, y / length];
}

function dot(a: readonly [number, number], b: readonly [number, number]): number {
  return a[0] * b[0] + a[1] * b[1];
}

function refuse(quantity: string, value: string, allowed: string, advice: string): never {
  throw new ReevingError({ quantity, value, allowed, advice });
}
