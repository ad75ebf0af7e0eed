import { describe, expect, it } from "vitest";
import { liveModels } from "../../src/live/models.js";
import { livePanel } from "../../src/live/panel.js";
import type { AnySettings, SettingValue } from "../../src/notebook/control.js";
import { liveHtml } from "../../src/notebook/html.js";
import type { Units } from "../../src/notebook/measure.js";
import { checkShown } from "../../src/notebook/shape.js";
import { ValueError } from "../../src/quantity/errors.js";
import { along, falls, named, rises, value } from "./asked.js";

describe.each(liveModels.map((model) => [model.name, model] as const))("the model %s", (name, model) => {
  it("makes a whole panel of the page's own case", () => {
    const panel = livePanel(name);
    expect(checkShown(panel)).toBe(panel);
    expect(panel.results.some(({ low }) => low !== undefined)).toBe(true);
    for (const { value: middle, low = middle, high = middle, label } of panel.results) {
      expect(low, label).toBeLessThanOrEqual(middle);
      expect(high, label).toBeGreaterThanOrEqual(middle);
    }
  });

  it("computes at both ends of every control, and at every option, in any unit", () => {
    const units: Units = { force: "kgf", wind: "m/s" };
    for (const [control, known] of Object.entries(model.controls)) {
      const places: SettingValue[] =
        known.kind === "range"
          ? [known.minimum, known.maximum]
          : known.kind === "choice"
            ? known.options.map((option) => option.value)
            : [true, false];
      for (const place of places) {
        const view = model.compute({ [control]: place }, units);
        const panel = { ...livePanel(name), ...view };
        expect(checkShown(panel), `${control} ${place}`).toBe(panel);
      }
    }
  });

  it("speaks no newtons or knots to a reader of other units", () => {
    const { results, figure, sentence } = model.compute({}, { force: "kgf", wind: "m/s" });
    const words = JSON.stringify([
      results.map(({ text, range }) => [text, range]),
      figure.title,
      figure.altText,
      sentence,
    ]);
    expect(words).not.toMatch(/\d[\s\u00a0](?:N|kn)\b/u);
  });

  it("refuses what its controls do not have", () => {
    expect(() => model.compute({ nothing: 1 })).toThrow(ValueError);
    const [control] = Object.entries(model.controls).find(([, one]) => one.kind === "range")!;
    expect(() => model.compute({ [control]: -1 })).toThrow(ValueError);
  });
});

describe("what the hand feels", () => {
  const model = "what-the-hand-feels";

  it("grows with the square of the wind", () => {
    const at = (wind: number) => value(named(model), "Sheet load", { wind });
    expect(at(16) / at(8)).toBeCloseTo(4, 10);
    expect(rises(along(model, "Hold", "wind"))).toBe(true);
  });

  it("is less to hold with fewer strands, the same to haul", () => {
    expect(rises(along(model, "Hold", "strands"))).toBe(true);
    expect(new Set(along(model, "Haul", "strands").map((one) => one.toPrecision(9))).size).toBe(1);
  });

  it("falls from block to block: plain, smooth, ribbed, faceted, toothed", () => {
    expect(falls(along(model, "Hold", "block"))).toBe(true);
  });

  it("does not know the cover of a plain block", () => {
    expect(new Set(along(model, "Hold", "strands", { block: "plain" })).size).toBe(1);
  });

  it("falls with purchase", () => {
    expect(falls(along(model, "Haul", "purchase"))).toBe(true);
  });
});

describe("purchases", () => {
  const model = "purchases-and-lost-force";

  it("without loss share the load among the parts both ways", () => {
    const lossless = { loss: 0, parts: 5, load: 1000 };
    expect(value(named(model), "Haul", lossless)).toBeCloseTo(200, 9);
    expect(value(named(model), "Hold", lossless)).toBeCloseTo(200, 9);
    expect(value(named(model), "Efficiency", lossless)).toBeCloseTo(100, 9);
  });

  it("ask for more the more each sheave takes, and hold more", () => {
    expect(rises(along(model, "Haul", "loss"))).toBe(true);
    expect(falls(along(model, "Hold", "loss"))).toBe(true);
    expect(rises(along(model, "Haul", "leads"))).toBe(true);
  });

  it("grow in step with the load", () => {
    expect(value(named(model), "Haul", { load: 2000 }) / value(named(model), "Haul", { load: 1000 })).toBeCloseTo(2, 9);
  });

  it("say so where one part from the moving block is asked for", () => {
    expect(named(model).compute({ parts: 1, from: "moving" }).sentence).toContain("is no purchase: this is a 2:1");
  });
});

describe("a turn", () => {
  const model = "around-a-ring";

  it("costs more round a larger angle of a ring, and leaves less to hold", () => {
    expect(rises(along(model, "Haul", "angle"))).toBe(true);
    expect(falls(along(model, "Hold", "angle"))).toBe(true);
  });

  it("costs less on a thick bar than on a thin one, and less still on balls", () => {
    expect(falls(along(model, "Haul", "bar"))).toBe(true);
    expect(value(named(model), "Haul", { round: "ball", bar: 40 })).toBeLessThan(
      value(named(model), "Haul", { bar: 40 }),
    );
  });
});

describe("sheaves", () => {
  const model = "big-sheave-small-sheave";

  it("cost less the bigger they are, and more the thicker the rope", () => {
    expect(falls(along(model, "Haul", "sheave"))).toBe(true);
    expect(rises(along(model, "Haul", "rope"))).toBe(true);
    expect(rises(along(model, "Hold", "sheave"))).toBe(true);
  });
});

