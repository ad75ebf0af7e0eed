import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { spreadLabels, wrapLabel } from "../../src/notebook/labels.js";
import type { Figure } from "../../src/notebook/output.js";
import { darkPalette, lightPalette, plotlyFigure } from "../../src/notebook/plotly.js";
import { bandOutline } from "../../src/notebook/traces.js";
import { anyFigure, demoFigure } from "./figures.js";

interface Trace {
  readonly name: string;
  readonly xaxis: string;
  readonly yaxis: string;
  readonly mode: string;
  readonly x: readonly (number | null)[];
  readonly y: readonly (number | null)[];
  readonly fill?: string;
  readonly fillcolor?: string;
  readonly connectgaps?: boolean;
  readonly line?: { readonly color: string; readonly width: number; readonly dash: string };
  readonly marker?: { readonly symbol: string; readonly color: string };
}
interface Layout {
  readonly [axis: string]: unknown;
  readonly annotations: readonly {
    readonly text: string;
    readonly xref: string;
    readonly y: number;
    readonly xanchor: string;
    readonly yanchor: string;
    readonly bgcolor?: string;
    readonly font: { readonly color: string };
  }[];
  readonly shapes: readonly {
    readonly type: string;
    readonly y0: number;
    readonly y1: number;
    readonly line: { readonly color: string };
  }[];
}
interface AxisLayout {
  readonly range: readonly [number, number];
  readonly domain: readonly [number, number];
  readonly matches?: string;
  readonly title?: { readonly text: string };
}

const draw = (figure: Figure, columns = 1, palette = lightPalette) => {
  const { data, layout, config } = plotlyFigure(figure, palette, { columns });
  return { data: data as unknown as Trace[], layout: layout as unknown as Layout, config };
};
const axis = (layout: Layout, name: string) => layout[name] as AxisLayout;
const only = (panel: number): Figure => ({ ...demoFigure, panels: demoFigure.panels.slice(panel, panel + 1) });

describe("traces", () => {
  test("hauling is solid, easing dashed in the same colour, the dead band one tint", () => {
    const { data } = draw(only(0));
    for (const name of ["with ratchet", "plain block"]) {
      const [hauling, easing, band] = ["hauling", "easing", "dead band"].map((part) =>
        data.find((trace) => trace.name === `${name}, ${part}`),
      );
      expect(hauling?.line?.dash).toBe("solid");
      expect(easing?.line?.dash).toBe("dash");
      expect(easing?.line?.color).toBe(hauling?.line?.color);
      expect(band).toMatchObject({ fill: "toself", fillcolor: lightPalette.tint });
    }
    expect(data.filter((trace) => trace.fill === "toself")).toHaveLength(2);
  });

  test("the highlighted series has the accent and is thicker; the others differ by shape, not only by colour", () => {
    const { data } = draw(only(0));
    const find = (name: string) => data.find((trace) => trace.name === name);
    expect(find("with ratchet, hauling")?.line).toEqual({ color: lightPalette.water, width: 3, dash: "solid" });
    const plain = find("plain block, hauling");
    const frictionless = find("no friction");
    expect(plain?.line?.width).toBeLessThan(3);
    expect(new Set([plain?.line?.color, frictionless?.line?.color, lightPalette.water, lightPalette.brick]).size).toBe(
      4,
    );
    expect(plain?.marker?.symbol).not.toBe(frictionless?.marker?.symbol);
    expect(["solid", "dash"]).not.toContain(frictionless?.line?.dash);
    expect(find("measured")).toMatchObject({ mode: "markers", x: [150, 350], y: [82, 190] });
  });

  test("a gap breaks curve and tint", () => {
    expect(bandOutline([1, 2, 3, 4, 5], [10, 20, 30, 40, 50], [1, 2, null, 4, 5])).toEqual({
      x: [1, 2, 2, 1, null, 4, 5, 5, 4],
      y: [10, 20, 2, 1, null, 40, 50, 5, 4],
    });
    expect(bandOutline([1, 2, 3], [1, null, 3], [1, 2, 3])).toEqual({ x: [], y: [] });
  });

  test("every value is drawn once, gaps stay gaps, tints lie between the curves", () => {
    fc.assert(
      fc.property(anyFigure, fc.integer({ min: 1, max: 3 }), (figure, columns) => {
        const { data } = draw(figure, columns);
        const drawn = data.filter((trace) => trace.fill === undefined && trace.name !== "top scale");
        const given = figure.panels.flatMap(({ series }) =>
          series.flatMap(({ x, hauling, easing, line, points }) =>
            [hauling, easing, line, points].flatMap((y) => (y ? [{ x, y }] : [])),
          ),
        );
        expect(drawn.map(({ x, y }) => ({ x, y }))).toEqual(given);
        for (const trace of drawn) expect(trace.connectgaps).toBe(false);
        for (const trace of drawn) if (/, easing$/.test(trace.name)) expect(trace.line?.dash).toBe("dash");
        for (const trace of drawn) if (/, hauling$/.test(trace.name)) expect(trace.line?.dash).toBe("solid");
        const pairs = figure.panels.flatMap(({ series }) => series.filter(({ easing }) => easing));
        const tints = data.filter((trace) => trace.fill === "toself");
        expect(tints).toHaveLength(pairs.length);
        for (const [index, { hauling = [], easing = [] }] of pairs.entries()) {
          const flags = hauling.map((high, at) => high !== null && easing[at] !== null);
          const runs = flags
            .map(Number)
            .join("")
            .split("0")
            .filter((run) => run.length > 1);
          const points = runs.reduce((sum, run) => sum + 2 * run.length, 0);
          expect(tints[index]?.x).toHaveLength(points + Math.max(0, runs.length - 1));
          expect(tints[index]?.y.filter((y) => y === null)).toHaveLength(Math.max(0, runs.length - 1));
        }
      }),
      { seed: 7 },
    );
  });

  test("the same series looks the same in every panel", () => {
    const { data } = draw(demoFigure, 2);
    const twice = data.filter((trace) => trace.name === "plain block, hauling");
    expect(twice).toHaveLength(2);
    expect(twice[0]?.line).toEqual(twice[1]?.line);
  });
});

