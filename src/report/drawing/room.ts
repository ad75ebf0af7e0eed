import type { Panel } from "../../notebook/output.js";
import type { Plot } from "./plot.js";
import type { Place } from "./thin.js";

/** A rectangle inside a plot [px]. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** What a label in a plot should not cover. */
export interface Taken {
  /** Places on curves and rules, a few pixels apart, and of marks: x, y and weight of one after the other. */
  readonly places: readonly number[];
  /** Labels that stand already. */
  readonly labels: Box[];
}

const stride = 5;
/** From the middle of a mark to its edge [px], and places there that stand for all of it. */
const markEdge = 4;
const ofMark = [
  [0, 0],
  [-markEdge, 0],
  [markEdge, 0],
  [0, -markEdge],
  [0, markEdge],
] as const;
/** A place of a mark is worth so many of a curve: a mark half hidden is none. */
const markWeight = 4;

/** Everything that the curves, marks and limits of a panel take of its plot. */
export function takenRoom(plot: Plot, { series, limits = [] }: Panel, marks: readonly Place[]): Taken {
  const places: number[] = [];
  const walk = (fromX: number, fromY: number, toX: number, toY: number) => {
    const steps = Math.min(400, Math.max(1, Math.ceil(Math.hypot(toX - fromX, toY - fromY) / stride)));
    for (let step = 0; step < steps; step += 1)
      places.push(fromX + ((toX - fromX) * step) / steps, fromY + ((toY - fromY) * step) / steps, 1);
  };
  for (const { x, hauling, easing, line } of series) {
    for (const curve of [hauling, easing, line]) {
      let [lastX, lastY] = [Number.NaN, Number.NaN];
      curve?.forEach((value, index) => {
        const [nextX, nextY] = value === null ? [Number.NaN, Number.NaN] : [plot.x(x[index] ?? 0), plot.y(value)];
        if (!Number.isNaN(lastX + nextX)) walk(lastX, lastY, nextX, nextY);
        if (value !== null) places.push(nextX, nextY, 1);
        [lastX, lastY] = [nextX, nextY];
      });
    }
  }
  for (const [x, y] of marks) for (const [right, down] of ofMark) places.push(x + right, y + down, markWeight);
  for (const { value } of limits) walk(0, plot.y(value), plot.width, plot.y(value));
  return { places, labels: [] };
}

/**
 * What a label costs at a place: little where nothing lies behind it, much over another label or beyond the plot. From
 * `enough` on it is no longer counted.
 */
export function costAt(box: Box, plot: Plot, taken: Taken, enough = Number.POSITIVE_INFINITY): number {
  const right = box.left + box.width;
  const bottom = box.top + box.height;
  const beyond = box.left < 0 || box.top < 0 || right > plot.width || bottom > plot.height;
  const covered = taken.labels.some(
    (other) =>
      box.left < other.left + other.width &&
      other.left < right &&
      box.top < other.top + other.height &&
      other.top < bottom,
  );
  const { places } = taken;
  let cost = (beyond ? 1e6 : 0) + (covered ? 1e4 : 0);
  for (let at = 0; at < places.length && cost < enough; at += 3) {
    const [x, y] = [places[at]!, places[at + 1]!];
    if (x >= box.left && x <= right && y >= box.top && y <= bottom) cost += places[at + 2]!;
  }
  return cost;
}

/** A box moved into the plot by the shortest way. */
export function movedInto({ width, height }: Plot, box: Box): Box {
  const left = Math.max(0, Math.min(width - box.width, box.left));
  const top = Math.max(0, Math.min(height - box.height, box.top));
  return { ...box, left, top };
}

/** From this cost on a label covers another or leaves the plot. */
export const blocked = 1e4;
