import { OutsideModelError, UnitError, ValueError } from "../quantity/errors.js";
import { readExpression, type UnitValue, unitTrouble, valueAt } from "./expression.js";
import { checkNames, type FormulaSource, type FormulaSymbol, type FormulaSymbols, symbolWords } from "./formula.js";
import { substituted } from "./substitution.js";
import { StepInputs, type WorkedInput } from "./symbol-value.js";
import type { BalanceStep, WorkedEquation, WorkedSymbol, Working } from "./working.js";

/** An equation in the names of its symbols. */
export interface Equation {
  readonly words: string;
  readonly left: string;
  readonly right: string;
}

/** A system of equations with its solution. */
export interface Balance<Symbols extends FormulaSymbols = FormulaSymbols> {
  readonly id: string;
  readonly title: string;
  readonly equations: readonly Equation[];
  readonly symbols: Symbols;
  /** Number of every symbol, solved ones among them [SI]. */
  readonly values: { readonly [Name in keyof Symbols]: WorkedInput };
  /** Names of the symbols that were solved for; the result alone when absent. */
  readonly solved?: readonly (keyof Symbols & string)[];
  /** Name of the symbol that is the result. */
  readonly answer: keyof Symbols & string;
  readonly source: FormulaSource;
  readonly valid: string;
  readonly mirrors?: string;
  /** Largest residual that counts as solved [-]; 1e-9 when absent. */
  readonly allowed?: number;
}

/** Left less right over the larger of both; forces of a micronewton or less count as nothing. */
function residualOf(left: number, right: number, scale: number): number {
  const size = Math.max(Math.abs(left), Math.abs(right), scale);
  return size === 0 ? 0 : (left - right) / size;
}

/**
 * The working of a number that a solver found: the equations, with the solution put into them.
 *
 *     |left − right| ≤ 1e-9 · the larger of both, for each equation
 *
 * @param balance  equations, symbols, the number of each [SI], and which of them is the result
 * @returns the working; its last step holds the equations and what is left over in each [-]
 * @throws OutsideModelError when an equation is not met, UnitError when its sides differ in unit, ValueError for a number that cannot be
 * Example: balanced({ id: "two", title: "Two parts", equations: [{ words: "the block", left: "2 * pull", right: "load" }], symbols: { pull: "tension", load: "loadTension" }, values: { pull: 50, load: 100 }, answer: "pull", source: "statics", valid: "at rest" }).value → 50
 */
export function balanced<const Symbols extends FormulaSymbols>(balance: Balance<Symbols>): Working {
  const { id, title, symbols, values, answer, source, valid, mirrors, allowed = 1e-9 } = balance;
  const solved: readonly string[] = balance.solved ?? [answer];
  const quantity = `balance "${id}"`;
  const sides = balance.equations.map((one) => [readExpression(one.left), readExpression(one.right)] as const);
  const names = [...new Set(sides.flatMap(([left, right]) => [...left.names, ...right.names]))];
  checkNames(quantity, names, symbols);
  const before = new StepInputs(quantity);
  const given = values as Readonly<Record<string, WorkedInput | undefined>>;
  const taken = names.map((name): WorkedSymbol => {
    const symbol = before.take(name, symbols[name] as FormulaSymbol, given[name]);
    return solved.includes(name) ? { ...symbol, solved: true } : symbol;
  });
  const numbers = Object.fromEntries(taken.map(({ name, value }) => [name, value]));
  const scale = Math.min(1e-3, ...taken.filter(({ value }) => value !== 0).map(({ value }) => Math.abs(value)));
  const equations = balance.equations.map((equation, index): WorkedEquation => {
    const [left, right] = sides[index]!;
    checkUnits(`${quantity}, ${equation.words}`, left, right, taken);
    const residual = residualOf(valueAt(left, numbers), valueAt(right, numbers), scale);
    if (!(Math.abs(residual) <= allowed)) {
      throw new OutsideModelError({
        quantity: `${quantity}, ${equation.words}`,
        value: `${residual.toPrecision(3)} left over`,
        allowed: `at most ${allowed}`,
        advice: "Give the numbers that solve it.",
      });
    }
    return { ...equation, substitution: `${substituted(left, taken)} = ${substituted(right, taken)}`, residual };
  });
  const result = taken.find(({ name }) => name === answer);
  if (result === undefined) {
    const allowedNames = `one of ${names.join(", ")}`;
    throw new ValueError({
      quantity,
      value: `the answer "${answer}"`,
      allowed: allowedNames,
      advice: "Name a symbol.",
    });
  }
  const step: BalanceStep = {
    kind: "balance",
    id,
    title,
    equations,
    allowed,
    symbols: taken,
    result: { ...symbolWords(symbols[answer] as FormulaSymbol), value: result.value },
    source,
    valid,
    ...(mirrors !== undefined && { mirrors }),
  };
  return { steps: [...before.steps, step], value: result.value };
}

/** Both sides must have one unit: their difference has it, in which a term of another unit has no place. */
function checkUnits(
  quantity: string,
  left: { readonly text: string },
  right: { readonly text: string },
  taken: readonly WorkedSymbol[],
): void {
  const values: Record<string, UnitValue> = Object.fromEntries(taken.map((one) => [one.name, one]));
  const difference = readExpression(`(${left.text}) - (${right.text})`);
  const trouble = unitTrouble(difference, values);
  if (trouble === undefined) return;
  throw new UnitError({
    quantity,
    value: trouble,
    allowed: "one unit on both sides",
    advice: "Look at the units of its symbols.",
  });
}
