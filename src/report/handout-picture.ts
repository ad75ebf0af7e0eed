import type { Figure } from "../notebook/output.js";
import { figureSvg } from "./drawing/figure.js";
import { Markup } from "./html.js";

/** Room for a picture on the sheet [px]: the width of the text, and a height that leaves room for the rest. */
const room = { width: 688, height: 320 } as const;
/** Widths to draw for [px]: the wider, the more charts stand side by side, and the smaller all is on paper. */
const widths = [688, 820, 960, 1100] as const;
/** Words of this size on paper are large enough; beyond it a large picture counts [px]. */
const readable = 10;

interface Drawn {
  readonly svg: string;
  /** Size of its words on paper [px]. */
  readonly words: number;
  /** What it covers of the paper [px²]. */
  readonly area: number;
}

function attribute(svg: string, name: "width" | "height" | "font-size"): number {
  return Number(new RegExp(` ${name}="([\\d.]+)"`, "u").exec(svg)?.[1]);
}

function drawn(figure: Figure, id: string, width: number): Drawn {
  const svg = figureSvg(figure, { width, id });
  const height = attribute(svg, "height");
  const scale = Math.min(room.width / width, room.height / height);
  return { svg, words: scale * attribute(svg, "font-size"), area: scale ** 2 * width * height };
}

/**
 * A figure drawn so that its words are readable on a sheet where it has a third of the height.
 *
 * @param figure  figure as data
 * @param id  beginning of its ids
 * @returns markup of an `svg` element
 * Example: handoutPicture(figure, "hand-force").text.startsWith("<svg ") → true
 */
export function handoutPicture(figure: Figure, id: string): Markup {
  const all = widths.map((width) => drawn(figure, id, width));
  const best = all.reduce((one, other) => {
    const gain = Math.min(other.words, readable) - Math.min(one.words, readable);
    return gain > 0 || (gain === 0 && other.area > one.area) ? other : one;
  });
  return new Markup(best.svg);
}
