import { beforeAfter } from "../plan/choice.js";
import type { Front } from "../plan/front.js";
import type { LimitPrice } from "../plan/limit-price.js";
import type { PlanList } from "../plan/list.js";
import type { Optimum } from "../plan/optimum.js";
import type { Chosen } from "../plan/plan-option.js";
import { printTotal, totalNames, totalOf } from "../plan/total.js";
import { figures } from "../quantity/print.js";
import { aligned } from "./columns.js";
import { planLists } from "./plan-lists.js";

/** What a plan prints for a terminal. */
interface PlanToPrint {
  readonly name: string;
  readonly before: readonly Chosen[];
  readonly best: Optimum;
  readonly front: Front;
  readonly prices: readonly LimitPrice[];
  readonly robust: boolean;
}

/** The tables and lists of a plan, for a terminal. */
export function planReport(plan: PlanToPrint): string {
  const { name, before, best, prices, robust } = plan;
  const lists = planLists(before, best.choice);
  const paid = prices.filter(({ saved }) => saved > 0).map(({ words }) => `- ${words}`);
  const free = prices.length - paid.length;
  const end = robust ? "at the bad end of the range" : "in the middle of the range";
  const sections: [string, string][] = [
    [`Lightest plan, limits kept ${end}: line by line`, linesTable(before, best.choice)],
    ["All lines", totalsTable(before, best.choice)],
    ["Plans of which none beats another", frontTable(plan.front)],
    ["Price of the limits", [...paid, `${free} of ${prices.length} limits cost nothing.`].join("\n")],
    ["To buy", listTable(lists["shopping-list"])],
    ["To cut", listTable(lists["cut-list"])],
    ["Mass after", listTable(lists["mass-budget"])],
  ];
  const caution = "Estimates for comparing: rated strength, class rules and a qualified rigger decide.";
  const body = sections.flatMap(([heading, text]) => ["", heading, "", text]);
  return `${[name, ...body, "", caution].join("\n")}\n`;
}

function linesTable(before: readonly Chosen[], choice: readonly Chosen[]): string {
  const { lines } = beforeAfter(before, choice);
  const rows = lines.map(({ line, after, difference }, index) => [
    line,
    after,
    `${figures(before[index]!.option.handForce)} → ${figures(choice[index]!.option.handForce)}`,
    signed(1000 * difference.dry),
    signed(difference.cost / 100),
  ]);
  return aligned([["line", "change", "haul [N]", "dry [g]", "cost"], ...rows], [false, false, true, true, true]);
}

const signed = (value: number) => (value > 0 ? `+${figures(value)}` : figures(value));

function totalsTable(before: readonly Chosen[], choice: readonly Chosen[]): string {
  const totals = beforeAfter(before, choice);
  const print = (name: (typeof totalNames)[number], of: typeof totals.before) => printTotal(name, of[name], 4);
  const rows = totalNames.map((name) => [
    totalOf(name).words,
    print(name, totals.before),
    print(name, totals.after),
    print(name, totals.difference),
  ]);
  return aligned([["total", "before", "after", "difference"], ...rows], [false, true, true, true]);
}

function frontTable({ points, complete }: Front): string {
  const rows = points.map(({ totals, proofs }) => [
    printTotal("dry", totals.dry, 4),
    printTotal("handForce", totals.handForce, 4),
    printTotal("cost", totals.cost, 4),
    proofs[0]!.gap === 0 ? proofs[0]!.status : `at most ${printTotal("dry", proofs[0]!.gap)} from the least`,
  ]);
  const table = aligned([["dry mass", "hand force", "cost", "proof"], ...rows], [true, true, true, false]);
  return `${table}\n${complete ? "These are all." : "There are more between them."}`;
}

function listTable({ columns, rows }: PlanList): string {
  if (rows.length === 0) return "Nothing.";
  const texts = rows.map((row) => row.map((cell) => (typeof cell === "number" ? figures(cell, 4) : cell)));
  return aligned(
    [columns, ...texts],
    columns.map((_, at) => rows.some((row) => typeof row[at] === "number")),
  );
}
