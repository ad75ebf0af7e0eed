import { describe, expect, it } from "vitest";
import type { Figure } from "../../src/notebook/output.js";
import { darkPalette, lightPalette, type Palette } from "../../src/notebook/palette.js";
import { plotlyFigure } from "../../src/notebook/plotly.js";
import type { PlotlyPart } from "../../src/notebook/traces.js";
import { type ChartData, chartData } from "../../src/report/chartdata.js";
import { dataTables } from "../../src/report/datatable.js";
import { figureBlock } from "../../src/report/figure.js";
import { PageIds } from "../../src/report/markdown.js";
import { isThumbnail, thumbnailOf, thumbnailSvg } from "../../src/report/thumbnail.js";
import { WorkedNumbers } from "../../src/report/worked-numbers.js";
import { formulas } from "../../src/working/catalogue.js";
import { curveWorking } from "../../src/working/curve-working.js";
import { worked } from "../../src/working/worked.js";

function figure(panels: Figure["panels"]): Figure {
  const axis = { title: "Load [N]" };
  return {
    kind: "figure",
    name: "a",
    title: "Finding",
    caption: "",
    altText: "ends at 3",
    x: axis,
    y: { title: "Hand [N]" },
    panels,
  };
}

const long = Array.from({ length: 301 }, (_, index) => index);
const rows = (markup: string) => [...markup.matchAll(/<tr><td[^>]*>([^<]*)</gu)].map(([, first]) => first);

describe("numbers of a figure", () => {
  it("samples long series evenly, from the first to the last, and says so", () => {
    const { text } = dataTables(figure([{ title: "p", series: [{ name: "s", x: long, line: long }] }]));
    const shown = rows(text);
    expect(shown).toHaveLength(11);
    expect([shown[0], shown[1], shown[10]]).toEqual(["0", "30", "300"]);
    expect(text).toContain("11 of 301 rows");
  });

  it("shows short series whole, gaps as dashes, limits with their range", () => {
    const series = [{ name: "s", x: [1, 2, 3], hauling: [2, null, 4], easing: [0.5, 1, 1.23456] }];
    const { text } = dataTables(
      figure([{ title: "", series, limits: [{ name: "a hand", value: 180, low: 140, high: 220 }] }]),
    );
    expect(rows(text)).toEqual(["1", "2", "3"]);
    expect(text).toMatch(/<td>–(?:<|\n)/u);
    expect(text).toContain("1.23");
    expect(text).toContain("a hand: 180 (140 to 220)");
    expect(text).toContain("s, hauling");
    expect(text).not.toContain("rows, evenly");
  });

  it("keeps curves with places of their own in tables of their own", () => {
    const series = [
      { name: "model", x: [1, 2, 3], line: [1, 2, 3] },
      { name: "read", x: [1.5], points: [1.4] },
    ];
    expect(dataTables(figure([{ title: "", series }])).text.match(/<table class="all-numbers">/gu)).toHaveLength(2);
  });
});

describe("a curve that is worked out", () => {
  const rule = (load: number) => worked(formulas.frictionless, { loadTension: load, velocityRatio: 2 });
  const x = Array.from({ length: 21 }, (_, index) => 10 * (index + 1));
  const y = x.map((load) => 0.5 * load);
  const drawn = figure([
    { title: "", series: [{ name: "free pull", x, line: y, worked: { line: curveWorking({ x, y, make: rule }) } }] },
  ]);
  const numbers = () => new WorkedNumbers(new Map(), new PageIds(), "a.ipynb");

  it("unfolds one number of its column, which says what the other rows have in its place", () => {
    const { text } = figureBlock(drawn, new PageIds(), { numbers: numbers() });
    expect(text.match(/<button class="worked"/gu)).toHaveLength(1);
    expect(text).toMatch(/<td>110\s*<td><button class="worked"[^>]*>55<\/button>/u);
    expect(text).toContain("stands for its column");
    expect(text.indexOf("</figure>")).toBeLessThan(text.indexOf('<div class="how"'));
  });

  it("stands as plain numbers where no page holds its workings", () => {
    expect(dataTables(drawn).text).not.toMatch(/button|stands for its column/u);
  });
});

