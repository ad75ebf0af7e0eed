import { ValueError } from "../quantity/errors.js";
import { type QuantityName, vocabulary } from "../quantity/vocabulary.js";
import type { VocabularyEntry } from "../quantity/vocabulary-entry.js";
import type { SourceId } from "../sources/bibliography.js";
import type { Coefficient } from "../sources/coefficient.js";
import { type Expression, readExpression } from "./expression.js";

/** What a name in a formula stands for; a quantity alone takes its sign and words from the vocabulary. */
export type FormulaSymbol =
  | QuantityName
  | {
      readonly quantity: QuantityName;
      /** Sign in print, where that of the vocabulary would stand twice. */
      readonly sign?: string;
      /** Words, where those of the vocabulary say too little. */
      readonly words?: string;
      /** Record of a number that is the same wherever the formula is used; it need not be given. */
      readonly record?: Coefficient;
    };

/** Names of a formula with what they stand for. */
export type FormulaSymbols = Readonly<Record<string, FormulaSymbol>>;

/** Where a formula comes from. */
export type FormulaSource = SourceId | "common practice";

/** A closed formula in one text form: evaluated, checked for units, and set in print from that text alone. */
export interface Formula<Symbols extends FormulaSymbols = FormulaSymbols> {
  /** Lower case with hyphens. */
  readonly id: string;
  readonly title: string;
  /** Arithmetic in the syntax of mathjs, in the names of `symbols`. */
  readonly text: string;
  readonly symbols: Symbols;
  readonly result: FormulaSymbol;
  readonly source: FormulaSource;
  /** Where it is valid. */
  readonly valid: string;
  /** Function of this library that computes the same; absent for a formula of a page's own. */
  readonly mirrors?: string;
}

/**
 * A formula as it is written, with the names of its symbols kept for the compiler.
 *
 * @param record  id, title, text, symbols, result, source, validity, and the function that it mirrors
 * @returns the same record
 * Example: formula({ id: "twice", title: "Twice the load", text: "2 * load", symbols: { load: "loadTension" }, result: "tension", source: "statics", valid: "always" }).text → "2 * load"
 */
export function formula<const Symbols extends FormulaSymbols>(record: Formula<Symbols>): Formula<Symbols> {
  return record;
}

/** What a name stands for, with everything that print needs. */
export interface SymbolWords {
  readonly quantity: QuantityName;
  readonly sign: string;
  readonly words: string;
  /** SI unit; "1" for a pure number. */
  readonly unit: string;
}

/** Sign, words and unit of a symbol: its own, or those of the vocabulary. */
export function symbolWords(symbol: FormulaSymbol): SymbolWords {
  const { quantity, sign, words } =
    typeof symbol === "string" ? { quantity: symbol, sign: undefined, words: undefined } : symbol;
  const entry: VocabularyEntry = vocabulary[quantity];
  return { quantity, sign: sign ?? entry.symbol, words: words ?? entry.label, unit: entry.unit };
}

/**
 * Reads a formula and refuses one whose text and symbols do not belong together.
 *
 * @param formula  text and symbols
 * @returns the expression
 * @throws ValueError for a text that is no formula, a name without meaning, a symbol that is not used, or two with one sign
 * Example: readFormula(formulas.capstan).names → ["frictionCoefficient", "wrapAngle"]
 */
export function readFormula({ id, text, symbols }: Pick<Formula, "id" | "text" | "symbols">): Expression {
  const expression = readExpression(text);
  checkNames(`formula "${id}"`, expression.names, symbols);
  return expression;
}

/** Refuses names without meaning, symbols that are not used, and two symbols with one sign. */
export function checkNames(quantity: string, names: readonly string[], symbols: FormulaSymbols): void {
  const refuse = (value: string, allowed: string, advice: string): never => {
    throw new ValueError({ quantity, value, allowed, advice });
  };
  for (const name of names) {
    if (!Object.hasOwn(symbols, name)) {
      refuse(`the unknown name "${name}"`, `one of ${Object.keys(symbols).join(", ")}`, "Say what it stands for.");
    }
  }
  const idle = Object.keys(symbols).filter((name) => !names.includes(name));
  if (idle.length > 0) refuse(`${idle.join(", ")} not used`, "symbols that stand in the text", "Leave them out.");
  const signs = Object.values(symbols).map((symbol) => symbolWords(symbol).sign);
  const twice = signs.find((sign, index) => signs.indexOf(sign) !== index);
  if (twice !== undefined)
    refuse(`the sign "${twice}" twice`, "a sign for each symbol", "Give one of them its own sign.");
}
