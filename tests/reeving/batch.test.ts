import fc from "fast-check";
import { describe, it } from "vitest";
import type { Station } from "../../src/reeving/reeving.js";
import { agree, cases } from "./batch-cases.js";
import {
  asStation,
  cleats,
  lineOf,
  linesOf,
  measured,
  powerRings,
  ratchets,
  readyOrNot,
  ropeSystems,
  seed,
  sensingRatchets,
  simpleTackles,
  stiff,
  straightTurns,
  tackleTurns,
  wildReevings,
} from "./builders.js";

const some = fc.array(cases, { minLength: 1, maxLength: 6 });
const tackles = asStation(fc.oneof(simpleTackles(tackleTurns), ropeSystems(tackleTurns)));
const anything: fc.Arbitrary<Station> = fc.oneof(straightTurns, powerRings, sensingRatchets, cleats, tackles);

const kinds: readonly (readonly [string, fc.Arbitrary<Station>])[] = [
  ["sheaves, rings, ratchets and measured turns", straightTurns],
  ["always-on ratchets", ratchets],
  ["load-sensing ratchets", sensingRatchets],
  ["measured turns", measured],
  ["rings whose friction falls with load", powerRings],
  ["cleats, open and closed", cleats],
  ["simple tackles", asStation(simpleTackles(straightTurns))],
  ["simple tackles with load-sensing ratchets", asStation(simpleTackles(tackleTurns))],
  ["systems of several ropes", asStation(ropeSystems(tackleTurns))],
  ["stations of all kinds", anything],
];

describe("the batch solver gives what the single solver gives", () => {
  it.each(kinds)("%s", (_what, stations) => {
    fc.assert(
      fc.property(linesOf(stations, 3), some, (line, list) => agree(line, list)),
      { ...seed, numRuns: 250 },
    );
  });

  it("long lines of one kind of turn, and of equal neighbours", () => {
    fc.assert(
      fc.property(
        straightTurns,
        linesOf(fc.constant<Station>({ kind: "measured", name: "x", tensionRatio: 1.1 }), 8),
        some,
        (turn, line, list) => {
          agree(line, list);
          const alike = Array.from({ length: 4 }, (_, index) => ({ ...turn, name: `turn ${index}` }));
          agree({ rope: line.rope, stations: alike }, list);
        },
      ),
      seed,
    );
  });

  it("a tackle before turns of its own law, which are passed in one go", () => {
    fc.assert(
      fc.property(simpleTackles(straightTurns), some, (reeving, list) => {
        const [rope] = reeving.ropes;
        const stations: Station[] = [
          { kind: "tackle", name: "tackle", reeving },
          ...rope!.turns.slice(0, 2).map(({ turn }, index) => ({ ...turn, name: `lead ${index}` })),
        ];
        agree({ rope: stiff, stations }, list);
      }),
      seed,
    );
  });

  it("ropes led anyhow, also over two fixed blocks one after the other", () => {
    fc.assert(
      fc.property(wildReevings(straightTurns), some, (reeving, list) => {
        if (readyOrNot(reeving, stiff, 1000) === undefined) return;
        const tame = list.map((one) => ({
          ...one,
          factors: { bearing: 1, bending: 1, sliding: 1, tread: 1, drag: 0.5 },
        }));
        agree(lineOf(reeving, stiff), tame);
      }),
      { ...seed, numRuns: 2000 },
    );
  });

  it("a purchase whose rope passes a lead between two parts on the moving block", () => {
    fc.assert(
      fc.property(straightTurns, some, (turn, list) => {
        const turns = ["fixed", "lead", "moving"].map((body) => ({ body, turn }));
        const reeving = {
          bodies: {
            fixed: { at: 0, moves: false },
            lead: { at: -0.5, moves: false },
            moving: { at: 1, moves: true },
          },
          ropes: [{ name: "fall", start: "moving", turns, end: "hand" }],
          load: { body: "moving" },
          hand: -1,
        };
        agree(lineOf(reeving, stiff), list);
      }),
      seed,
    );
  });
});
