import type { Figure } from "../notebook/output.js";
import { lightPalette, type Palette } from "../notebook/palette.js";
import { plotlyFigure } from "../notebook/plotly.js";
import type { PlotlyPart } from "../notebook/traces.js";

/**
 * Roles in place of colours: the page's script puts in the colours of the style sheet. Angle brackets cannot come from
 * the texts of a figure, since those are escaped.
 */
const rolePalette = Object.fromEntries(
  Object.keys(lightPalette).map((role) => [role, `<${role}>`]),
) as unknown as Palette;

/** Panels side by side on a wide page. */
const columns = 2;

type List = readonly (number | null)[];

/** A list of numbers, or two lists of which the second is taken backwards: the outline of an area. */
type Numbers = List | { readonly there: number; readonly back: number };

/** A chart, written so that what many of its curves have in common stands there once. */
export interface ChartData {
  /** Traces: what is their own, and the positions of their look and of their numbers. */
  readonly data: readonly (PlotlyPart & { readonly look: number; readonly x: number; readonly y: number })[];
  readonly looks: readonly PlotlyPart[];
  readonly lists: readonly Numbers[];
  readonly layouts: { readonly narrow: PlotlyPart; readonly wide: PlotlyPart };
  readonly config: PlotlyPart;
}

/** Values each of which is kept once. */
class Store<Value> {
  readonly #positions = new Map<string, number>();
  readonly values: Value[] = [];

  positionOf(value: Value): number {
    const text = JSON.stringify(value);
    const known = this.#positions.get(text);
    if (known !== undefined) return known;
    this.#positions.set(text, this.values.length);
    return this.values.push(value) - 1;
  }
}

/** Numbers with fewer digits: four of a curve are more than a screen can show, a scale has some more. */
function shorter<Value>(value: Value, digits: number): Value {
  const text = JSON.stringify(value, (_key, part: unknown) =>
    typeof part === "number" ? Number(part.toPrecision(digits)) : part,
  );
  return JSON.parse(text) as Value;
}

/** Position of a list; the outline of one area is kept as the curves that bound it. */
function positionOf(lists: Store<Numbers>, list: List, isOutline: boolean): number {
  if (!isOutline || list.includes(null)) return lists.positionOf(list);
  const half = list.length / 2;
  const there = lists.positionOf(list.slice(0, half));
  return lists.positionOf({ there, back: lists.positionOf(list.slice(half).toReversed()) });
}

/** Room above a chart for the row of its tools [px]. */
const toolRoom = 30;

/** The layout of a chart with its tools in a row above it. */
function withTools(layout: PlotlyPart): PlotlyPart {
  const margin = layout.margin as { readonly t: number };
  return {
    ...layout,
    dragmode: "zoom",
    height: Number(layout.height) + toolRoom,
    margin: { ...margin, t: margin.t + toolRoom },
  };
}

/** Chart of a figure for a reader who wants to explore it: the same ranges, ticks and words as its drawing. */
export function chartData(figure: Figure): ChartData {
  const phone = plotlyFigure(figure, rolePalette, { narrow: true, fixedTicks: true });
  const wide = plotlyFigure(figure, rolePalette, { columns, fixedTicks: true });
  const lists = new Store<Numbers>();
  const looks = new Store<PlotlyPart>();
  const data = shorter(phone.data, 4).map(({ x, y, name, xaxis, yaxis, ...look }) => ({
    name,
    xaxis,
    yaxis,
    look: looks.positionOf(look),
    x: positionOf(lists, x as List, look.fill !== undefined),
    y: positionOf(lists, y as List, look.fill !== undefined),
  }));
  return {
    data,
    looks: looks.values,
    lists: lists.values,
    layouts: shorter({ narrow: withTools(phone.layout), wide: withTools(wide.layout) }, 6),
    config: { ...phone.config, displayModeBar: true },
  };
}
