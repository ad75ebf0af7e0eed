import type { Figure, Panel } from "../../notebook/output.js";
import type { Arrangement, Cell } from "./arrangement.js";
import { axes } from "./axes.js";
import { curves, markPlaces, marks, tints } from "./curves.js";
import { element, textBlock } from "./element.js";
import { endLabels } from "./endlabels.js";
import { limitBands, limitNames, limitRules } from "./limits.js";
import type { DrawnStyle } from "./marks.js";
import { takenRoom } from "./room.js";

interface PanelLook {
  readonly figure: Figure;
  readonly panel: Panel;
  readonly cell: Cell;
  readonly arrangement: Arrangement;
  readonly styles: ReadonlyMap<string, DrawnStyle>;
}

/** One panel: axes, tints, curves, limits and names. */
export function panelGroup({ figure, panel, cell, arrangement, styles }: PanelLook): string {
  const { plot } = cell;
  const { size, lineHeight, ticks, labels } = arrangement;
  const styled = panel.series.flatMap((series) => {
    const style = styles.get(series.name);
    return style === undefined ? [] : [{ series, style }];
  });
  // What the figure is about lies on top.
  const ordered = [...styled].sort((one, other) => Number(one.style.accent) - Number(other.style.accent));
  const clip = [figure.x, figure.y].some(({ minimum, maximum }) => minimum !== undefined || maximum !== undefined);
  const curvesHere = [
    limitBands(plot, panel),
    ...ordered.map(({ series, style }) => tints(plot, series, style)),
    limitRules(plot, panel),
    element("g", {}, ordered.map(({ series, style }) => curves(plot, series, style)).join("")),
  ].join("");
  const marksHere = ordered.map(({ series, style }) => marks(plot, series, style)).join("");
  const taken = takenRoom(
    plot,
    panel,
    styled.flatMap(({ series, style }) => markPlaces(plot, series, style)),
  );
  const named = { plot, panel, taken, size, lineHeight };
  const ends = labels === undefined ? "" : endLabels({ ...named, styles, most: labels });
  const over = marksHere + ends + limitNames(named);
  const place = { x: plot.left, y: plot.top, width: plot.width, height: plot.height };
  const inPlot = (content: string, kind?: string) => element("svg", { ...place, class: kind }, content);
  return element(
    "g",
    { class: "panel" },
    [
      words(cell, lineHeight),
      axes({ plot, ticks, top: figure.top, size, lineHeight }),
      ...(clip ? [inPlot(curvesHere, "plot clipped"), inPlot(over)] : [inPlot(curvesHere + over, "plot")]),
    ].join("\n"),
  );
}

function words(cell: Cell, lineHeight: number): string {
  const { left, plot } = cell;
  const right = plot.left + plot.width;
  const block = (name: string, lines: readonly string[], x: number, middle: number, anchor?: string) =>
    lines.length === 0
      ? ""
      : textBlock({ lines, x, middle, lineHeight, attributes: { class: name, "text-anchor": anchor } });
  return [
    block("panel-title", cell.title, left, cell.titleAt),
    block("axis-title", cell.sideTitle, left, cell.sideTitleAt),
    block("axis-title upper", cell.topTitle, right, cell.topTitleAt, "end"),
    block("axis-title", cell.lowerTitle, right, cell.lowerTitleAt, "end"),
  ].join("");
}
