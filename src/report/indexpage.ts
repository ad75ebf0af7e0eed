import { allRoles, type Role } from "../notebook/roles.js";
import { cautionsInShort } from "./cautions.js";
import { checkSummary } from "./checktable.js";
import { documentHtml, mainId, searchAssets } from "./document.js";
import { html, type Markup } from "./html.js";
import { type LeadingPage, leadingFoot } from "./leading.js";
import { markdownLine } from "./markdown.js";
import { pageAddress, type ReportRecord } from "./record.js";
import { thumbnailSvg } from "./thumbnail.js";

const purpose =
  "haulbook computes what the hand feels on a sheet of a small boat: how the wind becomes load, what blocks, covers and turns do to it, and what is left to hold or to ease.";

/** What brings a reader here. */
const readers: Readonly<Record<Role, { readonly name: string; readonly need: string }>> = {
  sailor: { name: "Sailor", need: "You hold the sheet, and want to know why it is heavy and what would help." },
  coach: { name: "Coach", need: "You have ten minutes, and want a picture and an exercise for the next session." },
  engineer: { name: "Engineer", need: "You want the model, where its numbers come from, and how far to trust them." },
};

/** Shown once its script runs: a search in a page without it finds nothing. */
const searchForm = html`<form class="search" role="search" hidden>
<label for="search-words">Search all pages</label>
<input type="search" id="search-words" autocomplete="off" spellcheck="false" enterkeyhint="go">
<p class="found" role="status"></p>
<ol class="finds"></ol>
</form>
`;

function roleList(role: Role, records: readonly ReportRecord[]): Markup | undefined {
  const own = records.filter(({ roles }) => roles.includes(role));
  if (own.length === 0) return undefined;
  const { name, need } = readers[role];
  return html`<div><h3>${name}</h3>
<p>${need}</p>
<ul>
${own.map((record) => html`<li><a href="${pageAddress(record.name)}">${record.question}</a></li>\n`)}</ul></div>
`;
}

/** Reports by reader; nothing as long as every report is for everybody. */
function rolesSection(records: readonly ReportRecord[]): Markup | undefined {
  if (records.every(({ roles }) => roles.length === allRoles.length)) return undefined;
  return html`<section class="part" aria-labelledby="readers">
<h2 id="readers">Where to begin</h2>
<div class="body roles">
${allRoles.map((role) => roleList(role, records))}</div></section>
`;
}

/**
 * The page that leads to all reports.
 *
 * @param records  records of the reports, in the order in which they are shown
 * @param checks  all their checks
 * @param inline  whether the style stands in the page itself; such a page has no search
 * @returns HTML text
 * Example: indexPage({ records, checks, inline: false })
 */
export function indexPage({ records, checks, inline }: LeadingPage): string {
  const body = html`<header class="top"><span>haulbook</span><a href="checks.html">All checks</a></header>
<main id="${mainId}" tabindex="-1">
<div class="opening">
<h1>What does the hand feel, and why?</h1>
<p>${purpose} Each report answers one question, shows the picture, takes every number apart, and sets the model beside values that others have printed. Curves for hauling are solid, for easing dashed; the gap between them is friction.</p>
${!inline && searchForm}</div>
${rolesSection(records)}<section class="part" aria-labelledby="questions">
<h2 id="questions">Questions answered</h2>
<div class="body">
<ul class="reports">
${records.map(
  ({ name, question, answer, thumbnail }) => html`<li>${thumbnail ? thumbnailSvg(thumbnail) : html`<span></span>`}
<div><h3><a href="${pageAddress(name)}">${question}</a></h3>
<p>${markdownLine(answer, { place: `${name}.ipynb` })}</p></div></li>
`,
)}</ul>
</div></section>
<section class="part" aria-labelledby="checked">
<h2 id="checked">How far to trust it</h2>
<div class="body">
${checkSummary(checks)}<p><a href="checks.html">Every comparison, with its source</a></p>
</div></section>
<section class="part" aria-labelledby="care">
<h2 id="care">Take care</h2>
<div class="body">
${cautionsInShort()}</div></section>
</main>
${leadingFoot}`;
  return documentHtml({
    title: "haulbook: what does the hand feel, and why?",
    description: purpose,
    body,
    charts: false,
    inline,
    scripts: inline ? [] : Object.values(searchAssets),
  });
}
