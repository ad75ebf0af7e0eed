import {
  type SymbolType,
  symbol,
  symbolCircle,
  symbolDiamond,
  symbolSquare,
  symbolTimes,
  symbolTriangle,
} from "d3-shape";
import type { SeriesStyle } from "../../notebook/styles.js";
import { element } from "./element.js";
import { placesPath } from "./paths.js";
import type { Place } from "./thin.js";

/** How a series is drawn, with the id of its mark. */
export interface DrawnStyle extends SeriesStyle {
  readonly mark: string;
}

const symbols: Readonly<Record<string, SymbolType>> = {
  circle: symbolCircle,
  square: symbolSquare,
  diamond: symbolDiamond,
  triangle: symbolTriangle,
  x: symbolTimes,
};

/** Area that a mark takes [px²]. */
const markArea = 40;

/** Marks of all series, each drawn once; marks at places refer to them. */
export function markDefinitions(styles: Iterable<DrawnStyle>): string {
  const all = [...styles].map((style) => {
    const shape = symbols[style.symbol.split("-")[0] ?? ""] ?? symbolCircle;
    const d = symbol(shape, markArea).digits(1)() ?? "";
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
  const d = placesPath(places);
  return element("path", { "data-curve": name, d, fill: "none", style: `marker:url(#${style.mark})` });
}
