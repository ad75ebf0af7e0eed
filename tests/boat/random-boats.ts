import fc from "fast-check";
import type { Boat, BoatLine, BoatStation } from "../../src/boat/boat.js";
import { boatOf } from "../../src/boat/read.js";
import { demoNames, demoPlace, demoText } from "./small-boat.js";

const demos: readonly Boat[] = demoNames.map((name) => boatOf(demoText(`${name}.yaml`), demoPlace(name)));

const turned = <Thing>(things: Readonly<Record<string, Thing>>, now: string, by: number): string => {
  const names = Object.keys(things);
  return names[(names.indexOf(now) + by) % names.length]!;
};

function otherStation({ catalogue }: Boat, station: BoatStation, by: number): BoatStation {
  if (station.kind === "ring") return { ...station, ring: turned(catalogue.rings, station.ring, by) };
  if (station.kind === "cleat") {
    const cleat = turned(catalogue.cleats, station.cleat, by);
    return catalogue.cleats[cleat]!.type === "horn"
      ? { ...station, cleat, turns: 2, eights: 2 }
      : { ...station, cleat };
  }
  return { ...station, block: turned(catalogue.blocks, station.block, by) };
}

/** A demo boat with one of its lines changed at random: rope, hardware, load, who works it, and what its crew can pull. */
export const randomLine: fc.Arbitrary<{ readonly boat: Boat; readonly name: string }> = fc
  .record({
    demo: fc.nat(demos.length - 1),
    line: fc.nat(30),
    rope: fc.nat(30),
    place: fc.nat(12),
    by: fc.nat(30),
    load: fc.double({ min: 0.2, max: 5, noNaN: true }),
    strength: fc.double({ min: 0.4, max: 2, noNaN: true }),
    factor: fc.double({ min: 2, max: 10, noNaN: true }),
  })
  .map(({ demo, line: at, rope, place, by, load, strength, factor }) => {
    const boat = demos[demo]!;
    const names = Object.keys(boat.lines);
    const name = names[at % names.length]!;
    const line = boat.lines[name]!;
    const piece = line.rope[0]!;
    const where = place % line.path.length;
    const changed: BoatLine = {
      ...line,
      rope: line.rope.with(0, { ...piece, rope: turned(boat.catalogue.ropes, piece.rope, rope) }),
      path: line.path.with(where, otherStation(boat, line.path[where]!, by)),
      load: line.load.kind === "stated" ? { ...line.load, design: load * line.load.design } : line.load,
    };
    const crew = Object.fromEntries(
      Object.entries(boat.crew).map(([who, one]) => [
        who,
        { ...one, pull: strength * one.pull, hold: strength * one.hold },
      ]),
    );
    const limits = { ...boat.limits, safetyFactor: factor };
    return { boat: { ...boat, crew, limits, lines: { ...boat.lines, [name]: changed } }, name };
  });
