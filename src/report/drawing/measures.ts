import type { Figure } from "../../notebook/output.js";
import { figureRanges, type Range } from "../../notebook/scale.js";
import type { SeriesStyle } from "../../notebook/styles.js";
import { axisTicks, type Form, type Tick } from "../../notebook/ticks.js";
import { placedMarks, tickGap } from "./axes.js";
import { labelGap, labelLines } from "./endlabels.js";
import { textWidth, widestLine } from "./textwidth.js";

/** Sizes that all panels of a figure share [px], and what is written at their axes. */
export interface Measures {
  /** Panels side by side. */
  readonly across: number;
  readonly size: number;
  readonly lineHeight: number;
  readonly ranges: { readonly x: Range; readonly y: Range };
  readonly ticks: { readonly x: readonly Tick[]; readonly y: readonly Tick[] };
  /** Longest line of a name at the end of a curve; nothing where names stand in a key below. */
  readonly labels: number | undefined;
  readonly cellWidth: number;
  readonly leftRoom: number;
  readonly rightRoom: number;
  readonly plotWidth: number;
  readonly plotHeight: number;
}

/** From this width on a page is wide [px]. */
const wideFrom = 560;
/** Least width of a panel beside others [px]. */
const leastPanel = 245;
export const columnGap = 24;
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

type Styles = ReadonlyMap<string, SeriesStyle>;

/** Measures of a figure on a width [px], with as many panels side by side as leave room for the marks above them, and plots of a height of their own where one is given [px]. */
export function measure(figure: Figure, styles: Styles, width: number, plotHeight?: number): Measures {
  const count = figure.panels.length;
  const most = Math.max(1, Math.min(count, Math.floor((width + columnGap) / (leastPanel + columnGap))));
  for (let columns = width < wideFrom ? 1 : most; columns > 1; columns -= 1) {
    // Four panels with room for three stand two by two.
    const across = Math.ceil(count / Math.ceil(count / columns));
    const measures = measureAcross(figure, styles, { width, across, plotHeight });
    if (marksFit(figure, measures)) return measures;
  }
  return measureAcross(figure, styles, { width, across: 1, plotHeight });
}

function marksFit({ top }: Figure, { plotWidth, ranges, size }: Measures): boolean {
  const { low, high } = ranges.x;
  const place = (at: number) => ((at - low) / (high - low)) * plotWidth;
  return top === undefined || placedMarks(top, { x: place, ranges }, size).every(({ hasRoom }) => hasRoom);
}

interface Across {
  readonly width: number;
  readonly across: number;
  readonly plotHeight: number | undefined;
}

function measureAcross(figure: Figure, styles: Styles, { width, across, plotHeight: asked }: Across): Measures {
  const form: Form = width < wideFrom ? "narrow" : across === 1 ? "single" : "several";
  const { size, label } = forms[form];
  const usual = form === "narrow" && figure.panels.length > manyPanels ? lowPlot : forms[form].plotHeight;
  const plotHeight = asked ?? usual;
  const lineHeight = Math.round(size * 1.3);
  const ranges = figureRanges(figure);
  const ticks = { x: axisTicks(ranges.x, "x", form), y: axisTicks(ranges.y, "y", form) };
  const cellWidth = (width - (across - 1) * columnGap) / across;
  const overhang = Math.max(8, textWidth(ticks.x.at(-1)?.label ?? "", size) / 2 + 1);
  const sideNumbers = ticks.y.map(({ label: text }) => text);
  const leftRoom = Math.ceil(widestLine(sideNumbers, size) + tickGap + 1);
  const gutter = gutterOf(figure, styles, form, { width: cellWidth - leftRoom, height: plotHeight }, lineHeight);
  const rightRoom = Math.max(gutter ?? 0, overhang);
  return {
    across,
    size,
    lineHeight,
    ranges,
    ticks,
    labels: gutter === undefined ? undefined : label,
    cellWidth,
    leftRoom,
    rightRoom,
    plotWidth: cellWidth - leftRoom - rightRoom,
    plotHeight,
  };
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
