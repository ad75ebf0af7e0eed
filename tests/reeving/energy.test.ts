import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { energyBalance } from "../../src/reeving/energy.js";
import { type LineState, prepareLine } from "../../src/reeving/line.js";
import type { Station } from "../../src/reeving/reeving.js";
import {
  asStation,
  cleats,
  linesOf,
  measured,
  num,
  powerRings,
  ratchets,
  readyOrNot,
  ropeSystems,
  ropes,
  seed,
  sensingRatchets,
  simpleTackles,
  slackest,
  stiff,
  straightTurns,
  tackleTurns,
  wildReevings,
} from "./builders.js";

const tackles = asStation(fc.oneof(simpleTackles(tackleTurns), ropeSystems(tackleTurns)));
const anything: fc.Arbitrary<Station> = fc.oneof(
  straightTurns,
  powerRings,
  sensingRatchets,
  cleats,
  ratchets,
  measured,
  tackles,
);

/** All ropes are taut: a rope that goes slack moves otherwise than the geometry says. */
const taut = (state: LineState) => state.moves && slackest(state.stations.map(({ parts }) => parts)) > 0;

function check(state: LineState, velocityRatio: number): void {
  const { workIn, workOut, lost, imbalance } = energyBalance({ state, velocityRatio });
  expect(Math.abs(imbalance)).toBeLessThanOrEqual(1e-9 * Math.max(workIn, 1e-6));
  expect(workOut).toBeLessThanOrEqual(workIn * (1 + 1e-9));
  expect(lost).toBeGreaterThanOrEqual(-1e-9 * workIn);
}

describe("energy", () => {
  it("adds up for every line and either direction: work in = work out + losses", () => {
    let counted = 0;
    fc.assert(
      fc.property(linesOf(anything, 3), num(1, 3000), (line, load) => {
        const ready = prepareLine(line);
        for (const direction of ["hauling", "easing"] as const) {
          const state = ready.state(load, direction);
          if (!taut(state)) continue;
          counted += 1;
          check(state, ready.velocityRatio);
        }
      }),
      { ...seed, numRuns: 600 },
    );
    expect(counted).toBeGreaterThan(700);
  });

  it("adds up for one tackle of any kind with drags and ratchets", () => {
    fc.assert(
      fc.property(ropes, tackles, num(500, 5000), (rope, station, load) => {
        const ready = prepareLine({ rope, stations: [station] });
        for (const direction of ["hauling", "easing"] as const) {
          const state = ready.state(load, direction);
          if (taut(state)) check(state, ready.velocityRatio);
        }
      }),
      { ...seed, numRuns: 300 },
    );
  });

  it("adds up where ropes run towards their fastened end", () => {
    let backwards = 0;
    fc.assert(
      fc.property(wildReevings(tackleTurns), (reeving) => {
        const mechanism = readyOrNot(reeving, stiff, 2000);
        if (mechanism === undefined) return;
        if (mechanism.turns.some(({ passing }) => passing < 0)) backwards += 1;
        const ready = prepareLine({ rope: stiff, stations: [{ kind: "tackle", name: "tackle", reeving }] });
        for (const direction of ["hauling", "easing"] as const) {
          const state = ready.state(2000, direction);
          if (taut(state)) check(state, ready.velocityRatio);
        }
      }),
      { ...seed, numRuns: 2000 },
    );
    expect(backwards).toBeGreaterThan(5);
  });

  it("loses at no station less than nothing", () => {
    fc.assert(
      fc.property(linesOf(anything, 3), num(1, 3000), (line, load) => {
        const ready = prepareLine(line);
        for (const direction of ["hauling", "easing"] as const) {
          const state = ready.state(load, direction);
          if (taut(state)) for (const { loss } of state.stations) expect(loss).toBeGreaterThanOrEqual(-1e-9);
        }
      }),
      seed,
    );
  });

  it("is all lost or none of it moves when the line does not run out", () => {
    const line = prepareLine({
      rope: stiff,
      stations: [{ kind: "cleat", name: "cleat", closed: true, holdLoad: 100 }],
    });
    const state = line.state(50, "easing");
    expect(energyBalance({ state, velocityRatio: 1 })).toEqual({ workIn: 0, workOut: 0, lost: 0, imbalance: 0 });
  });
});
