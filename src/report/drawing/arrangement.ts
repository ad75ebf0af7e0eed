import type { Figure } from "../../notebook/output.js";
import { figureRanges } from "../../notebook/scale.js";
import type { SeriesStyle } from "../../notebook/styles.js";
import { axisTicks, type Form, type Tick } from "../../notebook/ticks.js";
import { tickGap, tickLength } from "./axes.js";
import { labelGap, labelLines } from "./endlabels.js";
import { type Plot, plotOf } from "./plot.js";
import { strongWidth, textWidth, widestLine, wrapText } from "./textwidth.js";

type Styles = ReadonlyMap<string, SeriesStyle>;

/** Where everything of a figure stands, for a width. */
export interface Arrangement {
  readonly form: Form;
  /** Panels side by side. */
  readonly across: number;
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

/** From this width on a page is wide [px]. */
const wideFrom = 560;
/** Least width of a panel beside others [px]. */
const leastPanel = 245;
const columnGap = 24;
const rowGap = 18;
/** A name that takes more lines than this stands in a key. */
const mostLines = 3;
/** On a phone more panels than this are lower [px], so that two of them can be seen at once. */
const manyPanels = 3;
const lowPlot = 165;

const forms: Readonly<Record<Form, { size: number; plotHeight: number; leastPlot: number; label: number }>> = {
  narrow: { size: 12, plotHeight: 215, leastPlot: 196, label: 84 },
  single: { size: 13, plotHeight: 330, leastPlot: 300, label: 170 },
  several: { size: 13, plotHeight: 220, leastPlot: 165, label: 105 },
};

function acrossOf(count: number, width: number): number {
  if (width < wideFrom) return 1;
  const most = Math.max(1, Math.min(count, Math.floor((width + columnGap) / (leastPanel + columnGap))));
  // Four panels with room for three stand two by two.
  return Math.ceil(count / Math.ceil(count / most));
}

/** Room for names beside the plots [px], or nothing where too little would be left for a plot. */
function gutterOf(
  figure: Figure,
  styles: Styles,
  form: Form,
  room: { readonly width: number; readonly height: number },
  lineHeight: number,
): number | undefined {
  const { size, leastPlot, label } = forms[form];
  const lines = figure.panels.map((panel) => labelLines(panel, styles, size, label));
  const short = lines.flat().every((one) => one.lines.length <= mostLines);
  const fits =
    short && lines.every((all) => all.reduce((sum, one) => sum + one.lines.length * lineHeight, 0) <= room.height);
  const gutter = labelGap + Math.max(0, ...lines.flat().map(({ width }) => width));
  return fits && room.width - gutter >= leastPlot ? gutter : undefined;
}

/** Arranges the panels of a figure on a width [px]. */
export function arrange(figure: Figure, styles: Styles, width: number): Arrangement {
  const count = figure.panels.length;
  const across = acrossOf(count, width);
  const form: Form = width < wideFrom ? "narrow" : across === 1 ? "single" : "several";
  const { size, label } = forms[form];
  const plotHeight = form === "narrow" && count > manyPanels ? lowPlot : forms[form].plotHeight;
  const lineHeight = Math.round(size * 1.3);
  const ranges = figureRanges(figure);
  const ticks = { x: axisTicks(ranges.x, "x", form), y: axisTicks(ranges.y, "y", form) };
  const cellWidth = (width - (across - 1) * columnGap) / across;
  const lastTick = ticks.x.at(-1);
  const overhang = Math.max(8, textWidth(lastTick?.label ?? "", size) / 2 + 1);
  const sideNumbers = ticks.y.map(({ label: text }) => text);
  const leftRoom = Math.ceil(widestLine(sideNumbers, size) + tickGap + 1);
  const gutter = gutterOf(figure, styles, form, { width: cellWidth - leftRoom, height: plotHeight }, lineHeight);
  const rightRoom = Math.max(gutter ?? 0, overhang);
  const plotWidth = cellWidth - leftRoom - rightRoom;
  const words = wordsOf(figure, cellWidth, size, leftRoom, rightRoom);
  const several = figure.panels.length > 1;
  const topRoom = figure.top === undefined ? 0 : lineHeight + tickLength;
  const sideRow = Math.max(words.side.length, words.sharedRow ? words.top.length : 0) * lineHeight;
  const topRow = words.sharedRow ? 0 : words.top.length * lineHeight;
  const lowerRow = words.lower.length * lineHeight;

  const cells: Cell[] = [];
  let top = 0;
  for (let row = 0; row * across < count; row += 1) {
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
  return {
    form,
    across,
    size,
    lineHeight,
    ticks,
    labels: gutter === undefined ? undefined : label,
    cells,
    height: Math.ceil(top - rowGap + 4),
  };
}

/** Titles of the axes in lines; those of the side and the top share a row where both fit. */
function wordsOf(figure: Figure, cellWidth: number, size: number, leftRoom: number, rightRoom: number) {
  const side = wrapText(figure.y.title, size, cellWidth);
  const top = figure.top === undefined ? [] : wrapText(figure.top.title, size, cellWidth - leftRoom);
  const lower = wrapText(figure.x.title, size, cellWidth - rightRoom);
  const together = widestLine(side, size) + widestLine(top, size) + rightRoom + 2 * size;
  return { side, top, lower, sharedRow: together <= cellWidth };
}
