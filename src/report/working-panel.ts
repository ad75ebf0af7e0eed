import { figures, printQuantity } from "../quantity/print.js";
import type { SourceId } from "../sources/bibliography.js";
import type { FormulaSource } from "../working/formula.js";
import { numberInFormula, unitInFormula } from "../working/substitution.js";
import type { WorkedSymbol, Working, WorkingStep } from "../working/working.js";
import { sourceAnchor, sourceTitle } from "./checktable.js";
import { formulaHtml } from "./formula.js";
import { type Content, html, type Markup } from "./html.js";
import { signTex, stepTex } from "./working-tex.js";

function sourceLink(source: FormulaSource): Content {
  if (source === "common practice") return source;
  return html`<a href="#${sourceAnchor(source)}">${sourceTitle(source)}</a>`;
}

/** The number as a reader knows it, and in the unit of the formula where that is another. */
function valueText({ quantity, value, unit }: Pick<WorkedSymbol, "quantity" | "value" | "unit">): string {
  const shown = printQuantity(quantity, value);
  const inFormula = `${numberInFormula(value)}${unitInFormula(unit)}`;
  const same =
    shown === inFormula || shown.startsWith(`${inFormula} (`) || unit === "1" || unit === "N" || unit === "K";
  return same ? shown : `${shown} = ${inFormula}`;
}

/** Where a number of a formula comes from. */
function whereFrom({ origin, step, unit }: WorkedSymbol): Content {
  if (step !== undefined) return `step ${step + 1}`;
  if (origin === undefined) return "given";
  const { low, high, status, source, place } = origin;
  const ends = low === high ? "" : `${figures(low)} to ${figures(high)}${unitInFormula(unit)}`;
  if (status === undefined) return ends;
  const words: Content = source === undefined ? status : sourceLink(source);
  return html`${words}${place !== undefined && place !== "" && `: ${place}`}${ends !== "" && html` <span class="ends">(${ends})</span>`}`;
}

function symbolTable(symbols: readonly WorkedSymbol[], place: string): Markup {
  return html`<table class="symbols">
<thead><tr><th scope="col">Sign</th><th scope="col">What</th><th scope="col">Value</th><th scope="col">Where from</th></tr></thead>
<tbody>
${symbols.map(
  (
    symbol,
  ) => html`<tr><td>${math(signTex(symbol.sign), place, false)}</td><th scope="row">${symbol.words}</th><td>${valueText(symbol)}</td><td>${whereFrom(symbol)}</td></tr>
`,
)}</tbody></table>
`;
}

function math(formula: string, place: string, display: boolean): Markup {
  return formulaHtml({ formula, place, display });
}

function balanceWords(step: WorkingStep): Content {
  if (step.kind === "formula") return undefined;
  const worst = Math.max(...step.equations.map(({ residual }) => Math.abs(residual)));
  const left = worst === 0 ? "nothing is left over" : `at most ${figures(worst, 1)} of it is left over`;
  return html`<p class="note">Solved together; with the solution put in, ${left} in each equation.</p>\n`;
}

function stepBlock(step: WorkingStep, place: string): Markup {
  const formulas = stepTex(step);
  const words = step.kind === "balance" ? step.equations.map((equation) => equation.words) : [];
  const { result, source, valid, mirrors } = step;
  return html`<li>
<p class="step">${step.title}</p>
${formulas.map(
  (
    formula,
    index,
  ) => html`${words[index] !== undefined && html`<p class="note">${words[index]}</p>\n`}<div class="formula" tabindex="0" role="group" aria-label="Formula">${math(formula, place, true)}</div>
`,
)}${balanceWords(step)}<p class="comes">${result.words}: <b>${valueText(result)}</b></p>
${symbolTable(step.symbols, place)}<p class="note">${step.kind === "formula" ? "Formula" : "Equations"}: ${sourceLink(source)}. Valid for: ${valid}.${mirrors !== undefined && html` In code: <code>${mirrors}</code>.`}</p>
</li>
`;
}

/**
 * The working of a number: each step with its formula, the numbers put in, the result, and where they come from.
 *
 * @param working  steps in order
 * @param place  for messages
 * @returns markup of a list
 * @throws ReportError when a formula cannot be set
 */
export function workingSteps(working: Working, place: string): Markup {
  return html`<ol class="steps">
${working.steps.map((step) => stepBlock(step, place))}</ol>
`;
}

/** Sources that the steps of a working name: of formulas, and of the numbers in them. */
export function workingSources({ steps }: Working): SourceId[] {
  return steps.flatMap(({ source, symbols }) => [
    ...(source === "common practice" ? [] : [source]),
    ...symbols.flatMap(({ origin }) => origin?.source ?? []),
  ]);
}
