import type { Series } from "../../notebook/output.js";
import type { SeriesStyle } from "../../notebook/styles.js";
import { element, tenths } from "./element.js";
import { areaPath, curvePath, markPath } from "./paths.js";
import { type Plot, within } from "./plot.js";

type Values = readonly (number | null)[];

/** Strokes and gaps by the name of a dash [px]. */
const dashes: Readonly<Record<string, string>> = {
  dash: "7 4",
  dot: "1.5 3",
  dashdot: "7 3 1.5 3",
  longdash: "12 4",
  longdashdot: "12 3 1.5 3",
};

/** Most marks on one quiet curve. */
const marksOnCurve = 6;

/** How a curve of a series is stroked. */
export function strokeOf(style: SeriesStyle, curve: "hauling" | "easing" | "line") {
  const dash = curve === "hauling" ? "solid" : curve === "easing" ? "dash" : style.dash;
  return {
    fill: "none",
    stroke: style.colour,
    "stroke-width": style.width,
    "stroke-dasharray": dashes[dash],
    "stroke-linejoin": "round",
  };
}

/** A mark of a series in its style, at a place. */
export function mark(style: SeriesStyle, x: number, y: number): string {
  const place = `translate(${tenths(x)} ${tenths(y)})`;
  const open = style.symbol.endsWith("-open");
  const look = style.accent
    ? { fill: style.colour, stroke: "var(--paper)" }
    : { fill: open ? "var(--paper)" : "none", stroke: style.colour };
  return element("path", { d: markPath(style.symbol), transform: place, "stroke-width": 1.3, ...look });
}

/** Tints of a series: its dead band and its 90 % bands. They lie under the curves of all series. */
export function tints(plot: Plot, series: Series, style: SeriesStyle): string {
  const { x, hauling, easing, bands = {} } = series;
  const opacity = style.accent ? undefined : 0.5;
  const tint = (d: string, colour: string) =>
    d === "" ? "" : element("path", { d, fill: `var(--${colour})`, opacity });
  return [
    hauling !== undefined && easing !== undefined ? tint(areaPath(plot, x, hauling, easing), "tint") : "",
    ...Object.values(bands).map(({ low, high }) => tint(areaPath(plot, x, high, low), "band")),
  ].join("");
}

const kinds = ["hauling", "easing", "line"] as const;

/** Curves of a series. */
export function curves(plot: Plot, series: Series, style: SeriesStyle): string {
  return kinds
    .map((kind) => {
      const values = series[kind];
      if (values === undefined) return "";
      const name = kind === "line" ? series.name : `${series.name}, ${kind}`;
      return element("path", { "data-curve": name, d: curvePath(plot, series.x, values), ...strokeOf(style, kind) });
    })
    .join("");
}

/** Points of a series that are in view, and the marks that tell quiet curves apart. */
export function marks(plot: Plot, series: Series, style: SeriesStyle): string {
  const { name, x, points } = series;
  const parts = kinds.flatMap((kind) => {
    const values = series[kind];
    if (values === undefined || style.accent) return [];
    return few(inView(plot, x, values)).map((index) => markAt(plot, style, x, values, index));
  });
  if (points !== undefined) {
    const all = inView(plot, x, points).map((index) => markAt(plot, style, x, points, index));
    const alone = kinds.every((kind) => series[kind] === undefined);
    parts.push(element("g", { "data-curve": alone ? name : `${name}, points` }, all.join("")));
  }
  return parts.join("");
}

function markAt(plot: Plot, style: SeriesStyle, x: readonly number[], values: Values, index: number): string {
  const [at, value] = [x[index], values[index] ?? null];
  if (at === undefined || value === null) return "";
  return mark(style, plot.x(at), plot.y(value));
}

function inView({ ranges }: Plot, x: readonly number[], values: Values): number[] {
  return x.flatMap((at, index) => {
    const value = values[index] ?? null;
    return value !== null && within(at, ranges.x) && within(value, ranges.y) ? [index] : [];
  });
}

/** A few of many, evenly spread, the first and the last among them. */
function few(shown: readonly number[]): number[] {
  const count = Math.min(marksOnCurve, shown.length);
  return Array.from({ length: count }, (_, index) => {
    const place = count === 1 ? 0 : Math.round((index * (shown.length - 1)) / (count - 1));
    return shown[place] ?? 0;
  });
}
