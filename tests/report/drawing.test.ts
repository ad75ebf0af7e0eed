import { createContext, runInContext } from "node:vm";
import { build } from "esbuild";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Figure } from "../../src/notebook/output.js";
import { lightPalette, plotlyFigure } from "../../src/notebook/plotly.js";
import { figureRanges } from "../../src/notebook/scale.js";
import { figureSvg } from "../../src/report/drawing/figure.js";
import { bends, type Place } from "../../src/report/drawing/thin.js";
import { anyFigure, demoFigure } from "../notebook/figures.js";
import { type DrawnPanel, drawnPanels, numberOf } from "./drawn.js";

interface Trace {
  readonly name: string;
  readonly xaxis: string;
  readonly mode: string;
  readonly fill?: string;
  readonly x: readonly number[];
  readonly y: readonly (number | null)[];
  readonly line?: { readonly color: string; readonly dash: string };
}
interface Axis {
  readonly range: readonly [number, number];
  readonly tickvals: readonly number[];
  readonly ticktext: readonly string[];
  readonly title?: { readonly text: string };
}
interface Layout {
  readonly [axis: string]: unknown;
  readonly template: { readonly layout: { readonly xaxis: Axis; readonly yaxis: Axis } };
  readonly annotations: readonly { readonly text: string; readonly xref: string }[];
  readonly shapes: readonly { readonly type: string; readonly xref: string; readonly y0: number }[];
}

const forms = [
  ["on a phone", 328, { narrow: true }],
  ["on a wide page", 800, { columns: 3 }],
] as const;

const turn = Array.from({ length: 49 }, (_, index) => (index * Math.PI) / 24);
const axis = { title: "Load [N]" };

/** A figure of one panel; numbers are invented. */
function one(panel: Omit<Figure["panels"][number], "title">, rest: Partial<Figure> = {}): Figure {
  return { ...demoFigure, name: "one", x: axis, y: { title: "Hand [N]" }, panels: [{ title: "", ...panel }], ...rest };
}

const { top: _, ...withoutTop } = demoFigure;
const figures: readonly (readonly [string, Figure])[] = [
  ["pairs, lines, points, limits and wind marks in two panels", demoFigure],
  ["six panels", { ...withoutTop, panels: [0, 1, 2].flatMap(() => demoFigure.panels) }],
  [
    "bands and ends of the axes that cut curves",
    one(
      {
        series: [
          {
            name: "pull",
            x: turn,
            line: turn.map((at) => 50 * at ** 2),
            bands: { line: { low: turn.map((at) => 40 * at ** 2), high: turn.map((at) => 65 * at ** 2) } },
            highlight: true,
          },
          { name: "other", x: turn, line: turn.map((at) => 900 - 120 * at) },
        ],
        limits: [{ name: "a hand can hold", value: 260, low: 200, high: 320 }],
      },
      { x: { title: "Turn [rad]", minimum: 0.5, maximum: 6 }, y: { title: "Hand [N]", minimum: 10, maximum: 700 } },
    ),
  ],
  [
    "a closed curve about a point",
    one({
      series: [
        { name: "95 %", x: turn.map((at) => 3 + Math.cos(at)), line: turn.map((at) => 2 * Math.sin(at)) },
        { name: "best", x: [3], points: [0] },
      ],
    }),
  ],
  [
    "bars with their middle values",
    one({
      series: [
        {
          name: "all",
          x: [1, 1, 1, 2, 2, 2, 3, 3],
          line: [2, 9, null, 30, 12_000, null, 100, 900],
          points: [5, null, null, 400, null, null, 500, null],
          highlight: true,
        },
        { name: "without <creep> & slip", x: [1.2, 2.2, 3.2], points: [3, 77, null] },
      ],
    }),
  ],
  [
    "numbers below zero and close together",
    one({ series: [{ name: "change", x: [0.0012, 0.0014, 0.0019], line: [-4.2, 3.3, -0.5] }] }),
  ],
];

