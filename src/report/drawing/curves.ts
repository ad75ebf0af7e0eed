import type { Series } from "../../notebook/output.js";

import { element } from "./element.js";
import { type DrawnStyle, marksAt } from "./marks.js";
import { areaPath, curvePath } from "./paths.js";
import { type Plot, within } from "./plot.js";
import type { Place } from "./thin.js";

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
export function strokeOf(style: DrawnStyle, curve: "hauling" | "easing" | "line") {
  const dash = curve === "hauling" ? "solid" : curve === "easing" ? "dash" : style.dash;
  return { stroke: style.colour, "stroke-width": style.width, "stroke-dasharray": dashes[dash] };
}

/** Tints of a series: its dead band and its 90 % bands. They lie under the curves of all series. */
export function tints(plot: Plot, series: Series, style: DrawnStyle): string {
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
export function curves(plot: Plot, series: Series, style: DrawnStyle): string {
  return kinds
    .map((kind) => {
      const values = series[kind];
      if (values === undefined) return "";
      const name = kind === "line" ? series.name : `${series.name}, ${kind}`;
      const d = curvePath(plot, series.x, values);
      return d === "" ? "" : element("path", { "data-curve": name, d, ...strokeOf(style, kind) });
    })
    .join("");
}

/** Points of a series that are in view, and the marks that tell quiet curves apart. */
export function marks(plot: Plot, series: Series, style: DrawnStyle): string {
  const { name, points } = series;
  const parts = onCurves(plot, series, style).map((places) => marksAt(style, places));
  if (points !== undefined) {
    const alone = kinds.every((kind) => series[kind] === undefined);
    parts.push(marksAt(style, pointsInView(plot, series), alone ? name : `${name}, points`));
  }
  return parts.join("");
}

/** Where the marks of a series stand. */
export function markPlaces(plot: Plot, series: Series, style: DrawnStyle): Place[] {
  return [...onCurves(plot, series, style).flat(), ...pointsInView(plot, series)];
}

/** Places of the marks on each quiet curve of a series. */
function onCurves(plot: Plot, series: Series, { accent }: DrawnStyle): Place[][] {
  return kinds.flatMap((kind) => {
    const { x, [kind]: values } = series;
    return values === undefined || accent ? [] : [few(inView(plot, x, values))];
  });
}

function pointsInView(plot: Plot, { x, points = [] }: Series): Place[] {
  return inView(plot, x, points);
}

/** Places of the values that are in view. */
function inView(plot: Plot, x: readonly number[], values: Values): Place[] {
  return x.flatMap((at, index): Place[] => {
    const value = values[index] ?? null;
    const seen = value !== null && within(at, plot.ranges.x) && within(value, plot.ranges.y);
    return seen ? [[plot.x(at), plot.y(value)]] : [];
  });
}

/** A few of many, evenly spread, the first and the last among them. */
function few<One>(many: readonly One[]): One[] {
  const count = Math.min(marksOnCurve, many.length);
  return Array.from({ length: count }, (_, index) => {
    const place = count === 1 ? 0 : Math.round((index * (many.length - 1)) / (count - 1));
    return many.slice(place, place + 1);
  }).flat();
}
