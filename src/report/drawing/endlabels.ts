import { type CurveName, curveNames } from "../../notebook/curvenames.js";
import { spreadLabels } from "../../notebook/labels.js";
import type { Panel, Series } from "../../notebook/output.js";
import type { SeriesStyle } from "../../notebook/styles.js";
import { element, tenths, textBlock } from "./element.js";
import { type Plot, within } from "./plot.js";
import { type Box, blocked, costAt, movedInto, type Taken } from "./room.js";
import { strongWidth, widestLine, wrapText } from "./textwidth.js";

/** From the plot to the labels beside it [px]. */
export const labelGap = 12;
/** A curve that ends nearer to the right edge than this share of the plot is named beside the plot. */
const edgeShare = 0.06;
/** Too many places of curves behind a label in the plot, where it could stand beside it. */
const crowded = 3;
const air = 6;

interface Label {
  readonly lines: readonly string[];
  readonly colour: string;
  readonly strong: boolean;
  /** Where the curve ends, inside the plot. */
  readonly ends: readonly (readonly [number, number])[];
  readonly size: { readonly width: number; readonly height: number };
}

export interface EndLabels {
  readonly plot: Plot;
  readonly panel: Panel;
  readonly styles: ReadonlyMap<string, SeriesStyle>;
  readonly taken: Taken;
  readonly size: number;
  readonly lineHeight: number;
  /** Longest line [px]. */
  readonly most: number;
}

/** A name in lines, with its width [px]. */
interface NameLines {
  readonly lines: readonly string[];
  readonly width: number;
}

/** The names at the curves of a panel, in lines. */
export function labelLines(panel: Panel, styles: EndLabels["styles"], size: number, most: number): NameLines[] {
  return panel.series.flatMap((series) => {
    const wide = styles.get(series.name)?.accent === true ? strongWidth * size : size;
    return curveNames(panel, series).map(({ text }) => {
      const lines = wrapText(text, wide, most);
      return { lines, width: widestLine(lines, wide) };
    });
  });
}

/** Names at the ends of the curves: beside the plot, moved apart; or in it where a curve ends early and leaves room. */
export function endLabels(look: EndLabels): string {
  const { plot, taken, lineHeight } = look;
  const beside: Label[] = [];
  const inside: string[] = [];
  for (const label of labelsOf(look)) {
    const [x = plot.width] = label.ends[0] ?? [];
    const place = x > plot.width * (1 - edgeShare) ? undefined : placeInside(label, plot, taken, x > plot.width / 2);
    if (place === undefined) beside.push(label);
    else {
      taken.labels.push(place);
      inside.push(words(label, place.left, place.top + place.height / 2, lineHeight));
    }
  }
  const heights = spreadLabels(
    beside.map(({ ends, size }) => ({ at: ends[0]?.[1] ?? 0, room: size.height })),
    -lineHeight / 2,
    plot.height + lineHeight / 2,
  );
  const outside = beside.map((label, index) => {
    const middle = heights[index] ?? 0;
    return leader(label, plot, middle) + words(label, plot.width + labelGap, middle, lineHeight);
  });
  return [...outside, ...inside].join("\n");
}

function words({ lines, colour, strong }: Label, x: number, middle: number, lineHeight: number): string {
  const attributes = { class: strong ? "name strong" : "name", fill: colour };
  return textBlock({ lines, x, middle, lineHeight, attributes });
}

/** A thin line from the end of a curve to its name, where they do not stand side by side. */
function leader({ ends, colour }: Label, { width }: Plot, middle: number): string {
  const [x = width, y = middle] = ends[0] ?? [];
  if (Math.abs(y - middle) < 4 && width - x < air) return "";
  const from = `M${tenths(x + 4)} ${tenths(y)}`;
  const across = width - x > air ? `H${tenths(width + 2)}` : "";
  return element("path", {
    class: "leader",
    d: `${from}${across}L${tenths(width + labelGap - 2)} ${tenths(middle)}`,
    stroke: colour,
  });
}

function labelsOf({ panel, plot, styles, size, lineHeight, most }: EndLabels): Label[] {
  return panel.series.flatMap((series) => {
    const style = styles.get(series.name);
    return curveNames(panel, series).flatMap((name): Label[] => {
      const ends = endsOf(series, name, plot);
      if (ends.length === 0) return [];
      const wide = style?.accent === true ? strongWidth * size : size;
      const lines = wrapText(name.text, wide, most);
      const room = { width: widestLine(lines, wide), height: lines.length * lineHeight };
      return [{ lines, colour: style?.colour ?? "var(--ink)", strong: style?.accent === true, ends, size: room }];
    });
  });
}

/** Last place of a curve that is in view; of points all places, the last first. */
function endsOf({ x }: Series, { curve, values }: CurveName, plot: Plot): [number, number][] {
  const seen = x.flatMap((at, index): [number, number][] => {
    const value = values[index] ?? null;
    return value !== null && within(at, plot.ranges.x) && within(value, plot.ranges.y)
      ? [[plot.x(at), plot.y(value)]]
      : [];
  });
  return curve === "points" ? seen.reverse() : seen.slice(-1);
}

/** The quietest place in the plot around the ends of a curve: right of it, above, below, left; none if it is not quiet enough. */
function placeInside({ ends, size }: Label, plot: Plot, taken: Taken, nearEdge: boolean): Box | undefined {
  let best: Box | undefined;
  let least = nearEdge ? crowded : blocked;
  for (const [x, y] of ends) {
    const places: Box[] = [
      { left: x + air + 2, top: y - size.height / 2, ...size },
      { left: x - size.width / 2, top: y - air - size.height, ...size },
      { left: x - size.width / 2, top: y + air, ...size },
      { left: x + air, top: y - size.height, ...size },
      { left: x + air, top: y, ...size },
      { left: x - air - 2 - size.width, top: y - size.height / 2, ...size },
    ];
    for (const wanted of places) {
      const place = movedInto(plot, wanted);
      const cost = costAt(place, plot, taken, least);
      if (cost < least) [best, least] = [place, cost];
      if (cost === 0) return place;
    }
  }
  return best;
}