describe("chart data", () => {
  const panel = {
    title: "p",
    series: [{ name: "s", x: [1, 2, 3], hauling: [1, 2, 3], easing: [0.1 + 0.2, null, 1], highlight: true }],
  };
  const numbers = (chart: ChartData, position: number): readonly (number | null)[] => {
    const list = chart.lists[position]!;
    return "there" in list ? [...numbers(chart, list.there), ...numbers(chart, list.back).toReversed()] : list;
  };

  it("carries roles, never colours, and one layout for a phone and one for a wide page", () => {
    const drawn = chartData(figure([panel, panel, panel, panel]));
    const columns = (layout: PlotlyPart) =>
      new Set(["xaxis", "xaxis2", "xaxis3"].map((name) => String((layout[name] as { domain: number[] }).domain))).size;
    expect(columns(drawn.layouts.narrow)).toBe(1);
    expect(columns(drawn.layouts.wide)).toBe(2);
    expect(drawn.layouts.narrow.font).toMatchObject({ color: "<ink>" });
    const text = JSON.stringify(drawn);
    for (const colour of [...Object.values(lightPalette), ...Object.values(darkPalette)])
      expect(text).not.toContain(colour);
    expect(text).toContain("0.3,");
    expect(text).not.toContain("0.30000");
  });

  it("keeps each list of numbers and each look once, and gives back every trace", () => {
    const banded = {
      title: "q",
      series: [
        { name: "t", x: [1, 2, 3], line: [1, 2, 3], bands: { line: { low: [0, 1, 2], high: [2, 3, 4] } } },
        { name: "u", x: [4, 5], points: [1, 2] },
      ],
    };
    const whole = figure([panel, banded, panel]);
    const drawn = chartData(whole);
    const texts = drawn.lists.map((list) => JSON.stringify(list));
    expect(new Set(texts).size).toBe(texts.length);
    expect(new Set(drawn.looks.map((look) => JSON.stringify(look))).size).toBe(drawn.looks.length);
    const given = drawn.data.map(({ look, x, y, ...own }) => ({
      ...drawn.looks[look],
      ...own,
      x: numbers(drawn, x),
      y: numbers(drawn, y),
    }));
    const colours = (_key: string, value: unknown) =>
      typeof value === "number" ? Number(value.toPrecision(4)) : value;
    const roles = Object.fromEntries(Object.keys(lightPalette).map((role) => [role, `<${role}>`]));
    const { data } = plotlyFigure(whole, roles as unknown as Palette, { narrow: true });
    expect(given).toEqual(JSON.parse(JSON.stringify(data, colours)));
  });

  it("cannot mistake a text for a role", () => {
    const drawn = chartData(figure([{ title: "<ink>", series: [{ name: "<water>", x: [1], line: [1] }] }]));
    expect(drawn.data.map(({ name }) => name)).toContain("&lt;water&gt;");
  });
});

describe("a figure on a page", () => {
  const { text } = figureBlock(
    figure([{ title: "", series: [{ name: "s", x: [1, 2], line: [1, 2] }] }]),
    new PageIds(),
  );

  it("is drawn for a phone and for a wide page, with its words for a reader without sight", () => {
    expect(text.match(/<svg class="drawing"[^>]* role="img"/gu)).toHaveLength(2);
    expect(text.match(/<desc [^>]*>ends at 3<\/desc>/gu)).toHaveLength(2);
    expect(text).toMatch(/<div class="narrow"><svg class="drawing" viewBox="0 0 328 /u);
    expect(text).toMatch(/<div class="wide"><svg class="drawing" viewBox="0 0 800 /u);
    const ids = [...text.matchAll(/ id="([^"]+)"/gu)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("offers a chart to explore only where a script shows the button", () => {
    expect(text).toContain('<button type="button" class="explore" hidden>Explore this chart</button>');
  });
});

describe("sketch", () => {
  it("stays inside its frame, ends where the curve ends, and draws the series of the figure last", () => {
    const sketch = thumbnailOf(
      figure([
        {
          title: "",
          series: [
            { name: "ours", x: long, hauling: long.map((x) => x ** 2), highlight: true },
            { name: "other", x: long, easing: long.map((x) => (x === 100 ? null : x)) },
          ],
          limits: [{ name: "l", value: 50_000 }],
        },
      ]),
    );
    expect(sketch.strokes.map(({ kind }) => kind)).toEqual(["limit", "easing", "easing", "hauling"]);
    for (const [x, y] of sketch.strokes.flatMap(({ places }) => places)) {
      expect(x).toBeGreaterThanOrEqual(4);
      expect(x).toBeLessThanOrEqual(156);
      expect(y).toBeGreaterThanOrEqual(4);
      expect(y).toBeLessThanOrEqual(96);
    }
    const last = sketch.strokes[3]?.places ?? [];
    expect(last.length).toBeLessThanOrEqual(48);
    expect(last[0]).toEqual([4, 96]);
    // The scale reaches a twentieth beyond the highest value, as in the picture.
    expect(last[last.length - 1]).toEqual([156, Math.round((96 - 92 / 1.05) * 10) / 10]);
    expect(isThumbnail(JSON.parse(JSON.stringify(sketch)))).toBe(true);
    expect(isThumbnail({ strokes: [{ kind: "hauling", highlight: true, places: [[1, '"/><script>']] }] })).toBe(false);
    expect(thumbnailSvg(sketch).text).toContain('class="hauling ours"');
  });

  it("is empty for a figure without numbers and flat for a constant", () => {
    expect(thumbnailOf(figure([])).strokes).toEqual([]);
    expect(thumbnailOf(figure([{ title: "", series: [{ name: "s", x: [], line: [] }] }])).strokes).toEqual([]);
    const flat = thumbnailOf(figure([{ title: "", series: [{ name: "s", x: [1, 2], line: [5, 5] }] }]));
    const level = Math.round((96 - (92 * 5) / 5.25) * 10) / 10;
    expect(flat.strokes[0]?.places).toEqual([
      [4, level],
      [156, level],
    ]);
  });
});

describe("colours", () => {
  const luminance = (colour: string) => {
    const channel = (start: number) => {
      const share = Number.parseInt(colour.slice(start, start + 2), 16) / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    };
    return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
  };
  const contrast = (one: string, other: string) => {
    const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
    return (light + 0.05) / (dark + 0.05);
  };
  const roles = [
    "ink",
    "quiet1",
    "quiet2",
    "quiet3",
    "quiet4",
    "water",
    "rope",
    "brick",
  ] as const satisfies (keyof Palette)[];

  it.each(roles)("%s reads on paper, light, dark and printed", (role) => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
    expect(contrast(lightPalette[role], lightPalette.paper)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(darkPalette[role], darkPalette.paper)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(lightPalette[role], "#ffffff")).toBeGreaterThanOrEqual(4.5);
  });
});
