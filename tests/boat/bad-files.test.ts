import { describe, expect, it } from "vitest";
import { boatOf, rewriteBoat } from "../../src/boat/read.js";
import { BoatFileError, type Trouble } from "../../src/boat/trouble.js";
import { Refusal } from "../../src/quantity/errors.js";
import { here, smallBoat, smallBoatWith } from "./small-boat.js";

function troubles(text: string): readonly Trouble[] {
  try {
    boatOf(text, here);
  } catch (error) {
    if (error instanceof BoatFileError) return error.troubles;
    throw error;
  }
  return [];
}

/** Line and column of the first place of a word, from 1. */
function placeOf(text: string, word: string): { line: number; column: number } {
  const before = text.slice(0, text.indexOf(word)).split("\n");
  return { line: before.length, column: before.at(-1)!.length + 1 };
}

describe("a boat file that is wrong", () => {
  it("is not the small boat", () => {
    expect(troubles(smallBoat)).toEqual([]);
  });

  it.each([
    [
      "an unknown key",
      "heldBy: hand",
      "heldby: hand",
      "heldby",
      'unknown key "heldby"',
      '"heldBy"',
      'Did you mean "heldBy"?',
    ],
    [
      "an unknown key of the top",
      "limits:",
      "limmits:",
      "limmits:",
      'unknown key "limmits"',
      '"limits"',
      'Did you mean "limits"?',
    ],
    ["a plain number", "designWind: 12 kn", "designWind: 6.2", "6.2", "the plain number 6.2", '"12 kn"', "unit"],
    [
      "a quantity without unit",
      "designWind: 12 kn",
      'designWind: "12"',
      '"12"',
      '"12"',
      "a unit that fits m/s",
      '"12 kn"',
    ],
    ["an unknown unit", "area: 8 m^2", "area: 8 furlong", "8 furlong", '"8 furlong"', "m^2", "Write it like"],
    ["a unit of another quantity", "area: 8 m^2", "area: 8 m", "8 m\n", '"8 m"', "m^2", "Write it like"],
    [
      "an impossible value",
      "diameter: 4 mm",
      "diameter: 4 km",
      "4 km",
      '"4 km"',
      "a finite number from",
      "Give it in m",
    ],
    ["not a number", "pull: 250 N", "pull: many N", "many N", '"many N"', "a finite number", "Write it like"],
    ["a comma in a number", "area: 8 m^2", 'area: "8,5 m^2"', '"8,5', '"8,5 m^2"', "decimal point", "Write it like"],
    [
      "an unknown word",
      "kind: halyard",
      "kind: haliard",
      "haliard",
      '"haliard"',
      '"sheet", "halyard", "vang", "control"',
      '"halyard"?',
    ],
    [
      "an unknown fibre",
      "fibre: polyester",
      "fibre: polyestre",
      "polyestre",
      '"polyestre"',
      '"polyester"',
      '"polyester"?',
    ],
    [
      "an unknown edition",
      "edition: orc-2013",
      "edition: orc-2031",
      "orc-2031",
      '"orc-2031"',
      '"orc-2013"',
      '"orc-2013"?',
    ],
    ["an unknown kind of station", "{ kind: ring,", "{ kind: rung,", "rung", '"rung"', '"ring"', "kind"],
    [
      "an unknown rope",
      "{ rope: sheet 7, length: 9 m }",
      "{ rope: sheet 77, length: 9 m }",
      "sheet 77",
      '"sheet 77"',
      "a rope of the catalogue",
      'Did you mean "sheet 7"?',
    ],
    [
      "an unknown block",
      "block: ratchet 63,",
      "block: ratchet 80,",
      "ratchet 80",
      '"ratchet 80"',
      "a block of the catalogue",
      '"ratchet 63"?',
    ],
    [
      "an unknown ring",
      "ring: ring 20",
      "ring: ring 21",
      "ring 21",
      '"ring 21"',
      "a ring of the catalogue",
      '"ring 20"?',
    ],
    ["an unknown cleat", "cleat: cam,", "cleat: xyzzy,", "xyzzy", '"xyzzy"', "a cleat of the catalogue", "Take one"],
    ["an unknown sail", "sail: main,", "sail: mian,", "mian", '"mian"', "a sail of this file", '"main"?'],
    ["an unknown hand", "hand: helm", "hand: helmm", "helmm", '"helmm"', "one of the crew", '"helm"?'],
    [
      "an unknown neighbour",
      "touches: [mainsheet]",
      "touches: [mainshet]",
      "mainshet",
      '"mainshet"',
      "a line of this file",
      '"mainsheet"?',
    ],
    ["strands that no cover has", "strands: 16", "strands: 12", "12 }", "the plain number 12", "8, 16 or 24", "Count"],
    [
      "a share above one",
      "corner: sheet }",
      "corner: sheet, share: 1.4 }",
      "1.4",
      "the plain number 1.4",
      "from 0 to 1",
      "Write it like",
    ],
    [
      "parts that are no whole number",
      "parts: 3",
      "parts: 3.5",
      "3.5",
      "the plain number 3.5",
      "whole number from 1 to 12",
      "Count",
    ],
    [
      "a price without currency among others",
      "price: 28 EUR",
      "price: 26",
      "26 }",
      "a price without a currency",
      "one currency in the whole file",
      "Turn",
    ],
    ["a price of two words", "price: 28 EUR", "price: 26 old coins", "26 old", '"26 old coins"', '"18 EUR"', "a word"],
    [
      "a rope price without metre",
      "price: 2.60 EUR/m",
      "price: 2.60 EUR",
      "2.60 EUR }",
      '"2.60 EUR"',
      "2.40 EUR/m",
      "/m for rope",
    ],
    ["another currency", "price: 14 EUR", "price: 15 USD", "15 USD", "USD", "one currency", "Turn"],
    ["a text for yes or no", "wet: false", "wet: maybe", "maybe", '"maybe"', "true or false", "without quotes"],
    ["an empty list", "touches: [mainsheet]", "touches: []", "[]", "an empty list", "a list of 1 to 6", "dash"],
    [
      "a light wind above the design wind",
      "lightWind: 4 kn",
      "lightWind: 14 kn",
      "14 kn",
      "7.2 m/s",
      "not above the design wind",
      "Exchange",
    ],
    [
      "a cover without core",
      "construction: coveredCore",
      "construction: doubleBraid",
      "{ fibre: hmpe, construction: doubleBraid",
      "cover",
      "coveredCore",
      "Name the cover",
    ],
    [
      "turns on a cam",
      "cleat: cam,",
      "cleat: cam, turns: 2,",
      "{ kind: cleat, name: cleat, cleat: cam",
      "turns on a cleat",
      "horn cleat",
      "Leave",
    ],
    [
      "a horn without turns",
      ", turns: 3, eights: 1",
      "",
      "{ kind: cleat, name: cleat, cleat: horn",
      "without turns",
      "turns exactly",
      "how many",
    ],
    [
      "a station twice",
      "name: mast foot",
      "name: masthead",
      "",
      '"masthead" for the second time',
      "name of its own",
      "tackle",
    ],
    [
      "no cleat for a line that one holds",
      "heldBy: hand",
      "heldBy: cleat",
      "",
      "0 cleats",
      "one cleat",
      "Name the cleat",
    ],
    [
      "a distance left out",
      "wrap: 90 deg, distance: 6 m",
      "wrap: 90 deg",
      "",
      "no distance",
      "a distance at every station",
      "Measure",
    ],
    [
      "a load that the sail does not give",
      "corner: sheet",
      "corner: halyard",
      "",
      "a sail that does not say enough for its halyard",
      "stated load",
      'Add "edges',
    ],
    ["a groove far too narrow", "groove: 5.5 mm", "groove: 1 mm", "", "groove ratio", "from 0.5", ""],
  ])("with %s says so, and where", (_, from, to, word, found, allowed, advice) => {
    const text = smallBoatWith([from, to]);
    const all = troubles(text);
    const one = all.find((each) => each.found.includes(found));
    expect(one, JSON.stringify(all)).toBeDefined();
    expect(one).toMatchObject({ file: "small.yaml" });
    if (word !== "") expect(one).toMatchObject(placeOf(text, word));
    else expect(one!.line).toBeGreaterThan(1);
    expect(one!.allowed).toContain(allowed);
    expect(one!.advice).toContain(advice);
  });

  it("with less rope than the way takes says how much", () => {
    const [one, ...others] = troubles(
      smallBoatWith(
        ["{ rope: braid 4, length: 6 m }", "{ rope: braid 4, length: 0.1 m }"],
        ["{ rope: sheet 7, length: 8 m }", "{ rope: sheet 7, length: 0.5 m }"],
      ),
    );
    expect(others).toEqual([]);
    expect(one).toMatchObject({ at: "lines › halyard › rope", found: "0.6 m of rope for a way of 6.7 m" });
  });

  it("with a tackle of unknown length in a line whose movement is asked for says so", () => {
    const tackle = "{ kind: tackle, name: mast foot, parts: 2, hauledFrom: fixed, block: block 63, distance: 6 m }";
    const [one] = troubles(
      smallBoatWith(["{ kind: ring, name: mast foot, ring: ring 20, wrap: 90 deg, distance: 6 m }", tackle]),
    );
    expect(one).toMatchObject({ at: "lines › halyard › path › 1", found: "no length of a part" });
  });

  it("with an angle that the table of the sail does not cover says which it covers", () => {
    const [one] = troubles(
      smallBoatWith(["edition: orc-2013", "edition: hazen-1980"], ["course: 50 deg", "course: 20 deg"]),
    );
    expect(one).toMatchObject({ at: "lines › mainsheet › load", allowed: "27° to 180°" });
    expect(one!.found).toContain("apparent wind angle");
  });

  it("with a key left out names it", () => {
    const [one] = troubles(smallBoatWith(["  wet: false\n", ""]));
    expect(one).toMatchObject({ at: "conditions › wet", found: "nothing", advice: "Add it.", line: 7 });
  });

  it("with a fault in the YAML gives line and column", () => {
    const [one] = troubles(smallBoatWith(["hold: 90 N, pull", "hold: [90 N, pull"]));
    expect(one!.line).toBeGreaterThanOrEqual(5);
    expect(one!.found).toContain("a fault in the YAML");
  });

  it("with a key twice, or a tag, is refused", () => {
    expect(troubles(smallBoatWith(["use: new", "use: new\n    use: worn"]))[0]!.found).toContain("unique");
    expect(troubles(smallBoatWith(["use: new", "use: !!js/function new"]))[0]!.found).toContain("fault");
  });

  it("with several faults names them all, in the order of the file", () => {
    const all = troubles(
      smallBoatWith(["area: 8 m^2", "area: 8"], ["use: new", "use: fresh"], ["parts: 3", "parts: 0"]),
    );
    expect(all.map(({ at }) => at)).toEqual([
      "sails › main › area",
      "lines › mainsheet › path › 0 › parts",
      "lines › halyard › use",
    ]);
    expect(all.map(({ line }) => line)).toEqual([...all.map(({ line }) => line)].sort((a, b) => a - b));
  });

  it("is refused as everything else is: with quantity, value, what is allowed and what to do", () => {
    const text = smallBoatWith(["area: 8 m^2", "area: 8"]);
    expect(() => boatOf(text, here)).toThrow(Refusal);
    expect(() => boatOf(text, here)).toThrow(
      'small.yaml:18:11: sails › main › area: found the plain number 8; allowed: a text with a number and its unit, such as "7 m^2". Write the unit with it.',
    );
  });

  it.each(["", "# nothing but a comment", "- a\n- list", "just words", "42"])(
    "of other things is no boat: %j",
    (text) => {
      expect(troubles(text)[0]).toMatchObject({ found: "no mapping", file: "small.yaml" });
    },
  );
});

describe("a change of a boat file", () => {
  it("at a key that the file has not is refused, and so is a value that makes no boat", () => {
    expect(() => rewriteBoat(smallBoat, [{ path: ["limits", "mass"], value: "3 kg" }], here)).toThrow("found nothing");
    expect(() => rewriteBoat(smallBoat, [{ path: ["limits"], value: "3 kg" }], here)).toThrow("more than one value");
    expect(() => rewriteBoat(smallBoat, [{ path: ["limits", "safetyFactor"], value: 0.5 }], here)).toThrow(
      "from 1 to 100",
    );
  });
});
