import { coefficientTable, outcomeWords } from "../notebook/notes.js";
import type { Coefficients, Verdicts } from "../notebook/output.js";
import type { Outcome } from "../quantity/verdict.js";
import type { SourceId } from "../sources/bibliography.js";
import { html, type Markup } from "./html.js";
import { sourceAnchor, sourceTitle } from "./sourcelist.js";
import { tableBox } from "./table.js";
import { unparted } from "./unparted.js";

/** How an outcome is marked in the style sheet. */
const marks: Readonly<Record<Outcome, string>> = { enough: "met", "can't tell": "unclear", "not enough": "short" };

/** Judgements one under the other, each with its reason and the nearest change that passes. */
export function verdictList({ caption, verdicts }: Verdicts): Markup {
  return html`<div class="verdicts"><h3>${caption}</h3>
<ul>
${verdicts.map(
  ({
    subject,
    outcome,
    reason,
    change,
  }) => html`<li class="${marks[outcome]}"><b class="outcome">${outcomeWords[outcome]}</b><div><b>${subject}</b>
<p>${unparted(reason)}</p>
${change !== undefined && html`<p class="change">Nearest change that passes: ${unparted(change)}</p>\n`}</div></li>
`,
)}</ul></div>
`;
}

/** Records behind the numbers nearby, folded; a source leads to the list at the end of the page. */
export function coefficientFold(shown: Coefficients): Markup {
  const { caption, columns, rows } = coefficientTable(shown);
  const linked = shown.entries.map(({ record }, index) => {
    const cells = rows[index] ?? [];
    if (record.source === undefined) return cells;
    const link = html`<a href="#${sourceAnchor(record.source)}">${sourceTitle(record.source)}</a>, ${record.place}`;
    return [...cells.slice(0, -1), link];
  });
  return html`<details class="trace"><summary>Where the numbers come from: ${caption}</summary>
${tableBox({ caption, columns, rows: linked })}</details>
`;
}

/** Sources that records name. */
export function coefficientSources({ entries }: Coefficients): SourceId[] {
  return entries.flatMap(({ record }) => record.source ?? []);
}
