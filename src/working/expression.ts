import type { MathNode, Unit } from "mathjs";
import math from "mathjs/lib/browser/math.js";
import { ValueError } from "../quantity/errors.js";
import { formulaFunctions, namesIn, type Term } from "./term.js";
import { termOf } from "./term-of-tree.js";

/** The part of mathjs that formulas use. */
interface FormulaMath {
  parse(text: string): MathNode;
  unit(text: string): Unit;
  multiply(value: number, unit: Unit): Unit;
  import(functions: Record<string, () => never>, options: { override: true }): void;
}

/** Names of mathjs that change it or read text: no formula can name them, and here they do nothing even so. */
const closed = ["import", "config", "createUnit", "evaluate", "parse", "simplify", "derivative", "resolve", "reviver"];

interface OwnMath {
  readonly parse: FormulaMath["parse"];
  readonly unit: FormulaMath["unit"];
  readonly multiply: FormulaMath["multiply"];
}

let own: OwnMath | undefined;

/** An instance of our own, closed against everything but parsing and arithmetic. */
function formulaMath(): OwnMath {
  if (own) return own;
  const made = math.create(math.all, { predictable: true }) as unknown as FormulaMath;
  own = { parse: made.parse, unit: made.unit, multiply: made.multiply };
  const refuse = () => {
    throw new Error("no formula may do this");
  };
  made.import(Object.fromEntries(closed.map((name) => [name, refuse])), { override: true });
  return own;
}

/** A formula that was read: its parts, what works it out, and the names in it. */
export interface Expression {
  readonly text: string;
  readonly term: Term;
  readonly code: { evaluate(scope: Map<string, unknown>): unknown };
  /** Names that stand for numbers, each once, in the order in which they are met. */
  readonly names: readonly string[];
}

function refusal(text: string, found: string): ValueError {
  return new ValueError({
    quantity: `formula "${text}"`,
    value: found,
    allowed: `numbers, names, + - * / ^, brackets, pi, and ${Object.keys(formulaFunctions).join(", ")}`,
    advice: "Write the formula with these alone.",
  });
}

const known = new Map<string, Expression>();

/**
 * Reads the text of a formula; nothing in it is run.
 *
 * @param text  arithmetic in the syntax of mathjs: numbers, names, `+ - * / ^`, brackets, `pi` and a few functions
 * @returns its parts and names
 * @throws ValueError for a text that cannot be read or holds anything else: calls of other functions, members, lists, texts, units
 * Example: readExpression("exp(mu * theta)").names → ["mu", "theta"]
 */
export function readExpression(text: string): Expression {
  const seen = known.get(text);
  if (seen) return seen;
  let tree: MathNode;
  try {
    tree = formulaMath().parse(text);
  } catch (error) {
    throw refusal(text, messageOf(error));
  }
  const term = termOf(tree, (found) => {
    throw refusal(text, found);
  });
  const read = { text, term, code: tree.compile(), names: [...new Set(namesIn(term))] };
  known.set(text, read);
  return read;
}

/** A value with the SI unit of its quantity. */
export interface UnitValue {
  readonly value: number;
  /** "1" for a pure number; angles in `rad` count as pure numbers. */
  readonly unit: string;
}

const isPure = (unit: string) => unit === "1" || unit === "rad";

function scopeOf<Value>(expression: Expression, valueFor: (name: string) => Value): Map<string, Value> {
  return new Map(expression.names.map((name) => [name, valueFor(name)]));
}

/**
 * Value of a formula.
 *
 * @param expression  read before
 * @param values  number for each of its names [SI]
 * @returns the value [SI]; it may be not finite
 * Example: valueAt(readExpression("2 * a"), { a: 3 }) → 6
 */
export function valueAt(expression: Expression, values: Readonly<Record<string, number>>): number {
  const found: unknown = expression.code.evaluate(scopeOf(expression, (name) => values[name]));
  return typeof found === "number" ? found : Number.NaN;
}

/** Value of a formula with units; throws where units do not fit. */
function withUnits(expression: Expression, values: Readonly<Record<string, UnitValue>>): unknown {
  const { multiply } = formulaMath();
  return expression.code.evaluate(
    scopeOf(expression, (name) => {
      const given = values[name];
      if (given === undefined) throw new Error(`no value for ${name}`);
      return isPure(given.unit) ? given.value : multiply(given.value, parsedUnit(given.unit));
    }),
  );
}

function parsedUnit(text: string): Unit {
  return formulaMath().unit(text.startsWith("1/") ? `${text.slice(2)}^-1` : text);
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/**
 * Works out a formula with units and compares the unit that comes out.
 *
 * @param expression  read before
 * @param values  value and unit of each of its names
 * @param unit  unit that should come out; any that comes out when absent
 * @returns nothing when it does; else what came out, or why nothing did
 * Example: unitTrouble(readExpression("a * b"), { a: { value: 1, unit: "N" }, b: { value: 1, unit: "m" } }, "J") → undefined
 */
export function unitTrouble(
  expression: Expression,
  values: Readonly<Record<string, UnitValue>>,
  unit?: string,
): string | undefined {
  let found: unknown;
  try {
    found = withUnits(expression, values);
  } catch (error) {
    return messageOf(error);
  }
  if (unit === undefined) return undefined;
  if (typeof found === "number") return isPure(unit) ? undefined : "a pure number";
  if (!isPure(unit) && (found as Unit).equalBase(parsedUnit(unit))) return undefined;
  return `a quantity in ${(found as Unit).formatUnits() || "an unknown unit"}`;
}
