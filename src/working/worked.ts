import { OutsideModelError, UnitError } from "../quantity/errors.js";
import { within, withUnit } from "../quantity/guard.js";
import type { Coefficient } from "../sources/coefficient.js";
import { unitTrouble, valueAt } from "./expression.js";
import { type Formula, type FormulaSymbols, readFormula, symbolWords } from "./formula.js";
import { substituted } from "./substitution.js";
import { StepInputs, type WorkedInput } from "./symbol-value.js";
import type { FormulaStep, Working } from "./working.js";

/** Names whose number the formula brings along. */
type Known<Symbols extends FormulaSymbols> = {
  [Name in keyof Symbols]: Symbols[Name] extends { readonly record: Coefficient } ? Name : never;
}[keyof Symbols];

/** A number for each name of a formula; those that it brings along may be left out. */
export type FormulaInputs<Symbols extends FormulaSymbols> = {
  readonly [Name in Exclude<keyof Symbols, Known<Symbols>>]: WorkedInput;
} & { readonly [Name in Known<Symbols>]?: WorkedInput };

/**
 * Works a number out by a formula, and keeps the way to it.
 *
 * @param formula  of `formulas`, or one of a page's own
 * @param inputs  for each name a number [SI], a band, a coefficient record, or the working of a step before
 * @returns the working: all steps before, then this one, as data
 * @throws ValueError for a number that is missing or cannot be, UnitError when the units do not come out, OutsideModelError when no number comes out
 * Example: worked(formulas.capstan, { frictionCoefficient: 0.1, wrapAngle: Math.PI }).value → 1.369
 */
export function worked<const Symbols extends FormulaSymbols>(
  formula: Formula<Symbols>,
  inputs: FormulaInputs<Symbols>,
): Working {
  const { id, title, text, source, valid, mirrors } = formula;
  const quantity = `formula "${id}"`;
  const expression = readFormula(formula);
  const before = new StepInputs(quantity);
  const given = inputs as Readonly<Record<string, WorkedInput | undefined>>;
  const symbols = expression.names.map((name) => before.take(name, formula.symbols[name]!, given[name]));
  const values = Object.fromEntries(symbols.map(({ name, value }) => [name, value]));
  const result = symbolWords(formula.result);
  const trouble = unitTrouble(expression, Object.fromEntries(symbols.map((one) => [one.name, one])), result.unit);
  if (trouble !== undefined) {
    throw new UnitError({
      quantity,
      value: trouble,
      allowed: `a result in ${result.unit}`,
      advice: "Look at the units of its symbols.",
    });
  }
  const value = valueAt(expression, values);
  if (!Number.isFinite(value)) {
    throw new OutsideModelError({
      quantity,
      value: `${value} for ${symbols.map((one) => `${one.name} ${withUnit(one.value, one.unit)}`).join(", ")}`,
      allowed: valid,
      advice: "Use it where it is valid.",
    });
  }
  within(result.quantity, value);
  const step: FormulaStep = {
    kind: "formula",
    id,
    title,
    text,
    symbols,
    substitution: substituted(expression, symbols),
    result: { ...result, value },
    source,
    valid,
    ...(mirrors !== undefined && { mirrors }),
  };
  return { steps: [...before.steps, step], value };
}
