import { describe, expect, it } from "vitest";
import { ReevingError, ValueError } from "../../src/quantity/errors.js";
import { prepareLine } from "../../src/reeving/line.js";
import { mechanismOf } from "../../src/reeving/mechanism.js";
import type { Reeving, RopeRun } from "../../src/reeving/reeving.js";
import { tackle } from "../../src/reeving/tackle.js";
import { limp, lineOf, ring, wheel } from "./builders.js";

const turn = wheel(1.1);
const at = (...names: string[]) => names.map((body) => ({ body, turn }));
const good = tackle({ parts: 3, hauledFrom: "fixed", turn });
const fall = (path: Partial<RopeRun>): Reeving => ({ ...good, ropes: [{ ...good.ropes[0]!, ...path }] });
const anchor = { at: 0, moves: false };
const load = { at: 1, moves: true };
const runner = { at: 0.5, moves: true };

const refused: readonly (readonly [string, Reeving, RegExp])[] = [
  [
    "no moving block",
    { ...good, bodies: { ...good.bodies, moving: anchor, fixed: load }, ropes: good.ropes, load: { body: "moving" } },
    /load: got hung on "moving"; allowed: a moving block: fixed/u,
  ],
  [
    "no block that moves at all",
    { ...good, bodies: { moving: anchor, fixed: anchor } },
    /tackle: got no moving block/u,
  ],
  ["a load on an unknown block", { ...good, load: { body: "boom" } }, /load: got hung on "boom"/u],
  [
    "a station that no rope reaches",
    { ...good, bodies: { ...good.bodies, spare: { at: 2, moves: false } } },
    /station "spare": got no rope that reaches it/u,
  ],
  ["the same block twice in a row", fall({ turns: at("fixed", "fixed", "moving") }), /"fixed" twice in a row: a loop/u],
  ["a rope that ends on the block that it just passed", fall({ turns: at("fixed"), end: "fixed" }), /twice in a row/u],
  ["an unknown block", fall({ turns: at("fixed", "mast", "fixed") }), /rope "fall": got the unknown place "mast"/u],
  ["an unknown start", fall({ start: "mast" }), /unknown place "mast"; allowed: moving, fixed/u],
  ["a hand in the middle of a rope", fall({ turns: at("hand", "moving") }), /unknown place "hand"/u],
  ["no hand", fall({ end: "moving" }), /hauling part: got 0 rope ends in the hand; allowed: exactly one/u],
  [
    "two hands",
    { ...good, ropes: [good.ropes[0]!, { ...good.ropes[0]!, name: "second" }] },
    /hauling part: got 2 rope ends in the hand/u,
  ],
  [
    "ropes that never reach the hand",
    {
      bodies: { anchor, load, "far anchor": { at: 5, moves: false }, runner: { at: 6, moves: true } },
      ropes: [
        { name: "fall", start: "anchor", turns: at("load"), end: "hand" },
        { name: "stray", start: "far anchor", turns: at("runner"), end: "far anchor" },
      ],
      load: { body: "load" },
      hand: 0,
    },
    /rope "stray": got a loop through far anchor, runner that never reaches the hand/u,
  ],
  [
    "more ropes than moving blocks",
    { ...good, ropes: [...good.ropes, { name: "stay", start: "fixed", turns: [], end: "moving" }] },
    /2 ropes for 1 moving blocks: ropes hold the blocks fast/u,
  ],
  [
    "more moving blocks than ropes",
    {
      bodies: { anchor, load, runner },
      ropes: [{ name: "fall", start: "anchor", turns: at("runner", "load"), end: "hand" }],
      load: { body: "load" },
      hand: 0,
    },
    /1 ropes for 2 moving blocks: blocks hang free/u,
  ],
  [
    "blocks in the same place",
    { ...good, bodies: { ...good.bodies, moving: { at: 0, moves: true } } },
    /"moving" and "fixed" in the same place|"fixed" and "moving" in the same place/u,
  ],
  ["a hand in the last block", { ...good, hand: 0 }, /"fixed" and "hand" in the same place/u],
  [
    "a block that its rope does not hold",
    {
      bodies: { anchor, "far anchor": { at: 2, moves: false }, load },
      ropes: [{ name: "fall", start: "anchor", turns: at("load", "far anchor"), end: "hand" }],
      load: { body: "load" },
      hand: 3,
    },
    /ropes that leave the motion of a block open/u,
  ],
  [
    "a load that moves away from the haul",
    { ...good, load: { body: "moving", direction: [-1, 0] } },
    /load: got a load that moves away from the haul/u,
  ],
  [
    "a load across the motion",
    { ...good, load: { body: "moving", direction: [0, 1] } },
    /load: got a load that does not move/u,
  ],
  [
    "a part that would have to push",
    {
      bodies: { anchor, "far anchor": { at: 2, moves: false }, load, runner },
      ropes: [
        { name: "fall", start: "runner", turns: at("far anchor", "anchor", "load"), end: "hand" },
        { name: "strut", start: "runner", turns: [], end: "load" },
      ],
      load: { body: "load" },
      hand: 0,
    },
    /rope "strut" between runner and load: got a part that would have to push; allowed: parts that pull/u,
  ],
  ["a load without direction", { ...good, load: { body: "moving", direction: [0, 0] } }, /direction: got \(0, 0\)/u],
  [
    "a place that is no number",
    { ...good, bodies: { ...good.bodies, moving: { at: Number.NaN, moves: true } } },
    /direction: got \(NaN, 0\); allowed: two finite numbers/u,
  ],
  [
    "an endless place",
    { ...good, bodies: { ...good.bodies, moving: { at: [1, Number.POSITIVE_INFINITY], moves: true } } },
    /two finite numbers/u,
  ],
  [
    "an axis without direction",
    { ...good, bodies: { ...good.bodies, moving: { ...load, axis: [0, 0] } } },
    /direction/u,
  ],
  [
    "friction that falls with load inside a tackle",
    tackle({
      parts: 2,
      hauledFrom: "moving",
      turn: { ...ring, loadDependence: { exponent: 0.75, referenceTension: 100 } },
    }),
    /ring "ring": got friction that falls with load inside a tackle/u,
  ],
];

describe("a reeving that is put together wrong", () => {
  it.each(refused)("is refused: %s", (_what, reeving, message) => {
    const ready = () => {
      mechanismOf(reeving, limp);
      prepareLine(lineOf(reeving)).handForces(100);
    };
    expect(ready).toThrow(ReevingError);
    expect(ready).toThrow(message);
  });

  it("is told from one that is right: the plain purchase that the cases vary", () => {
    expect(mechanismOf(good, limp).velocityRatio).toBeCloseTo(3, 12);
  });

  it.each([0, 13, 2.5, -1, Number.NaN, Number.POSITIVE_INFINITY])("cannot have %d parts", (parts) => {
    expect(() => tackle({ parts, hauledFrom: "moving", turn })).toThrow(ReevingError);
    expect(() => tackle({ parts: 2, hauledFrom: "moving", turn, leadBlocks: parts === 0 ? -1 : parts })).toThrow(
      ReevingError,
    );
  });

  it("cannot have a list of sheaves of another length", () => {
    const wrong = { parts: 4, hauledFrom: "moving", turn: [turn, turn] } as const;
    expect(() => tackle(wrong)).toThrow(/sheaves of the tackle: got 2 given; allowed: one for all, or 3/u);
  });

  it("cannot hold a sheave that cannot exist", () => {
    expect(() => mechanismOf(tackle({ parts: 2, hauledFrom: "moving", turn: wheel(0.5) }), limp)).toThrow(ValueError);
  });
});
