import type { CheckResult } from "../published/row.js";
import { figures } from "../quantity/print.js";
import { printedUnit } from "../quantity/quantity-text.js";
import { superscripts } from "../quantity/superscripts.js";
import { evidenceKinds, evidenceMeaning, type SharedCheck, shareOfAllowed, wasLookedUp, worstOf } from "./checklist.js";
import { type Content, html, type Markup } from "./html.js";
import { sourceAnchor, sourceTitle } from "./sourcelist.js";
import { checkColumns } from "./style/checks.js";
import { numberColumn } from "./style/tables.js";
import { tableBox } from "./table.js";
import { unparted } from "./unparted.js";

/** Digits after the point with which a check is printed: one more than what is allowed can tell apart. */
function decimalsFor(allowed: number): number {
  if (!(allowed > 0)) return 6;
  return Math.min(9, Math.max(0, Math.ceil(-Math.log10(allowed)) + (allowed < 1 ? 0 : 1)));
}

/** Digits after the point that the source prints, where the allowed deviation is half of the last one. */
function printedDecimals(allowed: number): number | undefined {
  const decimals = -Math.log10(2 * allowed);
  return Math.abs(decimals - Math.round(decimals)) < 1e-9 && decimals >= 0 && decimals < 10
    ? Math.round(decimals)
    : undefined;
}

function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals).replace("-", "−");
  return /[1-9]/u.test(text) ? text : text.replace("−", "");
}

function percent(share: number): string {
  return Number.isFinite(share)
    ? `${share > 0 && share < 0.01 ? "under 1" : Math.round(share * 100)} %`
    : "more than is allowed";
}

/** A unit as a reader knows it, or the power of ten that a number stands for. */
function unitText(unit: string): string {
  if (unit === "1") return "–";
  const power = /^1e(-\d+)$/u.exec(unit)?.[1];
  if (power !== undefined) return `10${power.replaceAll(/./gu, (sign) => superscripts[sign] ?? sign)}`;
  return printedUnit(unit).replaceAll("*", "·");
}

function row({ quantity, computed, expected, allowed, deviation, unit }: CheckResult): Markup {
  const decimals = decimalsFor(allowed);
  const printed = printedDecimals(allowed);
  const exact = Number.isInteger(expected) && printed === undefined;
  const cells = [
    fixed(computed, decimals),
    printed !== undefined ? fixed(expected, printed) : exact ? fixed(expected, 0) : fixed(expected, decimals),
    allowed > 0 ? figures(allowed) : "0",
    Math.abs(deviation) <= 1e-12 * Math.max(1, Math.abs(expected)) ? "0" : figures(deviation, 2),
    unitText(unit),
  ];
  return html`<tr><th scope="row">${unparted(quantity)}${cells.map((cell) => html`<td>${cell}`)}
`;
}

/** Where the expected values of some rows come from, and what they are worth. */
function origin(check: CheckResult): Content {
  const { source, place, evidence, status } = check;
  const worth = wasLookedUp(check) ? evidence : status;
  const from = source === undefined ? undefined : html`<a href="#${sourceAnchor(source)}">${sourceTitle(source)}</a>, `;
  return html`${from}${place} (${worth})`;
}

/** Rows under what they are compared with, which stands there once. */
function table(caption: Content, checks: readonly CheckResult[]): Markup {
  const groups = groupedBy(checks, (check) => html`${origin(check)}`.text);
  return html`<div class="scroll" role="group" aria-label="Table" tabindex="0"><table class="checks ${[1, 2, 3, 4].map(numberColumn).join(" ")}">
<caption>${caption}</caption>
<thead><tr>${checkColumns.map((title) => html`<th scope="col">${title}`)}
${groups.map(
  (rows) => html`<tbody><tr><th colspan="${checkColumns.length}" scope="rowgroup">${rows[0] && origin(rows[0])}
${rows.map(row)}`,
)}</table></div>
`;
}

/** Items that have a text in common, in the order in which each text is met first. */
function groupedBy<Item>(items: readonly Item[], textOf: (item: Item) => string): Item[][] {
  const groups = new Map<string, Item[]>();
  for (const item of items) {
    const text = textOf(item);
    const group = groups.get(text);
    if (group) group.push(item);
    else groups.set(text, [item]);
  }
  return [...groups.values()];
}

function countText(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** How many comparisons there are of each kind of evidence, and the worst of all, in a sentence. */
export function checkSummary(checks: readonly CheckResult[]): Markup {
  const proofs = checks.filter((check) => wasLookedUp(check) && check.evidence !== "recorded");
  const kinds = evidenceKinds.flatMap((kind) => {
    const count = proofs.filter(({ evidence }) => evidence === kind).length;
    return count === 0 ? [] : [`${count} ${kind}`];
  });
  const worst = worstOf(proofs);
  const apart = checks.filter((check) => !wasLookedUp(check)).length;
  const recorded = checks.length - proofs.length - apart;
  const all = proofs.every(({ holds }) => holds) ? "all" : "not all";
  return html`<p class="summary">${
    worst === undefined
      ? "No value here could be compared with one that was looked up."
      : `${countText(proofs.length, "comparison", "comparisons")} (${kinds.join(", ")}), ${all} within the allowed deviation. The widest uses ${percent(shareOfAllowed(worst))} of what it is allowed: ${unparted(worst.quantity)}.`
  }${recorded > 0 && ` ${countText(recorded, "row only watches", "rows only watch")} for changes of our own output.`}${apart > 0 && ` ${countText(apart, "more value", "more values")} from common practice, from memory or made up ${apart === 1 ? "stands apart and proves" : "stand apart and prove"} nothing.`}</p>
`;
}

/** The comparisons as tables: what was looked up first, the rest apart. */
export function checkTables(checks: readonly CheckResult[], where?: Content): Markup {
  const counted = checks.filter(wasLookedUp);
  const apart = checks.filter((check) => !wasLookedUp(check));
  const on = where !== undefined && html`, on ${where}`;
  return html`${counted.length > 0 && table(html`Computed values beside expected ones${on}`, counted)}${
    apart.length > 0 && table(html`Apart: common practice, from memory, or made up for the demo${on}`, apart)
  }`;
}

/** The comparisons of several reports: those that the same reports show stand together below their names. */
export function sharedCheckTables(checks: readonly SharedCheck[]): Markup {
  return html`${groupedBy(checks, ({ reports }) => reports.join(" ")).map((some) => {
    const names = some[0]?.reports ?? [];
    const links = names.map(
      (name, index) => html`${index > 0 && ", "}<a href="${encodeURIComponent(name)}.html">${name}</a>`,
    );
    return checkTables(some, links);
  })}`;
}

/** Totals of each kind of evidence over all reports. */
export function checkTotals(checks: readonly CheckResult[]): Markup {
  const counted = checks.filter(wasLookedUp);
  const groups = [
    ...evidenceKinds.map((kind) => ({
      name: kind as string,
      meaning: evidenceMeaning[kind],
      some: counted.filter(({ evidence }) => evidence === kind),
    })),
    {
      name: "apart",
      meaning: "common practice, from memory, or made up: no evidence",
      some: checks.filter((check) => !wasLookedUp(check)),
    },
  ];
  return tableBox({
    caption: "Totals by evidence",
    columns: ["Evidence", "What it is", "Comparisons", "Hold", "Worst share of what is allowed"],
    rows: groups.map(({ name, meaning, some }) => {
      const worst = worstOf(some);
      const share = worst ? `${percent(shareOfAllowed(worst))} (${worst.id})` : "–";
      return [name, meaning, some.length, some.filter(({ holds }) => holds).length, share];
    }),
  });
}
