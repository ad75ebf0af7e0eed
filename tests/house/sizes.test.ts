import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { demoLine } from "../../src/live/line-facts.js";
import { demoBlocks, demoNarrowBlocks, demoRings, massLaws } from "../../src/materials/block-sizes.js";
import { demoNames, demoText, smallBoat } from "../boat/small-boat.js";

/** Sizes of ISO 3, series R10 [mm], that small boats have a use for. */
const steps = [16, 20, 25, 32, 40, 50, 63, 80];

interface Piece {
  readonly diameter: string;
  readonly mass: string;
  readonly workingLoad: string;
  readonly price: string;
  readonly for?: readonly string[];
}
interface Block extends Piece {
  readonly groove: string;
  readonly bearing: "plain" | "ball";
  readonly builtIn?: boolean;
  readonly ratchet?: { readonly engageLoad?: string };
}
interface Ring extends Piece {
  readonly opening: string;
}
interface Shop {
  readonly blocks: Readonly<Record<string, Block>>;
  readonly rings: Readonly<Record<string, Ring>>;
}
interface Line {
  readonly kind: string;
  readonly path: readonly { readonly block?: string; readonly ring?: string }[];
}

const shopText = readFileSync(new URL("../../notebooks/boats/demo-shop.yaml", import.meta.url), "utf8");
const shop = parse(shopText) as Shop;
const boatNamed = (name: string) =>
  parse(demoText(`${name}.yaml`)) as { readonly lines: Readonly<Record<string, Line>> };
const within = parse(smallBoat) as { readonly catalogue: Shop };

/** Number before the unit, once the unit is what it shall be. */
function amount(text: string, unit: string): number {
  const [number, found] = text.split(" ");
  const thousands = found === `k${unit}` ? 1000 : 1;
  expect(found).toBe(thousands === 1 ? unit : `k${unit}`);
  return thousands * Number(number);
}

/** Of the two roundings of a half that a tenth can have, either will do: 11.125 is 11.1. */
const tenths = (value: number) => Math.round(10 * value + 1e-6) / 10;

/** What the head of the shop's file states, of the diameter [mm]: grams, newtons, millimetres and euros. */
function lawsOf(name: string, { bearing, builtIn, ratchet }: Block, diameter: number) {
  const narrow = builtIn === true || name.includes("narrow");
  const onBalls = builtIn === true && bearing === "ball";
  return {
    mass: Math.round(0.022 * diameter ** 2 * (ratchet ? 1.25 : builtIn ? 0.7 : 1)),
    workingLoad: (onBalls ? 80 : builtIn ? 120 : 60) * diameter,
    groove: tenths(2 + diameter / 8 - (narrow ? 1.5 : 0)),
    price: Math.round((ratchet ? 1.2 : bearing === "plain" ? 0.5 : 0.7) * diameter + 1e-6),
  };
}

const ringLaws = (diameter: number) => ({
  mass: Math.round(0.003 * diameter ** 3),
  workingLoad: 50 * diameter ** 2,
  opening: tenths(0.9 * diameter),
  price: Math.round(0.7 * diameter + 1e-6),
});

