import type { Panel } from "./output.js";
import type { Range } from "./scale.js";

/** Part of a panel, in the units of its axes. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

const steps = 32;

/**
 * How much of a box is taken by curves and points of a panel.
 *
 * @param box  part of the panel [units of the axes]
 * @param panel  curves and points
 * @returns number of hits [-]: points inside, and places along each curve, 32 to a box, at which it runs inside
 * Example: crowding({ left: 0, right: 1, low: 0, high: 1 }, { title: "", series: [{ name: "a", x: [0, 1], line: [2, 3] }] }) → 0
 */
export function crowding(box: Box, { series }: Panel): number {
  let hits = 0;
  const count = (x: number, y: number) => {
    if (x >= box.left && x <= box.right && y >= box.low && y <= box.high) hits += 1;
  };
  for (const { x, hauling, easing, line, points } of series) {
    points?.forEach((y, index) => {
      if (y !== null) count(x[index] ?? Number.NaN, y);
    });
    for (const curve of [hauling, easing, line]) {
      if (curve === undefined) continue;
      for (let step = 0; step <= steps; step += 1) {
        const at = box.left + ((box.right - box.left) * step) / steps;
        count(at, heightAt(x, curve, at));
      }
    }
  }
  return hits;
}

/** Height of a curve at a place, between its values; not a number where it has none. */
function heightAt(x: readonly number[], y: readonly (number | null)[], at: number): number {
  const next = x.findIndex((value) => value >= at);
  const [right, high] = [x[next], y[next] ?? null];
  if (right === undefined || high === null) return Number.NaN;
  if (right === at) return high;
  const [left, low] = [x[next - 1], y[next - 1] ?? null];
  if (left === undefined || low === null) return Number.NaN;
  return low + ((high - low) * (at - left)) / (right - left);
}

/** Where a label stands at a rule across the panel. */
export interface Place {
  readonly side: "left" | "right" | "center";
  readonly above: boolean;
  readonly box: Box;
  /** Whether curves run behind it all the same. */
  readonly crowded: boolean;
}

export interface PlaceLabel {
  readonly panel: Panel;
  readonly ranges: { readonly x: Range; readonly y: Range };
  /** Height of the rule [units of the axis]. */
  readonly at: number;
  /** Room that the label takes [units of the axes]. */
  readonly width: number;
  readonly height: number;
  /** Places of labels that stand already. */
  readonly taken: readonly Box[];
}

/** The place at a rule, left, right or in the middle, above or below it, with the fewest curves behind it and no label. */
export function quietPlace({ panel, ranges: { x, y }, at, width, height, taken }: PlaceLabel): Place {
  const starts = { left: x.low, right: x.high - width, center: (x.low + x.high - width) / 2 };
  const places = ([true, false] as const).flatMap((above) =>
    (["left", "right", "center"] as const).map((side) => {
      const left = starts[side];
      const low = above ? at : at - height;
      const box = { left, right: left + width, low, high: low + height };
      const beyond = box.low < y.low || box.high > y.high;
      const covered = taken.some((other) => overlap(box, other));
      const hits = crowding(box, panel);
      return { side, above, box, crowded: hits > 0, cost: hits + (beyond ? 1e6 : 0) + (covered ? 1e3 : 0) };
    }),
  );
  return places.reduce((best, place) => (place.cost < best.cost ? place : best));
}

function overlap(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.low < other.high && other.low < one.high;
}
