import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { ValueError } from "../quantity/errors.js";
import type { Verdict } from "../quantity/verdict.js";
import type { Coefficient } from "../sources/coefficient.js";
import type { Working } from "../working/working.js";
import { liveHtml } from "./html.js";
import {
  type Answer,
  type Checks,
  type Coefficients,
  type DrawnReeving,
  dataModeVariable,
  type Figure,
  figureMediaType,
  type Question,
  type Result,
  type Rule,
  type SheetTable,
  type Shown,
  shownMediaType,
  type Table,
  type Title,
  type Verdicts,
  type Workings,
} from "./output.js";
import { lightPalette, plotlyFigure } from "./plotly.js";
import { checkShown } from "./shape.js";

/** Takes an output under its media type. */
export type Sink = (mediaType: string, content: unknown) => void;

export interface ShowOptions {
  /** Takes the output; by default the cell that is running. */
  readonly sink?: Sink;
  /** Outputs travel as data instead of showing themselves; by default as the report build asks. */
  readonly dataMode?: boolean;
}

const showLive = liveHtml(() =>
  readFileSync(createRequire(import.meta.url).resolve("plotly.js-dist-min/plotly.min.js"), "utf8"),
);

/**
 * Shows a thing as output of the running cell: as data for the report build, as HTML in a live notebook.
 *
 * @param shown  figure, table, result, title, answer, question, rule, sheet table, checks, verdicts, coefficients or workings
 * @throws ValueError when the thing is incomplete, or when no notebook kernel runs this and no sink is given
 * Example: show(answer("About 80 N."))
 */
export function show(shown: Shown, options: ShowOptions = {}): void {
  checkShown(shown);
  const sink = options.sink ?? kernelSink();
  const dataMode = options.dataMode ?? process.env[dataModeVariable] === "data";
  if (!dataMode) sink("text/html", showLive(shown));
  else if (shown.kind === "figure") {
    const { data, layout } = plotlyFigure(shown, lightPalette);
    sink(figureMediaType, { data, layout, haulbook: shown });
  } else sink(shownMediaType, shown);
}

/** The kernel's own way to put out data: it hands it to the code of cells under a global name. */
interface KernelGlobal {
  readonly __tslab__?: { readonly require: (name: "tslab") => { readonly display: { raw: Sink } } };
}

function kernelSink(): Sink {
  const kernel = (globalThis as KernelGlobal).__tslab__;
  if (kernel === undefined) {
    throw new ValueError({
      quantity: "place to show something",
      value: "none: no notebook kernel runs this program",
      allowed: "a cell of a notebook, or a sink of your own",
      advice: "In a script give show(…, { sink }).",
    });
  }
  const { display } = kernel.require("tslab");
  return (mediaType, content) => display.raw(mediaType, content);
}

/** A checked thing of a kind from its fields. */
function built<Kind extends Shown["kind"], Fields extends object>(
  kind: Kind,
  fields: Fields,
): Fields & { readonly kind: Kind } {
  const shown = { ...fields, kind };
  checkShown(shown);
  return shown;
}

/**
 * A figure as data, checked.
 *
 * @param fields  all fields of a figure but its kind
 * @returns the figure
 * @throws ValueError for a name that is no slug, an empty text, lists of different length, a number that is not finite
 * Example: figure({ name: "hand-force", title, caption, altText, x, y, panels }).kind → "figure"
 */
export function figure(fields: Omit<Figure, "kind">): Figure {
  return built("figure", fields);
}

/**
 * A line drawn as it is rove, from load to hand, hauling and easing, checked.
 *
 * @param fields  name, title, caption, line and load [N]; words for the two ends and a finding for readers without sight as wanted
 * @returns the drawing as data: the line itself
 * @throws ValueError for a name that is no slug or an empty text; ReevingError or ValueError for a line that the solver refuses
 * Example: reeving({ name: "mainsheet", title: "A sheet", caption: "A bare rope.", line: { rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [] }, load: 490 }).kind → "reeving"
 */
export function reeving(fields: Omit<DrawnReeving, "kind">): DrawnReeving {
  return built("reeving", fields);
}

/**
 * A table as data, checked.
 *
 * @param fields  caption, columns and rows
 * @returns the table
 * @throws ValueError for a row that does not fill the columns, an empty caption, a number that is not finite
 * Example: table({ caption: "Hand force", columns: ["Wind", "Force"], rows: [["12 kn", 86.3]] }).kind → "table"
 */
export function table(fields: Omit<Table, "kind">): Table {
  return built("table", fields);
}

