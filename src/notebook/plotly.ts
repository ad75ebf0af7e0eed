import { endLabelRoom, endLabels, limitRules, lineHeight, textSize } from "./annotations.js";
import type { Axis, Figure } from "./output.js";
import type { Palette } from "./palette.js";
import { figureRanges, type Range } from "./scale.js";
import { seriesStyles } from "./styles.js";
import { axisTicks, type Form, type Tick } from "./ticks.js";
import { escapeLabel, type PlotlyPart, seriesTraces } from "./traces.js";

export { darkPalette, lightPalette, type Palette } from "./palette.js";

/** A chart as plotly.js takes it. */
export interface PlotlyFigure {
  readonly data: readonly PlotlyPart[];
  readonly layout: PlotlyPart;
  readonly config: PlotlyPart;
}

export interface PlotlyOptions {
  /** Panels side by side: 2 or 3 on a wide screen. */
  readonly columns?: number;
  /** For a phone: one column, with labels in short lines. */
  readonly narrow?: boolean;
  /** Ticks where a drawing of the figure has them; by default the chart chooses its own. */
  readonly fixedTicks?: boolean;
}

const fontFamily = "system-ui, sans-serif";
const rowGap = 92;
const topScaleRoom = 46;
const leftRoom = 64;
/** Room for the numbers of a scale between two columns [px]. */
const tickRoom = 36;

/** Nothing leads off the page: no address to send a chart to, no logo. */
const chartConfig = {
  displaylogo: false,
  responsive: true,
  plotlyServerURL: "",
  showSendToCloud: false,
  modeBarButtonsToRemove: ["select2d", "lasso2d"],
};

/** What is laid out for a phone, for one panel on a wide page, and for several side by side. */
const forms: Readonly<Record<Form, { panelHeight: number; columnWidth: number; lineLength: number }>> = {
  narrow: { panelHeight: 260, columnWidth: 350, lineLength: 10 },
  single: { panelHeight: 300, columnWidth: 700, lineLength: 18 },
  several: { panelHeight: 300, columnWidth: 360, lineLength: 12 },
};

/**
 * Chart of a figure for plotly.js; pure, with all colours from the palette.
 *
 * @param figure  figure as data
 * @param palette  colours by role
 * @param columns  most panels side by side, 1 or more
 * @param narrow  for a phone: one column, short lines
 * @param fixedTicks  ticks as in the drawing of the figure
 * @returns data, layout and configuration
 * Hauling is solid, easing dashed in the same colour, the dead band between them tinted; limits are rules in brick.
 * Example: plotlyFigure(figure, lightPalette, { columns: 2 }).config.displaylogo → false
 */
