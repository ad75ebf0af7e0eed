import type { Axis, Figure, Limit } from "../notebook/output.js";
import { figures } from "../quantity/print.js";
import { type Curve, curvesOf } from "./curve.js";
import { html, type Markup } from "./html.js";
import { tableBox } from "./table.js";

const longestTable = 11;

/** Positions of at most `longestTable` rows, evenly spread, the first and the last among them. */
function sampledRows(count: number): number[] {
  if (count <= longestTable) return Array.from({ length: count }, (_, row) => row);
  return Array.from({ length: longestTable }, (_, row) => Math.round((row * (count - 1)) / (longestTable - 1)));
}

/** Curves that share their places along the lower axis stand in one table. */
function sharedPlaces(curves: readonly Curve[]): Curve[][] {
  const groups: Curve[][] = [];
  for (const curve of curves) {
    const group = groups.find(([first]) => JSON.stringify(first?.series.x) === JSON.stringify(curve.series.x));
    if (group) group.push(curve);
    else groups.push([curve]);
  }
  return groups;
}

function limitText({ name, value, low, high }: Limit): string {
  const range =
    low === undefined && high === undefined ? "" : ` (${figures(low ?? value)} to ${figures(high ?? value)})`;
  return `${name}: ${figures(value)}${range}`;
}

/** Numbers of a curve in a row; behind each the ends of its band. */
function cellsOf({ y, band }: Curve, row: number): string {
  const value = figures(y[row] ?? Number.NaN);
  const [low, high] = [band?.low[row] ?? null, band?.high[row] ?? null];
  return low === null || high === null ? value : `${value} (${figures(low)} to ${figures(high)})`;
}

function groupTable(group: readonly Curve[], title: string, x: Axis, y: Axis): Markup {
  const places = group[0]?.series.x ?? [];
  const rows = sampledRows(places.length);
  const shortened = rows.length < places.length ? `; ${rows.length} of ${places.length} rows, evenly spread` : "";
  const banded = group.some(({ band }) => band !== undefined) ? "; in brackets 5 % to 95 %" : "";
  return tableBox({
    caption: `${title === "" ? "" : `${title}: `}${y.title}${banded}${shortened}`,
    columns: [x.title, ...group.map(({ name }) => name)],
    rows: rows.map((row) => [figures(places[row] ?? Number.NaN, 4), ...group.map((curve) => cellsOf(curve, row))]),
  });
}

/**
 * The numbers of a figure as tables, one for each panel and set of places along its lower axis.
 *
 * @param figure  the figure
 * @returns markup; long series are sampled, and the caption says so
 * Example: dataTables(figure)
 */
export function dataTables(figure: Figure): Markup {
  return html`${figure.panels.map(
    (panel) => html`${sharedPlaces(curvesOf(panel)).map((group) => groupTable(group, panel.title, figure.x, figure.y))}
${(panel.limits ?? []).length > 0 && html`<p class="note">Limits, on the same scale: ${(panel.limits ?? []).map(limitText).join("; ")}.</p>`}`,
  )}`;
}
