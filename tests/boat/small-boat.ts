import { readFileSync } from "node:fs";
import type { Boat } from "../../src/boat/boat.js";
import { boatOf } from "../../src/boat/read.js";

/** A boat of three lines with its catalogue inside; the demo data of the tests, invented. */
export const smallBoat = `# All data invented.
version: 2
name: small boat # a comment behind a value
invented: true
crew:
  helm: { hold: 90 N, pull: 250 N }
conditions:
  designWind: 12 kn
  lightWind: 4 kn
  gustFactor: 1.2
  airTemperature: 15 degC
  airPressure: 101325 Pa
  wet: false
sails:
  main:
    edition: orc-2013
    table: main
    area: 8 m^2
    mass: 3 kg
    course: 50 deg
    boatSpeed: { design: 5 kn, light: 2.5 kn }
    sheet: { kind: boom, boomAngle: 5 deg, forceLever: 0.9 m, sheetLever: 2 m, sheetSlope: 50 deg }
lines:
  mainsheet:
    kind: sheet
    load: { kind: sail, sail: main, corner: sheet }
    rope:
      - { rope: sheet 7, length: 9 m }
    path:
      - { kind: tackle, name: tackle, parts: 3, hauledFrom: fixed, block: block 63 }
      - { kind: block, name: ratchet, block: ratchet 63, wrap: 150 deg }
    heldBy: hand
    hand: helm
    ends: { sail: bowline }
    use: season
  halyard:
    kind: halyard
    load: { kind: stated, design: 200 N, light: 29 N, spread: 0.1 }
    rope:
      - { rope: braid 4, length: 6 m }
      - { rope: sheet 7, length: 8 m }
    path:
      - { kind: block, name: masthead, block: block 63, wrap: 180 deg, distance: 0.2 m }
      - { kind: ring, name: mast foot, ring: ring 20, wrap: 90 deg, distance: 6 m }
      - { kind: cleat, name: cleat, cleat: cam, distance: 0.5 m }
    heldBy: cleat
    hand: helm
    ends: { sail: splice }
    use: new
    movement: { allowed: 30 mm, give: 20000 N/m, settled: 60 s, after: 1 h }
    touches: [mainsheet]
  outhaul:
    kind: control
    load: { kind: stated, design: 150 N }
    rope:
      - { rope: braid 4, length: 4 m }
    path:
      - { kind: block, name: end of the boom, block: block 40, wrap: 180 deg }
      - { kind: cleat, name: cleat, cleat: horn, turns: 3, eights: 1 }
    heldBy: cleat
    hand: helm
    ends: { sail: splice }
    use: season
catalogue:
  ropes:
    sheet 7: { fibre: hmpe, construction: coveredCore, cover: { fibre: polyester, strands: 16 }, diameter: 7 mm, mass: 34 g/m, price: 3.40 EUR/m }
    braid 4: { fibre: hmpe, construction: bareBraid, diameter: 4 mm, price: 2.60 EUR/m }
  blocks:
    block 40: { diameter: 40 mm, groove: 5.5 mm, bearing: ball, workingLoad: 2400 N, mass: 35 g, price: 28 EUR }
    block 63: { diameter: 63 mm, groove: 9.9 mm, bearing: ball, workingLoad: 3780 N, mass: 87 g, price: 44 EUR }
    ratchet 63: { diameter: 63 mm, groove: 9.9 mm, bearing: ball, workingLoad: 3780 N, ratchet: { tread: faceted }, mass: 109 g, price: 76 EUR }
  rings:
    ring 20: { diameter: 20 mm, opening: 18 mm, surface: anodised, workingLoad: 20 kN, mass: 24 g, price: 14 EUR }
  cleats:
    cam: { type: cam, thinnest: 3 mm, thickest: 10 mm, mass: 45 g, price: 32 EUR }
    horn: { type: horn, thinnest: 3 mm, thickest: 10 mm, mass: 30 g, price: 9 EUR }
limits:
  safetyFactor: 5
`;

export const here = { file: "small.yaml" } as const;

/** The small boat, some of its text replaced. */
export function smallBoatWith(...changes: readonly (readonly [from: string, to: string])[]): string {
  return changes.reduce((text, [from, to]) => {
    if (!text.includes(from)) throw new Error(`the small boat has no ${from}`);
    return text.replace(from, to);
  }, smallBoat);
}

export const small = (...changes: readonly (readonly [from: string, to: string])[]): Boat =>
  boatOf(smallBoatWith(...changes), here);

const folder = new URL("../../notebooks/boats/", import.meta.url);

/** Text of a file beside the demo boats. */
export const demoText = (name: string): string => readFileSync(new URL(name, folder), "utf8");

export const demoNames = ["demo-skiff", "demo-catamaran", "demo-keelboat"] as const;

/** A demo boat as its file says. */
export const demoPlace = (name: string) => ({ file: `${name}.yaml`, beside: demoText });
