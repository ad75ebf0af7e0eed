import { bibliography, type SourceId } from "../sources/bibliography.js";
import type { Source } from "../sources/source.js";
import { html, type Markup } from "./html.js";

/** Anchor of a source on a page that lists it. */
export function sourceAnchor(id: SourceId): string {
  return `source-${id}`;
}

/** A source in a few words. */
export function sourceTitle(id: SourceId): string {
  const { title, author, year }: Source = bibliography[id];
  const short = title.split(/[,:(]/u)[0]?.trim() ?? title;
  return author === undefined ? short : `${author}${year === undefined ? "" : ` ${year}`}`;
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
