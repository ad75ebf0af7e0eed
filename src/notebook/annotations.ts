import { curveNames } from "./curvenames.js";
import { spreadLabels, wrapLabel } from "./labels.js";
import type { Limit, Panel } from "./output.js";
import type { Palette } from "./palette.js";
import { type Box, crowding, quietPlace } from "./place.js";
import type { Range } from "./scale.js";
import type { SeriesStyle } from "./styles.js";
import { escapeLabel, type PlotlyPart } from "./traces.js";

/** Size of all texts in a chart [px]. */
export const textSize = 12;
export const lineHeight = 17;
const characterWidth = 7;

export interface PanelLabels {
  readonly panel: Panel;
  readonly styles: ReadonlyMap<string, SeriesStyle>;
  readonly palette: Palette;
  readonly axes: { readonly xaxis: string; readonly yaxis: string };
  readonly ranges: { readonly x: Range; readonly y: Range };
  /** Size of the panel [px]; the width is about what the page gives it. */
  readonly width: number;
  readonly height: number;
  /** Longest line of a label [characters]. */
  readonly lineLength: number;
}

interface EndLabel {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly colour: string;
  /** Under its point: beside it, curves run through the label. */
  readonly below: boolean;
}

/** Labels at the ends of the curves of one panel, moved apart where they would cover each other. */
export function endLabels({
  panel,
  styles,
  palette,
  axes,
  ranges,
  width,
  height,
  lineLength,
}: PanelLabels): PlotlyPart[] {
  const unit = (ranges.y.high - ranges.y.low) / height;
  const across = (ranges.x.high - ranges.x.low) / width;
  const wanted = panel.series.flatMap((series): EndLabel[] => {
    const colour = styles.get(series.name)?.colour ?? palette.ink;
    return curveNames(panel, series).flatMap(({ text, values }) => {
      const end = lastPoint(series.x, values, ranges.x);
      if (end === undefined) return [];
      const length = characterWidth * text.length * across;
      const half = (lineHeight / 2) * unit;
      const beside = {
        left: end.x + 8 * across,
        right: end.x + 8 * across + length,
        low: end.y - half,
        high: end.y + half,
      };
      const under = {
        left: end.x - length / 2,
        right: end.x + length / 2,
        low: end.y - 4 * half,
        high: end.y - 2 * half,
      };
      const inside = beside.right < ranges.x.high && under.left > ranges.x.low && under.low > ranges.y.low;
      return [{ text, ...end, colour, below: inside && crowding(under, panel) < crowding(beside, panel) }];
    });
  });
  const wrapped = wanted.map(({ text }) => wrapLabel(text, lineLength));
  const heights = spreadLabels(
    wanted.map(({ y }, index) => ({ at: y, room: (wrapped[index]?.length ?? 1) * lineHeight * unit })),
    ranges.y.low,
    ranges.y.high,
  );
  return wanted.map(({ x, y, colour, below }, index) => ({
    xref: axes.xaxis,
    yref: axes.yaxis,
    x,
    y: below ? y : (heights[index] ?? y),
    text: (wrapped[index] ?? []).map(escapeLabel).join("<br>"),
    ...(below ? { xanchor: "center", yanchor: "top", yshift: -6 } : { xanchor: "left", yanchor: "middle", xshift: 8 }),
    font: { color: colour },
  }));
}

/** Room that the widest end label takes [px], in lines of at most so many characters. */
export function endLabelRoom(panels: readonly Panel[], lineLength: number): number {
  const lengths = panels.flatMap((panel) =>
    panel.series.flatMap((series) =>
      curveNames(panel, series).flatMap(({ text }) => wrapLabel(text, lineLength).map(({ length }) => length)),
    ),
  );
  return Math.round(16 + characterWidth * Math.max(0, ...lengths));
}

function lastPoint(
  x: readonly number[],
  values: readonly (number | null)[],
  range: Range,
): { x: number; y: number } | undefined {
  for (let index = x.length - 1; index >= 0; index -= 1) {
    const at = x[index];
    const y = values[index] ?? null;
    if (at !== undefined && y !== null && at <= range.high && at >= range.low) return { x: at, y };
  }
  return undefined;
}

/** Rules across one panel with their bands, named where curves leave room; a limit beyond the scale is named at the edge. */
export function limitRules({ panel, palette, axes, ranges, width, height }: PanelLabels): {
  shapes: PlotlyPart[];
  annotations: PlotlyPart[];
} {
  const across = { xref: `${axes.xaxis} domain`, x0: 0, x1: 1, yref: axes.yaxis };
  const limits = panel.limits ?? [];
  const taken: Box[] = [];
  const within = ({ value }: Limit) => value >= ranges.y.low && value <= ranges.y.high;
  return {
    shapes: limits.flatMap((limit) => [
      ...(limit.low === undefined && limit.high === undefined
        ? []
        : [
            {
              type: "rect",
              ...across,
              y0: limit.low ?? limit.value,
              y1: limit.high ?? limit.value,
              fillcolor: palette.brick,
              opacity: 0.1,
              line: { width: 0 },
              layer: "below",
            },
          ]),
      { type: "line", ...across, y0: limit.value, y1: limit.value, line: { color: palette.brick, width: 1 } },
    ]),
    annotations: limits.map((limit) => {
      const beyond = within(limit) ? "" : limit.value > ranges.y.high ? " ↑ beyond the scale" : " ↓ beyond the scale";
      const text = `${limit.name}${beyond}`;
      const y = Math.min(ranges.y.high, Math.max(ranges.y.low, limit.value));
      const place = quietPlace({
        panel,
        ranges,
        at: y,
        width: ((16 + characterWidth * text.length) * (ranges.x.high - ranges.x.low)) / width,
        height: (lineHeight * (ranges.y.high - ranges.y.low)) / height,
        taken,
      });
      taken.push(place.box);
      return {
        xref: `${axes.xaxis} domain`,
        yref: axes.yaxis,
        x: { left: 0, center: 0.5, right: 1 }[place.side],
        y,
        text: escapeLabel(text),
        xanchor: place.side,
        yanchor: place.above ? "bottom" : "top",
        xshift: { left: 4, center: 0, right: -4 }[place.side],
        font: { color: palette.brick },
        ...(place.crowded ? { bgcolor: palette.paper } : {}),
      };
    }),
  };
}
