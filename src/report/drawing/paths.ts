import { tenths } from "./element.js";
import type { Plot } from "./plot.js";
import { bends, type Place } from "./thin.js";

type Values = readonly (number | null)[];

/** Tenths of a pixel as path data: no zero before the point, and a minus parts numbers by itself. */
function step(tenthsOfPixel: number): string {
  const text = tenths(tenthsOfPixel / 10).replace(/^(-?)0\./u, "$1.");
  return text.startsWith("-") ? text : ` ${text}`;
}

/** Path through places: the first as it stands, the others from one to the next, rounded without adding up. */
export function polyline(places: readonly Place[]): string {
  const rounded = places.map(([x, y]) => [Math.round(10 * x), Math.round(10 * y)] as const);
  return rounded
    .map(([x, y], index) => {
      const before = rounded[index - 1];
      if (before === undefined) return `M${tenths(x / 10)} ${tenths(y / 10)}`;
      const steps = step(x - before[0]) + step(y - before[1]);
      return index === 1 ? `l${steps.trimStart()}` : steps;
    })
    .join("");
}

/** Parts of a curve between its gaps, in pixels of its plot. */
export function curveParts(
  { x, y }: Plot,
  places: readonly number[],
  values: Values,
  others: Values = values,
): Place[][] {
  const found: Place[][] = [[]];
  places.forEach((at, index) => {
    const value = values[index] ?? null;
    if (value === null || (others[index] ?? null) === null) found.push([]);
    else found.at(-1)?.push([x(at), y(value)]);
  });
  return found.filter(({ length }) => length > 0);
}

/** Path of a curve inside its plot; a gap breaks it. */
export function curvePath(plot: Plot, places: readonly number[], values: Values): string {
  return curveParts(plot, places, values)
    .map((part) => polyline(bends(part)))
    .join("");
}

/** Path of the area between two curves inside their plot; a gap in either ends one area. */
export function areaPath(plot: Plot, places: readonly number[], upper: Values, lower: Values): string {
  const below = curveParts(plot, places, lower, upper);
  return curveParts(plot, places, upper, lower)
    .map((part, index) => {
      const outline = [...bends(part), ...bends(below[index] ?? []).reverse()];
      return outline.length > 2 ? `${polyline(outline)}Z` : "";
    })
    .join("");
}
