import { figures } from "../quantity/print.js";
import { printQuantity } from "../quantity/quantity-text.js";
import { vocabulary } from "../quantity/vocabulary.js";
import type { SourceId } from "../sources/bibliography.js";
import type { FormulaSource } from "../working/formula.js";
import { numberInFormula, unitInFormula } from "../working/substitution.js";
import type { WorkedSymbol, Working, WorkingStep } from "../working/working.js";
import { formulaHtml } from "./formula.js";
import { type Content, html, type Markup } from "./html.js";
import { sourceAnchor, sourceTitle } from "./sourcelist.js";
import { stepTex } from "./working-tex.js";

function sourceLink(source: FormulaSource): Content {
  if (source === "common practice") return source;
  return html`<a href="#${sourceAnchor(source)}">${sourceTitle(source)}</a>`;
}

/** The number as it stands in the formula; before it as a reader knows it, where that is in another unit. */
function valueText({ quantity, value, unit }: Pick<WorkedSymbol, "quantity" | "value" | "unit">): string {
  const inFormula = `${numberInFormula(value)}${unitInFormula(unit)}`;
  return vocabulary[quantity].shownUnit === unit ? inFormula : `${printQuantity(quantity, value)} = ${inFormula}`;
}

/** Leads from a number in a formula to the panel of the step that it comes from. */
type StepLink = (step: number) => Content;

/** Where a number of a formula comes from. */
function whereFrom({ origin, step, unit, solved }: WorkedSymbol, link: StepLink): Content {
  if (step !== undefined) return html`worked out: ${link(step)}`;
  if (solved) return "solved from the equations";
  if (origin === undefined) return "given";
  const { low, high, status, source, place } = origin;
  const [least, most] = [figures(low), figures(high)];
  const ends = least === most ? "" : `${least} to ${most}${unitInFormula(unit)}`;
  if (status === undefined) return ends === "" ? "given" : `given, ${ends}`;
  const words: Content = source === undefined ? status : sourceLink(source);
  return html`${words}${place !== undefined && place !== "" && `: ${place}`}${ends !== "" && `; ${ends}`}`;
}

/** A sign as it stands in the formula: its letters, and what stands below the line. */
function signHtml(sign: string): Markup {
  const [letters = "", ...below] = sign.replace(/^(\p{L})(\d+)$/u, "$1_$2").split("_");
  return html`<i>${letters}</i>${below.length > 0 && html`<sub>${below.join(" ")}</sub>`}`;
}

function symbolList(symbols: readonly WorkedSymbol[], link: StepLink): Markup {
  return html`<dl class="symbols">
${symbols.map(
  (
    symbol,
  ) => html`<dt>${signHtml(symbol.sign)}<dd>${symbol.words}: <b>${valueText(symbol)}</b><p>${whereFrom(symbol, link)}
`,
)}</dl>
`;
}

function formulaLines(step: WorkingStep, place: string): Markup {
  const words = step.kind === "balance" ? step.equations.map((equation) => equation.words) : [];
  return html`${stepTex(step).map(
    (
      formula,
      index,
    ) => html`${words[index] !== undefined && html`<p class="note">${words[index]}\n`}<div class="formula" tabindex="0">${formulaHtml({ formula, place, display: false })}</div>
`,
  )}`;
}

function leftOver(step: WorkingStep): Content {
  if (step.kind === "formula") return undefined;
  const worst = Math.max(...step.equations.map(({ residual }) => Math.abs(residual)));
  const left = worst === 0 ? "nothing" : `at most ${figures(worst, 1)} of a side`;
  return html`<p class="note">Solved together. With the solution put in, ${left} is left over in an equation.\n`;
}

interface StepShown {
  readonly step: WorkingStep;
  readonly link: StepLink;
  readonly place: string;
  /** What it comes to in words, where the head of its panel does not say so. */
  readonly comes: Content;
}

/**
 * One step of a working: its formula with the numbers put in, what it comes to, and where its numbers come from.
 *
 * @param step  the step
 * @param link  leads to the step that a number comes from
 * @param place  for messages
 * @param comes  what it comes to in words, or nothing
 * @returns markup of blocks
 * @throws ReportError when a formula cannot be set
 */
export function stepBlock({ step, link, place, comes }: StepShown): Markup {
  const { source, valid, mirrors } = step;
  return html`<p class="step">${step.title}
${formulaLines(step, place)}${leftOver(step)}${comes}${symbolList(step.symbols, link)}<p class="note">${step.kind === "formula" ? "Formula" : "Equations"}: ${sourceLink(source)}. Valid for: ${valid}.${mirrors !== undefined && html` In code: <code>${mirrors}</code>.`}
`;
}

/** Sources that the steps of a working name: of formulas, and of the numbers in them. */
export function workingSources({ steps }: Working): SourceId[] {
  return steps.flatMap(({ source, symbols }) => [
    ...(source === "common practice" ? [] : [source]),
    ...symbols.flatMap(({ origin }) => origin?.source ?? []),
  ]);
}
