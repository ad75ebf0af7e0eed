import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { loadBoat } from "../../src/boat/load.js";
import { lineOf } from "../../src/boat/ready.js";
import { lineStanding } from "../../src/boat/standing.js";
import { calibrate } from "../../src/calibration/calibrate.js";
import { expectedHandForce } from "../../src/calibration/measured-law.js";
import type { Reading } from "../../src/calibration/reading.js";
import { unknownLine } from "../../src/calibration/unknown-line.js";
import { versionFacts } from "../../src/live/before-and-after.js";
import { lineFacts } from "../../src/live/line-facts.js";
import { readingFacts } from "../../src/live/measure-your-own-boat.js";
import { type LiveModel, modelFor } from "../../src/live/model.js";
import { liveModels } from "../../src/live/models.js";
import { livePanel } from "../../src/live/panel.js";
import type { AnySettings } from "../../src/notebook/control.js";
import type { PanelFacts } from "../../src/notebook/output.js";
import { checkShown } from "../../src/notebook/shape.js";
import { ValueError } from "../../src/quantity/errors.js";
import { livePanelBlock } from "../../src/report/livepanel.js";

const boats = ["demo-skiff", "demo-catamaran", "demo-keelboat"].map((name) =>
  loadBoat(fileURLToPath(new URL(`../../notebooks/boats/${name}.yaml`, import.meta.url))),
);
const lines = boats.flatMap((boat) => Object.keys(boat.lines).map((name) => [boat.name, name, boat] as const));
const modelOf = (name: string, facts?: PanelFacts): LiveModel =>
  modelFor(liveModels.find((model) => model.name === name)!, facts);
const value = (model: LiveModel, label: string, settings: AnySettings = {}) =>
  model.compute(settings).results.find((one) => one.label === label)!.value;

describe("what a page gives its panel", () => {
  const [boat] = boats;
  const facts = lineFacts(boat!, "mainsheet");

  it("travels as data: the panel of the page computes the same from it", () => {
    const panel = livePanel("a-line-plan", { facts });
    expect(checkShown(panel)).toBe(panel);
    const sent = JSON.parse(JSON.stringify(panel.facts)) as PanelFacts;
    expect(sent).toEqual(facts);
    const { results, sentence } = modelOf("a-line-plan", sent).compute({});
    expect({ results, sentence }).toEqual({ results: panel.results, sentence: panel.sentence });
  });

  it("stands on the page as text of an attribute, whatever its names are", () => {
    const name = `"><script>alert(1)</script>`;
    const hostile = { ...facts, name, boat: "a & b" };
    const { text } = livePanelBlock(livePanel("a-line-plan", { facts: hostile }));
    expect(text).not.toContain("<script>");
    expect(text).toContain('data-live-facts="{&quot;about&quot;');
    expect(livePanelBlock(livePanel("a-line-plan")).text).not.toContain("data-live-facts");
  });

  it("is refused by a model that takes none, or takes others", () => {
    expect(() => livePanel("around-a-ring", { facts })).toThrow(ValueError);
    expect(() => livePanel("before-and-after", { facts })).toThrow('"two versions of a line"');
    expect(() => livePanel("a-line-plan", { facts: { about: "the weather" } })).toThrow('"line of a boat"');
    expect(() => checkShown({ ...livePanel("a-line-plan", { facts }), facts: { about: "" } } as never)).toThrow(
      ValueError,
    );
  });

  it("holds nothing of the boat but what the line is made of", () => {
    const text = JSON.stringify(facts);
    expect(Object.keys(facts.catalogue.ropes)).toEqual(boat!.lines.mainsheet!.rope.map(({ rope }) => rope));
    expect(text.length).toBeLessThan(2000);
    expect(() => lineFacts(boat!, "mainsheat")).toThrow("mainsheet");
  });
});

