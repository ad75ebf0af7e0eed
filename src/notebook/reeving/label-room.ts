import type { Spot } from "./pen.js";
import { type Box, overlapping, type Point } from "./shapes.js";
import { ahead, headed } from "./vector.js";

/** A label that looks for a place beside its spot. */
export interface Wanted {
  readonly spot: Spot;
  readonly width: number;
  readonly height: number;
}

const gaps = [5, 12, 22, 36, 54, 76, 100, 130];
const sides = 24;
const air = 5;
const shortestLeader = 34;

/**
 * Places for labels near their spots where they cover neither each other nor what is drawn.
 *
 * @param wanted  labels, the most important first
 * @param taken  boxes of what is drawn
 * @param page  left and right end of the page [px]
 * @returns a box for each label, in their order; one without room stands above everything
 */
export function labelBoxes(
  wanted: readonly Wanted[],
  taken: readonly Box[],
  page: { readonly left: number; readonly right: number },
): Box[] {
  const placed: Box[] = [];
  let top = taken.reduce((least, box) => Math.min(least, box.top), Number.POSITIVE_INFINITY);
  for (const label of wanted) {
    let best: { box: Box; cost: number } | undefined;
    for (const gap of gaps) {
      if (best !== undefined && best.cost < gap) break;
      for (let side = 0; side < sides; side++) {
        const direction = headed((2 * Math.PI * side) / sides);
        const cost = gap + 26 * (1 - direction[0] * label.spot.outward[0] - direction[1] * label.spot.outward[1]);
        if (best !== undefined && best.cost <= cost) continue;
        const box = boxBeside(label, direction, gap);
        const outside = box.left < page.left || box.right > page.right;
        if (!outside && ![...taken, ...placed].some((other) => overlapping(grown(box), other))) best = { box, cost };
      }
    }
    const box = best?.box ?? boxAbove(label, top, page);
    top = Math.min(top, box.top);
    placed.push(box);
  }
  return placed;
}

function boxBeside({ spot, width, height }: Wanted, direction: Point, gap: number): Box {
  const [x, y] = ahead(spot.at, direction, edgeOf(spot, direction) + gap);
  const middle: Point = [x + (direction[0] * width) / 2, y + (direction[1] * height) / 2];
  return {
    left: middle[0] - width / 2,
    right: middle[0] + width / 2,
    top: middle[1] - height / 2,
    bottom: middle[1] + height / 2,
  };
}

/** How far a spot reaches in a direction: as an ellipse for what is round, and well inside the corners of a tackle. */
function edgeOf({ room: [across, down] }: Spot, [x, y]: Point): number {
  return 1 / Math.hypot(x / across, y / down);
}

function boxAbove(
  { spot, width, height }: Wanted,
  top: number,
  page: { readonly left: number; readonly right: number },
): Box {
  const left = Math.max(page.left, Math.min(page.right - width, spot.at[0] - width / 2));
  return { left, right: left + width, top: top - air - height, bottom: top - air };
}

function grown({ left, right, top, bottom }: Box): Box {
  return { left: left - air, right: right + air, top: top - air, bottom: bottom + air };
}

/** Thin line from a spot to its label, where they are not beside each other. */
export function leader(spot: Spot, box: Box): readonly Point[] | undefined {
  const [x, y] = spot.at;
  const end: Point = [Math.max(box.left, Math.min(box.right, x)), Math.max(box.top, Math.min(box.bottom, y))];
  const distance = Math.hypot(end[0] - x, end[1] - y);
  if (distance < 1) return undefined;
  const direction: Point = [(end[0] - x) / distance, (end[1] - y) / distance];
  const edge = edgeOf(spot, direction);
  if (distance < edge + shortestLeader) return undefined;
  return [ahead(spot.at, direction, edge + 2), ahead(spot.at, direction, distance - 3)];
}
