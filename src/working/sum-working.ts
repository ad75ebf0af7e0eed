import type { Band } from "../sources/band.js";
import { type FormulaSymbol, formula } from "./formula.js";
import { worked } from "./worked.js";
import type { Working } from "./working.js";

/** A part of a sum: its words, and its number. */
export type SumPart = readonly [words: string, value: Working | Band | number];

/** A sum, or a difference, of things of one kind. */
export interface SumOf {
  readonly id: string;
  readonly title: string;
  readonly quantity: "mass" | "count" | "tension";
  readonly parts: readonly SumPart[];
  /** Minus takes all others from the first part; plus when absent. */
  readonly sign?: "+" | "-";
}

const signs = { mass: "m", count: "n", tension: "T" } as const;

/**
 * The working of a sum of named parts, or of the first of them less the others.
 *
 *     part 1 + part 2 + …
 *
 * @param sum  id, title, quantity, parts [SI] and sign
 * @returns the working; nothing for a sum without parts
 * @throws ValueError for a number that cannot be
 * Example: sumWorking({ id: "all", title: "All", quantity: "mass", parts: [["rope", 0.5], ["block", 0.25]] }).value → 0.75
 */
export function sumWorking({ id, title, quantity, parts, sign = "+" }: SumOf): Working | undefined {
  if (parts.length === 0) return undefined;
  const named = parts.map(([words, value], index) => ({ name: `part${index + 1}`, words, value, place: index + 1 }));
  const symbols = named.map(({ name, words, place }): [string, FormulaSymbol] => [
    name,
    { quantity, sign: `${signs[quantity]}_${place}`, words },
  ]);
  return worked(
    formula({
      id,
      title,
      text: named.map(({ name }) => name).join(` ${sign} `),
      symbols: Object.fromEntries(symbols),
      result: { quantity, words: title },
      source: "statics",
      valid: "parts of one kind",
    }),
    Object.fromEntries(named.map(({ name, value }) => [name, value])),
  );
}
