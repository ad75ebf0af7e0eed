import { describe, expect, it } from "vitest";
import { boatOf } from "../../src/boat/read.js";
import { lineOf, withLine } from "../../src/boat/ready.js";
import { bearings } from "../../src/materials/bearings.js";
import { blockLosses } from "../../src/materials/block-losses.js";
import { coverFriction } from "../../src/materials/covers.js";
import { stiffnessLaws } from "../../src/materials/stiffness.js";
import { treads } from "../../src/materials/surfaces.js";
import { ValueError } from "../../src/quantity/errors.js";
import { prepareLine } from "../../src/reeving/line.js";
import { tackle } from "../../src/reeving/tackle.js";
import { demoNames, demoPlace, demoText, small } from "./small-boat.js";

describe("a line of a boat", () => {
  it("is the line that one would build by hand from the same records", () => {
    const { tensionTerm, constantTerm, diameterTerm } = stiffnessLaws.braidedCover;
    const { friction, radiusShare } = bearings.ball;
    const sheave = {
      kind: "sheave",
      name: "sheave",
      diameter: 0.063,
      grooveWidth: 0.0099,
      wrapAngle: Math.PI,
      pinRadius: (radiusShare.value * 0.063) / 2,
      bearingFriction: friction.value,
      drag: blockLosses.ballDrag.value,
    } as const;
    const treadFriction = coverFriction({ strands: 16, fibre: "polyester", wet: false }, treads.faceted).value;
    const byHand = prepareLine({
      rope: {
        diameter: 0.007,
        stiffness: {
          tensionTerm: tensionTerm.value,
          constantTerm: constantTerm.value,
          diameterTerm: diameterTerm.value,
        },
      },
      stations: [
        { kind: "tackle", name: "tackle", reeving: tackle({ parts: 3, hauledFrom: "fixed", turn: sheave }) },
        { ...sheave, kind: "ratchet", name: "ratchet", wrapAngle: (150 * Math.PI) / 180, treadFriction },
      ],
    }).handForces(300);
    const found = lineOf(small(), "mainsheet").middle.handForces(300);
    for (const key of ["hauling", "easing", "runOutLoad", "velocityRatio"] as const)
      expect(found[key]).toBeCloseTo(byHand[key], 9);
  });

  it("keeps the middle of its ranges inside them, and gives a single number where nothing is in doubt", () => {
    const { over, loads, middle } = lineOf(small(), "mainsheet");
    const hauling = over({ load: loads.design }, (line, { load }) => line.handForces(load!).hauling);
    expect(hauling.value).toBeCloseTo(middle.handForces(loads.design.value).hauling, 9);
    expect(hauling.low).toBeLessThan(hauling.value);
    expect(hauling.high).toBeGreaterThan(hauling.value);
    const ratio = over({}, (line) => line.velocityRatio);
    expect(ratio).toEqual({ value: 3, low: 3, high: 3 });
  });

  it("puts the ropes where they run: thin round the masthead, covered in the cleat", () => {
    const { parts, placed, pieces, spans } = lineOf(small(), "halyard");
    expect(parts.map(({ rope }) => rope.diameter)).toEqual([0.004, 0.007]);
    expect(parts.map(({ stations }) => stations.map(({ name }) => name))).toEqual([
      ["masthead"],
      ["mast foot", "cleat"],
    ]);
    expect(placed.map(({ piece }) => piece)).toEqual([0, 1, 1]);
    expect(pieces.map(({ name }) => name)).toEqual(["braid 4", "sheet 7"]);
    expect(spans.map(({ length }) => length)).toEqual([0.2, 6, 0.5]);
  });

  it("gives each piece the tension of a gust for its working load, hauling at the hand end, and the tightest bend", () => {
    const { pieces, loads, middle } = lineOf(small(), "outhaul");
    const { handForce } = middle.state(loads.gust.value, "hauling");
    expect(pieces[0]!.job.workingLoad).toBeCloseTo(handForce, 9);
    expect(handForce).toBeGreaterThan(loads.gust.value);
    expect(pieces[0]!.job).toMatchObject({ safetyFactor: 5, sheave: { diameter: 0.04 }, cleat: { thinnest: 0.003 } });
  });

  it("does not count the load on the block of a tackle at the sail as tension of the rope", () => {
    const { pieces, loads } = lineOf(small(), "mainsheet");
    expect(pieces[0]!.job.workingLoad).toBeLessThan(loads.gust.value);
    expect(pieces[0]!.job.workingLoad).toBeGreaterThan(loads.gust.value / 3);
  });

  it("of an unknown name is refused with what was meant, and names of the language are no lines", () => {
    expect(() => lineOf(small(), "mainshet")).toThrow('Did you mean "mainsheet"?');
    expect(() => lineOf(small(), "toString")).toThrow(ValueError);
  });

  it("that is changed leaves the boat as it was", () => {
    const boat = small();
    const line = { ...boat.lines.mainsheet!, rope: [{ rope: "braid 4", length: 9 }] };
    const other = withLine(boat, "mainsheet", line);
    expect(boat).toEqual(small());
    expect(lineOf(other, "mainsheet").parts[0]!.rope.diameter).toBe(0.004);
    expect(Object.keys(other.lines)).toEqual(Object.keys(boat.lines));
  });
});

describe.each(demoNames)("%s", (name) => {
  const boat = boatOf(demoText(`${name}.yaml`), demoPlace(name));

  it("has 8 to 14 lines, among them sheets, halyards and controls, and vangs that are called so, each ready for the models", () => {
    const names = Object.keys(boat.lines);
    expect(names.length).toBeGreaterThanOrEqual(8);
    expect(names.length).toBeLessThanOrEqual(14);
    const kinds = ["control", "halyard", "sheet", ...(names.includes("vang") ? ["vang"] : [])];
    expect([...new Set(Object.values(boat.lines).map(({ kind }) => kind))].sort()).toEqual(kinds);
    expect(boat.lines.vang?.kind ?? "vang").toBe("vang");
    for (const wanted of ["mainsheet", "jib sheet", "gennaker sheet", "main halyard", "outhaul"])
      expect(names).toContain(wanted);
    for (const line of names) {
      const { middle, loads } = lineOf(boat, line);
      const { hauling, easing } = middle.handForces(loads.design.value);
      expect(easing).toBeGreaterThan(0);
      expect(hauling).toBeGreaterThan(easing);
    }
  });

  it("says that it is invented, in a comment that comes first and in the file", () => {
    expect(demoText(`${name}.yaml`)).toMatch(/^(?:#.*\n)*# Everything in this file is invented/u);
    expect(demoText("demo-shop.yaml")).toMatch(/^# Everything in this file is invented/u);
    expect(boat.invented).toBe(true);
  });
});
