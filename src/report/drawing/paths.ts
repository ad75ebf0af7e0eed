import {
  area,
  line,
  type SymbolType,
  symbol,
  symbolCircle,
  symbolDiamond,
  symbolSquare,
  symbolTimes,
  symbolTriangle,
} from "d3-shape";
import type { Plot } from "./plot.js";

type Values = readonly (number | null)[];

/** Path of a curve inside its plot; a gap breaks it. */
export function curvePath({ x, y }: Plot, places: readonly number[], values: Values): string {
  const path = line<number>()
    .digits(1)
    .defined((at, index) => (values[index] ?? null) !== null && Number.isFinite(at))
    .x((at) => x(at))
    .y((_, index) => y(values[index] ?? 0));
  return path(places as number[]) ?? "";
}

/** Path of the area between two curves inside their plot; a gap in either ends one area. */
export function areaPath({ x, y }: Plot, places: readonly number[], upper: Values, lower: Values): string {
  const path = area<number>()
    .digits(1)
    .defined((_, index) => (upper[index] ?? null) !== null && (lower[index] ?? null) !== null)
    .x((at) => x(at))
    .y0((_, index) => y(lower[index] ?? 0))
    .y1((_, index) => y(upper[index] ?? 0));
  return path(places as number[]) ?? "";
}

const symbols: Readonly<Record<string, SymbolType>> = {
  circle: symbolCircle,
  square: symbolSquare,
  diamond: symbolDiamond,
  triangle: symbolTriangle,
  x: symbolTimes,
};

/** Area that a mark takes [px²]. */
const markArea = 40;
const known = new Map<string, string>();

/** Outline of a mark about its middle, by the name that its style gives it. */
export function markPath(name: string): string {
  const shape = name.split("-")[0] ?? "circle";
  const path = known.get(shape) ?? symbol(symbols[shape] ?? symbolCircle, markArea).digits(1)() ?? "";
  known.set(shape, path);
  return path;
}
