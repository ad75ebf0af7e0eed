import type { Series } from "./output.js";
import type { Palette } from "./palette.js";
import type { SeriesStyle } from "./styles.js";

/** Part of a chart as plotly reads it. */
export type PlotlyPart = Readonly<Record<string, unknown>>;

const marksOnCurve = 6;

export interface SeriesTraces {
  readonly series: Series;
  readonly style: SeriesStyle;
  readonly palette: Palette;
  /** Names of the axes of the panel. */
  readonly axes: { readonly xaxis: string; readonly yaxis: string };
  /** Whether values may lie beyond the axes; otherwise marks on the edge are drawn whole. */
  readonly clip: boolean;
}

/** Traces of one series: tints of the dead band and of the 90 % bands first, so that the curves lie on top. */
export function seriesTraces({ series, style, palette, axes, clip }: SeriesTraces): PlotlyPart[] {
  const { name, x, hauling, easing, line, points } = series;
  const traces: PlotlyPart[] = [];
  const add = (part: string, y: readonly (number | null)[], look: PlotlyPart) =>
    traces.push({
      type: "scatter",
      ...axes,
      name: escapeLabel(part === "" ? name : `${name}, ${part}`),
      x,
      y,
      connectgaps: false,
      cliponaxis: clip,
      showlegend: false,
      hovertemplate: `%{fullData.name}<br>%{x:.3~r} → %{y:.3~r}<extra></extra>`,
      ...look,
    });
  const curve = (dash: string): PlotlyPart => ({
    mode: style.accent ? "lines" : "lines+markers",
    line: { color: style.colour, width: style.width, dash },
    ...(style.accent
      ? {}
      : { marker: { symbol: style.symbol, color: style.colour, size: 7, maxdisplayed: marksOnCurve } }),
  });
  const area = (part: string, outline: ReturnType<typeof bandOutline>, fillcolor: string) =>
    traces.push({
      type: "scatter",
      ...axes,
      name: escapeLabel(`${name}, ${part}`),
      ...outline,
      mode: "lines",
      line: { width: 0 },
      fill: "toself",
      fillcolor,
      opacity: style.accent ? 1 : 0.5,
      hoverinfo: "skip",
      showlegend: false,
    });
  if (hauling !== undefined && easing !== undefined) area("dead band", bandOutline(x, hauling, easing), palette.tint);
  for (const [part, { low, high }] of Object.entries(series.bands ?? {}))
    area(part === "line" ? "90 % band" : `${part}, 90 % band`, bandOutline(x, high, low), palette.band);
  if (hauling !== undefined) add("hauling", hauling, curve("solid"));
  if (easing !== undefined) add("easing", easing, curve("dash"));
  if (line !== undefined) add("", line, curve(style.dash));
  if (points !== undefined) {
    add(hauling || easing || line ? "points" : "", points, {
      mode: "markers",
      marker: {
        symbol: style.symbol,
        color: style.colour,
        size: 8,
        line: { color: style.accent ? palette.paper : style.colour, width: 1 },
      },
    });
  }
  return traces;
}

/** Closed outline of the area between two curves; a gap in either ends one area, and `null` stands between areas. */
export function bandOutline(
  x: readonly number[],
  upper: readonly (number | null)[],
  lower: readonly (number | null)[],
): { readonly x: (number | null)[]; readonly y: (number | null)[] } {
  const areas: { x: number; upper: number; lower: number }[][] = [[]];
  for (const [index, at] of x.entries()) {
    const high = upper[index] ?? null;
    const low = lower[index] ?? null;
    if (high === null || low === null) areas.push([]);
    else areas.at(-1)?.push({ x: at, upper: high, lower: low });
  }
  const outline: { x: (number | null)[]; y: (number | null)[] } = { x: [], y: [] };
  for (const area of areas.filter(({ length }) => length > 1)) {
    if (outline.x.length > 0) {
      outline.x.push(null);
      outline.y.push(null);
    }
    const back = area.toReversed();
    outline.x.push(...area.map((point) => point.x), ...back.map((point) => point.x));
    outline.y.push(...area.map((point) => point.upper), ...back.map((point) => point.lower));
  }
  return outline;
}

/** Text without meaning as markup: plotly reads a few tags and entities in its texts. */
export function escapeLabel(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}
