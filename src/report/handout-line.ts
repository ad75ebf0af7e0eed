import type { DrawnReeving } from "../notebook/output.js";
import type { Arrangement } from "../notebook/reeving/arrangement.js";
import { drawingSvg } from "../notebook/reeving/drawing-svg.js";
import { reevingDrawing } from "../notebook/reeving/reeving-drawing.js";
import { textSize } from "../notebook/reeving/shapes.js";
import { sheetWidth } from "./handout-picture.js";
import { textHeight } from "./handout-room.js";
import { html, Markup } from "./html.js";
import { unparted } from "./unparted.js";

/** Least size of the drawing's words on paper, and the largest that is of use [px]. */
const words = { least: 9.2, most: 10.4 } as const;
/** Gap between the drawing and its caption, and the least width of that [px]. */
const gap = 14;
const leastCaption = 105;

/** A drawing of a line on a sheet, with the height that it takes [px]. */
export interface LineOnSheet {
  readonly markup: Markup;
  readonly height: number;
}

/**
 * The drawing of a line in the room that a sheet has for it: the drawing of the page, as large as goes.
 *
 * @param shown  line, load and words
 * @param room  height on the sheet [px]
 * @returns the figure and its height; nothing where its words would be too small to read
 * Example: (handoutLine(shown, 260)?.height ?? 0) <= 260 → true
 */
export function handoutLine(
  { title, altText, caption, ...input }: DrawnReeving,
  room: number,
): LineOnSheet | undefined {
  const drawing = reevingDrawing(input);
  const heading = textHeight(title, "figcaption", sheetWidth);
  /** As large as goes with the caption on a width of its own, beside the drawing or below it. */
  const placed = (sheet: Arrangement, beside: boolean) => {
    const below = beside ? 0 : textHeight(caption, "caption", sheetWidth);
    const widest = (sheetWidth - (beside ? gap + leastCaption : 0)) / sheet.width;
    const scale = Math.min(words.most / textSize, widest, (room - heading - below) / sheet.height);
    const width = Math.floor(scale * sheet.width);
    const beyond = beside ? textHeight(caption, "caption", sheetWidth - width - gap) : 0;
    const height = heading + below + Math.max(scale * sheet.height, beyond);
    return { sheet, beside, scale, width, height };
  };
  const [best] = drawing.arrangements
    .flatMap((sheet) => [placed(sheet, true), placed(sheet, false)])
    .filter(({ scale, height }) => scale * textSize >= words.least && height < room + 1)
    .sort((one, other) => other.scale - one.scale);
  if (best === undefined) return undefined;
  const { sheet, beside, width, height } = best;
  const svg = drawingSvg({ ...drawing, arrangements: [sheet] }, { width: sheet.width, title, altText, onPage: true });
  return {
    markup: html`<figure class="line">
<figcaption>${unparted(title)}</figcaption>
<div class="${beside ? "beside" : "below"}"><div class="drawn" style="width:${width}px">${new Markup(svg)}</div><p class="caption">${unparted(caption)}</p></div>
</figure>
`,
    height,
  };
}
