import type { SeriesStyle } from "../../notebook/styles.js";
import { element } from "./element.js";
import { polyline } from "./paths.js";
import type { Place } from "./thin.js";

/** How a series is drawn, with the id of its mark. */
export interface DrawnStyle extends SeriesStyle {
  readonly mark: string;
}

/** Outlines of the marks, each about 40 px² large; a cross has none and is as wide. */
const symbols: Readonly<Record<string, string>> = {
  circle: "M3.6 0a3.6 3.6 0 1 1-7.2 0a3.6 3.6 0 1 1 7.2 0",
  square: "M-3.2-3.2h6.3v6.3h-6.3Z",
  diamond: "M0-5.9l3.4 5.9L0 5.9l-3.4-5.9Z",
  triangle: "M0-5.5l4.8 8.3h-9.6Z",
  x: "M-3.8-3.8l7.6 7.6m-7.6 0l7.6-7.6",
};

/** Marks of all series, each drawn once; marks at places refer to them. */
export function markDefinitions(styles: Iterable<DrawnStyle>): string {
  const all = [...styles].map((style) => {
    const d = symbols[style.symbol.split("-")[0] ?? ""] ?? symbols.circle;
    const open = style.symbol.endsWith("-open");
    const look = style.accent
      ? { fill: style.colour, stroke: "var(--paper)" }
      : { fill: open ? "var(--paper)" : "none", stroke: style.colour };
    const path = element("path", { d, "stroke-width": 1.3, ...look });
    return element("marker", { id: style.mark, markerUnits: "userSpaceOnUse", overflow: "visible" }, path);
  });
  return element("defs", {}, all.join(""));
}

/** Marks of a series at places; those that are its points bear its name. */
export function marksAt(style: DrawnStyle, places: readonly Place[], name?: string): string {
  if (places.length === 0) return "";
  const d = polyline(places);
  return element("path", { "data-curve": name, d, fill: "none", style: `marker:url(#${style.mark})` });
}