describe("the invented shop", () => {
  it("says at its head that it is invented, and by what laws", () => {
    const head = shopText.slice(0, shopText.indexOf("\nropes:"));
    for (const words of [
      "invented",
      "ISO 3",
      `${steps.join(", ")} mm`,
      "0.022 D² g",
      "60 D N",
      "2 mm + D/8",
      "0.003 D³ g",
    ])
      expect(head).toContain(words);
  });

  it.each(Object.entries({ ...shop.blocks, ...within.catalogue.blocks }))("has %s by its laws", (name, block) => {
    const diameter = amount(block.diameter, "mm");
    expect(steps).toContain(diameter);
    const { groove, mass, workingLoad, price } = block;
    const found = {
      mass: amount(mass, "g"),
      workingLoad: amount(workingLoad, "N"),
      groove: amount(groove, "mm"),
      price: amount(price, "EUR"),
    };
    const laws = lawsOf(name === "block 40" ? "narrow" : name, block, diameter);
    expect(found).toEqual(laws);
    const engageLoad = block.ratchet?.engageLoad;
    if (engageLoad !== undefined) expect(amount(engageLoad, "N")).toBe(Math.round(1.4 * diameter));
    expect(name).toContain(`${diameter}`);
  });

  it.each(Object.entries({ ...shop.rings, ...within.catalogue.rings }))("has %s by its laws", (name, ring) => {
    const diameter = amount(ring.diameter, "mm");
    expect(steps).toContain(diameter);
    const { opening, mass, workingLoad, price } = ring;
    expect({
      mass: amount(mass, "g"),
      workingLoad: amount(workingLoad, "N"),
      opening: amount(opening, "mm"),
      price: amount(price, "EUR"),
    }).toEqual(ringLaws(diameter));
    expect(name).toContain(`${diameter}`);
  });
});

describe.each(demoNames)("%s", (name) => {
  it("carries nothing but what the shop has, each piece where it is meant to be", () => {
    for (const [line, { kind, path }] of Object.entries(boatNamed(name).lines))
      for (const { block, ring } of path) {
        const piece = block === undefined ? (ring === undefined ? undefined : shop.rings[ring]) : shop.blocks[block];
        if (block !== undefined || ring !== undefined) expect(piece, `${line}: ${block ?? ring}`).toBeDefined();
        if (piece?.for !== undefined) expect(piece.for, `${line}: ${block ?? ring}`).toContain(kind);
      }
  });
});

describe("sizes that the library and its panels begin with", () => {
  const blocks = [...demoBlocks, ...demoNarrowBlocks];
  const millimetres = (metres: number) => Math.round(metres * 1e9) / 1e6;

  it("are steps of the series", () => {
    const laws = Object.values(massLaws).map(({ referenceDiameter }) => referenceDiameter);
    const panel = Object.values(demoLine.catalogue.blocks).map(({ diameter }) => diameter);
    for (const metres of [...[...blocks, ...demoRings].map(({ diameter }) => diameter), ...laws, ...panel])
      expect(steps).toContain(millimetres(metres));
  });

  it("weigh and carry what the laws of the shop say", () => {
    for (const { name, diameter, mass, workingLoad } of blocks) {
      const size = millimetres(diameter);
      const builtIn = name.includes("halyard sheave");
      const laws = lawsOf(name, { ...({} as Block), bearing: "plain", builtIn }, size);
      expect([Math.round(1000 * mass), Math.round(workingLoad)], name).toEqual([laws.mass, laws.workingLoad]);
    }
    for (const { name, diameter, mass, grooveWidth, workingLoad } of demoRings) {
      const laws = ringLaws(millimetres(diameter));
      expect([Math.round(1000 * mass), workingLoad, millimetres(grooveWidth)], name).toEqual([
        laws.mass,
        laws.workingLoad,
        laws.opening,
      ]);
    }
    for (const [name, { mass, workingLoad, groove, diameter, ratchet }] of Object.entries(demoLine.catalogue.blocks)) {
      const block = { ...shop.blocks[name]!, ...(ratchet && { ratchet: {} }) };
      const laws = lawsOf(name, block, millimetres(diameter));
      expect([Math.round(1000 * mass), workingLoad, millimetres(groove)], name).toEqual([
        laws.mass,
        laws.workingLoad,
        laws.groove,
      ]);
    }
  });

  it("have grooves by the rule of their own kind", () => {
    const rule = (name: string, size: number) =>
      2 + size / (name.includes("halyard sheave") ? 25 : name.includes("narrow") ? 10 : 5);
    for (const { name, diameter, grooveWidth } of blocks) {
      const size = millimetres(diameter);
      expect(millimetres(grooveWidth), name).toBe(tenths(rule(name, size)));
      expect(name).toContain(`${size} mm`);
    }
  });
});
