import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { loadBoat } from "../../src/boat/load.js";
import { lineOf } from "../../src/boat/ready.js";
import { lineStanding } from "../../src/boat/standing.js";
import { ValueError } from "../../src/quantity/errors.js";
import { clewSheetLoad } from "../../src/wind/clew-sheet.js";
import { boatHandWorking, lineCostWorking, lineMassWorking } from "../../src/working/boat-line-working.js";
import { designLoadWorking } from "../../src/working/boat-load-working.js";
import { formulas } from "../../src/working/catalogue.js";
import { freeClewWorking } from "../../src/working/free-clew-working.js";
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
