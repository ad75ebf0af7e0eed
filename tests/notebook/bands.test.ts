import { describe, expect, it } from "vitest";
import { figure } from "../../src/notebook/display.js";
import type { Series } from "../../src/notebook/output.js";
import { lightPalette, plotlyFigure } from "../../src/notebook/plotly.js";
import { figureRanges } from "../../src/notebook/scale.js";
import { ValueError } from "../../src/quantity/errors.js";
import { dataTables } from "../../src/report/datatable.js";
import { thumbnailOf } from "../../src/report/thumbnail.js";

const sheet: Series = {
  name: "sheet",
  x: [0, 100, 200],
  hauling: [0, 60, 120],
  easing: [0, 40, 80],
  bands: {
    hauling: { low: [0, 50, 101], high: [0, 75, 150] },
    easing: { low: [0, 30, 60], high: [0, 45, 95] },
  },
};

const drawn = (series: Series) =>
  figure({
    name: "bands",
    title: "A band",
    caption: "Invented.",
    altText: "Ends at 120.",
    x: { title: "Load [N]" },
    y: { title: "Hand [N]" },
    panels: [{ title: "", series: [series] }],
  });

describe("bands of a figure", () => {
  it("are tinted under the curves, in a tint of their own", () => {
    const { data } = plotlyFigure(drawn(sheet), lightPalette);
    const names = data.map(({ name }) => name);
    expect(names.indexOf("sheet, hauling, 90 % band")).toBeLessThan(names.indexOf("sheet, hauling"));
    const tinted = data.filter(({ fillcolor }) => fillcolor === lightPalette.band);
    expect(tinted.map(({ name }) => name)).toEqual(["sheet, hauling, 90 % band", "sheet, easing, 90 % band"]);
    expect(tinted[0]!.y).toEqual([0, 75, 150, 101, 50, 0]);
    expect(data.filter(({ fillcolor }) => fillcolor === lightPalette.tint)).toHaveLength(1);
  });

  it("stay in view", () => {
    expect(figureRanges(drawn(sheet)).y.high).toBeGreaterThan(150);
  });

  it("have their ends in the table of numbers, but no strokes in the sketch", () => {
    const { text } = dataTables(drawn(sheet));
    for (const words of [
      "sheet, hauling",
      "sheet, easing",
      "in brackets 5 % to 95 %",
      "120 (101 to 150)",
      "80 (60 to 95)",
    ])
      expect(text).toContain(words);
    expect(thumbnailOf(drawn(sheet)).strokes).toHaveLength(2);
  });

  it("leave gaps where an end is missing", () => {
    const line: Series = { name: "one", x: [1, 2], line: [1, 2], bands: { line: { low: [0, null], high: [2, 3] } } };
    const { data } = plotlyFigure(drawn(line), lightPalette);
    expect(data.find(({ name }) => name === "one, 90 % band")?.x).toEqual([]);
  });

  it("are refused without their curve, of another length, or upside down", () => {
    const band = { low: [0, 1, 2], high: [1, 2, 3] };
    const base = { name: "s", x: [1, 2, 3], line: [1, 1, 1] };
    expect(() => drawn({ ...base, bands: { hauling: band } })).toThrow(ValueError);
    expect(() => drawn({ ...base, bands: { line: { ...band, low: [0] } } })).toThrow(ValueError);
    expect(() => drawn({ ...base, bands: { line: { low: band.high, high: band.low } } })).toThrow(ValueError);
    expect(() => drawn({ ...base, bands: { line: { ...band, high: [1, 2, Number.NaN] } } })).toThrow(ValueError);
  });
});