export function plotlyFigure(
  figure: Figure,
  palette: Palette,
  { columns = 1, narrow = false, fixedTicks = false }: PlotlyOptions = {},
): PlotlyFigure {
  const ranges = figureRanges(figure);
  const styles = seriesStyles(figure, palette);
  const count = figure.panels.length;
  const most = narrow ? 1 : Math.max(1, Math.min(Math.floor(columns), count));
  // Four panels with room for three stand two by two.
  const across = Math.ceil(count / Math.ceil(count / most));
  const form: Form = narrow ? "narrow" : across === 1 ? "single" : "several";
  const { panelHeight, columnWidth, lineLength } = forms[form];
  const rows = Math.ceil(count / across);
  const several = count > 1;
  const top = figure.top === undefined ? 0 : topScaleRoom;
  const labelRoom = endLabelRoom(figure.panels, lineLength);
  const rowHeight = panelHeight + rowGap + top;
  const plotHeight = rows * rowHeight - rowGap - top;
  const plotWidth = across * columnWidth - leftRoom - labelRoom;
  const gap = across > 1 ? (labelRoom + tickRoom) / plotWidth : 0;
  const width = (1 - gap * (across - 1)) / across;

  const data: PlotlyPart[] = [];
  const annotations: PlotlyPart[] = [];
  const shapes: PlotlyPart[] = [];
  const layoutAxes: Record<string, PlotlyPart> = {};
  const look = axisLook(palette);
  const ticks = (axis: "x" | "y") => (fixedTicks ? tickArrays(axisTicks(ranges[axis], axis, form)) : {});
  const clip = [figure.x, figure.y].some(({ minimum, maximum }) => minimum !== undefined || maximum !== undefined);

  for (const [index, panel] of figure.panels.entries()) {
    const row = Math.floor(index / across);
    const column = index % across;
    const axes = { xaxis: axisName("x", index), yaxis: axisName("y", index) };
    const upper = 1 - (row * rowHeight) / plotHeight;
    const left = column * (width + gap);
    const domains = { x: share(left, left + width), y: share(upper - panelHeight / plotHeight, upper) };
    const lowest = across === 1 || index + across >= count;
    layoutAxes[layoutName(axes.xaxis)] = {
      anchor: axes.yaxis,
      domain: domains.x,
      range: [ranges.x.low, ranges.x.high],
      ...(index > 0 ? { matches: "x" } : {}),
      ...(lowest ? { title: axisTitle(figure.x, palette.ink) } : {}),
    };
    layoutAxes[layoutName(axes.yaxis)] = {
      anchor: axes.xaxis,
      domain: domains.y,
      range: [ranges.y.low, ranges.y.high],
      ...(index > 0 ? { matches: "y" } : {}),
      ...(column === 0 ? { title: axisTitle(figure.y, palette.ink) } : {}),
    };
    if (figure.top !== undefined) {
      const name = axisName("x", count + index);
      const marks = figure.top.marks.filter(({ at }) => inside(at, ranges.x));
      layoutAxes[layoutName(name)] = {
        overlaying: axes.xaxis,
        anchor: axes.yaxis,
        side: "top",
        matches: "x",
        range: [ranges.x.low, ranges.x.high],
        tickmode: "array",
        tickvals: marks.map(({ at }) => at),
        ticktext: marks.map(({ label }) => escapeLabel(label)),
        tickfont: { color: palette.rope, size: textSize },
        tickcolor: palette.rope,
        linecolor: palette.rope,
        ...(row === 0 || across === 1 ? { title: axisTitle(figure.top, palette.rope) } : {}),
      };
      // Plotly draws an axis only when a trace uses it.
      data.push({
        type: "scatter",
        xaxis: name,
        yaxis: axes.yaxis,
        name: "top scale",
        x: [ranges.x.low],
        y: [null],
        mode: "markers",
        hoverinfo: "skip",
        showlegend: false,
      });
    }
    for (const series of panel.series) {
      const style = styles.get(series.name);
      if (style !== undefined) data.push(...seriesTraces({ series, style, palette, axes, clip }));
    }
    const size = { width: width * plotWidth, height: panelHeight };
    const labels = { panel, styles, palette, axes, ranges, lineLength, ...size };
    const rules = limitRules(labels);
    shapes.push(...rules.shapes);
    annotations.push(...rules.annotations, ...endLabels(labels));
    if (several) annotations.push(panelTitle({ title: panel.title, axes, palette, shift: top }));
  }

  const margin = { l: leftRoom, r: labelRoom, t: 12 + top + (several ? 2 * lineHeight : 0), b: 56, autoexpand: false };
  return {
    data,
    layout: {
      autosize: true,
      height: plotHeight + margin.t + margin.b,
      margin,
      font: { family: fontFamily, size: textSize, color: palette.ink },
      paper_bgcolor: palette.paper,
      plot_bgcolor: palette.paper,
      showlegend: false,
      hovermode: "closest",
      hoverlabel: {
        bgcolor: palette.paper,
        bordercolor: palette.grid,
        font: { color: palette.ink, family: fontFamily },
      },
      modebar: { bgcolor: "rgba(0, 0, 0, 0)", color: palette.quiet1, activecolor: palette.water },
      dragmode: false,
      annotations,
      shapes,
      ...layoutAxes,
      template: {
        layout: {
          xaxis: { ...look.x, ...ticks("x") },
          yaxis: { ...look.y, ...ticks("y") },
          annotationdefaults: { showarrow: false, align: "left", font: { size: textSize } },
        },
      },
    },
    config: { ...chartConfig, displayModeBar: "hover" },
  };
}

function axisName(letter: "x" | "y", index: number): string {
  return index === 0 ? letter : `${letter}${index + 1}`;
}

/** `x2` is called `xaxis2` in the layout. */
function layoutName(axis: string): string {
  return `${axis.charAt(0)}axis${axis.slice(1)}`;
}

function share(from: number, to: number): [number, number] {
  return [Math.max(0, from), Math.min(1, to)];
}

function inside(value: number, { low, high }: Range): boolean {
  return value >= low && value <= high;
}

function axisTitle({ title }: Pick<Axis, "title">, color: string): PlotlyPart {
  return { text: escapeLabel(title), font: { color, size: textSize }, standoff: 8 };
}

function tickArrays(ticks: readonly Tick[]): PlotlyPart {
  return {
    tickmode: "array",
    tickvals: ticks.map(({ at }) => at),
    ticktext: ticks.map(({ label }) => escapeLabel(label)),
  };
}

function axisLook(palette: Palette): { readonly x: PlotlyPart; readonly y: PlotlyPart } {
  const both = { zeroline: false, tickfont: { size: textSize, color: palette.ink }, separatethousands: true };
  return {
    x: {
      ...both,
      showgrid: false,
      showline: true,
      linecolor: palette.ink,
      ticks: "outside",
      ticklen: 4,
      tickcolor: palette.ink,
    },
    y: {
      ...both,
      showgrid: true,
      gridcolor: palette.grid,
      gridwidth: 1,
      showline: false,
      ticks: "",
      ticklabelstandoff: 4,
      nticks: 6,
    },
  };
}

interface PanelTitle {
  readonly title: string;
  readonly axes: { readonly xaxis: string; readonly yaxis: string };
  readonly palette: Palette;
  /** Room of a scale above the panel [px]. */
  readonly shift: number;
}

function panelTitle({ title, axes, palette, shift }: PanelTitle): PlotlyPart {
  return {
    xref: `${axes.xaxis} domain`,
    yref: `${axes.yaxis} domain`,
    x: 0,
    y: 1,
    text: `<b>${escapeLabel(title)}</b>`,
    xanchor: "left",
    yanchor: "bottom",
    yshift: 6 + shift,
    font: { color: palette.ink, size: textSize + 1 },
  };
}