/** Distance from a place to a straight line between two others. */
function distance([x, y]: Place, [fromX, fromY]: Place, [toX, toY]: Place): number {
  const [along, up] = [toX - fromX, toY - fromY];
  const length = along ** 2 + up ** 2;
  const share = length === 0 ? 0 : Math.max(0, Math.min(1, ((x - fromX) * along + (y - fromY) * up) / length));
  return Math.hypot(x - fromX - share * along, y - fromY - share * up);
}

function chartOf(figure: Figure, options: { narrow?: boolean; columns?: number }) {
  const { data, layout } = plotlyFigure(figure, lightPalette, { ...options, fixedTicks: true });
  return { traces: data as unknown as Trace[], layout: layout as unknown as Layout };
}

const layoutName = (name: string) => `${name.charAt(0)}axis${name.slice(1)}`;
const words = (text: string) =>
  text
    .replaceAll("<br>", " ")
    .replace(/<\/?b>/gu, "")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&amp;", "&");

/** Curves and points of a panel against the traces of a chart, within tenths of a pixel of the drawing. */
function compareCurves(panel: DrawnPanel, traces: readonly Trace[], ranges: { x: Axis; y: Axis }): void {
  const drawn = traces.filter(({ fill, name }) => fill === undefined && name !== "top scale");
  expect(panel.curves.map(({ name }) => name).sort()).toEqual(
    drawn
      .filter(({ mode, x, y }) =>
        mode === "markers"
          ? x.some((at, index) => inside(at, y[index] ?? null, ranges))
          : y.some((value) => value !== null),
      )
      .map(({ name }) => words(name))
      .sort(),
  );
  const pixels = ([x, y]: Place): Place => [x / panel.pixel.x, y / panel.pixel.y];
  for (const curve of panel.curves) {
    const trace = drawn.find(({ name }) => words(name) === curve.name)!;
    const points = trace.x.flatMap((x, index): Place[] => {
      const y = trace.y[index] ?? null;
      if (y === null || (curve.isMarks && !inside(x, y, ranges))) return [];
      return [pixels([x, y])];
    });
    const vertices = curve.parts.flat().map(pixels);
    for (const vertex of vertices)
      expect(Math.min(...points.map((point) => Math.hypot(point[0] - vertex[0], point[1] - vertex[1])))).toBeLessThan(
        0.3,
      );
    if (curve.isMarks) expect(vertices).toHaveLength(points.length);
    const lines = curve.parts.map((part) => part.map(pixels));
    for (const point of points) {
      const distances = lines.flatMap((line) =>
        line.map((end, index) => distance(point, line[Math.max(0, index - 1)] ?? end, end)),
      );
      expect(Math.min(...distances)).toBeLessThan(0.4);
    }
    if (curve.isMarks) continue;
    // A gap breaks both.
    const runs = trace.y.map((y) => (y === null ? " " : "#")).join("");
    expect(curve.parts).toHaveLength(runs.split(" ").filter((run) => run !== "").length);
    expect(curve.dash === undefined).toBe(trace.line?.dash === "solid");
  }
}

function inside(x: number, y: number | null, ranges: { x: Axis; y: Axis }): boolean {
  const within = (value: number, [low, high]: readonly [number, number]) => value >= low && value <= high;
  return y !== null && within(x, ranges.x.range) && within(y, ranges.y.range);
}

