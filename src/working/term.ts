import type { ConstantNode, FunctionNode, MathNode, OperatorNode, ParenthesisNode, SymbolNode } from "mathjs";

/** Functions that a formula may call, by the number of what they take. */
export const formulaFunctions: Readonly<Record<string, number>> = {
  exp: 1,
  log: 1,
  log10: 1,
  sqrt: 1,
  sin: 1,
  cos: 1,
  tan: 1,
  asin: 1,
  atan: 1,
  atan2: 2,
};

/** Signs between two terms. */
export type Operator = "+" | "-" | "*" | "/" | "^";

const operators: readonly string[] = ["+", "-", "*", "/", "^"];

/** A part of a formula: nothing but arithmetic. */
export type Term =
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "pi" }
  | { readonly kind: "name"; readonly name: string }
  | { readonly kind: "minus"; readonly of: Term }
  | { readonly kind: "operation"; readonly operator: Operator; readonly left: Term; readonly right: Term }
  | { readonly kind: "call"; readonly name: string; readonly of: readonly Term[] };

function operationOf(node: OperatorNode, refuse: (found: string) => never): Term {
  const [left, right] = node.args.map((one) => termOf(one, refuse));
  if (left !== undefined && right === undefined && node.op === "-") return { kind: "minus", of: left };
  if (left === undefined || right === undefined || !operators.includes(node.op)) return refuse(`the sign "${node.op}"`);
  return { kind: "operation", operator: node.op as Operator, left, right };
}

/**
 * A tree of mathjs as a term that holds nothing but arithmetic.
 *
 * @param node  tree as mathjs parsed it
 * @param refuse  throws, given what was found
 * @returns the term, brackets gone
 */
export function termOf(node: MathNode, refuse: (found: string) => never): Term {
  switch (node.type) {
    case "ConstantNode": {
      const { value } = node as ConstantNode;
      return Number.isFinite(value)
        ? { kind: "number", value: value as number }
        : refuse(`the constant ${String(value)}`);
    }
    case "SymbolNode": {
      const { name } = node as SymbolNode;
      if (name === "pi") return { kind: "pi" };
      if (/^[a-zA-Z][a-zA-Z0-9]*$/u.test(name) && !Object.hasOwn(formulaFunctions, name)) return { kind: "name", name };
      return refuse(`the name "${name}"`);
    }
    case "ParenthesisNode":
      return termOf((node as ParenthesisNode).content, refuse);
    case "OperatorNode":
      return operationOf(node as OperatorNode, refuse);
    case "FunctionNode": {
      const { fn, args } = node as FunctionNode;
      const called: MathNode = fn;
      const name = called.type === "SymbolNode" ? (called as SymbolNode).name : "";
      if (Object.hasOwn(formulaFunctions, name) && formulaFunctions[name] === args.length)
        return { kind: "call", name, of: args.map((one) => termOf(one, refuse)) };
      return refuse(`the call ${node.toString()}`);
    }
    default:
      return refuse(`${node.toString()} (${node.type})`);
  }
}

/** Names in a term, in the order in which they are met; one that stands twice comes twice. */
export function namesIn(term: Term): string[] {
  switch (term.kind) {
    case "name":
      return [term.name];
    case "minus":
      return namesIn(term.of);
    case "operation":
      return [...namesIn(term.left), ...namesIn(term.right)];
    case "call":
      return term.of.flatMap(namesIn);
    default:
      return [];
  }
}
