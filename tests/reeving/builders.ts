import fc from "fast-check";
import { Refusal } from "../../src/quantity/errors.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import { type Mechanism, mechanismOf } from "../../src/reeving/mechanism.js";
import type { Reeving, Station } from "../../src/reeving/reeving.js";
import type { Cleat, Measured, Ratchet, Ring, Rope, Sheave, Turn } from "../../src/reeving/station.js";
import { doubleBurton, firstSystem, thirdSystem } from "../../src/reeving/systems.js";
import { tackle } from "../../src/reeving/tackle.js";
import { evenly } from "../numerics/evenly.js";

/** Every property test of this folder starts from the same seed. */
export const seed = { seed: 7 };

/** A rope that bends without loss. */
export const limp: Rope = { diameter: 0.008, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } };

/** A rope that does not. */
export const stiff: Rope = { diameter: 0.008, stiffness: { tensionTerm: 60, constantTerm: 40, diameterTerm: 1e6 } };

export const wheel = (tensionRatio: number, drag = 0): Measured => ({
  kind: "measured",
  name: "sheave",
  tensionRatio,
  drag,
});

export const sheave: Sheave = {
  kind: "sheave",
  name: "sheave",
  wrapAngle: Math.PI,
  diameter: 0.04,
  pinRadius: 0.004,
  bearingFriction: 0.12,
};

export const ring: Ring = { kind: "ring", name: "ring", wrapAngle: 1.5, diameter: 0.02, frictionCoefficient: 0.12 };

export const ratchet: Ratchet = { ...sheave, kind: "ratchet", name: "ratchet", treadFriction: 0.35 };

export const cleat: Cleat = { kind: "cleat", name: "cleat", closed: true, holdLoad: 400, drag: 2 };

/** One tackle as a line of its own. */
export function lineOf(reeving: Reeving, rope: Rope = limp): Line {
  return { rope, stations: [{ kind: "tackle", name: "tackle", reeving }] };
}

/** Hand forces of a line with one station. */
export function alone(station: Station, load: number, rope: Rope = limp) {
  return prepareLine({ rope, stations: [station] }).handForces(load);
}

