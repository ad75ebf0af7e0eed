import type { Figure } from "../notebook/output.js";
import { lightPalette, type Palette } from "../notebook/palette.js";
import { plotlyFigure } from "../notebook/plotly.js";
import { dataTables } from "./datatable.js";
import { html, jsonForScript, type Markup } from "./html.js";
import type { PageIds } from "./markdown.js";

/**
 * Roles in place of colours: the page's script puts in the colours of the style sheet. Angle brackets cannot come from
 * the texts of a figure, since those are escaped.
 */
const rolePalette = Object.fromEntries(
  Object.keys(lightPalette).map((role) => [role, `<${role}>`]),
) as unknown as Palette;

/** Most panels that stand side by side. */
const mostColumns = 3;

/** The same curves arranged for the room that the page has: panels side by side, 0 on a phone. */
interface ChartData {
  readonly data: unknown;
  readonly arrangements: readonly { readonly room: number; readonly layout: unknown }[];
  readonly config: unknown;
}

/** Six digits are more than a screen can show. */
function shorter(_key: string, value: unknown): unknown {
  return typeof value === "number" ? Number(value.toPrecision(6)) : value;
}

function chartData(figure: Figure): ChartData {
  const rounded = JSON.parse(JSON.stringify(figure, shorter)) as Figure;
  const most = Math.max(1, Math.min(mostColumns, figure.panels.length));
  const phone = plotlyFigure(rounded, rolePalette, { narrow: true });
  const arrangements = Array.from({ length: most }, (_, index) => {
    const room = index + 1;
    return { room, layout: plotlyFigure(rounded, rolePalette, { columns: room }).layout };
  });
  return {
    data: phone.data,
    arrangements: [{ room: 0, layout: phone.layout }, ...arrangements],
    config: { ...phone.config, displayModeBar: false },
  };
}

/**
 * A figure on a page: its finding, the chart as data, its caption, and its numbers one click away.
 *
 * @param figure  the figure
 * @param ids  ids of the page
 * @param kind  `picture` for the one that answers the question
 * @returns markup; the page's script draws the chart
 * Example: figureBlock(figure, new PageIds(), "picture")
 */
export function figureBlock(figure: Figure, ids: PageIds, kind?: "picture"): Markup {
  const id = ids.take(`figure ${figure.name}`);
  return html`<figure id="${id}"${kind && html` class="${kind}"`}>
<figcaption>${figure.title}</figcaption>
<div class="chart" role="img" aria-label="${figure.altText}"></div>
<script type="application/json" class="chart-data">${jsonForScript(chartData(figure))}</script>
<noscript>The chart needs scripts, which are off here. ${figure.altText} Its numbers stand below.</noscript>
${figure.caption !== "" && html`<p class="caption">${figure.caption}</p>\n`}<details class="numbers"><summary>The numbers of this figure</summary>
${dataTables(figure)}</details>
</figure>
`;
}
