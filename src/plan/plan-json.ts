import type { Front } from "./front.js";
import { limitWords } from "./limit.js";
import type { LimitPrice } from "./limit-price.js";
import type { Optimum } from "./optimum.js";
import { totalNames, totalOf } from "./total.js";

/** Results of a plan to write out. */
export interface PlanResults {
  readonly best?: Optimum;
  readonly front?: Front;
  readonly prices?: readonly LimitPrice[];
}

/**
 * Results of a plan as JSON: options by name, totals with their units, proofs.
 *
 * @param results  what there is of best plan, front and prices
 * @returns text, two spaces a level, with a line end
 * Example: JSON.parse(planJson({})).units.dry → "kg"
 */
export function planJson({ best, front, prices }: PlanResults): string {
  const results = {
    units: Object.fromEntries(totalNames.map((name) => [name, totalOf(name).unit])),
    ...(best && { best: plain(best) }),
    ...(front && { front: { goal: front.goal, complete: front.complete, points: front.points.map(plain) } }),
    ...(prices && {
      prices: prices.map(({ limit, total, saved, loosened }) => ({
        limit: limitWords(limit),
        total,
        saved,
        ...(loosened && { loosened: { limit: limitWords(loosened.limit), saved: loosened.saved } }),
      })),
    }),
  };
  return `${JSON.stringify(results, undefined, 2)}\n`;
}

function plain({ choice, totals, proofs }: Optimum) {
  return { choice: choice.map(({ line, option }) => ({ line: line.name, option: option.id })), totals, proofs };
}