describe("layout", () => {
  test("panels stand side by side or one under the other and share their scales", () => {
    const wide = draw(demoFigure, 2).layout;
    const narrow = draw(demoFigure, 1).layout;
    expect(axis(wide, "xaxis").domain[1]).toBeLessThan(axis(wide, "xaxis2").domain[0]);
    expect(axis(wide, "yaxis").domain).toEqual(axis(wide, "yaxis2").domain);
    expect(axis(narrow, "xaxis").domain).toEqual(axis(narrow, "xaxis2").domain);
    expect(axis(narrow, "yaxis").domain[0]).toBeGreaterThan(axis(narrow, "yaxis2").domain[1]);
    for (const layout of [wide, narrow]) {
      expect(axis(layout, "yaxis2")).toMatchObject({ matches: "y", range: axis(layout, "yaxis").range });
      expect(axis(layout, "xaxis2")).toMatchObject({ matches: "x" });
    }
    expect(axis(wide, "yaxis2").title).toBeUndefined();
    expect(axis(narrow, "yaxis2").title?.text).toBe("Hand force [N]");
  });

  test("the scale starts at zero unless something lies below, and holds data and limits", () => {
    fc.assert(
      fc.property(anyFigure, fc.boolean(), (figure, below) => {
        const sign = below ? -1 : 1;
        const turn = (list?: readonly (number | null)[]) =>
          list?.map((value) => (value === null ? null : sign * value));
        const turned = {
          ...figure,
          panels: figure.panels.map((panel) => ({
            ...panel,
            limits: [{ name: "limit", value: 40 * sign }],
            series: panel.series.map(({ name, x, hauling, easing, line, points }) => ({
              name,
              x,
              ...(hauling ? { hauling: turn(hauling) ?? [] } : {}),
              ...(easing ? { easing: turn(easing) ?? [] } : {}),
              ...(line ? { line: turn(line) ?? [] } : {}),
              ...(points ? { points: turn(points) ?? [] } : {}),
            })),
          })),
        };
        const { data, layout } = draw(turned);
        const [low, high] = axis(layout, "yaxis").range;
        expect(low).toBeLessThan(high);
        if (below) expect(high).toBe(0);
        else expect(low).toBe(0);
        const values = [40 * sign, ...data.flatMap((trace) => trace.y)].filter((value) => value !== null);
        for (const value of values) expect(value >= low && value <= high).toBe(true);
      }),
      { seed: 7 },
    );
  });

  test("the axis's own ends win, and a limit beyond them is still named", () => {
    const figure: Figure = {
      ...only(0),
      y: { title: "N", minimum: 10, maximum: 120 },
      x: { title: "x", maximum: 300 },
    };
    const { layout } = draw(figure);
    expect(axis(layout, "yaxis").range).toEqual([10, 120]);
    expect(axis(layout, "xaxis").range).toEqual([0, 300]);
    const label = layout.annotations.find(({ text }) => text.startsWith("steady hold"));
    expect(label).toMatchObject({ text: "steady hold, one hand ↑ beyond the scale", y: 120 });
  });

  test("a limit is a thin rule with its band, in brick, with its name", () => {
    const { layout } = draw(only(0));
    expect(layout.shapes).toMatchObject([
      { type: "rect", y0: 110, y1: 190, fillcolor: lightPalette.brick },
      { type: "line", y0: 150, y1: 150, line: { color: lightPalette.brick, width: 1 } },
    ]);
    expect(layout.annotations.filter(({ font }) => font.color === lightPalette.brick)).toMatchObject([
      { text: "steady hold, one hand", y: 150 },
    ]);
  });

  test("limits are named apart from each other and off the curves", () => {
    const limits = [
      { name: "steady hold", value: 150 },
      { name: "short pull", value: 152 },
    ];
    const rising: Figure = {
      ...only(1),
      panels: [{ title: "", series: [{ name: "pull", x: [0, 10, 400], line: [0, 160, 300] }], limits }],
    };
    const named = (figure: Figure) =>
      draw(figure).layout.annotations.filter(({ font }) => font.color === lightPalette.brick);
    const labels = named(rising);
    const places = labels.map(({ xanchor, yanchor }) => `${xanchor} ${yanchor}`);
    expect(new Set(places).size).toBe(2);
    for (const label of labels) {
      expect(label.xanchor === "left" && label.yanchor === "bottom").toBe(false);
      expect(label.bgcolor).toBeUndefined();
    }
    const everywhere = { name: "measured", x: [0, 100, 200, 300, 400], points: [150, 150, 150, 150, 150] };
    const full: Figure = { ...only(1), panels: [{ title: "", series: [everywhere], limits: limits.slice(0, 1) }] };
    expect(named(full)[0]?.bgcolor).toBe(lightPalette.paper);
  });

  test("on a phone all stands in one column, each panel with its own scales, labels in short lines", () => {
    const { layout } = plotlyFigure(demoFigure, lightPalette, { columns: 2, narrow: true }) as unknown as {
      layout: Layout & { margin: { r: number } };
    };
    expect(axis(layout, "xaxis").domain).toEqual([0, 1]);
    expect(axis(layout, "xaxis2").domain).toEqual([0, 1]);
    for (const name of ["xaxis", "xaxis2"]) expect(axis(layout, name).title?.text).toBe("Sheet load [N]");
    for (const name of ["xaxis3", "xaxis4"]) expect(axis(layout, name).title?.text).toBe("Wind [kn]");
    const lines = layout.annotations.filter(({ xref }) => xref === "x").flatMap(({ text }) => text.split("<br>"));
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(10);
    expect(layout.margin.r).toBeLessThan(0.3 * 360);
  });

  test("curves are named at their ends, hauling and easing once", () => {
    const { layout } = draw(only(0));
    const names = layout.annotations.filter(({ xref }) => xref === "x").map(({ text }) => text.replaceAll("<br>", " "));
    expect(names).toEqual(["with ratchet, hauling", "easing", "plain block", "no friction", "measured"]);
    expect(layout.showlegend).toBe(false);
  });

  test("the top scale is a second axis that a trace keeps alive", () => {
    const { data, layout } = draw(demoFigure, 2);
    expect(layout.xaxis3).toMatchObject({
      side: "top",
      overlaying: "x",
      tickvals: [100, 225, 400],
      ticktext: ["8", "12", "16"],
      title: { text: "Wind [kn]" },
    });
    expect(layout.xaxis4).toMatchObject({ side: "top", overlaying: "x2" });
    expect(data.filter((trace) => trace.xaxis === "x3" || trace.xaxis === "x4")).toHaveLength(2);
    const below = draw(demoFigure, 1).layout;
    for (const name of ["xaxis3", "xaxis4"]) expect(axis(below, name).title?.text).toBe("Wind [kn]");
  });

  test("names are text, not markup", () => {
    const figure: Figure = {
      ...only(1),
      panels: [{ title: "", series: [{ name: "a<b>&c", x: [1, 2], line: [1, 2] }] }],
    };
    const { data, layout } = draw(figure);
    expect(data.at(-1)?.name).toBe("a&lt;b&gt;&amp;c");
    expect(layout.annotations.at(-1)?.text).toBe("a&lt;b&gt;&amp;c");
  });

  test("all colours come from the palette; no logo", () => {
    const { data, layout, config } = draw(demoFigure, 2, darkPalette);
    const text = JSON.stringify({ data, layout });
    for (const colour of Object.values(lightPalette)) expect(text).not.toContain(colour);
    expect(config).toMatchObject({ displaylogo: false, displayModeBar: "hover", responsive: true });
  });

  test("no tool sends a chart anywhere", () => {
    expect(draw(demoFigure).config).toMatchObject({ plotlyServerURL: "", showSendToCloud: false });
  });
});

