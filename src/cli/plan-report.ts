import { beforeAfter } from "../plan/choice.js";
import type { Front } from "../plan/front.js";
import type { LimitPrice } from "../plan/limit-price.js";
import type { PlanList } from "../plan/list.js";
import type { Optimum } from "../plan/optimum.js";
import type { Chosen } from "../plan/plan-option.js";
import type { PlannedBoat } from "../plan/planned-boat.js";
import type { Priority } from "../plan/priorities.js";
import { printTotal, totalNames, totalOf } from "../plan/total.js";
import { figures } from "../quantity/print.js";
import type { Outcome } from "../quantity/verdict.js";
import { countWords } from "./check.js";
import { aligned, broken, wrapped } from "./columns.js";
import { planLists } from "./plan-lists.js";

/** What a plan prints for a terminal. */
interface PlanToPrint {
  readonly name: string;
  readonly boat: PlannedBoat;
  readonly before: readonly Chosen[];
  readonly best: Optimum;
  readonly front: Front;
  /** Points that were asked for [-]. */
  readonly wanted: number;
  readonly prices: readonly LimitPrice[];
  readonly priorities: readonly Priority[];
  /** Limits that cannot be kept, in words. */
  readonly conflicts: readonly string[];
  /** How each line stands as planned. */
  readonly standings: readonly { readonly line: string; readonly outcome: Outcome }[];
  readonly robust: boolean;
}

/** The tables and lists of a plan, for a terminal. */
export function planReport(plan: PlanToPrint): string {
  const { name, boat, before, best, prices, conflicts, standings, robust } = plan;
  const lists = planLists(before, best.choice);
  const paid = bulleted(prices.filter(({ saved }) => saved > 0).map(({ words }) => words));
  const costly = prices.filter(({ saved }) => saved > 0).length;
  const free = prices.length - costly;
  const end = robust
    ? "All limits hold at the bad end of their range"
    : "What can hurt somebody holds at the bad end of its range, the rest in the middle";
  const open = standings.filter(({ outcome }) => outcome !== "enough").map(({ line, outcome }) => `${line} ${outcome}`);
  const said = `${end}. As planned: ${countWords(standings)}${open.length === 0 ? "" : ` (${open.join(", ")})`}. Nothing lighter that was tried keeps the limits: proven.`;
  const sections: [string, string][] = [
    ...(conflicts.length === 0
      ? []
      : ([["Limits that cannot be kept", bulleted(conflicts).join("\n")]] as [string, string][])),
    ["Lightest plan", `${wrapped(said, "")}\n\n${linesTable(before, best.choice, boat.currency)}`],
    ["All lines", totalsTable(before, best.choice, boat.currency)],
    ["Plans of which none beats another", frontTable(plan)],
    ["Price of the limits", [...paid, `${free} of ${prices.length} limits cost nothing.`].join("\n")],
    [
      "Where the next gram goes furthest after this plan; changes are named from the boat as it is now",
      bulleted(plan.priorities.map(({ words }) => words)).join("\n"),
    ],
    ["To buy", listTable(lists["shopping-list"])],
    ["To cut", cutTable(lists["cut-list"])],
    ["Mass after", listTable(lists["mass-budget"])],
  ];
  const caution = "Estimates for comparing: rated strength, class rules and a qualified rigger decide.";
  const body = sections.flatMap(([heading, text]) => ["", heading, "", text]);
  return `${[name, ...body, "", caution].join("\n")}\n`;
}

/** Widest that words of a change may stand in a table; longer ones go on below. */
const widest = 50;

function linesTable(before: readonly Chosen[], choice: readonly Chosen[], currency = "cost"): string {
  const { lines } = beforeAfter(before, choice);
  const pair = (of: (chosen: Chosen) => number, index: number) => {
    const [one, other] = [figures(of(before[index]!)), figures(of(choice[index]!))];
    return one === other ? one : `${one} → ${other}`;
  };
  const rows = lines.flatMap(({ line, after, difference }, index) => {
    const [first = "", ...more] = broken(after, widest);
    const numbers = [
      pair(({ option }) => option.handForce, index),
      signed(1000 * difference.dry),
      signed(difference.cost / 100),
    ];
    return [[line, first, ...numbers], ...more.map((words) => ["", words, "", "", ""])];
  });
  return aligned([["line", "change", "haul [N]", "dry [g]", currency], ...rows], [false, false, true, true, true]);
}

/** Points of a list. */
const bulleted = (points: readonly string[]) => points.map((words) => wrapped(words, "- "));

const signed = (value: number) => (value > 0 ? `+${figures(value)}` : figures(value));

function totalsTable(before: readonly Chosen[], choice: readonly Chosen[], currency?: string): string {
  const totals = beforeAfter(before, choice);
  const print = (name: (typeof totalNames)[number], of: typeof totals.before) =>
    printTotal(name, of[name], 4, currency);
  const rows = totalNames.map((name) => [
    totalOf(name).words,
    print(name, totals.before),
    print(name, totals.after),
    print(name, totals.difference),
  ]);
  return aligned([["total", "before", "after", "difference"], ...rows], [false, true, true, true]);
}

function frontTable({ front: { points, complete }, boat, wanted }: PlanToPrint): string {
  const { currency } = boat;
  const rows = points.map(({ totals, proofs }, index) => {
    const { minimised, bound, gap, status, nodes } = proofs[0]!;
    return [
      String(index + 1),
      printTotal("dry", totals.dry, 4),
      printTotal("handForce", totals.handForce, 4),
      printTotal("cost", totals.cost, 4, currency),
      printTotal(minimised, bound, 4),
      printTotal(minimised, gap),
      String(nodes),
      proofs.every((proof) => proof.gap === 0) ? status : "not proven",
    ];
  });
  const titles = ["", "dry mass", "hand force", "cost", "no plan below", "gap", "branches", "proof"];
  const table = aligned([titles, ...rows], [true, true, true, true, true, true, true, false]);
  const count = points.length;
  const end = complete
    ? `The front has only ${count} ${count === 1 ? "point" : "points"}${count < wanted ? `, fewer than the ${wanted} asked for` : ""}: these are all.`
    : "There are more between them.";
  return `${table}\n${end}`;
}

function cutTable({ columns, rows }: PlanList): string {
  const used = columns.map((_, at) => rows.some((row) => row[at] !== ""));
  const pick = <Cell>(cells: readonly Cell[]) => cells.filter((_, at) => used[at]);
  return listTable({ columns: pick(columns), rows: rows.map((row) => pick(row)) });
}

function listTable({ columns, rows }: PlanList): string {
  if (rows.length === 0) return "Nothing.";
  const texts = rows.map((row) => row.map((cell) => (typeof cell === "number" ? figures(cell, 4) : cell)));
  return aligned(
    [columns, ...texts],
    columns.map((_, at) => rows.some((row) => typeof row[at] === "number")),
  );
}
