import { type ExecutedNotebook, madeFrom } from "../notebook/executed.js";
import type { Question, Rule } from "../notebook/output.js";
import type { CheckResult } from "../published/row.js";
import type { SourceId } from "../sources/bibliography.js";
import { cautionList } from "./cautions.js";
import { checkSummary, checkTables } from "./checktable.js";
import { documentHtml, mainId } from "./document.js";
import { ReportError } from "./errors.js";
import { figureBlock } from "./figure.js";
import { reportFoot } from "./foot.js";
import { type Content, html, type Markup, textOnly } from "./html.js";
import { livePanelBlock } from "./livepanel.js";
import { markdownBlocks, markdownLine, markdownText, PageIds } from "./markdown.js";
import { coefficientFold, coefficientSources, verdictList } from "./notes.js";
import { type CellWorking, type InPlace, type Outline, outlineOf, type Section } from "./outline.js";
import { reevingBlock } from "./reeving.js";
import { sourceList } from "./sourcelist.js";
import { shownResults, shownTable } from "./table.js";
import { unparted } from "./unparted.js";
import { PageWords } from "./words.js";
import { sourcesOfWorkings, type WorkedNumbers } from "./worked-numbers.js";

/** How a page carries its style, script and drawing library. */
interface PageForm {
  /** Source of plotly when everything stands in one file; left out, the page refers to the files beside it. */
  readonly inlinePlotly?: string | undefined;
  /** Source of what computes in the browser, when everything stands in one file. */
  readonly inlinePanel?: string | undefined;
}

/** A part of the page below the picture. */
interface Part {
  readonly text: string;
  readonly markup: Content;
  readonly body: Content;
  readonly kind?: string;
}

/** Most comparisons that stand on the page unfolded. */
const mostOpenChecks = 8;

/** Heading of the live panel. */
const panelTitle = "Try your own boat";

/** Headings that the page sets itself; a section of the notebook with the same heading becomes its beginning. */
const ownHeadings = ["Checked against", "Take care", "Working", "Sources"] as const;

/** Heading of the list of words. */
const wordsHeading = "Words";

function isOwn(section: Section): boolean {
  return ownHeadings.some((heading) => heading.toLowerCase() === section.text.toLowerCase());
}

class Renderer {
  readonly #ids: PageIds;
  readonly #place: string;
  readonly #numbers: WorkedNumbers;
  readonly #questions: { question: Markup; answer: Markup }[] = [];

  constructor(ids: PageIds, place: string, numbers: WorkedNumbers) {
    this.#ids = ids;
    this.#place = place;
    this.#numbers = numbers;
  }

  blocks(blocks: readonly InPlace[]): Markup {
    return html`${blocks.map((block) => this.#block(block))}`;
  }