describe.each(lines)("the panel for %s, %s", (_boat, name, boat) => {
  const facts = lineFacts(boat, name);
  const model = modelOf("a-line-plan", facts);

  it("says of the line as it is what the check of the boat says", () => {
    const { feel } = lineStanding(boat, name);
    const agree = {
      Haul: feel.hauling,
      Hold: feel.easing,
      Load: lineOf(boat, name).loads.design,
      "Load from which it goes out by itself": feel.runOutLoad,
    };
    expect(() => livePanel("a-line-plan", { facts, agree })).not.toThrow();
    expect(value(model, "Haul")).toBeCloseTo(feel.hauling.value, 9);
    expect(value(model, "Hold")).toBeCloseTo(feel.easing.value, 9);
  });

  it("computes at both ends of every control", () => {
    for (const [control, known] of Object.entries(model.controls))
      for (const at of known.kind === "range" ? [known.minimum, known.maximum] : ["2"])
        for (const { value: found } of model.compute({ [control]: at }).results)
          expect(Number.isFinite(found), `${control} ${at}`).toBe(true);
  });

  it("stands on a step of each slider, so that a browser leaves it where it is", () => {
    for (const known of Object.values(model.controls))
      if (known.kind === "range") {
        const steps = (known.initial - known.minimum) / known.step;
        expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
        expect(known.minimum).toBeGreaterThanOrEqual(0);
      }
  });
});

describe("a line of a plan", () => {
  const model = modelOf("a-line-plan", lineFacts(boats[0]!, "mainsheet"));
  const haul = (settings: AnySettings) => value(model, "Haul", settings);

  it("loads with the square of the wind", () => {
    expect(value(model, "Load", { wind: 20 }) / value(model, "Load", { wind: 10 })).toBeCloseTo(4, 9);
  });

  it("goes out by itself in the wind whose load it needs for that", () => {
    const wind = value(model, "Goes out by itself from");
    const { load, wind: design } = lineFacts(boats[0]!, "mainsheet");
    expect(load.value * (wind / design) ** 2).toBeCloseTo(value(model, "Load from which it goes out by itself"), 9);
  });

  it("costs more with a thicker rope and on smaller sheaves, and less with more parts", () => {
    expect(haul({ rope: 10 })).toBeGreaterThan(haul({ rope: 7 }));
    expect(haul({ sheave: 30 })).toBeGreaterThan(haul({ sheave: 63 }));
    expect(haul({ parts: "4" })).toBeLessThan(haul({ parts: "3" }));
  });

  it("changes the range with the line", () => {
    const { low, high } = model.compute({ wind: 20 }).results.find(({ label }) => label === "Haul")!;
    const { hauling } = lineStanding(boats[0]!, "mainsheet").feel;
    expect(high! - low!).toBeGreaterThan(hauling.high - hauling.low);
  });

  it("has no control for what the line does not have", () => {
    expect(Object.keys(modelOf("a-line-plan", lineFacts(boats[0]!, "gennaker sheet")).controls)).toEqual([
      "wind",
      "rope",
      "sheave",
    ]);
  });
});

describe("a line before and after", () => {
  const [boat] = boats;
  const before = lineFacts(boat!, "gennaker sheet");
  const model = modelOf(
    "before-and-after",
    versionFacts({ before, after: before, words: { before: "as it is", after: "planned" } }),
  );

  it("of the same line is the same twice, under any load", () => {
    for (const load of [model.controls.load!.initial as number, 120])
      for (const way of ["Haul", "Hold"])
        expect(value(model, `${way}, planned`, { load })).toBeCloseTo(value(model, `${way}, as it is`, { load }), 9);
  });

  it("says what the check says, and changes only the second version", () => {
    const { feel } = lineStanding(boat!, "gennaker sheet");
    expect(value(model, "Haul, as it is")).toBeCloseTo(feel.hauling.value, 9);
    for (const changed of [
      { bearing: "plain" },
      { ratio: model.controls.ratio!.kind === "range" ? model.controls.ratio!.minimum : 0 },
      { cover: "stripped" },
    ])
      expect(value(model, "Haul, as it is", changed)).toBeCloseTo(feel.hauling.value, 9);
  });

  it("is harder to haul on plain bearings and small sheaves, and easier to hold with a coarser cover", () => {
    const same = value(model, "Haul, planned");
    const { ratio } = model.controls;
    expect(value(model, "Haul, planned", { bearing: "plain" })).toBeGreaterThan(same);
    expect(value(model, "Haul, planned", { ratio: ratio!.kind === "range" ? ratio!.minimum : 0 })).toBeGreaterThan(
      same,
    );
    expect(value(model, "Hold, planned", { cover: "8" })).toBeLessThan(value(model, "Hold, planned", { cover: "24" }));
  });
});

