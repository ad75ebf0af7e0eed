import { line } from "d3-shape";
import type { Plot } from "./plot.js";
import { bends, type Place } from "./thin.js";

type Values = readonly (number | null)[];

const polyline = line<Place>().digits(1);

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
    .map((part) => polyline(bends(part)) ?? "")
    .join("");
}

/** Path of the area between two curves inside their plot; a gap in either ends one area. */
export function areaPath(plot: Plot, places: readonly number[], upper: Values, lower: Values): string {
  const below = curveParts(plot, places, lower, upper);
  return curveParts(plot, places, upper, lower)
    .map((part, index) => {
      const outline = [...bends(part), ...bends(below[index] ?? []).reverse()];
      return outline.length > 2 ? `${polyline(outline) ?? ""}Z` : "";
    })
    .join("");
}

/** Path through places, without leaving any out. */
export function placesPath(places: readonly Place[]): string {
  return polyline(places as Place[]) ?? "";
}
