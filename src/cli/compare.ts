import { type BoatComparison, compareBoats, type LineComparison } from "../boat/compare.js";
import { byNeed } from "../boat/demand.js";
import type { LineCheck } from "../boat/line-check.js";
import { figures } from "../quantity/print.js";
import { boatJson, readBoat } from "./boats.js";
import { countWords } from "./check.js";
import { aligned, wrapped } from "./columns.js";
import { exportInTheWay, exportReport } from "./export.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";

/** What `haulbook compare` was asked. */
export interface CompareOptions {
  readonly before: string;
  readonly after: string;
  readonly json: boolean;
  /** Page to write as one file; none is written when left out. */
  readonly html?: string | undefined;
}

function pair(line: LineComparison, of: (check: LineCheck) => number): string {
  const { before, after } = line;
  const one = before === undefined ? "–" : figures(of(before));
  const other = after === undefined ? "–" : figures(of(after));
  return one === other ? one : `${one} → ${other}`;
}

function row(line: LineComparison): string[] {
  return [
    line.name,
    pair(line, ({ feel }) => feel.hauling.value),
    pair(line, ({ feel }) => feel.easing.value),
    pair(line, ({ feel }) => feel.runOutLoad.value),
    pair(line, ({ budget }) => 1000 * budget.dry.value),
    pair(line, ({ budget }) => budget.cost),
    line.before?.outcome === line.after?.outcome
      ? (line.after?.outcome ?? "–")
      : `${line.before?.outcome ?? "–"} → ${line.after?.outcome ?? "–"}`,
  ];
}

function report({ before, after, lines }: BoatComparison): string {
  const titles = ["line", "haul [N]", "hold [N]", "out [N]", "dry [g]", before.currency, "all in all"];
  const change = (from: number, to: number, unit: string, digits = 3) =>
    `${figures(from, digits)} → ${figures(to, digits)} ${unit}`;
  const sums = [
    change(before.dry.value, after.dry.value, "kg dry"),
    change(before.wet.value, after.wet.value, "kg wet"),
    change(before.cost, after.cost, after.currency, 4),
  ].join(", ");
  const changes = lines
    .flatMap(({ name, changed }) => changed.map((one) => ({ name, one })))
    .sort((first, second) => byNeed(first.one.demand, second.one.demand))
    .map(({ name, one: { demand, before: was = "not asked", after: is = "not asked" } }) =>
      wrapped(`${name}, ${demand.subject} (${demand.consequence}): ${was} → ${is}; ${demand.reason}.`, "- "),
    );
  return `${[
    `${before.name} (${countWords(before.lines)}) → ${after.name} (${countWords(after.lines)})`,
    "",
    ...(changes.length === 0 ? ["No demand changed its outcome."] : ["What changed, the gravest first", ...changes]),
    "",
    aligned([titles, ...lines.map(row)], []),
    "",
    `All lines: ${sums}.`,
  ].join("\n")}\n`;
}

/** `haulbook compare`: two boats, or two versions of one, line by line. */
export async function compare(options: CompareOptions, surroundings: Surroundings): Promise<ExitCode> {
  const [before, after] = [await readBoat(options.before, surroundings), await readBoat(options.after, surroundings)];
  const noRoom = await exportInTheWay(options.html, surroundings);
  if (noRoom !== undefined) {
    surroundings.err(noRoom);
    return exitCodes.failed;
  }
  const found = compareBoats(before, after);
  surroundings.out(options.json ? boatJson(found) : report(found));
  const inputs = [options.before, options.after];
  await exportReport({ notebook: "before-and-after", inputs, file: options.html }, surroundings);
  return exitCodes.done;
}
