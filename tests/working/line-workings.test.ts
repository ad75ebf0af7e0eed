import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lineStanding } from "../../src/boat/check.js";
import { loadBoat } from "../../src/boat/load.js";
import { lineOf } from "../../src/boat/ready.js";
import { bearings } from "../../src/materials/bearings.js";
import { coverFriction } from "../../src/materials/covers.js";
import { stiffnessLaws } from "../../src/materials/stiffness.js";
import { surfaces, treads } from "../../src/materials/surfaces.js";
import { ValueError } from "../../src/quantity/errors.js";
import { stiffnessOf } from "../../src/reeving/bending.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import type { Station } from "../../src/reeving/reeving.js";
import { tackle } from "../../src/reeving/tackle.js";
import { clewSheetLoad } from "../../src/wind/clew-sheet.js";
import { boatHandWorking, lineCostWorking, lineMassWorking } from "../../src/working/boat-line-working.js";
import { designLoadWorking } from "../../src/working/boat-load-working.js";
import { formulas } from "../../src/working/catalogue.js";
import { coverWorking } from "../../src/working/cover-working.js";
import { freeClewWorking } from "../../src/working/free-clew-working.js";
import { lineWorking } from "../../src/working/line-working.js";
import { sumWorking } from "../../src/working/sum-working.js";
import { worked } from "../../src/working/worked.js";

const boats = ["demo-skiff", "demo-catamaran", "demo-keelboat"].map((name) =>
  loadBoat(fileURLToPath(new URL(`../../notebooks/boats/${name}.yaml`, import.meta.url))),
);
const lines = boats.flatMap((boat) => Object.keys(boat.lines).map((name) => [boat.name, name, boat] as const));

describe.each(lines)("the workings of %s, %s", (_boat, name, boat) => {
  it("come to what the check of the boat comes to", () => {
    const { feel, budget, loads } = lineStanding(boat, name);
    const load = designLoadWorking(boat, name);
    expect(typeof load === "number" ? load : load.value).toBeCloseTo(loads.design.value, 6);
    expect(boatHandWorking(boat, name, "hauling")?.value ?? feel.hauling.value).toBeCloseTo(feel.hauling.value, 4);
    expect(boatHandWorking(boat, name, "easing")?.value ?? feel.easing.value).toBeCloseTo(feel.easing.value, 4);
    expect(lineMassWorking(boat, name).value).toBeCloseTo(budget.dry.value, 9);
    expect(lineMassWorking(boat, name, "wet").value).toBeCloseTo(budget.wet.value, 9);
    expect(lineCostWorking(boat, name).value).toBeCloseTo(budget.cost, 6);
  });

  it("begin with the wind where the file describes the sail", () => {
    if (boat.lines[name]!.load.kind === "stated")
      expect(designLoadWorking(boat, name)).toBe(lineOf(boat, name).loads.design.value);
    else expect(designLoadWorking(boat, name)).toHaveProperty("steps");
  });
});

it("refuse a line that no boat has", () => {
  for (const work of [designLoadWorking, lineMassWorking, lineCostWorking])
    expect(() => work(boats[0]!, "no such line")).toThrow(ValueError);
});

