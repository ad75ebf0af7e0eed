import type { SheetTable } from "../notebook/output.js";
import { cautionsInShort } from "./cautions.js";
import { addressOf } from "./handout-address.js";
import { addressCode } from "./handout-code.js";
import type { HandoutContent } from "./handout-content.js";
import { handoutLine } from "./handout-line.js";
import { handoutPicture, usualHeight } from "./handout-picture.js";
import { roomForPictures } from "./handout-room.js";
import { handoutStyle } from "./handout-style.js";
import { html, Markup } from "./html.js";
import { PageIds } from "./markdown.js";
import type { ReportRecord } from "./record.js";
import { unparted } from "./unparted.js";

/** A report that gets a sheet. */
export type HandoutTopic = Pick<ReportRecord, "name" | "question" | "handout">;

interface Handout {
  /** In the order of their sheets, at least one. */
  readonly topics: readonly HandoutTopic[];
  /** Folder of the reports on the web; without it the sheets have a line to write the address on. */
  readonly address?: URL | undefined;
}

/** Title by which a handout, and a print of it, is known. */
const handoutMark = "haulbook handout";

/** Most characters of texts that nothing else keeps short. */
const most = { question: 160, title: 200, caption: 330, lineCaption: 140, answer: 560, result: 300 } as const;
/** Characters of question and rules from which the words are set smaller; beside the drawing of a line they always are. */
const longFrom = 420;
/** Height that is left for the figure where the drawing of a line stands below it, and the gap between both [px]. */
const leastPicture = 165;
const gap = 13;

const defaultTable = {
  caption: "Your own readings: the pull that brings the line in, and what is left to hold when it goes out.",
  columns: ["Date", "Wind [kn]", "Line", "Load [N]", "Pull [N]", "Ease [N]", "Remark"],
  rows: [[], [], [], [], [], []],
} satisfies Pick<SheetTable, "caption" | "columns" | "rows">;

/** Whole sentences up to a length; a longer first one is cut at a word. A cut shows. */
function within(text: string, length: number): string {
  if (text.length <= length) return text;
  const head = text.slice(0, length - 1);
  const end = Math.max(head.lastIndexOf(". "), head.lastIndexOf("? "));
  return end > 0 ? `${head.slice(0, end + 1)}\u00a0…` : `${head.slice(0, Math.max(1, head.lastIndexOf(" ")))}\u00a0…`;
}

/** The figure, as large as the room on the sheet [px] lets it be, up to its usual size. */
function pictureOf({ picture }: HandoutContent, id: string, room: number): Markup | undefined {
  if (picture === undefined) return undefined;
  return html`<figure>
<figcaption>${unparted(within(picture.title, most.title))}</figcaption>
<div class="picture">${handoutPicture(picture, id, Math.max(leastPicture / 2, Math.min(usualHeight, room)))}</div>
<p class="caption">${unparted(within(picture.caption, most.caption))}</p>
</figure>
`;
}

/** A rule as it stands on the sheet, and its range in brackets. */
function saidOf({ text, range }: HandoutContent["rules"][number]): readonly [text: string, range?: string] {
  return range === undefined
    ? [within(text, most.answer)]
    : [within(text, most.result), `(${within(range, most.result)})`];
}

function rulesOf({ rules }: HandoutContent): Markup {
  return html`<section class="rules">
<h2>To remember</h2>
<ol>
${rules.map((rule) => {
  const [text, range] = saidOf(rule);
  return html`<li><span${range !== undefined && html` class="text"`}>${unparted(text)}</span>${range !== undefined && html` <span class="range">${unparted(range)}</span>`}</li>\n`;
})}</ol>
</section>
`;
}

function tableOf({ caption, columns, rows }: Pick<SheetTable, "caption" | "columns" | "rows">): Markup {
  return html`<div class="sheet" role="group" aria-label="Table to fill in" tabindex="0">
<table>
<caption><b>To fill in.</b> ${unparted(caption)}</caption>
<thead><tr>${columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
<tbody>
${rows.map((row) => html`<tr>${columns.map((_, column) => html`<td>${row[column]}</td>`)}</tr>\n`)}</tbody>
</table>
</div>
`;
}

function footOf({ handout }: HandoutTopic, address: string | undefined): Markup {
  return html`<footer class="foot">
${address !== undefined && addressCode(address)}<div class="says">
${
  address === undefined
    ? html`<p class="blank">The whole report, with its working:</p>`
    : html`<p class="address">The whole report, with its working: <a href="${address}">${address}</a></p>`
}
${handout.demo && html`<p><b>Demo data is invented.</b> Measure your own boat before you rely on a number.</p>\n`}${cautionsInShort()}</div>
</footer>
`;
}

function sheet(topic: HandoutTopic, address: URL | undefined, ids: PageIds): Markup {
  const { name, handout } = topic;
  const id = ids.take(name);
  const { picture, reeving, rules, sheetTable: table = defaultTable } = handout;
  const question = within(topic.question, most.question);
  const roomIn = (dense: boolean) =>
    roomForPictures({
      question,
      heading: within(picture?.title ?? "", most.title),
      caption: within(picture?.caption ?? "", most.caption),
      rules: rules.map(saidOf),
      table,
      dense,
    });
  const line =
    reeving &&
    handoutLine(
      { ...reeving, title: within(reeving.title, most.title), caption: within(reeving.caption, most.lineCaption) },
      roomIn(true) - (picture === undefined ? 0 : leastPicture + gap),
    );
  const words = question.length + rules.reduce((sum, { text, range = "" }) => sum + text.length + range.length, 0);
  const dense = line !== undefined || words > longFrom;
  const room = roomIn(dense) - (line === undefined ? 0 : line.height + gap);
  return html`<article class="topic${dense && " dense"}" aria-labelledby="${id}">
<header class="head"><b>haulbook</b><div class="who"><span class="blank">Name</span><span class="blank">Date</span></div></header>
<h1 id="${id}">${question}</h1>
${pictureOf(handout, ids.take(`${name} picture`), room)}${line?.markup}${rulesOf(handout)}${tableOf(table)}${footOf(topic, address && addressOf(address, name))}</article>
`;
}

/**
 * The handout of a clinic: one side of A4 for each topic, to be printed; it carries everything itself and runs no script.
 *
 * @param handout  topics, and where their reports stand on the web
 * @returns HTML text, the same for the same reports
 * @throws ValueError for an address that is too long
 * Example: handoutHtml({ topics: [record], address: reportsAddress("https://club.example") })
 */
export function handoutHtml({ topics, address }: Handout): string {
  const ids = new PageIds();
  const title = `${handoutMark}: ${topics.length} ${topics.length === 1 ? "topic" : "topics"}`;
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${title}</title>
<style>${new Markup(handoutStyle)}</style>
</head>
<body>
<main>
${topics.map((topic) => sheet(topic, address, ids))}</main>
</body>
</html>
`.text;
}

/** Whether a file, a page or a print, is a handout of ours: it may be replaced by a newer one. */
export function isHandout(text: string): boolean {
  return (
    text.includes(`<title>${handoutMark}: `) || (text.startsWith("%PDF-") && text.includes(`/Title (${handoutMark}: `))
  );
}
