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

/** A part of a formula: nothing but arithmetic. */
export type Term =
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "pi" }
  | { readonly kind: "name"; readonly name: string }
  | { readonly kind: "minus"; readonly of: Term }
  | { readonly kind: "operation"; readonly operator: Operator; readonly left: Term; readonly right: Term }
  | { readonly kind: "call"; readonly name: string; readonly of: readonly Term[] };

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