/** The reeving made ready, or nothing when it is refused. */
export function readyOrNot(reeving: Reeving, rope: Rope = limp, load = 100): Mechanism | undefined {
  try {
    const mechanism = mechanismOf(reeving, rope);
    prepareLine(lineOf(reeving, rope)).handForces(load);
    return mechanism;
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

export const num = evenly;

export const ropes: fc.Arbitrary<Rope> = fc.record({
  diameter: num(0.003, 0.014),
  stiffness: fc.record({ tensionTerm: num(0, 110), constantTerm: num(0, 100), diameterTerm: num(0, 2e6) }),
});

const common = {
  name: fc.constant("turn"),
  wrapAngle: num(0, Math.PI),
  diameter: num(0.015, 0.1),
  drag: num(0, 3),
  lines: fc.integer({ min: 1, max: 3 }),
};
const wheelFields = {
  ...common,
  pinRadius: num(0.001, 0.006),
  bearingFriction: num(0, 0.1),
  grooveWidth: num(0.012, 0.03),
};
const needed = ["kind", "name", "wrapAngle", "diameter"] as const;
const neededOnPin = [...needed, "pinRadius", "bearingFriction"] as const;

export const sheaves: fc.Arbitrary<Sheave> = fc.record(
  { kind: fc.constant("sheave" as const), ...wheelFields },
  { requiredKeys: [...neededOnPin] },
);
export const rings: fc.Arbitrary<Ring> = fc.record(
  { kind: fc.constant("ring" as const), ...common, frictionCoefficient: num(0, 0.4) },
  { requiredKeys: [...needed, "frictionCoefficient"] },
);
/** The tread grips more than the bearing: otherwise nobody would fit the ratchet. */
const ratchetFields = { kind: fc.constant("ratchet" as const), ...wheelFields, treadFriction: num(0.2, 0.6) };
export const ratchets: fc.Arbitrary<Ratchet> = fc.record(ratchetFields, {
  requiredKeys: [...neededOnPin, "treadFriction"],
});
export const sensingRatchets: fc.Arbitrary<Ratchet> = fc.record(
  { ...ratchetFields, engageLoad: num(0, 300) },
  { requiredKeys: [...neededOnPin, "treadFriction", "engageLoad"] },
);
export const measured: fc.Arbitrary<Measured> = fc.record(
  {
    kind: fc.constant("measured" as const),
    name: fc.constant("turn"),
    tensionRatio: num(1, 1.4),
    drag: num(0, 3),
    wrapAngle: num(0, Math.PI),
  },
  { requiredKeys: ["kind", "name", "tensionRatio"] },
);
export const powerRings: fc.Arbitrary<Ring> = fc
  .tuple(rings, fc.record({ exponent: num(0.5, 1), referenceTension: num(10, 500) }))
  .map(([plain, loadDependence]) => ({ ...plain, loadDependence }));
export const cleats: fc.Arbitrary<Cleat> = fc.record(
  {
    kind: fc.constant("cleat" as const),
    name: fc.constant("cleat"),
    closed: fc.boolean(),
    holdLoad: num(0, 300),
    drag: num(0, 5),
  },
  { requiredKeys: ["kind", "name", "closed", "holdLoad"] },
);

/** Turns whose law is one straight line in each direction. */
export const straightTurns: fc.Arbitrary<Turn> = fc.oneof(sheaves, rings, ratchets, measured);
/** Turns for the inside of a tackle. */
export const tackleTurns: fc.Arbitrary<Turn> = fc.oneof(straightTurns, sensingRatchets);

const ends = fc.constantFrom("moving" as const, "fixed" as const);

/** Simple purchases: one kind of sheave or many, with leads, parallel or spread. */
export function simpleTackles(turns: fc.Arbitrary<Turn>): fc.Arbitrary<Reeving> {
  const shape = fc.record({
    parts: fc.integer({ min: 1, max: 6 }),
    hauledFrom: ends,
    leadBlocks: fc.integer({ min: 0, max: 2 }),
    spreadAngle: fc.oneof(fc.constant(0), num(0, 1.2)),
  });
  const uniform = fc.tuple(shape, turns).map(([input, turn]) => tackle({ ...input, turn }));
  const mixed = fc
    .tuple(shape, fc.array(turns, { minLength: 6, maxLength: 6 }), turns)
    .map(([input, list, leadTurn]) => {
      const sheaves = input.parts - (input.hauledFrom === "moving" ? 1 : 0);
      return tackle({ ...input, turn: list.slice(0, sheaves), leadTurn });
    });
  return fc.oneof(uniform, mixed);
}

/** Purchases of several ropes. */
export function ropeSystems(turns: fc.Arbitrary<Turn>): fc.Arbitrary<Reeving> {
  const count = fc.integer({ min: 1, max: 4 });
  return fc.oneof(
    fc.tuple(count, turns).map(([n, turn]) => firstSystem({ ropes: n, turn })),
    fc.tuple(count, turns).map(([n, turn]) => thirdSystem({ ropes: n, turn })),
    fc
      .tuple(fc.constantFrom("three singles" as const, "double and singles" as const), turns)
      .map(([form, turn]) => doubleBurton({ form, turn })),
  );
}

/** Ropes led at random between two anchors and two moving blocks; many are no purchase and are refused. */
export function wildReevings(turns: fc.Arbitrary<Turn>): fc.Arbitrary<Reeving> {
  const place = fc.constantFrom("anchor", "side anchor", "load block", "runner");
  const led = (most: number) => fc.array(fc.record({ body: place, turn: turns }), { minLength: 1, maxLength: most });
  return fc
    .record({
      start: place,
      fall: led(4),
      second: place,
      runner: led(2),
      end: place,
      at: num(0.2, 0.8),
      hand: num(-1, 2),
    })
    .map(({ start, fall, second, runner, end, at, hand }) => ({
      bodies: {
        anchor: { at: 0, moves: false },
        "side anchor": { at: [0, 0.3] as const, moves: false },
        "load block": { at: 1, moves: true },
        runner: { at, moves: true },
      },
      ropes: [
        { name: "fall", start, turns: fall, end: "hand" },
        { name: "pendant", start: second, turns: runner, end },
      ],
      load: { body: "load block" },
      hand: [hand, 0.1] as const,
    }));
}

/** Lines of the given stations, each with a name of its own. */
export function linesOf(stations: fc.Arbitrary<Station>, most = 4): fc.Arbitrary<Line> {
  return fc.tuple(ropes, fc.array(stations, { maxLength: most })).map(([rope, list]) => ({
    rope,
    stations: list.map((station, index) => ({ ...station, name: `${station.kind} ${index + 1}` })),
  }));
}

/** A reeving as a station. */
export function asStation(reevings: fc.Arbitrary<Reeving>): fc.Arbitrary<Station> {
  return reevings.map((reeving) => ({ kind: "tackle" as const, name: "tackle", reeving }));
}

/** Least tension of all rope parts inside the tackles of a state [N]. */
export function slackest(parts: readonly (readonly number[])[]): number {
  return Math.min(Number.POSITIVE_INFINITY, ...parts.flat());
}
