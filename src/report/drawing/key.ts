import { curveNames } from "../../notebook/curvenames.js";
import type { Figure } from "../../notebook/output.js";
import { strokeOf } from "./curves.js";
import { element, textBlock } from "./element.js";
import { type DrawnStyle, marksAt } from "./marks.js";
import { strongWidth, textWidth } from "./textwidth.js";

const sample = 30;
const gap = 7;
const between = 20;

interface Entry {
  readonly text: string;
  readonly style: DrawnStyle;
  readonly curve: "hauling" | "easing" | "line" | "points";
}

interface KeyLook {
  readonly figure: Figure;
  readonly styles: ReadonlyMap<string, DrawnStyle>;
  readonly width: number;
  readonly size: number;
  readonly lineHeight: number;
}

/** The lines of a figure with their names, in rows below its panels; each name once. */
export function key({ figure, styles, width, size, lineHeight }: KeyLook): {
  height: number;
  at: (top: number) => string;
} {
  const entries = new Map<string, Entry>();
  for (const panel of figure.panels)
    for (const series of panel.series) {
      const style = styles.get(series.name);
      if (style === undefined) continue;
      for (const { text, curve } of curveNames(panel, series))
        entries.set(`${text} ${style.colour}`, entries.get(`${text} ${style.colour}`) ?? { text, style, curve });
    }
  let [x, row] = [0, 0];
  const placed = [...entries.values()].map((entry) => {
    const room = sample + gap + textWidth(entry.text, entry.style.accent ? strongWidth * size : size);
    if (x > 0 && x + room > width) [x, row] = [0, row + 1];
    const place = { entry, x, row };
    x += room + between;
    return place;
  });
  const height = placed.length === 0 ? 0 : (row + 1) * (lineHeight + 3);
  return {
    height,
    at: (top) =>
      placed
        .map((place) => drawn(place.entry, place.x, top + (place.row + 0.5) * (lineHeight + 3), lineHeight))
        .join("\n"),
  };
}

function drawn({ text, style, curve }: Entry, x: number, middle: number, lineHeight: number): string {
  const line =
    curve === "points"
      ? ""
      : element("path", { d: `M${Math.round(x)} ${Math.round(middle)}h${sample}`, ...strokeOf(style, curve) });
  const marked = curve === "points" || !style.accent ? marksAt(style, [[x + sample / 2, middle]]) : "";
  const attributes = { class: style.accent ? "name strong" : "name", fill: style.colour };
  return line + marked + textBlock({ lines: [text], x: x + sample + gap, middle, lineHeight, attributes });
}
