import type { BeforeAfter } from "./choice.js";
import type { CutList } from "./cut-list.js";
import type { MassBudget } from "./mass-budget.js";
import type { ShoppingList } from "./shopping-list.js";
import { totalNames, totalOf } from "./total.js";

/** A list of a plan as rows of cells, for a page or a spreadsheet. */
export interface PlanList {
  /** Headings, with the unit in square brackets. */
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}

const rounded = (value: number, digits: number) => Number(value.toFixed(digits));

/**
 * A shopping list as rows: rope by the metre, then hardware by the piece; what is all there is left out.
 *
 * @param list  from `shoppingList`
 * @returns rows
 * Example: shoppingRows({ ropes: [], kept: [], parts: [], leftOver: [] }).rows → []
 */
export function shoppingRows({ ropes, parts }: Pick<ShoppingList, "ropes" | "parts">): PlanList {
  return {
    columns: ["What", "Needed", "At hand", "To buy", "Unit"],
    rows: [
      ...ropes.map(({ rope, needed, toBuy }) => [rope, rounded(needed, 2), 0, rounded(toBuy, 2), "m"]),
      ...parts
        .filter(({ toBuy }) => toBuy > 0)
        .map(({ part, needed, atHand, toBuy }) => [part, needed, atHand, toBuy, "pieces"]),
    ],
  };
}

/**
 * A cut list as rows, a piece a row; splices and minutes stand at the first piece of their line.
 *
 * @param list  from `cutList`
 * @returns rows
 * Example: cutRows({ lines: [], ropes: [], splices: 0, minutes: 0 }).rows → []
 */
export function cutRows({ lines }: CutList): PlanList {
  return {
    columns: ["Line", "Rope", "For", "Length [m]", "Join", "Thin part [m]", "Join [m]", "Splices", "Time [min]"],
    rows: lines.flatMap(({ line, pieces, splices, minutes }) =>
      pieces.map(({ rope, use = "", length, taper }, index) => [
        line,
        rope,
        use,
        rounded(length, 2),
        taper?.join ?? "",
        taper ? rounded(taper.bareLength, 2) : "",
        taper ? rounded(taper.joinLength, 2) : "",
        index === 0 ? splices : "",
        index === 0 ? rounded(minutes, 0) : "",
      ]),
    ),
  };
}

/**
 * A mass budget as rows, heaviest line first.
 *
 * @param budget  from `massBudget`
 * @returns rows
 * Example: massRows({ lines: [], all: { dry: 0, wet: 0, aloft: 0 } }).rows → [["all lines", 0, 0, 0, 100]]
 */
export function massRows({ lines, all }: MassBudget): PlanList {
  const grams = ({ dry, wet, aloft }: MassBudget["all"]) => [dry, wet, aloft].map((mass) => rounded(1000 * mass, 1));
  return {
    columns: ["Line", "Dry [g]", "Wet [g]", "Aloft [g]", "Share [%]"],
    rows: [
      ...lines.map((one) => [one.line, ...grams(one), rounded(100 * one.share, 1)]),
      ["all lines", ...grams(all), 100],
    ],
  };
}

/**
 * Before and after as rows: after less before in every total.
 *
 * @param change  from `beforeAfter`
 * @returns rows
 * Example: changeRows(beforeAfter([], [])).rows.length → 1
 */
export function changeRows({ lines, difference }: BeforeAfter): PlanList {
  const heading = (name: (typeof totalNames)[number]) => {
    const { words, unit } = totalOf(name);
    return unit === "" ? words : `${words} [${unit}]`;
  };
  const cells = (one: typeof difference) => totalNames.map((name) => one[name]);
  return {
    columns: ["Line", "Before", "After", ...totalNames.map(heading)],
    rows: [
      ...lines.map((one) => [one.line, one.before, one.after, ...cells(one.difference)]),
      ["all lines", "", "", ...cells(difference)],
    ],
  };
}
