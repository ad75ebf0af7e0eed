import { escapeHtml } from "../../notebook/escape.js";
import type { Figure } from "../../notebook/output.js";
import type { Palette } from "../../notebook/palette.js";
import { seriesStyles } from "../../notebook/styles.js";
import { arrange } from "./arrangement.js";
import { element } from "./element.js";
import { key } from "./key.js";
import { markDefinitions } from "./marks.js";
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
export function figureSvg(figure: Figure, { width, id }: Drawing): string {
  const styles = new Map(
    [...seriesStyles(figure, roles)].map(([name, style], index) => [name, { ...style, mark: `${id}-m${index}` }]),
  );
  const arrangement = arrange(figure, styles, width);
  const { cells, size, lineHeight, labels } = arrangement;
  const below = labels === undefined ? key({ figure, styles, width, size, lineHeight }) : undefined;
  const height = arrangement.height + (below === undefined ? 0 : below.height + lineHeight / 2);
  const panels = figure.panels.map((panel, index) => {
    const cell = cells[index];
    return cell === undefined ? "" : panelGroup({ figure, panel, cell, arrangement, styles });
  });
  const words =
    element("title", { id: `${id}-title` }, escapeHtml(figure.title)) +
    element("desc", { id: `${id}-desc` }, escapeHtml(figure.altText));
  return element(
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
}