describe("the working of a line", () => {
  const { ball } = bearings;
  const wheel = (diameter: number, wrapAngle: number) => ({
    kind: "sheave" as const,
    name: "sheave",
    diameter,
    wrapAngle,
    pinRadius: (ball.radiusShare.value * diameter) / 2,
    bearingFriction: ball.friction.value,
    drag: 0.1,
  });
  const lineWith = (stations: Station[]): Line => ({
    rope: { diameter: 0.007, stiffness: stiffnessOf(stiffnessLaws.braidedCover) },
    stations,
  });
  const degrees = fc.integer({ min: 30, max: 180 });
  const station: fc.Arbitrary<Station> = fc.oneof(
    degrees.map((angle) => wheel(0.04, (angle * Math.PI) / 180)),
    degrees.map((angle) => ({
      kind: "ring" as const,
      name: "ring",
      diameter: 0.02,
      wrapAngle: (angle * Math.PI) / 180,
      frictionCoefficient: 0.15,
    })),
    degrees.map((angle) => ({
      ...wheel(0.055, (angle * Math.PI) / 180),
      kind: "ratchet" as const,
      treadFriction: 0.3,
    })),
    fc.integer({ min: 2, max: 6 }).map((parts) => ({
      kind: "tackle" as const,
      name: "tackle",
      reeving: tackle({ parts, hauledFrom: "fixed", turn: wheel(0.045, Math.PI) }),
    })),
  );

  it("comes to what the solver comes to, whatever the stations are", () => {
    fc.assert(
      fc.property(
        fc.array(station, { minLength: 1, maxLength: 3 }),
        fc.constantFrom("hauling", "easing"),
        (all, direction) => {
          const line = lineWith(all.map((one, index) => ({ ...one, name: `station ${index + 1}` })));
          const solved = prepareLine(line).handForce(2000, direction);
          fc.pre(solved > 1);
          const { value } = lineWorking({ line, load: 2000, direction });
          expect(value / solved).toBeCloseTo(1, 6);
        },
      ),
      { seed: 7, numRuns: 60 },
    );
  });

  it("leads back to the records that it was given", () => {
    const line = lineWith([wheel(0.04, Math.PI)]);
    const text = (sources: readonly (typeof ball.friction)[]) =>
      JSON.stringify(lineWorking({ line, load: 100, direction: "hauling", sources }));
    expect(text([ball.friction])).toContain(ball.friction.place);
    expect(text([])).not.toContain(ball.friction.place);
  });

  it("does not take a record of another unit for a number that happens to be equal", () => {
    const { bareCore } = stiffnessLaws;
    expect(bareCore.tensionTerm.value).toBe(bareCore.constantTerm.value);
    const line: Line = {
      rope: { diameter: 0.004, stiffness: stiffnessOf(bareCore) },
      stations: [wheel(0.04, Math.PI)],
    };
    const sources = [bareCore.tensionTerm, bareCore.constantTerm, bareCore.diameterTerm];
    const { value } = lineWorking({ line, load: 500, direction: "hauling", sources });
    expect(value).toBeCloseTo(prepareLine(line).handForce(500, "hauling"), 6);
  });

  it("of a bare rope is its load", () => {
    expect(lineWorking({ line: lineWith([]), load: 123, direction: "hauling" }).value).toBe(123);
  });

  it("is refused for a line that cannot be", () => {
    const broken = { ...wheel(0.04, Math.PI), diameter: -1 };
    expect(() => lineWorking({ line: lineWith([broken]), load: 1, direction: "hauling" })).toThrow(ValueError);
  });
});

describe("the working of a cover", () => {
  it("comes to the friction of the model on every tread, dry and wet", () => {
    for (const surface of [...Object.values(treads), surfaces.anodised])
      for (const strands of [8, 16, 24] as const)
        for (const wet of [false, true]) {
          const cover = { strands, fibre: "polyester" as const, wet };
          expect(coverWorking(cover, surface).value).toBeCloseTo(coverFriction(cover, surface).value, 12);
        }
  });
});

describe("the working of a sheet at a free clew", () => {
  const corners = {
    head: { ahead: 0.2, lee: 0.3, up: 5.8 },
    tack: { ahead: 1.8, lee: 0, up: 0.7 },
    clew: { ahead: -1.1, lee: 1.1, up: 1.1 },
    leechSag: 0.55,
    footSag: 0.45,
  };

  it("comes to what the model comes to, and grows with the wind's force", () => {
    for (const sailForce of [50, 300]) {
      const { sheetLoad } = clewSheetLoad({ ...corners, leechLoad: sailForce / 3 / 5, footLoad: sailForce / 3 / 3.1 });
      const { value } = freeClewWorking({ ...corners, sailForce, share: 1 / 3, leech: 5, foot: 3.1 });
      expect(value).toBeCloseTo(sheetLoad, 6);
    }
  });
});

describe("the working of a sum", () => {
  it("adds its parts, or takes the others from the first", () => {
    const parts = [
      ["one", 5],
      ["other", 3],
    ] as const;
    expect(sumWorking({ id: "sum", title: "Sum", quantity: "count", parts })!.value).toBe(8);
    expect(sumWorking({ id: "rest", title: "Rest", quantity: "count", parts, sign: "-" })!.value).toBe(2);
    expect(sumWorking({ id: "none", title: "None", quantity: "count", parts: [] })).toBeUndefined();
  });

  it("keeps the way to a part that was worked out", () => {
    const part = worked(formulas.pitchDiameter, { ropeDiameter: 0.01, sheaveDiameter: 0.04 });
    expect(
      JSON.stringify(sumWorking({ id: "sum", title: "Sum", quantity: "count", parts: [["pitch", part.value]] })),
    ).toContain("pitch");
  });
});
