import type { CheckResult } from "../published/row.js";
import { figures } from "../quantity/print.js";
import { bibliography, type SourceId } from "../sources/bibliography.js";
import type { Source } from "../sources/source.js";
import { evidenceKinds, evidenceMeaning, type SharedCheck, shareOfAllowed, wasLookedUp, worstOf } from "./checklist.js";
import { type Content, html, type Markup } from "./html.js";

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

/** Anchor of a source on a page that lists it. */
export function sourceAnchor(id: SourceId): string {
  return `source-${id}`;
}

const columns = [
  "Compared",
  "Computed",
  "Expected",
  "Allowed ±",
  "Deviation",
  "Unit",
  "Evidence",
  "Source",
  "Status",
] as const;

/** A unit with its powers raised. */
function unitText(unit: string): string {
  return unit === "1" ? "–" : unit.replaceAll("^2", "²").replaceAll("^3", "³");
}

function row(check: CheckResult | SharedCheck, { linkReports, apart }: Shape): Markup {
  const { quantity, computed, expected, allowed, deviation, unit, evidence, source, status, place } = check;
  const decimals = decimalsFor(allowed);
  const printed = printedDecimals(allowed);
  const exact = Number.isInteger(expected) && printed === undefined;
  const cells: readonly Content[] = [
    fixed(computed, decimals),
    printed !== undefined ? fixed(expected, printed) : exact ? fixed(expected, 0) : fixed(expected, decimals),
    allowed > 0 ? figures(allowed) : "0",
    Math.abs(deviation) <= 1e-12 * Math.max(1, Math.abs(expected)) ? "0" : figures(deviation, 2),
    unitText(unit),
    evidence,
    source === undefined ? place : html`<a href="#${sourceAnchor(source)}">${sourceTitle(source)}</a>, ${place}`,
    ...(apart ? [status] : []),
  ];
  const shown =
    linkReports && "reports" in check
      ? html`<td data-label="Reports"><span>${check.reports.map((name, index) => html`${index > 0 && ", "}<a href="${encodeURIComponent(name)}.html">${name}</a>`)}</span></td>`
      : undefined;
  return html`<tr><th scope="row">${quantity}</th>${cells.map(
    (cell, index) =>
      html`<td data-label="${columns[index + 1] ?? ""}"${index < 4 && html` class="number"`}${index === 6 && html` class="where"`}><span>${cell}</span></td>`,
  )}${shown}</tr>
`;
}

/** A source in a few words. */
export function sourceTitle(id: SourceId): string {
  const { title, author, year }: Source = bibliography[id];
  const short = title.split(/[,:(]/u)[0]?.trim() ?? title;
  return author === undefined ? short : `${author}${year === undefined ? "" : ` ${year}`}`;
}

/** What a table of comparisons shows: the status only where it differs from row to row. */
interface Shape {
  readonly linkReports: boolean;
  readonly apart: boolean;
}

function table(caption: string, checks: readonly (CheckResult | SharedCheck)[], shape: Shape): Markup {
  const titles = [
    ...columns.filter((title) => shape.apart || title !== "Status"),
    ...(shape.linkReports ? ["Reports"] : []),
  ];
  return html`<div class="scroll" role="group" aria-label="Table" tabindex="0"><table class="checks">
<caption>${caption}</caption>
<thead><tr>${titles.map((title, index) => html`<th scope="col"${index > 0 && index < 5 && html` class="number"`}>${title}</th>`)}</tr></thead>
<tbody>
${checks.map((check) => row(check, shape))}</tbody>
</table></div>
`;
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
      : `${countText(proofs.length, "comparison", "comparisons")} (${kinds.join(", ")}), ${all} within the allowed deviation. The widest uses ${percent(shareOfAllowed(worst))} of what it is allowed: ${worst.quantity}.`
  }${recorded > 0 && ` ${countText(recorded, "row only watches", "rows only watch")} for changes of our own output.`}${apart > 0 && ` ${countText(apart, "more value", "more values")} from common practice, from memory or made up ${apart === 1 ? "stands apart and proves" : "stand apart and prove"} nothing.`}</p>
`;
}

/** The comparisons as tables: what was looked up first, the rest apart. */
export function checkTables(checks: readonly (CheckResult | SharedCheck)[], linkReports: boolean): Markup {
  const counted = checks.filter(wasLookedUp);
  const apart = checks.filter((check) => !wasLookedUp(check));
  return html`${counted.length > 0 && table("Computed values beside expected ones", counted, { linkReports, apart: false })}${
    apart.length > 0 &&
    table("Apart: common practice, from memory, or made up for the demo", apart, { linkReports, apart: true })
  }`;
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
  return html`<div class="scroll" role="group" aria-label="Table" tabindex="0"><table class="totals">
<caption>Totals by evidence</caption>
<thead><tr><th scope="col">Evidence</th><th scope="col">What it is</th><th scope="col" class="number">Comparisons</th><th scope="col" class="number">Hold</th><th scope="col">Worst share of what is allowed</th></tr></thead>
<tbody>
${groups.map(({ name, meaning, some }) => {
  const worst = worstOf(some);
  return html`<tr><th scope="row">${name}</th><td>${meaning}</td><td class="number">${some.length}</td><td class="number">${some.filter(({ holds }) => holds).length}</td><td>${worst ? `${percent(shareOfAllowed(worst))} (${worst.id})` : "–"}</td></tr>
`;
})}</tbody>
</table></div>
`;
}

/** The sources that a page names, each once, with how they were seen. */
export function sourceList(named: readonly SourceId[]): Markup {
  const ids = [...new Set(named)].sort();
  return html`<ol class="sources">
${ids.map((id) => {
  const { title, author, year, address, seen }: Source = bibliography[id];
  return html`<li id="${sourceAnchor(id)}">${author !== undefined && `${author}: `}<cite>${title}</cite>${year !== undefined && `, ${year}`}. ${
    address !== undefined && /^https?:/u.test(address) && html`<a href="${address}">${address}</a>. `
  }<span class="seen">${seen === "from memory" ? "From memory; nobody has looked it up." : seen === "read" ? "Read there." : "Read on a page that repeats it."}</span></li>
`;
})}</ol>
`;
}