function compare(figure: Figure, width: number, options: { narrow?: boolean; columns?: number }): void {
  const panels = drawnPanels(figureSvg(figure, { width, id: "a" }));
  const { traces, layout } = chartOf(figure, options);
  expect(panels).toHaveLength(figure.panels.length);
  panels.forEach((panel, index) => {
    const name = index === 0 ? "x" : `x${index + 1}`;
    const axes = { x: layout[layoutName(name)] as Axis, y: layout[layoutName(name.replace("x", "y"))] as Axis };
    for (const letter of ["x", "y"] as const) {
      const { tickvals, ticktext } = layout.template.layout[`${letter}axis`];
      expect(panel.ticks[letter].map(({ label }) => label)).toEqual(ticktext);
      panel.ticks[letter].forEach(({ label }, tick) => {
        expect(numberOf(label)).toBeCloseTo(tickvals[tick]!, 9);
      });
      panel.ranges[letter].forEach((end, side) => {
        expect(Math.abs(end - axes[letter].range[side]!) / panel.pixel[letter]).toBeLessThan(0.5);
      });
    }
    compareCurves(
      panel,
      traces.filter(({ xaxis }) => xaxis === name),
      axes,
    );
    const rules = layout.shapes.filter(({ type, xref }) => type === "line" && xref === `${name} domain`);
    for (const { value } of panel.limits)
      expect(Math.min(...rules.map(({ y0 }) => Math.abs(y0 - value))) / panel.pixel.y).toBeLessThan(0.2);
    const own = layout.annotations.filter(({ xref }) => xref === name || xref === `${name} domain`);
    const key = figureSvg(figure, { width, id: "a" }).split('<g class="key">')[1];
    for (const { text } of own) {
      const inKey = key !== undefined && words(key.replace(/<[^>]*>/gu, " ")).includes(words(text));
      if (!inKey) expect(panel.words).toContain(words(text));
    }
  });
}

