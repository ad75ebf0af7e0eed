import { beforeAfter } from "../plan/choice.js";
import { cutList } from "../plan/cut-list.js";
import { changeRows, cutRows, massRows, type PlanList, shoppingRows } from "../plan/list.js";
import { massBudget } from "../plan/mass-budget.js";
import type { Chosen } from "../plan/plan-option.js";
import { shoppingList } from "../plan/shopping-list.js";

/** Names of the lists of a plan, and of their files. */
export const listNames = ["before-after", "shopping-list", "cut-list", "mass-budget"] as const;

/** The lists of a plan. Only what changes is bought and cut. */
export function planLists(
  before: readonly Chosen[],
  choice: readonly Chosen[],
): Readonly<Record<(typeof listNames)[number], PlanList>> {
  const made = choice.filter(({ option }, index) => option.id !== before[index]!.option.id);
  return {
    "before-after": changeRows(beforeAfter(before, choice)),
    "shopping-list": shoppingRows(shoppingList({ choice, before })),
    "cut-list": cutRows(cutList(made, before)),
    "mass-budget": massRows(massBudget(choice)),
  };
}
