import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { prepareLine } from "../../src/reeving/line.js";
import type { Station } from "../../src/reeving/reeving.js";
import {
  asStation,
  cleats,
  linesOf,
  num,
  powerRings,
  ratchets,
  ropeSystems,
  seed,
  sensingRatchets,
  simpleTackles,
  straightTurns,
} from "./builders.js";

const tackles = asStation(fc.oneof(simpleTackles(straightTurns), ropeSystems(straightTurns)));
/** Everything whose easing force rises with the load: no load-sensing ratchet. */
const rising: fc.Arbitrary<Station> = fc.oneof(straightTurns, powerRings, cleats, ratchets, tackles);
const anything: fc.Arbitrary<Station> = fc.oneof(rising, sensingRatchets);

describe("what the hand feels", () => {
  it("is never less than the ideal while hauling, never more while easing", () => {
    fc.assert(
      fc.property(linesOf(anything), num(0, 2000), (line, load) => {
        const { hauling, easing, deadBand, efficiency, velocityRatio } = prepareLine(line).handForces(load);
        const ideal = load / velocityRatio;
        expect(hauling).toBeGreaterThanOrEqual(ideal * (1 - 1e-9));
        expect(easing).toBeLessThanOrEqual(ideal * (1 + 1e-9));
        expect(easing).toBeGreaterThanOrEqual(0);
        expect(deadBand).toBeGreaterThanOrEqual(-1e-9 * hauling);
        expect(deadBand).toBe(hauling - easing);
        expect(efficiency).toBeLessThanOrEqual(1 + 1e-9);
      }),
      { ...seed, numRuns: 400 },
    );
  });

  it("rises with the load", () => {
    fc.assert(
      fc.property(linesOf(rising), num(0, 1500), num(1, 500), (line, load, more) => {
        const ready = prepareLine(line);
        const [low, high] = [ready.handForces(load), ready.handForces(load + more)];
        expect(high.hauling).toBeGreaterThan(low.hauling);
        expect(high.easing).toBeGreaterThanOrEqual(low.easing);
      }),
      seed,
    );
  });

  it("is the same asked at once or station by station", () => {
    fc.assert(
      fc.property(linesOf(anything), num(0, 2000), (line, load) => {
        const ready = prepareLine(line);
        const forces = ready.handForces(load);
        for (const direction of ["hauling", "easing"] as const) {
          const { stations, handForce } = ready.state(load, direction);
          expect(handForce).toBe(forces[direction]);
          let tension = load;
          for (const station of stations) {
            expect(station.loadTension).toBe(tension);
            tension = station.handTension;
          }
          expect(tension).toBe(handForce);
        }
      }),
      seed,
    );
  });

  it("is the load itself on a line without stations", () => {
    const line = prepareLine({
      rope: { diameter: 0.006, stiffness: { tensionTerm: 60, constantTerm: 40, diameterTerm: 0 } },
      stations: [],
    });
    expect(line.handForces(120)).toMatchObject({
      hauling: 120,
      easing: 120,
      deadBand: 0,
      runOutLoad: 0,
      efficiency: 1,
    });
  });

  it("is the drag alone without a load, and the efficiency is then nothing", () => {
    fc.assert(
      fc.property(linesOf(rising, 3), (line) => {
        const { hauling, easing, efficiency } = prepareLine(line).handForces(0);
        expect(easing).toBe(0);
        expect(hauling).toBeGreaterThanOrEqual(0);
        expect(efficiency).toBe(0);
      }),
      seed,
    );
  });
});

describe("the run-out load", () => {
  it("is where the hand force of easing begins: nothing at it, no movement below, more above", () => {
    fc.assert(
      fc.property(linesOf(rising), (line) => {
        const ready = prepareLine(line);
        const load = ready.runOutLoad();
        fc.pre(load < 5e5);
        const scale = Math.max(load, 1);
        expect(ready.handForces(Math.max(0, load)).easing).toBeLessThan(1e-6 * scale);
        const above = ready.state(Math.max(0, load) + 1e-6 * scale, "easing");
        expect(above.moves).toBe(true);
        expect(above.handForce).toBeGreaterThan(0);
        if (load > 1e-3)
          expect(ready.state(load - 1e-6 * scale, "easing")).toMatchObject({ moves: false, handForce: 0 });
      }),
      { ...seed, numRuns: 300 },
    );
  });

  it("is reported with the hand forces and does not depend on the load", () => {
    fc.assert(
      fc.property(linesOf(rising), num(0, 500), (line, load) => {
        const ready = prepareLine(line);
        expect(ready.handForces(load).runOutLoad).toBe(ready.runOutLoad());
      }),
      seed,
    );
  });

  it("of a closed cleat is its hold load", () => {
    const stations: Station[] = [{ kind: "cleat", name: "cleat", closed: true, holdLoad: 250 }];
    const ready = prepareLine({
      rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } },
      stations,
    });
    expect(ready.runOutLoad()).toBe(250);
  });
});
