import type { Figure } from "../notebook/output.js";
import { figureRanges } from "../notebook/scale.js";
import { curvesOf } from "./curve.js";
import { curveParts } from "./drawing/paths.js";
import { plotOf, within } from "./drawing/plot.js";
import { bends, type Place } from "./drawing/thin.js";
import { html, type Markup } from "./html.js";

const width = 160;
const height = 100;
const margin = 4;

const strokeKinds = ["hauling", "easing", "line", "points", "limit"] as const;

/** One stroke of a sketch; places are tenths inside the drawing. */
interface Stroke {
  readonly kind: (typeof strokeKinds)[number];
  readonly highlight: boolean;
  readonly places: readonly (readonly [number, number])[];
}

/** A figure reduced to a few strokes. */
export interface Thumbnail {
  readonly strokes: readonly Stroke[];
}

/** Whether something read from a file is a sketch. */
export function isThumbnail(value: unknown): value is Thumbnail {
  const strokes = (value as Partial<Thumbnail> | null)?.strokes;
  return (
    Array.isArray(strokes) &&
    strokes.every(
      (stroke: Partial<Stroke> | null) =>
        strokeKinds.some((kind) => kind === stroke?.kind) &&
        typeof stroke?.highlight === "boolean" &&
        Array.isArray(stroke.places) &&
        stroke.places.every((place) => Array.isArray(place) && place.length === 2 && place.every(Number.isFinite)),
    )
  );
}

/**
 * A small sketch of the first panel of a figure that holds a highlighted series, or of its first panel, on the scales
 * of the figure.
 *
 * @param figure  the figure
 * @returns strokes in the order of drawing, quiet ones first
 * Example: thumbnailOf(figure).strokes.length → 4
 */
export function thumbnailOf(figure: Figure): Thumbnail {
  const panel = figure.panels.find(({ series }) => series.some(({ highlight }) => highlight)) ?? figure.panels[0];
  if (!panel) return { strokes: [] };
  const plot = plotOf({
    left: margin,
    top: margin,
    width: width - 2 * margin,
    height: height - 2 * margin,
    ranges: figureRanges(figure),
  });
  const tenths = (value: number) => Math.round(value * 10) / 10;
  const place = ([x, y]: Place): [number, number] => [tenths(plot.left + x), tenths(plot.top + y)];
  const strokes = curvesOf(panel).flatMap(({ kind, series, y }) =>
    curveParts(plot, series.x, y).map(
      (part): Stroke => ({
        kind,
        highlight: series.highlight === true,
        places: (kind === "points" ? part : bends(part)).map(place),
      }),
    ),
  );
  if (strokes.length === 0) return { strokes: [] };
  const limits = (panel.limits ?? []).filter(({ value }) => within(value, plot.ranges.y));
  return {
    strokes: [
      ...limits.map(
        ({ value }): Stroke => ({
          kind: "limit",
          highlight: false,
          places: [place([0, plot.y(value)]), place([plot.width, plot.y(value)])],
        }),
      ),
      ...strokes.filter(({ highlight }) => !highlight),
      ...strokes.filter(({ highlight }) => highlight),
    ],
  };
}

/** The sketch as an SVG picture; decoration beside words that say the same. */
export function thumbnailSvg({ strokes }: Thumbnail): Markup {
  return html`<svg class="sketch" viewBox="0 0 ${width} ${height}" aria-hidden="true" focusable="false">
<path class="frame" d="M${margin} ${margin}V${height - margin}H${width - margin}"/>
${strokes.map(({ kind, highlight, places }) => {
  const style = `${kind}${highlight ? " ours" : ""}`;
  return kind === "points" || places.length === 1
    ? places.map(([x, y]) => html`<circle class="${style}" cx="${x}" cy="${y}" r="1.8"/>`)
    : html`<polyline class="${style}" points="${places.map((one) => one.join(",")).join(" ")}"/>
`;
})}</svg>`;
}
