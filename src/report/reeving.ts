import type { DrawnReeving } from "../notebook/output.js";
import { drawingSvg } from "../notebook/reeving/drawing-svg.js";
import { reevingDrawing } from "../notebook/reeving/reeving-drawing.js";
import { stationTable } from "../notebook/reeving/station-table.js";
import { html, Markup } from "./html.js";
import type { PageIds } from "./markdown.js";
import { tableBox } from "./table.js";
import { unparted } from "./unparted.js";

/**
 * The drawing of a line on a page: its finding, the drawing for wide and for narrow pages, its numbers one click away.
 *
 * @param shown  line, load and words
 * @param ids  ids of the page
 * @returns markup
 * Example: reevingBlock(shown, new PageIds())
 */
export function reevingBlock(shown: DrawnReeving, ids: PageIds): Markup {
  const drawing = reevingDrawing(shown);
  const [wide = 0, ...narrower] = drawing.arrangements.map(({ width }) => width);
  const narrow = narrower.at(-1) ?? wide;
  const described = { title: shown.title, altText: shown.altText, onPage: true };
  return html`<figure id="${ids.take(`figure ${shown.name}`)}" class="reeving">
<figcaption>${unparted(shown.title)}</figcaption>
<div class="on-wide">${new Markup(drawingSvg(drawing, { width: wide, ...described }))}</div>
<div class="on-narrow">${new Markup(drawingSvg(drawing, { width: narrow, ...described }))}</div>
<p class="caption">${unparted(shown.caption)}</p>
<details class="numbers"><summary>The numbers of this drawing</summary>
${tableBox({ caption: "From the load to the hand", ...stationTable(shown) })}</details>
</figure>
`;
}
