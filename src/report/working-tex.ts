import { readExpression } from "../working/expression.js";
import { heldBy, holdOf, numberInFormula, substituted } from "../working/substitution.js";
import type { Term } from "../working/term.js";
import type { WorkedEquation, WorkedSymbol, WorkingStep } from "../working/working.js";

type Symbols = ReadonlyMap<string, WorkedSymbol>;
type Leaf = (symbol: WorkedSymbol) => string;

const raisedSigns = [..."⁻⁰¹²³⁴⁵⁶⁷⁸⁹"];
const plainSigns = [..."-0123456789"];

/** Signs of a whole number, from one form to the other. */
function inForm(number: string, from: readonly string[], to: readonly string[]): string {
  return [...number].map((sign) => to[from.indexOf(sign)] ?? "").join("");
}

/** A printed number for a formula: groups, minus and powers of ten as mathematics sets them. */
function numberTex(text: string): string {
  return text
    .replaceAll("\u202f", "\\,")
    .replaceAll("−", "-")
    .replace(/ × 10([⁻⁰¹²³⁴-⁹]+)/u, (_, power: string) => `\\times 10^{${inForm(power, raisedSigns, plainSigns)}}`);
}

/** Only what a sign or unit may hold: nothing that TeX would read as a command. */
function harmless(text: string): string {
  return text.replaceAll(/[^\p{L}\p{N}'/ ,.()^·+-]/gu, "");
}

/**
 * A sign of the vocabulary as TeX.
 *
 * @param sign  such as `T_hand`, `μ`, `D/d`, `z0`
 * @returns TeX
 * Example: signTex("T_hand") → "T_{\\text{hand}}"
 */
export function signTex(sign: string): string {
  const [base = "", ...rest] = sign.replace(/^(\p{L})(\d+)$/u, "$1_$2").split("_");
  const letters = harmless(base);
  const body = /^[A-Za-z]{2,}$/u.test(letters) ? `\\mathit{${letters}}` : letters;
  const below = harmless(rest.join(" "));
  const whole = below === "" ? body : `${body}_{\\text{${below}}}`;
  return sign.includes("/") ? `(${whole})` : `{${whole}}`;
}

/** A number with its unit as one upright text, its powers raised. */
function numberWithUnit({ value, unit }: Pick<WorkedSymbol, "value" | "unit">): string {
  const number = numberInFormula(value);
  if (unit === "1") return `{${numberTex(number)}}`;
  const letters = harmless(unit)
    .replaceAll(/\^(-?\d+)(?![\d.])/gu, (_, power: string) => inForm(power, plainSigns, raisedSigns))
    .replaceAll(/\^(-?[\d.]+)/gu, "}^{$1}\\text{")
    .replaceAll(/\^(?!\{)/gu, "");
  return `{\\text{${number} ${letters}}}`;
}

const functionTex: Readonly<Record<string, string>> = {
  log: "\\ln",
  log10: "\\log_{10}",
  sin: "\\sin",
  cos: "\\cos",
  tan: "\\tan",
  asin: "\\arcsin",
  atan: "\\arctan",
  atan2: "\\operatorname{angle}",
};

/** A term as TeX; `leaf` writes what stands for a name. */
function termTex(term: Term, symbols: Symbols, leaf: Leaf, numbers: boolean): string {
  const plain = numbers ? plainNumbers(term, symbols) : undefined;
  if (plain !== undefined) return plain;
  const write = (inner: Term) => termTex(inner, symbols, leaf, numbers);
  const held = (inner: Term, least: number) =>
    holdOf(inner, numbers ? symbols : undefined) < least && !isFraction(inner)
      ? `\\left(${write(inner)}\\right)`
      : write(inner);
  switch (term.kind) {
    case "number":
      return numberTex(numberInFormula(term.value));
    case "pi":
      return "\\pi";
    case "name": {
      const symbol = symbols.get(term.name);
      return symbol === undefined ? `\\mathrm{${harmless(term.name)}}` : leaf(symbol);
    }
    case "minus":
      return `-${held(term.of, 2)}`;
    case "operation": {
      const { operator, left, right } = term;
      const least = heldBy(operator);
      if (operator === "/") return `\\frac{${write(left)}}{${write(right)}}`;
      if (operator === "^") {
        const base = isFraction(left) ? `\\left(${write(left)}\\right)` : held(left, least.left);
        return `{${base}}^{${write(right)}}`;
      }
      const sign = operator === "*" ? " \\cdot " : ` ${operator} `;
      return `${held(left, least.left)}${sign}${held(right, least.right)}`;
    }
    case "call": {
      const [first] = term.of;
      if (first === undefined) return "";
      if (term.name === "sqrt") return `\\sqrt{${write(first)}}`;
      if (term.name === "exp") return `e^{${write(first)}}`;
      return `${functionTex[term.name] ?? ""}\\left(${term.of.map(write).join(",\\ ")}\\right)`;
    }
  }
}

/** Whether a term runs along one line: without fraction, power or root. */
function isLinear(term: Term): boolean {
  if (term.kind === "operation") return !"/^".includes(term.operator) && isLinear(term.left) && isLinear(term.right);
  return term.kind === "minus" ? isLinear(term.of) : term.kind !== "call";
}

/** Numbers that run along one line, as one text; nothing where mathematics has to set them. */
function plainNumbers(term: Term, symbols: Symbols): string | undefined {
  if ((term.kind !== "operation" && term.kind !== "minus") || !isLinear(term)) return undefined;
  const text = substituted({ term }, [...symbols.values()]);
  return /[\\^{}$%&#_~]/u.test(text) ? undefined : `{\\text{${text}}}`;
}

/** A fraction needs no brackets: its bar holds it together, but for a power. */
function isFraction(term: Term): boolean {
  return term.kind === "operation" && term.operator === "/";
}

function ofSymbols(symbols: readonly WorkedSymbol[]) {
  const byName = new Map(symbols.map((symbol) => [symbol.name, symbol]));
  const term = (text: string) => readExpression(text).term;
  return {
    signs: (text: string) => termTex(term(text), byName, ({ sign }) => signTex(sign), false),
    numbers: (text: string) => termTex(term(text), byName, numberWithUnit, true),
  };
}

/** Lines under each other, lined up at their equals signs. */
function lines(all: readonly string[]): string {
  return `\\begin{aligned} ${all.join(" \\\\[0.35em] ")} \\end{aligned}`;
}

/**
 * A step of a working as TeX: formula, numbers put in, result; of a balance each equation with its numbers.
 *
 * @param step  of a working
 * @returns TeX, one piece for each formula that stands alone
 * Example: stepTex(worked(formulas.deadBand, { haulingForce: 90, easingForce: 4 }).steps[0]).length → 1
 */
export function stepTex(step: WorkingStep): string[] {
  const { signs, numbers } = ofSymbols(step.symbols);
  if (step.kind === "balance") {
    return step.equations.map(({ left, right }: WorkedEquation) =>
      lines([`${signs(left)} &= ${signs(right)}`, `${numbers(left)} &= ${numbers(right)}`]),
    );
  }
  return [
    lines([
      `${signTex(step.result.sign)} &= ${signs(step.text)}`,
      `&= ${numbers(step.text)}`,
      `&= ${numberWithUnit(step.result)}`,
    ]),
  ];
}