  #block(block: InPlace): Markup {
    switch (block.kind) {
      case "prose":
        return block.body;
      case "figure":
        return figureBlock(block, this.#ids, { numbers: this.#numbers });
      case "reeving":
        return reevingBlock(block, this.#ids);
      case "table":
        return shownTable(block, this.#numbers);
      case "results":
        return shownResults(block.results, this.#numbers);
      case "rules":
        return html`<ol>\n${block.rules.map((rule) => html`<li>${ruleSentence(rule)}</li>\n`)}</ol>\n`;
      case "question":
        return this.#question(block);
      case "verdicts":
        return verdictList(block);
      case "coefficients":
        return coefficientFold(block);
    }
  }

  #question({ question, answer }: Question): Markup {
    const asked = markdownLine(question, { place: this.#place });
    const at = { place: this.#place, ids: this.#ids };
    const reply = markdownBlocks(answer, { ...at, numbers: this.#numbers });
    this.#questions.push({ question: asked, answer: markdownBlocks(answer, at) });
    return html`<details class="question"><summary>${asked}</summary>
<div class="reply">
${reply}${this.#numbers.panels()}</div></details>
`;
  }

  /** All answers once more: shown on the last sheet of a print, where the folded ones stay closed. */
  answers(): Markup | undefined {
    if (this.#questions.length === 0) return undefined;
    return html`<section class="answers">
<h2>Answers</h2>
${this.#questions.map(({ question, answer }) => html`<h3>${question}</h3>\n${answer}`)}</section>
`;
  }
}

/** A rule with its range before the stop. */
function ruleSentence({ text, range }: Rule): string {
  return unparted(text.endsWith(".") ? `${text.slice(0, -1)} (${range}).` : `${text} (${range})`);
}

/** Where a cell stands, below a heading that may be a question. */
function cellTitle({ number, section }: CellWorking): string {
  return section.endsWith("?") ? `${section} Cell ${number}` : `${section}: cell ${number}`;
}

function workingBody(cells: readonly CellWorking[]): Markup {
  return html`${cells.map(
    (cell) => html`<details class="cell"><summary>${cellTitle(cell)}</summary>
<pre tabindex="0"><code>${textOnly(cell.code)}</code></pre>
${cell.printed !== "" && html`<p>It printed:</p>\n<pre class="printed" tabindex="0">${textOnly(cell.printed)}</pre>\n`}</details>
`,
  )}`;
}

/** The comparisons of a report; many of them stand folded below their summary. */
function foldedChecks(checks: readonly CheckResult[]): Markup {
  const tables = checkTables(checks);
  if (checks.length <= mostOpenChecks) return tables;
  return html`<details class="rows"><summary>All ${checks.length} rows, with their sources</summary>
${tables}</details>
`;
}

function partsOf(outline: Outline, renderer: Renderer, named: readonly SourceId[]): Part[] {
  const own = (heading: (typeof ownHeadings)[number]) =>
    outline.sections
      .filter(({ text }) => text.toLowerCase() === heading.toLowerCase())
      .map(({ blocks }) => renderer.blocks(blocks));
  const { checks } = outline;
  const blocks = [outline.opening, ...outline.sections.map((section) => section.blocks)].flat();
  const sources = [
    ...named,
    ...checks.flatMap(({ source }) => source ?? []),
    ...blocks.flatMap((block) => (block.kind === "coefficients" ? coefficientSources(block) : [])),
  ];
  return [
    ...outline.sections
      .filter((section) => !isOwn(section))
      .map(({ text, markup, blocks }) => ({ text, markup, body: renderer.blocks(blocks) })),
    {
      text: "Checked against",
      markup: "Checked against",
      body: html`${own("Checked against")}${checks.length > 0 ? html`${checkSummary(checks)}${foldedChecks(checks)}` : html`<p>This report compares nothing with published values.</p>\n`}`,
    },
    { text: "Take care", markup: "Take care", body: html`${own("Take care")}${cautionList()}` },
    {
      text: "Working",
      markup: "Working",
      body: html`${own("Working")}<p>Every number on this page comes from these cells, run in this order from a fresh start.</p>\n${workingBody(outline.working)}`,
      kind: "working",
    },
    ...(sources.length > 0 || own("Sources").length > 0
      ? [{ text: "Sources", markup: "Sources", body: html`${own("Sources")}${sourceList(sources)}` }]
      : []),
  ];
}

/** The parts with their words linked, and the list of these words below the working. */
function withWords(parts: readonly Part[], words: PageWords): Part[] {
  const linked = parts.map((part) => ({ ...part, body: words.link(html`${part.body}`) }));
  const list = words.list();
  if (list === undefined) return linked;
  const glossary = { text: wordsHeading, markup: wordsHeading, body: list, kind: "glossary" };
  return linked.flatMap((part) => (part.kind === "working" ? [part, glossary] : [part]));
}

function uniqueChecks(outline: Outline): Outline {
  return { ...outline, checks: [...new Map(outline.checks.map((check) => [check.id, check])).values()] };
}

/**
 * The page of a report.
 *
 * @param notebook  after a complete run
 * @param form  whether everything is carried in one file
 * @returns HTML text, the same for the same notebook
 * @throws ReportError when question or answer are missing, or something cannot be rendered
 * Example: reportPage(notebook, {})
 */
export function reportPage(notebook: ExecutedNotebook, form: PageForm): string {
  const ids = new PageIds();
  ids.take(mainId);
  const place = madeFrom(notebook);
  const outline = uniqueChecks(outlineOf(notebook, ids));
  const { numbers } = outline;
  const renderer = new Renderer(ids, place, numbers);
  const words = new PageWords(ids);
  const answer = words.link(markdownBlocks(outline.answer.text, { place, ids, numbers }));
  const answerPanels = numbers.panels();
  const single = form.inlinePlotly !== undefined;
  const picture = outline.picture && words.link(figureBlock(outline.picture, ids, { kind: "picture", numbers }));
  const panelId = outline.panel && ids.take(panelTitle);
  const panel = outline.panel && livePanelBlock(outline.panel);
  const opening = words.link(renderer.blocks(outline.opening));
  const parts = withWords(partsOf(outline, renderer, sourcesOfWorkings(notebook)), words).map((part) => ({
    ...part,
    id: ids.take(part.text),
  }));
  numbers.refuseIdle();
  const title = outline.question.text;
  if (title === "") throw new ReportError(place, "the question is empty; write it after the # of the first heading.");
  const links = html`<a href="index.html">All reports</a><a href="checks.html">All checks</a>`;
  const body = html`<header class="top"><span>haulbook</span>${!single && links}</header>
<main id="${mainId}" tabindex="-1">
<div class="opening">
<h1>${outline.question.markup}</h1>
<div class="answer">
${answer}</div>
${answerPanels}</div>
${picture}
<details class="contents" open><summary>On this page</summary>
<nav aria-label="On this page"><ol>
${panelId !== undefined && html`<li><a href="#${panelId}">${panelTitle}</a></li>\n`}${parts.map(({ id, text }) => html`<li><a href="#${id}">${text}</a></li>\n`)}</ol></nav></details>
${panel && html`<section class="part try" aria-labelledby="${panelId}">\n<h2 id="${panelId}">${panelTitle}</h2>\n<div class="body">\n${panel}</div></section>\n`}${opening.text !== "" && html`<section class="part lead"><div class="body">\n${opening}</div></section>\n`}${parts.map(
  ({
    id,
    markup,
    body: inner,
    kind,
  }) => html`<section class="part${kind !== undefined && ` ${kind}`}" aria-labelledby="${id}">
<h2 id="${id}">${markup}</h2>
<div class="body">
${inner}</div></section>
`,
)}${renderer.answers()}</main>
${reportFoot(place)}`;

  return documentHtml({
    title,
    description: markdownText(outline.answer.text),
    body,
    charts: picture !== undefined,
    inline: single,
    inlinePlotly: form.inlinePlotly,
    liveModel: outline.panel?.model,
    inlinePanel: form.inlinePanel,
  });
}
