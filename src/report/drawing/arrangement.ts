import type { Figure } from "../../notebook/output.js";
import type { SeriesStyle } from "../../notebook/styles.js";
import type { Tick } from "../../notebook/ticks.js";
import { tickLength } from "./axes.js";
import { columnGap, type Measures, measure } from "./measures.js";
import { type Plot, plotOf } from "./plot.js";
import { strongWidth, widestLine, wrapText } from "./textwidth.js";

/** Where everything of a figure stands, for a width. */
export interface Arrangement {
  readonly size: number;
  readonly lineHeight: number;
  readonly ticks: { readonly x: readonly Tick[]; readonly y: readonly Tick[] };
  /** Longest line of a name at the end of a curve [px]; nothing where names stand in a key below. */
  readonly labels: number | undefined;
  readonly cells: readonly Cell[];
  readonly height: number;
}

/** One panel with its words. */
export interface Cell {
  readonly plot: Plot;
  /** Left edge and width of all that belongs to the panel. */
  readonly left: number;
  readonly width: number;
  readonly title: readonly string[];
  /** Middles of the rows of words above and below the plot. */
  readonly titleAt: number;
  readonly sideTitle: readonly string[];
  readonly sideTitleAt: number;
  readonly topTitle: readonly string[];
  readonly topTitleAt: number;
  readonly lowerTitle: readonly string[];
  readonly lowerTitleAt: number;
}

const rowGap = 18;

/** Arranges the panels of a figure on a width [px], with plots of a height of their own where one is given [px]. */
export function arrange(
  figure: Figure,
  styles: ReadonlyMap<string, SeriesStyle>,
  width: number,
  ownHeight?: number,
): Arrangement {
  const measures = measure(figure, styles, width, ownHeight);
  const { across, size, lineHeight, ranges, cellWidth, leftRoom, plotWidth, plotHeight } = measures;
  const words = wordsOf(figure, measures);
  const several = figure.panels.length > 1;
  const topRoom = figure.top === undefined ? 0 : lineHeight + tickLength;
  const sideRow = Math.max(words.side.length, words.sharedRow ? words.top.length : 0) * lineHeight;
  const topRow = words.sharedRow ? 0 : words.top.length * lineHeight;
  const lowerRow = words.lower.length * lineHeight;

  const cells: Cell[] = [];
  let top = 0;
  for (let row = 0; row * across < figure.panels.length; row += 1) {
    const panels = figure.panels.slice(row * across, (row + 1) * across);
    const titles = panels.map(({ title }) => (several ? wrapText(title, size * 1.1 * strongWidth, cellWidth) : []));
    const titleRow = Math.max(0, ...titles.map(({ length }) => length)) * (lineHeight + 1);
    const plotTop = top + titleRow + sideRow + topRow + topRoom + lineHeight * 0.55;
    const bottom = plotTop + plotHeight + tickLength + lineHeight;
    panels.forEach((_, column) => {
      const left = column * (cellWidth + columnGap);
      const title = titles[column] ?? [];
      const first = column === 0;
      cells.push({
        plot: plotOf({ left: left + leftRoom, top: plotTop, width: plotWidth, height: plotHeight, ranges }),
        left,
        width: cellWidth,
        title,
        titleAt: top + (title.length * (lineHeight + 1)) / 2,
        sideTitle: first ? words.side : [],
        sideTitleAt: top + titleRow + (words.side.length * lineHeight) / 2,
        topTitle: words.top,
        topTitleAt: top + titleRow + (words.sharedRow ? 0 : sideRow) + (words.top.length * lineHeight) / 2,
        lowerTitle: words.lower,
        lowerTitleAt: bottom + lowerRow / 2,
      });
    });
    top = bottom + lowerRow + rowGap;
  }
  const { ticks, labels } = measures;
  return { size, lineHeight, ticks, labels, cells, height: Math.ceil(top - rowGap + 4) };
}

/** Titles of the axes in lines; those of the side and the top share a row where both fit. */
function wordsOf(figure: Figure, { cellWidth, size, leftRoom, rightRoom }: Measures) {
  const side = wrapText(figure.y.title, size, cellWidth);
  const top = figure.top === undefined ? [] : wrapText(figure.top.title, size, cellWidth - leftRoom);
  const lower = wrapText(figure.x.title, size, cellWidth - rightRoom);
  const together = widestLine(side, size) + widestLine(top, size) + rightRoom + 2 * size;
  return { side, top, lower, sharedRow: together <= cellWidth };
}
