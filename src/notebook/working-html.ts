import { printQuantity } from "../quantity/quantity-text.js";
import type { Working, WorkingStep } from "../working/working.js";
import { escapeHtml } from "./escape.js";
import { foldHtml } from "./fold.js";

function stepHtml({ title, result, symbols, ...step }: WorkingStep): string {
  const lines =
    step.kind === "formula"
      ? [`${result.sign} = ${step.text}`, `= ${step.substitution}`]
      : step.equations.flatMap(({ left, right, substitution }) => [`${left} = ${right}`, substitution]);
  const numbers = symbols.map(
    ({ name, words, quantity, value }) => `${name}: ${words}, ${printQuantity(quantity, value)}`,
  );
  const all = [...lines, `${result.words}: ${printQuantity(result.quantity, result.value)}`, ...numbers];
  return `<li>${escapeHtml(title)}<br>${all.map((line) => `<code>${escapeHtml(line)}</code>`).join("<br>")}</li>`;
}

/** The working of a number as a live notebook shows it: folded, formulas in their text form. */
export function workingHtml(name: string, { steps }: Working): string {
  return foldHtml(`Working: ${escapeHtml(name)}`, `<ol>${steps.map(stepHtml).join("")}</ol>`);
}
