import { cellTags } from "../notebook/cell-tags.js";
import { type ExecutedNotebook, madeFrom } from "../notebook/executed.js";
import type {
  Answer,
  Coefficients,
  DrawnReeving,
  Figure,
  LivePanel,
  Question,
  Result,
  Rule,
  SheetTable,
  Table,
  Title,
  Verdicts,
} from "../notebook/output.js";
import type { CheckResult } from "../published/row.js";
import { bibliography } from "../sources/bibliography.js";
import { ReportError } from "./errors.js";
import { html, type Markup } from "./html.js";
import { markdownParts, type PageIds } from "./markdown.js";
import { knownWorkings, WorkedNumbers } from "./worked-numbers.js";

/** What stands in the text where a cell showed it. Results in a row stand together, and so do rules. */
export type InPlace =
  | Figure
  | DrawnReeving
  | Table
  | Question
  | Verdicts
  | Coefficients
  | { readonly kind: "results"; readonly results: Result[] }
  | { readonly kind: "rules"; readonly rules: Rule[] }
  | ProseBlock;

/** Prose as HTML. */
interface ProseBlock {
  readonly kind: "prose";
  readonly body: Markup;
}

/** One section of the notebook: a heading of the second level and all below it. */
export interface Section {
  readonly text: string;
  readonly markup: Markup;
  readonly blocks: InPlace[];
}

/** A code cell with what it printed. */
export interface CellWorking {
  /** Number among all cells of the notebook file, from 1. */
  readonly number: number;
  /** Section that the cell belongs to; the question before any. */
  readonly section: string;
  readonly code: string;
  readonly printed: string;
}

/** A notebook sorted into what a report page needs. */
export interface Outline {
  readonly name: string;
  readonly question: { readonly text: string; readonly markup: Markup };
  readonly answer: Answer;
  readonly picture?: Figure;
  readonly panel?: LivePanel;
  /** What to keep of it, at most three. */
  readonly rules: readonly Rule[];
  /** The table to fill in; it stands on the handout only. */
  readonly sheetTable?: SheetTable;
  /** What stands before the first section. */
  readonly opening: readonly InPlace[];
  readonly sections: readonly Section[];
  readonly checks: readonly CheckResult[];
  readonly working: readonly CellWorking[];
  /** Numbers of the page that open their workings; those of the prose are marked already. */
  readonly numbers: WorkedNumbers;
}

/** Most rules that a report gives. */
const mostRules = 3;

function withKnownSource(result: CheckResult, place: string): CheckResult {
  if (result.source === undefined || Object.hasOwn(bibliography, result.source)) return result;
  throw new ReportError(
    place,
    `check ${result.id} names the source "${result.source}", which is not in the bibliography.`,
  );
}

/**
 * Sorts an executed notebook into the parts of a report.
 *
 * @param notebook  after a complete run
 * @param ids  ids of the page
 * @returns the parts, prose rendered, everything else as data
 * @throws ReportError when question or answer are missing, or the prose cannot be rendered
 * Example: outlineOf(notebook, new PageIds()).question.text → "How hard do I have to hold?"
 */
export function outlineOf(notebook: ExecutedNotebook, ids: PageIds): Outline {
  const file = madeFrom(notebook);
  const opening: InPlace[] = [];
  const sections: Section[] = [];
  const checks: CheckResult[] = [];
  const working: CellWorking[] = [];
  const rules: Rule[] = [];
  const numbers = new WorkedNumbers(knownWorkings(notebook), ids, file);
  let question: Outline["question"] | undefined;
  let title: Title | undefined;
  let answer: Answer | undefined;
  let picture: Figure | undefined;
  let panel: LivePanel | undefined;
  let sheetTable: SheetTable | undefined;

  const blocks = () => sections[sections.length - 1]?.blocks ?? opening;
  const prose = (source: string, place: string) => {
    for (const { heading, body } of markdownParts(source, { place, ids, numbers })) {
      if (heading?.level === 1 && question === undefined) question = { text: heading.text, markup: heading.markup };
      else if (heading) sections.push({ text: heading.text, markup: heading.markup, blocks: [] });
      if (body.text !== "") blocks().push({ kind: "prose", body });
    }
    const panels = numbers.panels();
    if (panels.text !== "") blocks().push({ kind: "prose", body: panels });
  };

  for (const cell of notebook.cells) {
    if (cell.tags?.includes(cellTags.remove)) continue;
    const place = `${file}, cell ${cell.number}`;
    if (cell.type === "markdown") {
      prose(cell.source, place);
      continue;
    }
    const printed: string[] = [];
    for (const output of cell.outputs) {
      if (output.kind === "stream") printed.push(output.text);
      else if (output.kind === "checks") checks.push(...output.results.map((result) => withKnownSource(result, place)));
      else if (output.kind === "title") {
        if (title) throw new ReportError(place, "a second title; a page has one.");
        title = output;
      } else if (output.kind === "answer") {
        if (answer)
          throw new ReportError(
            place,
            "a second answer; a report gives one. Show the other as prose, a result or a question.",
          );
        answer = output;
      } else if (output.kind === "panel") {
        if (panel) throw new ReportError(place, "a second live panel; a page has one.");
        panel = output;
      } else if (output.kind === "figure" && picture === undefined) picture = output;
      else if (output.kind === "result") {
        const last = blocks()[blocks().length - 1];
        if (last?.kind === "results") last.results.push(output);
        else blocks().push({ kind: "results", results: [output] });
      } else if (output.kind === "rule") {
        if (rules.length === mostRules)
          throw new ReportError(place, "a fourth rule; a report gives three at most. Keep those that matter ashore.");
        rules.push(output);
        const last = blocks()[blocks().length - 1];
        if (last?.kind === "rules") last.rules.push(output);
        else blocks().push({ kind: "rules", rules: [output] });
      } else if (output.kind === "sheetTable") {
        if (sheetTable) throw new ReportError(place, "a second table to fill in; a handout has one.");
        sheetTable = output;
      } else if (output.kind !== "workings") blocks().push(output);
    }
    if (cell.tags?.includes(cellTags.removeCode)) continue;
    const section = sections[sections.length - 1]?.text ?? (title ?? question)?.text ?? "Preparation";
    working.push({ number: cell.number, section, code: cell.source, printed: printed.join("") });
  }

  if (!question)
    throw new ReportError(
      file,
      'no question; start the first cell with a heading such as "# How hard do I have to hold?".',
    );
  if (!answer) throw new ReportError(file, "no answer; let one cell show an answer: one computed sentence.");
  if (title) question = { text: title.text, markup: html`${title.text}` };
  return {
    name: notebook.name,
    question,
    answer,
    ...(picture && { picture }),
    ...(panel && { panel }),
    rules,
    ...(sheetTable && { sheetTable }),
    opening,
    sections,
    checks,
    working,
    numbers,
  };
}
