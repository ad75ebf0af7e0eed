import { figures } from "../quantity/print.js";
import type { Budget } from "./budget.js";
import { type Demand, demand, exactly, marginOver } from "./demand.js";
import type { ReadyLine } from "./ready.js";

/** Whether a line keeps to its own limits of line to haul, mass and cost; nothing where it has none. */
export function judgeBudget({ line, middle }: ReadyLine, budget: Budget): Demand[] {
  const { mostLine, mass, cost } = line.limits ?? {};
  const hauled = line.form === "double-ended" ? middle.velocityRatio / 2 : middle.velocityRatio;
  const found: Demand[] = [];
  if (mostLine !== undefined) {
    const reason = `a metre at the sail takes ${figures(hauled)} m of line at ${line.form === "double-ended" ? "each hand" : "the hand"}; ${figures(mostLine)} m are allowed`;
    found.push(
      demand({
        subject: "line to haul",
        consequence: "race",
        margin: exactly(mostLine / hauled),
        reason,
      }),
    );
  }
  if (mass !== undefined) {
    const { value, low, high } = budget.dry;
    const grams = (kilograms: number) => figures(1000 * kilograms);
    const reason = `${grams(value)} g dry, likely ${grams(low)} to ${grams(high)} g; ${grams(mass)} g are allowed`;
    const margin = marginOver(mass, budget.dry);
    found.push(
      demand({ subject: "mass of the line", consequence: "race", margin, reason, settle: "weigh the line, dry" }),
    );
  }
  if (cost !== undefined) {
    const margin = exactly(cost.amount / Math.max(budget.cost, 1e-9));
    const money = (amount: number) => `${figures(amount, 4)} ${cost.currency}`.trim();
    const reason = `it costs ${money(budget.cost)}; ${money(cost.amount)} are allowed`;
    found.push(demand({ subject: "cost of the line", consequence: "race", margin, reason }));
  }
  return found;
}