describe("readings", () => {
  const load = (hung: number, ratio: number, drag: number): Reading => ({
    row: 1,
    line: "lead",
    load: hung,
    haul: ratio * hung + drag,
    ease: (hung - drag) / ratio,
    resolution: 0.5,
    wet: false,
  });
  const readings = [load(50, 1.2, 2), load(100, 1.2, 2), load(200, 1.2, 2)];
  const facts = readingFacts({ readings, prior: unknownLine(), load: 120 });
  const model = modelOf("measure-your-own-boat", facts);

  it("of a line without scatter give back its ratio and drag", () => {
    const nothing = { known: "nothing" };
    expect(value(model, "Friction, as a ratio", nothing)).toBeCloseTo(1.2, 2);
    expect(value(model, "Drag", nothing)).toBeCloseTo(2, 0);
    expect(value(model, "Haul at that load", nothing)).toBeCloseTo(146, 0);
  });

  it("come to what the fit comes to", () => {
    const [found] = calibrate(
      readings.map((one, index) => ({ ...one, row: index + 1 })),
      { prior: () => facts.prior },
    );
    expect(value(model, "Haul at that load")).toBeCloseTo(
      expectedHandForce(found!.posterior, { load: 120, way: "hauling" }).value,
      9,
    );
  });

  it("narrow the haul, and less so with a coarse scale", () => {
    const width = (label: string, settings: AnySettings = {}) => {
      const { low, high } = model.compute(settings).results.find((one) => one.label === label)!;
      return high! - low!;
    };
    expect(width("Haul at that load")).toBeLessThan(width("The same haul before reading") / 2);
    const { resolution } = model.controls;
    const coarse = { resolution: resolution!.kind === "range" ? resolution!.maximum : 0 };
    expect(width("Haul at that load", coarse)).toBeGreaterThan(width("Haul at that load"));
  });

  it("that no line can give are left out, and said so", () => {
    expect(model.compute({ haul1: 20, ease1: 60 }).sentence).toContain("Left out");
    expect(model.compute({}).sentence).not.toContain("Left out");
  });

  it("must be three, up and down", () => {
    expect(() => readingFacts({ readings: readings.slice(1), prior: unknownLine(), load: 120 })).toThrow(ValueError);
    const { ease: _none, ...once } = readings[0]!;
    expect(() => readingFacts({ readings: [once, ...readings.slice(1)], prior: unknownLine(), load: 120 })).toThrow(
      "3 or more",
    );
  });
});

describe("what matters most", () => {
  const model = modelOf("what-matters-most");
  const shares = (settings: AnySettings) =>
    model.compute(settings).results.filter(({ measure }) => measure === "share");

  it("has shares that add up to all, or a little more for what numbers do together", () => {
    for (const asked of ["hauling", "easing", "deadBand"]) {
      const sum = shares({ asked }).reduce((all, one) => all + one.value, 0);
      expect(sum).toBeGreaterThan(97);
      expect(sum).toBeLessThan(125);
    }
  });

  it("puts the cover first for the hold on a ratchet, the load of the sail for the haul", () => {
    expect(shares({})[0]!.label).toBe("Cover on the tread");
    expect(shares({ asked: "hauling" })[0]!.label).toBe("Load of the sail");
    expect(shares({ last: "free" }).map(({ label }) => label)).not.toContain("Cover on the tread");
  });

  it("leaves out what is known exactly, and the range narrows", () => {
    const width = (settings: AnySettings) => {
      const { low, high } = model.compute(settings).results[0]!;
      return high! - low!;
    };
    expect(shares({ known: "surface" }).map(({ label }) => label)).not.toContain("Cover on the tread");
    expect(width({ known: "surface" })).toBeLessThan(width({}));
  });

  it("does not shift a share with the wind: the losses go with the load", () => {
    const at = (wind: number) => shares({ wind })[0]!.value;
    expect(Math.abs(at(8) - at(16))).toBeLessThan(1);
  });
});
