import type { ConstantNode, FunctionNode, MathNode, OperatorNode, ParenthesisNode, SymbolNode } from "mathjs";
import { formulaFunctions, type Operator, type Term } from "./term.js";

const operators: readonly string[] = ["+", "-", "*", "/", "^"];

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
