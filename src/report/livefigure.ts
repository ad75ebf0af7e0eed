import type { Figure } from "../notebook/output.js";
import { figureSvg } from "./drawing/figure.js";
import { type Content, html, Markup } from "./html.js";

/** Beginning of the ids inside a drawing of the panel's figure. */
const id = "your-figure";

/** Widths for which a page is built: beside the controls, and on a phone [px]. */
const builtWidths = { broad: 560, slim: 330 } as const;

function aroundDrawing(figure: Figure, drawing: Content): Markup {
  return html`<figcaption>${figure.title}</figcaption>
${drawing}<p class="caption">${figure.caption}</p>
`;
}

function drawn(figure: Figure, width: number, ids: string): Markup {
  return new Markup(figureSvg(figure, { width, id: ids }));
}

/**
 * The figure of a live panel as a page is built: drawn for a broad page and for a slim one.
 *
 * @param figure  the figure
 * @returns what stands inside the figure element
 */
export function builtFigure(figure: Figure): Markup {
  const drawings = Object.entries(builtWidths).map(
    ([name, width]) => html`<div class="${name}">${drawn(figure, width, `${id}-${name}`)}</div>\n`,
  );
  return aroundDrawing(figure, drawings);
}

/**
 * The figure of a live panel in a page that is open.
 *
 * @param figure  the figure
 * @param width  room that it has [px]
 * @returns what stands inside the figure element
 */
export function liveFigure(figure: Figure, width: number): Markup {
  return aroundDrawing(figure, html`<div>${drawn(figure, Math.max(builtWidths.slim, Math.floor(width)), id)}</div>\n`);
}
