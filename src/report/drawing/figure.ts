import { escapeHtml } from "../../notebook/escape.js";
import type { Figure } from "../../notebook/output.js";
import type { Palette } from "../../notebook/palette.js";
import { seriesStyles } from "../../notebook/styles.js";
import { arrange } from "./arrangement.js";
import { element } from "./element.js";
import { key } from "./key.js";
import { type DrawnStyle, markDefinitions } from "./marks.js";
import { panelGroup } from "./panel.js";

/** Colours by role as the style sheet of the page holds them: in light, dark and on paper. */
const roles: Palette = {
  ink: "var(--ink)",
  quiet1: "var(--quiet1)",
  quiet2: "var(--quiet2)",
  quiet3: "var(--quiet3)",
  quiet4: "var(--quiet4)",
  water: "var(--water)",
  rope: "var(--rope)",
  brick: "var(--brick)",
  tint: "var(--tint)",
  band: "var(--band)",
  paper: "var(--paper)",
  grid: "var(--grid)",
};

export interface Drawing {
  /** Width to draw for [px]: from 560 on panels stand side by side; text is 12 to 13 px there. */
  readonly width: number;
  /** Beginning of the ids inside; unique on its page. */
  readonly id: string;
  /** Height that it should keep [px]: plots are lower where it asks for that, as far as they can be. */
  readonly mostHeight?: number;
}

/** A figure drawn, with its sizes [px]. */
export interface DrawnFigure {
  readonly svg: string;
  readonly height: number;
  /** Size of its words. */
  readonly size: number;
  /** What its plots cover [px²]. */
  readonly plots: number;
}

/** Plots are never lower than this [px]. */
const lowestPlot = 84;

type Styles = ReadonlyMap<string, DrawnStyle>;

/** The panels in their places, the key below them, and the height of both. */
function placed(figure: Figure, styles: Styles, width: number, plotHeight?: number) {
  const arrangement = arrange(figure, styles, width, plotHeight);
  const { size, lineHeight, labels } = arrangement;
  const below = labels === undefined ? key({ figure, styles, width, size, lineHeight }) : undefined;
  return { arrangement, below, height: arrangement.height + (below === undefined ? 0 : below.height + lineHeight / 2) };
}

function placedWithin(figure: Figure, styles: Styles, { width, mostHeight = Number.POSITIVE_INFINITY }: Drawing) {
  let best = placed(figure, styles, width);
  // Lower plots may send names from the ends of curves into a key, which takes height again.
  for (let round = 0; round < 2 && best.height > mostHeight; round += 1) {
    const plots = best.arrangement.cells.map(({ plot }) => plot);
    const rows = new Set(plots.map(({ top }) => top)).size;
    const lower = (plots[0]?.height ?? 0) - (best.height - mostHeight) / rows;
    best = placed(figure, styles, width, Math.max(lowestPlot, lower));
  }
  return best;
}

/**
 * A figure as an SVG picture; pure, without anything of node or of a document.
 *
 * @param figure  figure as data
 * @param width  width to draw for [px], 280 or more
 * @param id  beginning of its ids
 * @returns markup of an `svg` element that takes its colours from the custom properties of the page
 * Hauling is solid, easing dashed in the same colour, the dead band between them tinted; limits are rules in brick.
 * Curves are named at their ends where there is room, otherwise in a key below.
 * Example: figureSvg(figure, { width: 800, id: "hand-force" }).startsWith("<svg ") → true
 */
export function figureSvg(figure: Figure, drawing: Drawing): string {
  return drawnFigure(figure, drawing).svg;
}

/**
 * The same picture with its sizes, for a place that has to choose.
 *
 * @param figure  figure as data
 * @param drawing  width and height to draw for [px], beginning of the ids
 * @returns markup, height, size of the words [px], what the plots cover [px²]
 * Example: drawnFigure(figure, { width: 800, id: "hand-force", mostHeight: 240 }).height <= 240 → true
 */
export function drawnFigure(figure: Figure, drawing: Drawing): DrawnFigure {
  const { width, id } = drawing;
  const styles: Styles = new Map(
    [...seriesStyles(figure, roles)].map(([name, style], index) => [name, { ...style, mark: `${id}-m${index}` }]),
  );
  const { arrangement, below, height } = placedWithin(figure, styles, drawing);
  const { cells, size, lineHeight } = arrangement;
  const panels = figure.panels.map((panel, index) => {
    const cell = cells[index];
    return cell === undefined ? "" : panelGroup({ figure, panel, cell, arrangement, styles });
  });
  const words =
    element("title", { id: `${id}-title` }, escapeHtml(figure.title)) +
    element("desc", { id: `${id}-desc` }, escapeHtml(figure.altText));
  const svg = element(
    "svg",
    {
      class: "drawing",
      viewBox: `0 0 ${Math.round(width)} ${Math.ceil(height)}`,
      width,
      height: Math.ceil(height),
      role: "img",
      "aria-labelledby": `${id}-title ${id}-desc`,
      "font-size": size,
    },
    [
      words,
      markDefinitions(styles.values()),
      ...panels,
      below === undefined ? "" : element("g", { class: "key" }, below.at(arrangement.height + lineHeight / 2)),
    ].join("\n"),
  );
  const plots = cells.reduce((sum, { plot }) => sum + plot.width * plot.height, 0);
  return { svg, height: Math.ceil(height), size, plots };
}
