import type { Axis, Figure, Limit } from "../notebook/output.js";
import { figures } from "../quantity/print.js";
import { type Curve, curvesOf } from "./curve.js";
import { type Content, html, type Markup } from "./html.js";
import { tableBox } from "./table.js";
import type { WorkedNumbers } from "./worked-numbers.js";

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

/** Number of a curve in a row, and behind it the ends of its band. */
function partsOf({ y, band }: Curve, row: number): readonly [value: string, ends: string] {
  const [low, high] = [band?.low[row] ?? null, band?.high[row] ?? null];
  return [figures(y[row] ?? Number.NaN), low === null || high === null ? "" : ` (${figures(low)} to ${figures(high)})`];
}

/** What a figure's tables hang on. */
interface TablesOf {
  readonly x: Axis;
  readonly y: Axis;
  readonly numbers: WorkedNumbers | undefined;
}

function groupTable(group: readonly Curve[], title: string, { x, y, numbers }: TablesOf): Markup {
  const places = group[0]?.series.x ?? [];
  const rows = sampledRows(places.length);
  const shortened = rows.length < places.length ? `; ${rows.length} of ${places.length} rows, evenly spread` : "";
  const banded = group.some(({ band }) => band !== undefined) ? "; in brackets 5 % to 95 %" : "";
  const texts = rows.map((row) => [
    figures(places[row] ?? Number.NaN, 4),
    ...group.map((curve) => partsOf(curve, row).join("")),
  ]);
  const cells = rows.map((row, index) => [
    texts[index]?.[0],
    ...group.map((curve, column): Content => {
      if (numbers === undefined || curve.worked?.row !== row) return texts[index]?.[column + 1];
      const [value, ends] = partsOf(curve, row);
      return html`${numbers.own(`${title} ${curve.name}`, value, curve.worked.working)}${ends}`;
    }),
  ]);
  const caption = `${title === "" ? "" : `${title}: `}${y.title}${banded}${shortened}`;
  const columns = [x.title, ...group.map(({ name }) => name)];
  return html`${tableBox({ caption, columns, rows: cells, texts })}${numbers && othersNote(group)}`;
}

/** Says how the numbers that do not unfold come about. */
function othersNote(group: readonly Curve[]): Markup | undefined {
  const words = group.flatMap(({ worked }) =>
    worked === undefined
      ? []
      : `${worked.changes}${worked.from === undefined ? "" : `, from ${figures(worked.from)} on`}`,
  );
  const changes = [...new Set(words)];
  if (changes.length === 0) return undefined;
  return html`<p class="note">A number that unfolds stands for its column: the other rows come about by the same steps and differ only in this: ${changes.join("; ")}.</p>`;
}

/**
 * The numbers of a figure as tables, one for each panel and set of places along its lower axis.
 *
 * @param figure  the figure
 * @param numbers  numbers of the page, which unfold; without them none does
 * @returns markup; long series are sampled, and the caption says so
 * Example: dataTables(figure)
 */
export function dataTables({ panels, x, y }: Figure, numbers?: WorkedNumbers): Markup {
  return html`${panels.map(
    (panel) => html`${sharedPlaces(curvesOf(panel)).map((group) => groupTable(group, panel.title, { x, y, numbers }))}
${(panel.limits ?? []).length > 0 && html`<p class="note">Limits, on the same scale: ${(panel.limits ?? []).map(limitText).join("; ")}.</p>`}`,
  )}`;
}
