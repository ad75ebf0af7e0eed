import { figures } from "../quantity/print.js";
import type { Expression } from "./expression.js";
import type { Operator, Term } from "./term.js";
import type { WorkedSymbol } from "./working.js";

/** Figures with which a number stands in a formula: one more than in the text, so that the reader can work it out again. */
const digits = 4;

/** A number as it stands in a formula, without its unit; an integer or a short decimal stays whole. */
export function numberInFormula(value: number): string {
  return figures(value, digits);
}

/** Unit as it stands behind a number; nothing behind a pure number. */
export function unitInFormula(unit: string): string {
  return unit === "1" ? "" : ` ${unit.replaceAll("^2", "²").replaceAll("^3", "³")}`;
}

const hold: Readonly<Record<Operator, number>> = { "+": 1, "-": 1, "*": 2, "/": 2, "^": 4 };
const signs: Readonly<Record<Operator, string>> = { "+": " + ", "-": " − ", "*": " · ", "/": " / ", "^": "^" };

/** How tightly a part of a formula holds together; what holds less tightly than what is round it stands in brackets. */
export function holdOf(term: Term, numbers?: ReadonlyMap<string, WorkedSymbol>): number {
  if (term.kind === "operation") return hold[term.operator];
  if (term.kind === "minus") return 1;
  const symbol = term.kind === "name" ? numbers?.get(term.name) : undefined;
  if (symbol === undefined) return 5;
  if (symbol.value < 0 || numberInFormula(symbol.value).includes("×")) return 1;
  if (symbol.unit === "1") return 5;
  return /[/ ]/u.test(symbol.unit) ? 2 : 3;
}

/** Least hold that an operation asks of its two sides. */
export function heldBy(operator: Operator): { readonly left: number; readonly right: number } {
  const own = hold[operator];
  if (operator === "^") return { left: 5, right: 5 };
  return { left: own, right: operator === "-" || operator === "/" ? own + 1 : own };
}

function write(term: Term, numbers: ReadonlyMap<string, WorkedSymbol>): string {
  const held = (inner: Term, least: number) => {
    const text = write(inner, numbers);
    return holdOf(inner, numbers) < least ? `(${text})` : text;
  };
  switch (term.kind) {
    case "number":
      return figures(term.value, 6);
    case "pi":
      return "π";
    case "name": {
      const symbol = numbers.get(term.name);
      return symbol === undefined ? term.name : `${numberInFormula(symbol.value)}${unitInFormula(symbol.unit)}`;
    }
    case "minus":
      return `−${held(term.of, 2)}`;
    case "operation": {
      const { left, right } = heldBy(term.operator);
      return `${held(term.left, left)}${signs[term.operator]}${held(term.right, right)}`;
    }
    case "call":
      return `${term.name}(${term.of.map((inner) => write(inner, numbers)).join(", ")})`;
  }
}

/**
 * A formula with numbers and units in the place of its names, as plain text.
 *
 * @param expression  read before
 * @param symbols  names with their numbers
 * @returns text such as `exp(0.15 · 1.571 rad)`
 * Example: substituted(readExpression("2 * a"), [{ name: "a", quantity: "tension", sign: "T", words: "tension", value: 3, unit: "N" }]) → "2 · 3 N"
 */
export function substituted(expression: Pick<Expression, "term">, symbols: readonly WorkedSymbol[]): string {
  return write(expression.term, new Map(symbols.map((symbol) => [symbol.name, symbol])));
}
