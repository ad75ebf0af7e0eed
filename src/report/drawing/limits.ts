import type { Limit, Panel } from "../../notebook/output.js";
import { element, textBlock } from "./element.js";
import { type Plot, within } from "./plot.js";
import { type Box, costAt, type Taken } from "./room.js";
import { widestLine, wrapText } from "./textwidth.js";

/** Bands of the limits of a panel, under its curves. */
export function limitBands(plot: Plot, { limits = [] }: Panel): string {
  return limits
    .filter(({ low, high }) => low !== undefined || high !== undefined)
    .map(({ value, low = value, high = value }) => {
      const top = Math.max(0, plot.y(high));
      const height = Math.max(0, Math.min(plot.height, plot.y(low)) - top);
      return element("rect", { class: "limit", x: 0, y: top, width: plot.width, height });
    })
    .join("");
}

/** Rules of the limits that lie on the scale. */
export function limitRules(plot: Plot, { limits = [] }: Panel): string {
  return limits
    .filter(({ value }) => within(value, plot.ranges.y))
    .map(({ value, name }) =>
      element("path", {
        class: "limit",
        "data-limit": name,
        d: `M0 ${Math.round(plot.y(value) * 10) / 10}h${Math.round(plot.width * 10) / 10}`,
      }),
    )
    .join("");
}

function nameOf({ name, value }: Limit, { ranges: { y } }: Plot): string {
  if (within(value, y)) return name;
  return `${name} ${value > y.high ? "↑ beyond the scale" : "↓ beyond the scale"}`;
}

interface LimitNames {
  readonly plot: Plot;
  readonly panel: Panel;
  readonly taken: Taken;
  readonly size: number;
  readonly lineHeight: number;
}

const air = 3;

/** Names of the limits, each along its rule where curves leave room. */
export function limitNames({ plot, panel, taken, size, lineHeight }: LimitNames): string {
  return (panel.limits ?? [])
    .map((limit) => {
      const lines = wrapText(nameOf(limit, plot), size, plot.width - 2 * air);
      const width = widestLine(lines, size) + 2 * air;
      const height = lines.length * lineHeight;
      const rule = plot.y(Math.min(plot.ranges.y.high, Math.max(plot.ranges.y.low, limit.value)));
      const best = cheapest(placesAlong(plot, rule, width, height), plot, taken);
      taken.labels.push(best);
      return textBlock({
        lines,
        x: best.left + air,
        middle: best.top + height / 2,
        lineHeight,
        attributes: { class: "limit name" },
      });
    })
    .join("");
}

/** The first of the places at which a label costs least. */
function cheapest(places: readonly Box[], plot: Plot, taken: Taken): Box {
  let [best, least] = [places[0]!, Number.POSITIVE_INFINITY];
  for (const place of places) {
    const cost = costAt(place, plot, taken, least);
    if (cost < least) [best, least] = [place, cost];
  }
  return best;
}

/** Places along a rule as shares of the room there: its ends, then between them, finer and finer. */
const shares = [
  0,
  1,
  ...[2, 4, 8, 16].flatMap((parts) => Array.from({ length: parts / 2 }, (_, at) => (2 * at + 1) / parts)),
];

/** Above the rule before below it, left before right before between. */
function placesAlong(plot: Plot, rule: number, width: number, height: number): Box[] {
  const room = Math.max(0, plot.width - width);
  return [rule - height - 1, rule + 1].flatMap((top) =>
    shares.map((share) => ({ left: room * share, top, width, height })),
  );
}