/**
 * A computed number with its unit, checked.
 *
 * @param fields  label, value as printed, range as printed, and how it was worked out
 * @returns the result
 * @throws ValueError for an empty text, or a working that gives another number
 * Example: result({ label: "Hand force", text: "86 N", range: "likely 70 to 105 N" }).kind → "result"
 */
export function result(fields: Omit<Result, "kind">): Result {
  return built("result", fields);
}

/**
 * The title of the page, where the first heading of the notebook is not enough: a notebook that is run with several files.
 *
 * @param text  plain text, not empty
 * @returns the title
 * @throws ValueError for an empty text
 * Example: title("Which ropes should the demo skiff carry?").kind → "title"
 */
export function title(text: string): Title {
  return built("title", { text });
}

/**
 * The sentence that answers the report's question, checked.
 *
 * @param text  Markdown, not empty
 * @returns the answer
 * @throws ValueError for an empty text
 * Example: answer("About 80 N.").text → "About 80 N."
 */
export function answer(text: string): Answer {
  return built("answer", { text });
}

/**
 * A question to the reader with its answer, checked.
 *
 * @param fields  question and answer, Markdown, not empty
 * @returns the question
 * @throws ValueError for an empty text
 * Example: question({ question: "Twice the wind?", answer: "Four times the load." }).kind → "question"
 */
export function question(fields: Omit<Question, "kind">): Question {
  return built("question", fields);
}

/**
 * A thing to keep of a report, checked; its handout carries it.
 *
 * @param fields  text and range as printed: plain text, 180 and 120 characters at most
 * @returns the rule
 * @throws ValueError for an empty or longer text
 * Example: rule({ text: "Half as much wind again: 2.25 times the pull.", range: "2.2 to 2.3 times" }).kind → "rule"
 */
export function rule(fields: Omit<Rule, "kind">): Rule {
  return built("rule", fields);
}

/**
 * A table to fill in by hand, checked; it stands on the handout only, where its rows share the room that is left.
 *
 * @param fields  caption of 180 characters at most, 2 to 8 columns, 1 to 8 rows of what stands in them already; a column or cell has 24 at most
 * @returns the table
 * @throws ValueError for an empty caption or column, or more columns, rows or texts than there is room for
 * Example: sheetTable({ caption: "Read twice.", columns: ["Cover", "Ease [N]"], rows: [["smooth"], ["coarse"]] }).kind → "sheetTable"
 */
export function sheetTable(fields: Omit<SheetTable, "kind">): SheetTable {
  return built("sheetTable", fields);
}

/**
 * Comparisons with expected values under a title, checked.
 *
 * @param title  text, not empty
 * @param results  rows after the comparison, at least one
 * @returns the checks
 * @throws ValueError for an empty title or list, or a row that is not complete
 * Example: checks("Against the handbook", compareAll(rows)).kind → "checks"
 */
export function checks(title: string, results: Checks["results"]): Checks {
  return built("checks", { title, results });
}

/**
 * Judgements under a caption, checked.
 *
 * @param caption  text, not empty
 * @param list  verdicts, at least one
 * @returns the verdicts
 * @throws ValueError for an empty caption or list, or a verdict without subject or reason
 * Example: verdicts("The halyard", [{ subject: "3 mm HMPE", outcome: "enough", reason: "twice the load" }]).kind → "verdicts"
 */
export function verdicts(caption: string, list: readonly Verdict[]): Verdicts {
  return built("verdicts", { caption, verdicts: list });
}

/**
 * Records behind the numbers nearby, checked: value, spread and origin, one click away on the page.
 *
 * @param caption  text, not empty
 * @param records  coefficient records by the words that a reader knows them by, at least one
 * @returns the coefficients
 * @throws ValueError for an empty caption or list, or a record that is not complete
 * Example: coefficients("Rings", { "sliding on anodised": surfaces.anodised.friction }).kind → "coefficients"
 */
export function coefficients(caption: string, records: Readonly<Record<string, Coefficient>>): Coefficients {
  return built("coefficients", {
    caption,
    entries: Object.entries(records).map(([name, record]) => ({ name, record })),
  });
}

/**
 * How numbers of the page were worked out, checked; a text marks such a number as `[[name: 86 N]]`, and it unfolds there.
 *
 * @param byName  workings from `worked` or `balanced`, by the names that texts use: lower case with hyphens
 * @returns the workings; they show nothing where they stand
 * @throws ValueError for a name that is no slug, or data that is no working
 * Example: workings({ hold: worked(formulas.deadBand, { haulingForce: 90, easingForce: 4 }) }).entries.length → 1
 */
export function workings(byName: Readonly<Record<string, Working>>): Workings {
  return built("workings", { entries: Object.entries(byName).map(([name, working]) => ({ name, working })) });
}