describe("a drawing and the chart to explore", () => {
  it.each(figures.flatMap(([name, figure]) => forms.map(([place, ...form]) => [name, place, figure, form] as const)))(
    "agree in ticks, ranges, curves and words: %s, %s",
    (_name, _place, figure, [width, options]) => {
      compare(figure, width, options);
    },
  );

  it("agree for any figure", () => {
    fc.assert(
      fc.property(anyFigure, fc.constantFrom(...forms), (figure, [, width, options]) => {
        // Axes whose numbers a reader could tell apart.
        const { x, y } = figureRanges(figure);
        fc.pre(x.high - x.low > 1e-3 && y.high - y.low > 1e-3);
        compare(figure, width, options);
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it("have the wind marks at the same loads", () => {
    for (const [, width, options] of forms) {
      const { layout } = chartOf(demoFigure, options);
      const top = layout.xaxis3 as Axis;
      for (const { ticks } of drawnPanels(figureSvg(demoFigure, { width, id: "a" }))) {
        expect(ticks.upper.map(({ label }) => label)).toEqual(top.ticktext);
        const [first, last] = [ticks.x[0]!, ticks.x.at(-1)!];
        const perPixel = (numberOf(last.label) - numberOf(first.label)) / (last.place - first.place);
        ticks.upper.forEach(({ place }, index) => {
          const load = numberOf(first.label) + (place - first.place) * perPixel;
          expect(Math.abs(load - top.tickvals[index]!) / perPixel).toBeLessThan(0.3);
        });
      }
    }
  });
});

describe("a drawing", () => {
  it("has hauling solid and easing dashed in one colour, with the dead band tinted", () => {
    const [panel] = drawnPanels(figureSvg(demoFigure, { width: 800, id: "a" }));
    for (const name of ["with ratchet", "plain block"]) {
      const [hauling, easing] = ["hauling", "easing"].map((way) =>
        panel!.curves.find((curve) => curve.name === `${name}, ${way}`),
      );
      expect([hauling!.dash, easing!.dash]).toEqual([undefined, "7 4"]);
      expect(hauling!.stroke).toBe(easing!.stroke);
    }
    expect(
      figureSvg(demoFigure, { width: 800, id: "a" }).match(/<path d="[^"]*Z" fill="var\(--tint\)"/gu),
    ).toHaveLength(4);
  });

  it("carries no colour but by role, and no id twice", () => {
    const svg = figureSvg(demoFigure, { width: 328, id: "a" });
    expect(svg).not.toMatch(/#[0-9a-f]{6}|rgb/iu);
    const ids = [...svg.matchAll(/ id="([^"]+)"/gu)].map(([, id]) => id!);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id.startsWith("a-")).toBe(true);
    for (const [, target] of svg.matchAll(/url\(#([^)]+)\)/gu)) expect(ids).toContain(target);
  });

  it("tells a reader without sight what it shows", () => {
    const svg = figureSvg(demoFigure, { width: 328, id: "a" });
    expect(svg).toMatch(/^<svg [^>]*role="img" aria-labelledby="a-title a-desc"/u);
    expect(svg).toContain(`<desc id="a-desc">${demoFigure.altText}</desc>`);
  });

  it("sets panels side by side where there is room", () => {
    const plots = (width: number) =>
      [
        ...figureSvg(demoFigure, { width, id: "a" }).matchAll(/<svg x="([\d.]+)" y="([\d.]+)"[^>]*class="plot[^"]*"/gu),
      ].map(([, x, y]) => [x, y]);
    const [left, right] = plots(800);
    expect(left![1]).toBe(right![1]);
    const [upper, lower] = plots(328);
    expect(upper![0]).toBe(lower![0]);
  });

  it("sets fewer panels side by side where the marks above them would lose their words", () => {
    const series = [{ name: "pull", x: [0.5, 5.5], line: [1, 2] }];
    const panels = ["a", "b", "c"].map((title) => ({ title, series }));
    const columns = (labels: readonly string[]) => {
      const top = { title: "UncertainInput", marks: labels.map((label, index) => ({ at: index + 1, label })) };
      const drawn = drawnPanels(figureSvg(one({ series }, { panels, top }), { width: 800, id: "a" }));
      for (const { ticks } of drawn) expect(ticks.upper.map(({ label }) => label)).toEqual(labels);
      return new Set(drawn.map(({ ticks }) => ticks.x[0]!.place)).size;
    };
    expect(columns(["1", "2", "3", "4", "5"])).toBe(3);
    expect(columns(["sail", "bearings", "rope", "surface", "grit"])).toBe(2);
  });

  it("names curves in a key where their ends have no room, each once", () => {
    const names = ["slowed by one gloved hand all the way", "slowed by nothing but the ratchet block itself"];
    const series = names.map((name, index) => ({ name, x: [0, 1], line: [0, index + 1], highlight: index === 0 }));
    const figure = one({ series }, { panels: [1, 2].map((panel) => ({ title: `panel ${panel}`, series })) });
    const key = figureSvg(figure, { width: 328, id: "a" }).split('<g class="key">')[1] ?? "";
    for (const name of names) expect(key.split(name)).toHaveLength(2);
    expect(key.match(/stroke-dasharray/gu)).toHaveLength(1);
  });

  it("needs nothing of node and no unit library: it runs where there is only the language", async () => {
    const { outputFiles, metafile } = await build({
      entryPoints: ["src/report/drawing/figure.ts"],
      bundle: true,
      write: false,
      metafile: true,
      platform: "browser",
      format: "iife",
      globalName: "drawing",
    });
    expect(Object.keys(metafile.inputs).filter((input) => /mathjs|node:|published|quantity/u.test(input))).toEqual([]);
    const drawn = runInContext(
      `${outputFiles[0]!.text}; drawing.figureSvg(${JSON.stringify(demoFigure)}, { width: 500, id: "a" })`,
      createContext({}),
    );
    expect(drawn).toBe(figureSvg(demoFigure, { width: 500, id: "a" }));
  });
});

describe("places left out of a curve", () => {
  const places = fc
    .array(fc.tuple(fc.double({ min: 0, max: 300, noNaN: true }), fc.double({ min: 0, max: 200, noNaN: true })), {
      minLength: 1,
      maxLength: 40,
    })
    .map((list) => list.sort(([one], [other]) => one - other));

  it("lie within a tenth of a pixel of what is drawn", () => {
    fc.assert(
      fc.property(places, (list) => {
        const kept = bends(list);
        expect(kept[0]).toEqual(list[0]);
        expect(kept.at(-1)).toEqual(list.at(-1));
        for (const place of list)
          expect(
            Math.min(...kept.map((end, index) => distance(place, kept[Math.max(0, index - 1)] ?? end, end))),
          ).toBeLessThan(0.1);
      }),
      { seed: 7 },
    );
  });

  it("are all between the ends of a straight line, and none at a corner", () => {
    expect(bends(Array.from({ length: 50 }, (_, at) => [at, 2 * at] as const))).toEqual([
      [0, 0],
      [49, 98],
    ]);
    const corner: Place[] = [
      [0, 0],
      [10, 0],
      [10, 30],
      [10, 5],
    ];
    expect(bends(corner)).toEqual(corner);
  });
});
