import type { Figure } from "../notebook/output.js";
import { type DrawnFigure, drawnFigure } from "./drawing/figure.js";
import { Markup } from "./html.js";

/** Width of the text on the sheet [px]. */
export const sheetWidth = 688;
/** Height that a picture takes where there is room for it [px]. */
export const usualHeight = 320;
/** Widths to draw for [px]: the wider, the more charts stand side by side, and the smaller all is on paper. */
const widths = [sheetWidth, 820, 960, 1100] as const;
/** Words of this size on paper are large enough; beyond it large plots count [px]. */
const readable = 10;

interface OnPaper extends DrawnFigure {
  /** Size of its words on paper [px]. */
  readonly words: number;
  /** What its plots cover of the paper [px²]. */
  readonly area: number;
}

function onPaper(figure: Figure, id: string, width: number, height: number): OnPaper {
  const drawn = drawnFigure(figure, { width, id, mostHeight: (height * width) / sheetWidth });
  const scale = Math.min(sheetWidth / width, height / drawn.height);
  return { ...drawn, words: scale * drawn.size, area: scale ** 2 * drawn.plots };
}

/**
 * A figure drawn so that its words are readable in the room that a sheet has for it: its plots are lower where the room is low.
 *
 * @param figure  figure as data
 * @param id  beginning of its ids
 * @param height  room on the sheet [px]
 * @returns markup of an `svg` element
 * Example: handoutPicture(figure, "hand-force").text.startsWith("<svg ") → true
 */
export function handoutPicture(figure: Figure, id: string, height: number = usualHeight): Markup {
  const all = widths.map((width) => onPaper(figure, id, width, height));
  const best = all.reduce((one, other) => {
    const gain = Math.min(other.words, readable) - Math.min(one.words, readable);
    return gain > 0.01 || (gain > -0.01 && other.area > one.area) ? other : one;
  });
  return new Markup(best.svg);
}
