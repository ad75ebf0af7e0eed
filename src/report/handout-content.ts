import type { ExecutedNotebook } from "../notebook/executed.js";
import type { DrawnReeving, Figure, SheetTable } from "../notebook/output.js";
import { checkShown } from "../notebook/shape.js";
import { markdownText } from "./markdown.js";
import type { InPlace, Outline } from "./outline.js";

/** A thing to keep, plain text. */
interface KeptRule {
  readonly text: string;
  /** Range as printed, where it does not stand in the text already. */
  readonly range?: string;
}

/** What a handout takes from a report, beside its question. */
export interface HandoutContent {
  readonly picture?: Figure;
  /** The first line that the report draws. */
  readonly reeving?: DrawnReeving;
  readonly rules: readonly KeptRule[];
  readonly sheetTable?: SheetTable;
  /** Whether anything of the report speaks of demo data. */
  readonly demo: boolean;
}

/** Most results that stand below the answer where a notebook gives no rules. */
const mostResults = 2;

/** Words by which invented data is known: a page that holds such data says so in one of them. */
const demoWords = /\b(?:demo|invented)\b/iu;

function speaksOfDemo({ name, madeFrom, cells }: ExecutedNotebook): boolean {
  const said = cells.map((cell) => (cell.type === "markdown" ? cell.source : JSON.stringify(cell.outputs)));
  return [name, madeFrom ?? "", ...said].some((text) => demoWords.test(text));
}

/** What stands in the text, in its order. */
function blocksOf({ opening, sections }: Outline): InPlace[] {
  return [opening, ...sections.map(({ blocks }) => blocks)].flat();
}

/** The answer and its first results with a range, in the place of rules. */
function rulesFromAnswer(outline: Outline): KeptRule[] {
  const results = blocksOf(outline)
    .flatMap((block) => (block.kind === "results" ? block.results : []))
    .flatMap(({ label, text, range = "" }) => (/\d/u.test(range) ? [{ text: `${label}: ${text}`, range }] : []));
  return [{ text: markdownText(outline.answer.text) }, ...results.slice(0, mostResults)];
}

/**
 * What the handout of a report carries.
 *
 * @param notebook  after a complete run
 * @param outline  the same, sorted
 * @returns the picture, the drawing of its line, the rules of the notebook or else its answer and results, the table, and whether data is invented
 * Example: handoutOf(notebook, outlineOf(notebook, new PageIds())).rules.length → 3
 */
export function handoutOf(notebook: ExecutedNotebook, outline: Outline): HandoutContent {
  const { picture, rules, sheetTable } = outline;
  const reeving = blocksOf(outline).find((block) => block.kind === "reeving");
  return {
    ...(picture && { picture }),
    ...(reeving && { reeving }),
    rules: rules.length > 0 ? rules.map(({ text, range }) => ({ text, range })) : rulesFromAnswer(outline),
    ...(sheetTable && { sheetTable }),
    demo: speaksOfDemo(notebook),
  };
}

function isRule(value: unknown): value is KeptRule {
  if (typeof value !== "object" || value === null) return false;
  const { text, range } = value as Partial<Record<keyof KeptRule, unknown>>;
  return typeof text === "string" && (range === undefined || typeof range === "string");
}

function isShown(kind: "figure" | "reeving" | "sheetTable", value: unknown): boolean {
  try {
    return checkShown(value).kind === kind;
  } catch {
    return false;
  }
}

/** Whether something read from a file is what a handout takes from a report. */
export function isHandoutContent(value: unknown): value is HandoutContent {
  if (typeof value !== "object" || value === null) return false;
  const { picture, reeving, rules, sheetTable, demo } = value as Partial<Record<keyof HandoutContent, unknown>>;
  return (
    (picture === undefined || isShown("figure", picture)) &&
    (reeving === undefined || isShown("reeving", reeving)) &&
    Array.isArray(rules) &&
    rules.every(isRule) &&
    (sheetTable === undefined || isShown("sheetTable", sheetTable)) &&
    typeof demo === "boolean"
  );
}
