import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blockLoad } from "../../src/reeving/block-load.js";
import { prepareLine } from "../../src/reeving/line.js";
import { tackle } from "../../src/reeving/tackle.js";
import { lineOf, num, ropeSystems, seed, sheave, stiff, straightTurns, wheel } from "./builders.js";

const directions = ["hauling", "easing"] as const;

describe("the load on one block", () => {
  it("is twice the tension at half a turn, √2 times at a corner, nothing when the line goes straight on", () => {
    const at = (wrapAngle: number) => blockLoad({ loadTension: 100, handTension: 100, wrapAngle });
    expect(at(Math.PI)).toBeCloseTo(200, 12);
    expect(at(Math.PI / 2)).toBeCloseTo(100 * Math.SQRT2, 12);
    expect(at(0)).toBe(0);
  });

  it("is the length of the sum of two vectors", () => {
    fc.assert(
      fc.property(num(0, 2000), num(0, 2000), num(0, Math.PI), (loadTension, handTension, wrapAngle) => {
        const x = handTension * Math.cos(wrapAngle) - loadTension;
        const y = handTension * Math.sin(wrapAngle);
        const load = blockLoad({ loadTension, handTension, wrapAngle });
        expect(load).toBeCloseTo(Math.hypot(x, y), 7);
        expect(load).toBeLessThanOrEqual(loadTension + handTension + 1e-9);
        expect(load).toBeGreaterThanOrEqual(Math.abs(loadTension - handTension) - 1e-9);
      }),
      seed,
    );
  });

  it("of a sheave in a line is made of the tensions on its two sides", () => {
    const corner = { ...sheave, wrapAngle: 1.2 };
    const { stations } = prepareLine({ rope: stiff, stations: [corner] }).state(300, "hauling");
    const [{ loadTension, handTension, blocks }] = stations as [(typeof stations)[0]];
    expect(blocks[0]!.load).toBeCloseTo(blockLoad({ loadTension, handTension, wrapAngle: 1.2 }), 12);
  });
});

describe("the loads on the blocks of a tackle", () => {
  const shapes = fc.record({
    parts: fc.integer({ min: 1, max: 6 }),
    hauledFrom: fc.constantFrom("moving" as const, "fixed" as const),
    leadBlocks: fc.integer({ min: 0, max: 3 }),
    turn: straightTurns,
  });

  it("balance load, hand and anchors: parallel parts, either direction", () => {
    fc.assert(
      fc.property(shapes, num(500, 3000), (shape, load) => {
        for (const direction of directions) {
          const { stations, handForce, moves } = prepareLine(lineOf(tackle(shape), stiff)).state(load, direction);
          const [{ blocks, parts }] = stations as [(typeof stations)[0]];
          fc.pre(moves && Math.min(...parts) > 0);
          const of = new Map(blocks.map(({ name, load: force }) => [name, force]));
          expect(of.get("tackle: moving")! / load).toBeCloseTo(1, 9);
          // Ropes pull the fixed block towards the load; leads stand at x = 1 and 0 in turn, the hand pulls the other way.
          let anchors = of.get("tackle: fixed") ?? 0;
          const firstLead = shape.hauledFrom === "fixed" ? -1 : 1;
          for (let lead = 1; lead <= shape.leadBlocks; lead++)
            anchors += firstLead * (-1) ** (lead - 1) * of.get(`tackle: lead ${lead}`)!;
          const hand = (shape.hauledFrom === "fixed" ? 1 : -1) * (-1) ** shape.leadBlocks * handForce;
          expect(Math.abs(load + hand - anchors)).toBeLessThan(1e-9 * (load + handForce));
        }
      }),
      { ...seed, numRuns: 200 },
    );
  });

  it("are W + P on the fixed block hauled from there, W − P hauled from the moving one", () => {
    for (const [hauledFrom, sign] of [
      ["fixed", 1],
      ["moving", -1],
    ] as const) {
      const line = prepareLine(lineOf(tackle({ parts: 4, hauledFrom, turn: wheel(1.1) })));
      const { stations, handForce } = line.state(1000, "hauling");
      const fixed = stations[0]!.blocks.find(({ name }) => name === "tackle: fixed")!;
      expect(fixed.load).toBeCloseTo(1000 + sign * handForce, 9);
    }
  });

  it("leave every block that floats in balance, and put the whole load on the load block", () => {
    fc.assert(
      fc.property(ropeSystems(straightTurns), num(1000, 3000), (reeving, load) => {
        for (const direction of directions) {
          const { stations, moves } = prepareLine(lineOf(reeving, stiff)).state(load, direction);
          const [{ blocks, parts }] = stations as [(typeof stations)[0]];
          fc.pre(moves && Math.min(...parts) > 0);
          for (const { name, load: force } of blocks) {
            const body = name.replace("tackle: ", "");
            if (!reeving.bodies[body]!.moves) continue;
            const expected = body === reeving.load.body ? load : 0;
            expect(Math.abs(force - expected)).toBeLessThan(1e-8 * load);
          }
        }
      }),
      seed,
    );
  });
});