describe("grip", () => {
  const model = "grip-without-strain";

  it("rougher treads hold more and run out later", () => {
    expect(falls(along(model, "Hold", "tread"))).toBe(true);
    expect(rises(along(model, "Goes out by itself from", "tread"))).toBe(true);
  });

  it("a stronger hand is enough for more wind, and the line feels the same", () => {
    expect(rises(along(model, "Your hand is enough up to", "hand"))).toBe(true);
    expect(new Set(along(model, "Hold", "hand")).size).toBe(1);
  });

  it("judges the hand by the whole range", () => {
    const said = (hand: number) => named(model).compute({ hand }).sentence;
    expect(said(250)).toContain("keeps that up.");
    expect(said(20)).toContain("more than a hand like yours");
  });
});

describe("a race day", () => {
  const model = "hands-through-a-race-day";

  it("leaves the highest load alone when the wind rises", () => {
    const most = along(model, "Highest sheet load all day", "wind");
    for (const one of most) expect(one / most[0]!).toBeCloseTo(1, 2);
  });

  it("is easier with a stronger grip, a grippier tread and fewer races", () => {
    expect(rises(along(model, "Highest sheet load all day", "grip"))).toBe(true);
    expect(rises(along(model, "Highest sheet load all day", "tread"))).toBe(true);
    const byRaces = along(model, "Highest sheet load all day", "races");
    expect(byRaces.every((one, i) => i === 0 || one <= byRaces[i - 1]! * (1 + 1e-6))).toBe(true);
  });

  it("says when the hand gives out, just where the highest load is passed", () => {
    const strongest = value(named(model), "Wind that makes it");
    const gives = (wind: number) =>
      named(model)
        .compute({ wind })
        .results.some(({ label }) => label.startsWith("Hand gives out"));
    expect(gives(0.995 * strongest)).toBe(false);
    expect(gives(1.005 * strongest)).toBe(true);
  });
});

describe("how thin", () => {
  const model = "how-thin-can-it-be";
  const never = (values: readonly number[], wrong: (one: number, before: number) => boolean) =>
    values.every((one, i) => i === 0 || !wrong(one, values[i - 1]!));

  it("asks for no thinner line under more load, and never for one below that of strength alone", () => {
    const sizes = [100, 900, 1800, 2700].map((load) => value(named(model), "On strength alone", { load }));
    expect(never(sizes, (one, before) => one < before)).toBe(true);
    expect(sizes.at(-1)).toBeGreaterThan(sizes[0]!);
    for (const load of [100, 450, 1100])
      expect(value(named(model), "On strength alone", { load })).toBeLessThanOrEqual(
        value(named(model), "Thinnest that does it", { load }),
      );
  });

  it("asks for more in polyester, with a knot, and when worn", () => {
    const alone = (settings: AnySettings) =>
      value(named(model), "On strength alone", { load: 900, groove: 14, ...settings });
    expect(alone({ rope: "polyester" })).toBeGreaterThan(alone({}));
    expect(alone({ end: "bowline" })).toBeGreaterThan(alone({}));
    expect(alone({ use: "worn" })).toBeGreaterThan(alone({ use: "new" }));
  });

  it("says so where no size does it all", () => {
    const view = named(model).compute({ hand: 400, groove: 3 });
    expect(view.sentence).toContain("No size");
    expect(view.results.some(({ label }) => label === "Thinnest that does it")).toBe(false);
  });
});

describe("a panel for a notebook", () => {
  it("agrees with the page's own numbers, to the digits that are printed", () => {
    const hold = livePanel("what-the-hand-feels").results.find(({ label }) => label === "Hold")!;
    const band = { value: hold.value, low: hold.low!, high: hold.high! };
    expect(() => livePanel("what-the-hand-feels", { agree: { Hold: band } })).not.toThrow();
    expect(() => livePanel("what-the-hand-feels", { agree: { Hold: hold.value * 1.00001 } })).not.toThrow();
    expect(() => livePanel("what-the-hand-feels", { agree: { Hold: hold.value * 1.01 } })).toThrow(ValueError);
    expect(() => livePanel("what-the-hand-feels", { agree: { Hold: { ...band, high: 2 * band.high } } })).toThrow(
      "as the panel has it",
    );
  });

  it("is shown in a live notebook with its numbers and its figure", () => {
    const panel = livePanel("around-a-ring");
    const shown = liveHtml(() => "")(panel);
    for (const { label, text } of panel.results) expect(shown).toContain(`<td>${label}</td><td>${text}</td>`);
    expect(shown).toContain(panel.figure.title);
    expect(shown).toContain(panel.sentence);
  });

  it("refuses unknown models and results, with the nearest word", () => {
    expect(() => livePanel("what-the-hand-feel")).toThrow("what-the-hand-feels");
    expect(() => livePanel("around-a-ring", { agree: { Hauls: 1 } })).toThrow('"Haul"');
  });

  it.each<[string, Readonly<Record<string, unknown>>]>([
    ["without results", { results: [] }],
    ["with a setting out of range", { settings: { ...livePanel("around-a-ring").settings, load: 1e9 } }],
    ["with an unknown option", { settings: { ...livePanel("around-a-ring").settings, round: "square" } }],
    ["with an unknown measure", { results: [{ label: "a", measure: "stone", value: 1, text: "1" }] }],
    ["without a sentence", { sentence: "" }],
  ])("is refused %s", (_, broken) => {
    expect(() => checkShown({ ...livePanel("around-a-ring"), ...broken })).toThrow(ValueError);
  });
});
