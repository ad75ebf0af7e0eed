import { z } from "zod";
import { ValueError } from "../quantity/errors.js";
import { vocabulary } from "../quantity/vocabulary.js";
import { bibliography } from "../sources/bibliography.js";
import { readExpression, valueAt } from "./expression.js";
import type { FormulaStep, WorkedEquation, WorkedSymbol, Working } from "./working.js";

const text = z.string().min(1);
const number = z.number();
const isSource = (id: string) => Object.hasOwn(bibliography, id);

const words = { quantity: text, sign: text, words: text, value: number, unit: text };

const originShape = z.strictObject({
  low: number,
  high: number,
  status: text.optional(),
  source: text.refine(isSource, "a source that is not in the bibliography").optional(),
  place: z.string().optional(),
});

const symbolShape = z.strictObject({
  name: text,
  ...words,
  origin: originShape.optional(),
  step: z.int().nonnegative().optional(),
  solved: z.literal(true).optional(),
});

const stepShape = {
  id: text,
  title: text,
  symbols: z.array(symbolShape).min(1),
  result: z.strictObject(words),
  source: text.refine((id) => id === "common practice" || isSource(id), "a source that is not in the bibliography"),
  valid: text,
  mirrors: text.optional(),
};

const equationShape = z.strictObject({ words: text, left: text, right: text, substitution: text, residual: number });

const workingShape = z.strictObject({
  steps: z
    .array(
      z.discriminatedUnion("kind", [
        z.strictObject({ kind: z.literal("formula"), ...stepShape, text, substitution: text }),
        z.strictObject({
          kind: z.literal("balance"),
          ...stepShape,
          equations: z.array(equationShape).min(1),
          allowed: number,
        }),
      ]),
    )
    .min(1),
  value: number,
});

/** Two numbers that are one but for rounding; more of it may gather in an exponent. */
function same(first: number, second: number): boolean {
  return Math.abs(first - second) <= 1e-9 * Math.max(Math.abs(first), Math.abs(second));
}

function refuse(where: string, value: string, allowed: string): never {
  throw new ValueError({ quantity: where, value, allowed, advice: "Make it with worked(…) or balanced(…)." });
}

function checkSymbols(
  where: string,
  symbols: readonly WorkedSymbol[],
  names: readonly string[],
  before: Working["steps"],
) {
  for (const { name, quantity, step, value } of symbols) {
    if (!Object.hasOwn(vocabulary, quantity)) refuse(where, `the quantity "${quantity}"`, "one of the vocabulary");
    if (step === undefined) continue;
    const from = before[step];
    if (from === undefined) refuse(where, `${name} from step ${step}`, "a step before this one");
    if (!same(from.result.value, value)) refuse(where, `${name} = ${value}`, `the ${from.result.value} of its step`);
  }
  const known = symbols.map(({ name }) => name);
  const lost = names.find((name) => !known.includes(name));
  if (lost !== undefined) refuse(where, `the unknown name "${lost}"`, `one of ${known.join(", ")}`);
}

function numbersOf(symbols: readonly WorkedSymbol[]): Record<string, number> {
  return Object.fromEntries(symbols.map(({ name, value }) => [name, value]));
}

function checkFormula(where: string, step: FormulaStep): void {
  const value = valueAt(readExpression(step.text), numbersOf(step.symbols));
  if (!same(value, step.result.value)) refuse(where, `the result ${step.result.value}`, `${value}, as its text gives`);
}

function checkEquation(
  where: string,
  { left, right }: WorkedEquation,
  numbers: Record<string, number>,
  allowed: number,
) {
  const [one, other] = [valueAt(readExpression(left), numbers), valueAt(readExpression(right), numbers)];
  const size = Math.max(Math.abs(one), Math.abs(other), 1e-3);
  if (!(Math.abs(one - other) <= allowed * size)) refuse(where, `${one} = ${other}`, "sides that are equal");
}

/**
 * Returns the value when it is a working whose numbers follow from each other, and refuses it loudly otherwise.
 *
 * @param where  what it belongs to, for the message
 * @param value  anything, such as data that came out of a notebook
 * @returns the value itself
 * @throws ValueError for data of another form, a formula that is none, or a result that its formula does not give
 * Example: checkWorking("hold", worked(formulas.deadBand, { haulingForce: 3, easingForce: 1 })).value → 2
 */
export function checkWorking(where: string, value: unknown): Working {
  const shaped = workingShape.safeParse(value);
  if (!shaped.success) {
    const [issue] = shaped.error.issues;
    refuse(`${where}, working`, `${issue?.path.join(".") ?? ""}: ${issue?.message ?? ""}`, "a working as data");
  }
  const working = value as Working;
  working.steps.forEach((step, index) => {
    const place = `${where}, step "${step.id}"`;
    const texts = step.kind === "formula" ? [step.text] : step.equations.flatMap(({ left, right }) => [left, right]);
    const names = texts.flatMap((one) => readExpression(one).names);
    checkSymbols(place, step.symbols, names, working.steps.slice(0, index));
    if (step.kind === "formula") checkFormula(place, step);
    else for (const one of step.equations) checkEquation(place, one, numbersOf(step.symbols), step.allowed);
  });
  const last = working.steps[working.steps.length - 1]?.result.value ?? Number.NaN;
  if (!same(last, working.value)) refuse(where, `the value ${working.value}`, `${last}, the result of its last step`);
  return working;
}
