import type { Optimum } from "../plan/optimum.js";
import { countOf, fromCounts } from "../plan/total.js";
import { balanced } from "./balance.js";
import type { FormulaSymbol } from "./formula.js";
import type { Working } from "./working.js";

/**
 * The working of the least mass of a plan: what each line adds, and the bound that no choice is below.
 *
 *     Σ mass of the lines = least mass = bound
 *
 * @param optimum  a plan whose first goal was the mass [kg]
 * @param total  which mass
 * @returns the working; its result is the least mass [kg]
 * @throws OutsideModelError when the sum is not the total, or the bound is below it
 */
export function massBalance(
  optimum: Pick<Optimum, "choice" | "proofs" | "totals">,
  total: "dry" | "wet" | "aloft",
): Working {
  const parts = optimum.choice.map(({ line, option }, index) => ({
    name: `line${index + 1}`,
    symbol: { quantity: "mass", sign: `m_${index + 1}`, words: line.name } satisfies FormulaSymbol,
    value: fromCounts(total, countOf(total, line, option)),
  }));
  const proof = optimum.proofs.find(({ minimised }) => minimised === total);
  return balanced({
    id: `plan-${total}`,
    title: "Mass of the plan",
    equations: [
      { words: "sum of the lines", left: "total", right: parts.map(({ name }) => name).join(" + ") },
      ...(proof === undefined ? [] : [{ words: "bound of the search", left: "total", right: "bound" }]),
    ],
    symbols: {
      total: { quantity: "mass", sign: "m_all", words: "mass of all lines" },
      ...Object.fromEntries(parts.map(({ name, symbol }) => [name, symbol])),
      ...(proof !== undefined && {
        bound: { quantity: "mass", sign: "m_least", words: "no choice is below" } as const,
      }),
    } as Record<string, FormulaSymbol>,
    values: {
      total: optimum.totals[total],
      ...Object.fromEntries(parts.map(({ name, value }) => [name, value])),
      ...(proof !== undefined && { bound: proof.bound }),
    } as Record<string, number>,
    answer: "total",
    source: "statics",
    valid: "totals counted in whole milligrams",
    mirrors: "optimum",
  });
}
