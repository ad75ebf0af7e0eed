import { describe, expect, it } from "vitest";
import type { BoatLine, TackleStation } from "../../src/boat/boat.js";
import { budgetOf } from "../../src/boat/budget.js";
import { otherParts, withParts } from "../../src/boat/parts.js";
import { lineOf, withLine } from "../../src/boat/ready.js";
import { small } from "./small-boat.js";

const boat = small();
const line = boat.lines.mainsheet!;
const station = line.path[0] as TackleStation;
const known: BoatLine = { ...line, path: line.path.with(0, { ...station, letOut: 1.5 }) };

describe("another number of parts", () => {
  it("takes or frees the rope of the parts, all let out, by estimate where that is not known", () => {
    expect(withParts(known, 0, 5).rope[0]!.length).toBeCloseTo(9 + 2 * 1.5, 9);
    expect(withParts(known, 0, 2).rope[0]!.length).toBeCloseTo(9 - 1.5, 9);
    expect(withParts(line, 0, 4).rope[0]!.length).toBeCloseTo(9 + 9 / 4, 9);
    expect(withParts(line, 1, 4)).toBe(line);
  });

  it("counts in blocks, mass, cost and line to haul", () => {
    const ready = (parts: number) => lineOf(withLine(boat, "mainsheet", withParts(known, 0, parts)), "mainsheet");
    const [three, five] = [ready(3), ready(5)];
    const [before, after] = [budgetOf(boat, three), budgetOf(boat, five)];
    expect(after.hardware - before.hardware).toBeCloseTo(2 * 0.087, 12);
    expect(after.dry.value - before.dry.value).toBeCloseTo(2 * 0.087 + 3 * 0.034, 9);
    expect(after.cost - before.cost).toBeCloseTo(2 * 44 + 3 * 3.4, 9);
    expect([three, five].map(({ middle }) => middle.velocityRatio)).toEqual([3, 5]);
  });

  it("is one or two away from now, two at least, unless the file says which there is room for", () => {
    expect(otherParts(station)).toEqual([2, 4, 5]);
    expect(otherParts({ ...station, parts: 12 })).toEqual([10, 11]);
    expect(otherParts({ ...station, otherParts: [1, 3, 6] })).toEqual([1, 6]);
    expect(otherParts({ ...station, otherParts: [] })).toEqual([]);
  });

  it("needs rope enough for what it takes, let out", () => {
    const text = ["hauledFrom: fixed, block: block 63 }", "hauledFrom: fixed, block: block 63, letOut: 4 m }"] as const;
    expect(() => small(text)).toThrow(/9 m of rope for a way of 12 m/u);
  });
});
