import type { Figure } from "../notebook/output.js";
import { curvesOf } from "./curve.js";
import { html, type Markup } from "./html.js";

const width = 160;
const height = 100;
const margin = 4;
const mostPoints = 48;

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

/** Cuts a curve where it has gaps and thins what is left. */
function pieces(x: readonly number[], y: readonly (number | null)[]): [number, number][][] {
  const runs: [number, number][][] = [[]];
  x.forEach((place, index) => {
    const value = y[index];
    if (typeof value === "number" && Number.isFinite(value) && Number.isFinite(place))
      runs[runs.length - 1]?.push([place, value]);
    else if (runs[runs.length - 1]?.length) runs.push([]);
  });
  return runs
    .filter((run) => run.length > 0)
    .map((run) => {
      const step = Math.max(1, (run.length - 1) / (mostPoints - 1));
      const count = Math.floor((run.length - 1) / step + 1e-9) + 1;
      return Array.from({ length: count }, (_, index) => run[Math.round(index * step)] as [number, number]);
    });
}

function extent(values: readonly number[], minimum?: number, maximum?: number): [number, number] {
  const low = minimum ?? Math.min(...values);
  const high = maximum ?? Math.max(...values);
  return high > low ? [low, high] : [low - 0.5, low + 0.5];
}

/**
 * A small sketch of the first panel of a figure that holds a highlighted series, or of its first panel.
 *
 * @param figure  the figure
 * @returns strokes in the order of drawing, quiet ones first
 * Example: thumbnailOf(figure).strokes.length → 4
 */
export function thumbnailOf(figure: Figure): Thumbnail {
  const panel = figure.panels.find(({ series }) => series.some(({ highlight }) => highlight)) ?? figure.panels[0];
  if (!panel) return { strokes: [] };
  const curves = curvesOf(panel).map((curve) => ({ ...curve, runs: pieces(curve.series.x, curve.y) }));
  const all = curves.flatMap(({ runs }) => runs.flat());
  if (all.length === 0) return { strokes: [] };
  const limits = panel.limits ?? [];
  const [left, right] = extent(
    all.map(([x]) => x),
    figure.x.minimum,
    figure.x.maximum,
  );
  const [bottom, top] = extent(
    [...all.map(([, y]) => y), ...limits.map(({ value }) => value)],
    figure.y.minimum,
    figure.y.maximum,
  );
  const tenths = (value: number) => Math.round(value * 10) / 10;
  const place = ([x, y]: readonly [number, number]): [number, number] => [
    tenths(margin + ((x - left) / (right - left)) * (width - 2 * margin)),
    tenths(height - margin - ((y - bottom) / (top - bottom)) * (height - 2 * margin)),
  ];
  const strokes = curves.flatMap(({ kind, series, runs }) =>
    runs.map((run): Stroke => ({ kind, highlight: series.highlight === true, places: run.map(place) })),
  );
  return {
    strokes: [
      ...limits.map(
        ({ value }): Stroke => ({
          kind: "limit",
          highlight: false,
          places: [place([left, value]), place([right, value])],
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
