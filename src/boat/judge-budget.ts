import { figures } from "../quantity/print.js";
import type { Budget } from "./budget.js";
import { type Judgement, judged } from "./judgement.js";
import type { ReadyLine } from "./ready.js";

/** Whether a line keeps to its own limits of line to haul, mass and cost; nothing where it has none. */
export function judgeBudget({ line, middle }: ReadyLine, budget: Budget): Judgement[] {
  const { mostLine, mass, cost } = line.limits ?? {};
  const found: Judgement[] = [];
  if (mostLine !== undefined) {
    const margin = mostLine / middle.velocityRatio;
    const reason = `a metre at the sail takes ${figures(middle.velocityRatio)} m of line at the hand; ${figures(mostLine)} m are allowed`;
    found.push(judged("hauls", "line to haul", { middle: margin, worst: margin }, reason));
  }
  if (mass !== undefined) {
    const { value, low, high } = budget.dry;
    const grams = (kilograms: number) => figures(1000 * kilograms);
    const reason = `${grams(value)} g dry, likely ${grams(low)} to ${grams(high)} g; ${grams(mass)} g are allowed`;
    found.push(judged("weighs", "mass of the line", { middle: mass / value, worst: mass / high }, reason));
  }
  if (cost !== undefined) {
    const margin = cost.amount / Math.max(budget.cost, 1e-9);
    const money = (amount: number) => `${figures(amount, 4)} ${cost.currency}`.trim();
    const reason = `it costs ${money(budget.cost)}; ${money(cost.amount)} are allowed`;
    found.push(judged("costs", "cost of the line", { middle: margin, worst: margin }, reason));
  }
  return found;
}
