import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Refusal } from "../../src/quantity/errors.js";
import { energyBalance } from "../../src/reeving/energy.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import type { Station } from "../../src/reeving/reeving.js";
import {
  asStation,
  cleats,
  linesOf,
  measured,
  num,
  powerRings,
  ratchets,
  ropeSystems,
  seed,
  sensingRatchets,
  simpleTackles,
  slackest,
  straightTurns,
  tackleTurns,
} from "./builders.js";

const runs = 100_000;

const tackles = asStation(fc.oneof(simpleTackles(tackleTurns), ropeSystems(tackleTurns)));
const stations: fc.Arbitrary<Station> = fc.oneof(
  { arbitrary: straightTurns, weight: 6 },
  { arbitrary: fc.oneof(powerRings, sensingRatchets, cleats, ratchets, measured), weight: 5 },
  { arbitrary: tackles, weight: 1 },
);
const lines = linesOf(stations, 3);

/** What a mistake in a file or a program can put in the place of a number, a text or a part. */
const rubbish = fc.constantFrom<unknown>(
  Number.NaN,
  Number.POSITIVE_INFINITY,
  -1,
  "6 mm",
  null,
  undefined,
  {},
  [],
  true,
);

/** Lines with at least one station. */
const broken = linesOf(stations, 3).filter(({ stations: list }) => list.length > 0);

/** The line with one field of one object in it replaced; nothing where the field can hold what would stand there. */
function spoil(line: Line, place: number, what: unknown): Line | undefined {
  const copy = structuredClone(line);
  const spots: [Record<string, unknown>, string][] = [];
  const walk = (value: unknown) => {
    if (typeof value !== "object" || value === null) return;
    for (const [key, inner] of Object.entries(value)) {
      if (fields.includes(key)) spots.push([value as Record<string, unknown>, key]);
      walk(inner);
    }
  };
  walk(copy);
  const spot = spots[place % Math.max(1, spots.length)];
  if (spot === undefined) return undefined;
  const [owner, key] = spot;
  const optional = key === "wrapAngle" && owner.kind === "measured";
  if (optional && (what === null || what === undefined)) return undefined;
  if (key === "name" && typeof what === "string") return undefined;
  if (key === "stations" && Array.isArray(what)) return undefined;
  owner[key] = what;
  return copy;
}

/** Fields that cannot hold what `rubbish` puts there. */
const fields = [
  "wrapAngle",
  "diameter",
  "pinRadius",
  "bearingFriction",
  "frictionCoefficient",
  "treadFriction",
  "tensionRatio",
  "holdLoad",
  "name",
  "kind",
  "tensionTerm",
  "rope",
  "stations",
  "stiffness",
];

describe("a hundred thousand lines", () => {
  it("that can be built: no NaN, no negative tension, easing below hauling, energy balanced to 1e-9", () => {
    let balanced = 0;
    let flawed = 0;
    for (const [line, load] of fc.sample(fc.tuple(lines, num(0, 3000)), { ...seed, numRuns: runs })) {
      const ready = prepareLine(line);
      const { hauling, easing, deadBand, runOutLoad, efficiency } = ready.handForces(load);
      const numbers = [hauling, easing, deadBand, runOutLoad, efficiency];
      if (!numbers.every((number) => number >= 0 && Number.isFinite(number))) flawed += 1;
      for (const direction of ["hauling", "easing"] as const) {
        const state = ready.state(load, direction);
        const tensions = state.stations.flatMap(({ loadTension, handTension, parts }) => [
          loadTension,
          handTension,
          ...parts,
        ]);
        if (!tensions.every((tension) => tension >= 0 && Number.isFinite(tension))) flawed += 1;
        if (!state.moves || slackest(state.stations.map(({ parts }) => parts)) <= 0) continue;
        balanced += 1;
        const { workIn, imbalance } = energyBalance({ state, velocityRatio: ready.velocityRatio });
        if (!(Math.abs(imbalance) <= 1e-9 * Math.max(workIn, 1e-6))) flawed += 1;
      }
    }
    expect(flawed).toBe(0);
    expect(balanced).toBeGreaterThan(runs);
  });

  it("with one thing wrong: refused, always by one of our own errors", () => {
    let refused = 0;
    const others: unknown[] = [];
    for (const [line, place, what] of fc.sample(fc.tuple(broken, fc.nat(), rubbish), {
      ...seed,
      numRuns: 1.06 * runs,
    })) {
      const spoilt = spoil(line, place, what);
      if (spoilt === undefined) continue;
      try {
        prepareLine(spoilt).handForces(500);
        others.push(JSON.stringify(spoilt));
      } catch (error) {
        if (error instanceof Refusal) refused += 1;
        else others.push(error);
      }
    }
    expect(others.slice(0, 3)).toEqual([]);
    expect(refused).toBeGreaterThan(runs);
  });
});
