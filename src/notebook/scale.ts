import type { Axis, Figure } from "./output.js";

/** Range of an axis. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/** Ranges of both axes, common to all panels: y starts at zero when nothing lies below, and limits are kept in view. */
export function figureRanges(figure: Figure): { readonly x: Range; readonly y: Range } {
  const all = figure.panels.flatMap(({ series }) => series);
  const xs = all.flatMap(({ x }) => x);
  const ys = [
    ...all.flatMap(({ hauling = [], easing = [], line = [], points = [], bands = {} }) => [
      ...hauling,
      ...easing,
      ...line,
      ...points,
      ...Object.values(bands).flatMap(({ low, high }) => [...low, ...high]),
    ]),
    ...figure.panels.flatMap(({ limits = [] }) =>
      limits.flatMap(({ value, low, high }) => [value, low ?? value, high ?? value]),
    ),
  ].filter((value) => value !== null);
  const x = axisRange(figure.x, spanOf(xs));
  const data = spanOf(ys);
  const air = 0.05 * (data.high - data.low || Math.abs(data.high) || 1);
  const y = axisRange(figure.y, {
    low: data.low >= 0 ? 0 : data.low - air,
    high: data.high <= 0 && data.low < 0 ? 0 : data.high + air,
  });
  return { x, y };
}

function spanOf(values: readonly number[]): Range {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return low <= high ? { low, high } : { low: 0, high: 1 };
}

/** The axis's own ends where it gives them; never empty. */
function axisRange({ minimum, maximum }: Axis, { low, high }: Range): Range {
  const from = minimum ?? Math.min(low, maximum ?? low);
  const to = maximum ?? Math.max(high, from);
  return to > from ? { low: from, high: to } : { low: from, high: from + (Math.abs(from) || 1) };
}
