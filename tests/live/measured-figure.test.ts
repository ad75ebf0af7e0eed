import { describe, expect, it } from "vitest";
import { figureIn, type MeasuredFigure } from "../../src/live/measured-figure.js";
import { firstUnits, printed, printedRange } from "../../src/notebook/measure.js";

const figure: MeasuredFigure = {
  name: "hand-force",
  title: "T",
  caption: "C",
  altText: "A",
  x: { title: "Wind", measure: "wind", minimum: 0, maximum: 20 },
  y: { title: "Hand force", measure: "force", minimum: 0 },
  top: { title: "Wind again", measure: "wind", marks: [{ at: 10, value: 10 }] },
  panels: [
    {
      title: "",
      series: [{ name: "hand", x: [0, 10], line: [0, null], bands: { line: { low: [0, 1], high: [9.80665, 2] } } }],
      limits: [{ name: "limit", value: 9.80665, low: 0, high: 98.0665 }],
    },
  ],
};

describe("a figure in the reader's units", () => {
  it("keeps its numbers in newtons and knots", () => {
    const shown = figureIn(figure, firstUnits);
    expect(shown.x).toEqual({ title: "Wind [kn]", minimum: 0, maximum: 20 });
    expect(shown.y).toEqual({ title: "Hand force [N]", minimum: 0 });
    expect(shown.panels).toEqual(figure.panels);
  });

  it("moves every number of an axis with its unit", () => {
    const shown = figureIn(figure, { force: "kgf", wind: "m/s" });
    const metres = (10 * 1852) / 3600;
    expect(shown.y.title).toBe("Hand force [kgf]");
    expect(shown.x.maximum).toBeCloseTo(2 * metres, 12);
    expect(shown.top?.marks[0]?.at).toBeCloseTo(metres, 12);
    expect(shown.top?.marks[0]?.label).toBe("5.1");
    const [series] = shown.panels[0]!.series;
    expect(series?.x[1]).toBeCloseTo(metres, 12);
    expect(series?.line).toEqual([0, null]);
    expect(series?.bands?.line?.high[0]).toBeCloseTo(1, 12);
    expect(shown.panels[0]!.limits?.[0]).toEqual({ name: "limit", value: 1, low: 0, high: expect.closeTo(10, 12) });
  });
});

describe("printed numbers", () => {
  it("carry their unit, degrees close", () => {
    expect(printed("force", 86.34, firstUnits)).toBe("86.3\u00a0N");
    expect(printed("force", 4.4482216152605, { ...firstUnits, force: "lbf" })).toBe("1\u00a0lbf");
    expect(printed("angle", 90, firstUnits)).toBe("90°");
    expect(printed("plain", 5, firstUnits)).toBe("5");
    expect(printed("wind", 9.412, firstUnits)).toBe("9.4\u00a0kn");
  });

  it("give a range two figures, or three where two would move it off its middle", () => {
    const range = (value: number, low: number, high: number) =>
      printedRange({ measure: "force", value, low, high }, firstUnits);
    expect(range(85, 70.2, 104.9)).toBe("70 to 100\u00a0N");
    expect(range(247, 241, 257)).toBe("241 to 257\u00a0N");
    expect(range(5, 5, 5)).toBeUndefined();
  });
});