describe("labels", () => {
  const label = fc.record({
    at: fc.double({ min: 0, max: 100, noNaN: true }),
    room: fc.double({ min: 0.5, max: 15, noNaN: true }),
  });

  test("stand apart, in order, inside the scale", () => {
    fc.assert(
      fc.property(fc.array(label, { minLength: 1, maxLength: 6 }), (labels) => {
        const heights = spreadLabels(labels, 0, 100);
        const placed = labels
          .map(({ at, room }, index) => ({ at, half: room / 2, height: heights[index] ?? Number.NaN }))
          .sort((one, other) => one.height - other.height);
        for (const { height, half } of placed) expect(height >= half - 1e-9 && height <= 100 - half + 1e-9).toBe(true);
        for (const [index, upper] of placed.slice(1).entries()) {
          const lower = placed[index];
          if (lower === undefined) continue;
          expect(upper.height - lower.height).toBeGreaterThanOrEqual(upper.half + lower.half - 1e-9);
          expect(upper.at).toBeGreaterThanOrEqual(lower.at);
        }
      }),
      { seed: 7 },
    );
  });

  test("stay where they are when there is room, and are squeezed when there is none", () => {
    expect(
      spreadLabels(
        [
          { at: 20, room: 4 },
          { at: 60, room: 4 },
        ],
        0,
        100,
      ),
    ).toEqual([20, 60]);
    expect(
      spreadLabels(
        [
          { at: 5, room: 2 },
          { at: 5, room: 2 },
        ],
        0,
        10,
      ),
    ).toEqual([4, 6]);
    expect(
      spreadLabels(
        [
          { at: 1, room: 10 },
          { at: 1, room: 10 },
        ],
        0,
        10,
      ),
    ).toEqual([2.5, 7.5]);
  });

  test("break at spaces", () => {
    expect(wrapLabel("two parts, hauling from the block", 12)).toEqual(["two parts,", "hauling from", "the block"]);
    expect(wrapLabel("unbreakablelongword x", 8)).toEqual(["unbreakablelongword", "x"]);
    expect(wrapLabel("load-sensing, hauling", 10)).toEqual(["load-", "sensing,", "hauling"]);
    expect(wrapLabel("two-part tackle", 18)).toEqual(["two-part tackle"]);
  });
});

describe("palettes", () => {
  const part = (value: number) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
  const luminance = (colour: string) => {
    const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) =>
      part(Number.parseInt(colour.slice(at, at + 2), 16) / 255),
    );
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const contrast = (one: string, other: string) => {
    const [high = 0, low = 0] = [luminance(one), luminance(other)].sort((first, second) => second - first);
    return (high + 0.05) / (low + 0.05);
  };

  test.each([
    ["light", lightPalette],
    ["dark", darkPalette],
  ])("every text colour of the %s palette stands out from the paper", (_, palette) => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 10);
    for (const role of ["ink", "quiet1", "quiet2", "quiet3", "quiet4", "water", "rope", "brick"] as const) {
      expect(contrast(palette[role], palette.paper), role).toBeGreaterThanOrEqual(4.5);
    }
  });
});
