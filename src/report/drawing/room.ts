import type { Panel } from "../../notebook/output.js";
import type { Plot } from "./plot.js";

/** A rectangle inside a plot [px]. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** What a label in a plot should not cover. */
export interface Taken {
  /** Places on curves and rules, a few pixels apart, and points. */
  readonly places: readonly (readonly [number, number])[];
  /** Labels that stand already. */
  readonly labels: Box[];
}

const stride = 5;
/** A point is as large as so many places of a curve. */
const pointWeight = 6;

/** Everything that the curves, points and limits of a panel take of its plot. */
export function takenRoom(plot: Plot, { series, limits = [] }: Panel): Taken {
  const places: [number, number][] = [];
  const walk = ([fromX, fromY]: readonly [number, number], [toX, toY]: readonly [number, number]) => {
    const steps = Math.min(400, Math.max(1, Math.ceil(Math.hypot(toX - fromX, toY - fromY) / stride)));
    for (let step = 0; step < steps; step += 1)
      places.push([fromX + ((toX - fromX) * step) / steps, fromY + ((toY - fromY) * step) / steps]);
  };
  for (const { x, hauling, easing, line, points } of series) {
    for (const curve of [hauling, easing, line]) {
      let last: [number, number] | undefined;
      curve?.forEach((value, index) => {
        const next: [number, number] | undefined = value === null ? undefined : [plot.x(x[index] ?? 0), plot.y(value)];
        if (next !== undefined) {
          if (last !== undefined) walk(last, next);
          places.push(next);
        }
        last = next;
      });
    }
    points?.forEach((value, index) => {
      if (value === null) return;
      for (let count = 0; count < pointWeight; count += 1) places.push([plot.x(x[index] ?? 0), plot.y(value)]);
    });
  }
  for (const { value } of limits) walk([0, plot.y(value)], [plot.width, plot.y(value)]);
  return { places, labels: [] };
}

/** What a label costs at a place: little where nothing lies behind it, much over another label or beyond the plot. */
export function costAt(box: Box, plot: Plot, taken: Taken): number {
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
  let hits = 0;
  for (const [x, y] of taken.places) if (x >= box.left && x <= right && y >= box.top && y <= bottom) hits += 1;
  return hits + (beyond ? 1e6 : 0) + (covered ? 1e4 : 0);
}

/** From this cost on a label covers another or leaves the plot. */
export const blocked = 1e4;
