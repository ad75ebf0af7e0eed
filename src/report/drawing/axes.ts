import { escapeHtml } from "../../notebook/escape.js";
import type { TopScale } from "../../notebook/output.js";
import type { Tick } from "../../notebook/ticks.js";
import { baseline, element, tenths } from "./element.js";
import { type Plot, within } from "./plot.js";
import { textWidth } from "./textwidth.js";

/** Length of a tick, and from its end to the number [px]. */
export const tickLength = 5;
export const tickGap = 7;

interface AxesLook {
  readonly plot: Plot;
  readonly ticks: { readonly x: readonly Tick[]; readonly y: readonly Tick[] };
  readonly top: TopScale | undefined;
  readonly size: number;
  readonly lineHeight: number;
}

/** Grid, lower axis and numbers of a panel, and the marks above it; in pixels of the drawing. */
export function axes({ plot, ticks, top, size, lineHeight }: AxesLook): string {
  const { left, width, height } = plot;
  const bottom = plot.top + height;
  const grid = ticks.y.map(({ at }) => `M${tenths(left)} ${tenths(plot.top + plot.y(at))}h${tenths(width)}`).join("");
  const side = ticks.y.map(({ at, label }) =>
    element("text", { y: plot.top + plot.y(at) + baseline * lineHeight }, escapeHtml(label)),
  );
  const marks = ticks.x.map(({ at }) => `M${tenths(left + plot.x(at))} ${tenths(bottom)}v${tickLength}`).join("");
  const lower = alongLine(
    ticks.x.map(({ at, label }) => ({ label, x: left + plot.x(at) })),
    bottom + tickLength + lineHeight / 2,
    lineHeight,
  );
  return [
    element("path", { class: "grid", d: grid }),
    element("path", { class: "axis", d: `M${tenths(left)} ${tenths(bottom)}h${tenths(width)}${marks}` }),
    element("g", { class: "ticks y", transform: `translate(${tenths(left - tickGap)})` }, side.join("")),
    element("g", { class: "ticks x", ...lower.place }, lower.texts),
    top === undefined ? "" : topAxis({ plot, top, size, lineHeight }),
  ].join("\n");
}

/** Numbers side by side: their baseline stands once, at their group. */
function alongLine(
  numbers: readonly { readonly label: string; readonly x: number }[],
  middle: number,
  lineHeight: number,
) {
  return {
    place: { transform: `translate(0 ${tenths(middle + baseline * lineHeight)})` },
    texts: numbers.map(({ label, x }) => element("text", { x }, escapeHtml(label))).join(""),
  };
}

/** A mark of a scale above a plot; one that has no room for its label keeps its tick. */
interface PlacedMark {
  readonly label: string;
  /** Inside the plot [px]. */
  readonly x: number;
  readonly hasRoom: boolean;
}

/** The marks of a scale that are in view, from left to right. */
export function placedMarks(top: TopScale, { x, ranges }: Pick<Plot, "x" | "ranges">, size: number): PlacedMark[] {
  const shown = top.marks.filter(({ at }) => within(at, ranges.x)).sort((one, other) => one.at - other.at);
  let end = Number.NEGATIVE_INFINITY;
  return shown.map(({ at, label }) => {
    const half = textWidth(label, size) / 2;
    const hasRoom = x(at) - half >= end;
    if (hasRoom) end = x(at) + half + size / 3;
    return { label, x: x(at), hasRoom };
  });
}

function topAxis({ plot, top, size, lineHeight }: Pick<AxesLook, "plot" | "size" | "lineHeight"> & { top: TopScale }) {
  const marks = placedMarks(top, plot, size);
  const labels = alongLine(
    marks.filter(({ hasRoom }) => hasRoom).map(({ label, x }) => ({ label, x: plot.left + x })),
    plot.top - tickLength - lineHeight / 2,
    lineHeight,
  );
  const ticks = marks.map(({ x }) => `M${tenths(plot.left + x)} ${tenths(plot.top)}v${-tickLength}`);
  return [
    element("path", {
      class: "axis upper",
      d: `M${tenths(plot.left)} ${tenths(plot.top)}h${tenths(plot.width)}${ticks.join("")}`,
    }),
    element("g", { class: "ticks upper", ...labels.place }, labels.texts),
  ].join("\n");
}
