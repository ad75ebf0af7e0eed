import type { Figure } from "../notebook/output.js";
import { html, type Markup } from "./html.js";

/**
 * The figure of a live panel, drawn: the page draws it anew with the same function.
 *
 * @param figure  the figure
 * @returns what stands inside the figure element
 */
export function liveFigure(figure: Figure): Markup {
  return html`<figcaption>${figure.title}</figcaption>
<div class="drawing" role="img" aria-label="${figure.altText}"></div>
<p class="caption">${figure.caption}</p>
`;
}
