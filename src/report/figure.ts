import type { Figure } from "../notebook/output.js";
import { chartData } from "./chartdata.js";
import { dataTables } from "./datatable.js";
import { figureSvg } from "./drawing/figure.js";
import { html, jsonForScript, Markup } from "./html.js";
import type { PageIds } from "./markdown.js";
import { unparted } from "./unparted.js";
import type { WorkedNumbers } from "./worked-numbers.js";

/** Widths for which a figure is drawn [px]; the style sheet shows the one that fits. */
const widths = { narrow: 328, wide: 800 } as const;

/** Height of a picture that stands on a sheet together with its answer, on a wide page [px]. */
const pictureHeight = 640;

/** Where a figure stands. */
interface FigurePlace {
  readonly kind?: "picture";
  readonly numbers?: WorkedNumbers;
}

/**
 * A figure on a page: its finding, its picture for a phone and for a wide page, its caption, and one click away its
 * numbers and a chart to explore.
 *
 * @param figure  the figure
 * @param ids  ids of the page
 * @param place  kind: `picture` for the one that answers the question; numbers of the page, which unfold
 * @returns markup; nothing in it needs a script but the chart to explore
 * Example: figureBlock(figure, new PageIds(), { kind: "picture" })
 */
export function figureBlock(figure: Figure, ids: PageIds, { kind, numbers }: FigurePlace = {}): Markup {
  const id = ids.take(`figure ${figure.name}`);
  const picture = (size: keyof typeof widths) => {
    const drawing = { width: widths[size], id: ids.take("drawing") };
    const svg = figureSvg(figure, kind && size === "wide" ? { ...drawing, mostHeight: pictureHeight } : drawing);
    return html`<div class="${size}">${new Markup(svg)}</div>\n`;
  };
  return html`<figure id="${id}"${kind && html` class="${kind}"`}>
<figcaption>${unparted(figure.title)}</figcaption>
<div class="chart">
${picture("narrow")}${picture("wide")}</div>
${figure.caption !== "" && html`<p class="caption">${unparted(figure.caption)}</p>\n`}<script type="application/json" class="chart-data">${jsonForScript(chartData(figure))}</script>
<button type="button" class="explore" hidden>Explore this chart</button>
<details class="numbers"><summary>The numbers of this figure</summary>
${dataTables(figure, numbers)}</details>
</figure>
${numbers?.panels()}`;
}
