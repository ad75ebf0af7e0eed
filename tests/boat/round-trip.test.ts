import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseDocument, visit } from "yaml";
import { boatOf, rewriteBoat } from "../../src/boat/read.js";
import { demoNames, demoPlace, demoText, here, smallBoat } from "./small-boat.js";

/** Every comment of a text, in order, and every value with its key. */
function contents(text: string): { comments: string[]; values: [string, unknown][] } {
  const comments = [...text.matchAll(/(?:^|\s)#(.*)$/gmu)].map((match) => match[1]!.trim());
  const values: [string, unknown][] = [];
  visit(parseDocument(text), {
    Scalar: (_, node, above) => {
      values.push([above.length.toString(), node.value]);
    },
  });
  return { comments, values };
}

const files: readonly (readonly [string, string, { file: string; beside?: (name: string) => string }])[] = [
  ["the small boat", smallBoat, here],
  ...demoNames.map((name) => [name, demoText(`${name}.yaml`), demoPlace(name)] as const),
];

describe.each(files)("%s", (_, text, place) => {
  it("comes back from a round trip with every value and comment", () => {
    const written = rewriteBoat(text, [], place);
    expect(contents(written)).toEqual(contents(text));
    expect(contents(text).comments.length).toBeGreaterThan(1);
    expect(boatOf(written, place)).toEqual(boatOf(text, place));
  });

  it("settles: a second round trip changes nothing more", () => {
    const once = rewriteBoat(text, [], place);
    expect(rewriteBoat(once, [], place)).toBe(once);
  });

  it("keeps everything else when one value changes", () => {
    const before = contents(text);
    const boat = boatOf(text, place);
    const names = Object.keys(boat.lines);
    fc.assert(
      fc.property(fc.constantFrom(...names), fc.integer({ min: 1, max: 60 }), (name, extra) => {
        const last = boat.lines[name]!.rope.length - 1;
        const path = ["lines", name, "rope", last, "length"];
        const value = `${boat.lines[name]!.rope[last]!.length + extra} m`;
        const written = rewriteBoat(text, [{ path, value }], place);
        const after = contents(written);
        expect(after.comments).toEqual(before.comments);
        const changed = after.values.filter((one, index) => one[1] !== before.values[index]![1]);
        expect(changed.map((one) => one[1])).toEqual([value]);
        const line = boat.lines[name]!;
        const rope = line.rope.map((piece, at) => (at === last ? { ...piece, length: piece.length + extra } : piece));
        const again = boatOf(written, place);
        expect(again.lines[name]!.rope[last]!.length).toBeCloseTo(rope[last]!.length, 9);
        expect({ ...again, lines: {} }).toEqual({ ...boat, lines: {} });
      }),
      { seed: 7, numRuns: 8 },
    );
  });
});
