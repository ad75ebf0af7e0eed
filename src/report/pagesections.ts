import { standsIn, type TextRun, textRuns } from "./textruns.js";

/** A section of a page as text, for a search. */
export interface PageSection {
  /** Id of its heading; empty for what stands above the first. */
  readonly id: string;
  /** Its heading; empty above the first. */
  readonly title: string;
  readonly text: string;
}

/** What no search looks through: code, formulas, drawings, tables, and what stands on every page. */
const passedOver: ReadonlySet<string> = new Set([
  ..."head script style code pre math svg table nav header footer h1 h2 button".split(" "),
  ...".numbers .formula .how .trace .rows .summary .sources .answers .working .contents .trial".split(" "),
  ..."cautions glossary words".split(" ").map((name) => `.${name}`),
]);

const blocks: ReadonlySet<string> = new Set("p li dt dd h3 h4 summary figcaption div section".split(" "));

/** Whether something read from a file is a section. */
export function isPageSection(value: unknown): value is PageSection {
  const section = value as Partial<PageSection> | null;
  return [section?.id, section?.title, section?.text].every((part) => typeof part === "string");
}

function blockOf({ inside }: TextRun): unknown {
  return inside.findLast(({ name }) => blocks.has(name));
}

function plain(text: string): string {
  return text.replace(/\s+/gu, " ").trim();
}

/**
 * The prose of a page, section by section, as a reader sees it.
 *
 * @param page  HTML of a whole page
 * @returns sections with any text, in the order of the page
 * Example: pageSections(page)[0]?.title → ""
 */
export function pageSections(page: string): PageSection[] {
  const sections: { id: string; title: string; text: string }[] = [{ id: "", title: "", text: "" }];
  let last: unknown;
  for (const run of textRuns(page)) {
    const heading = run.inside.find(({ name }) => name === "h2");
    if (heading?.id !== undefined) {
      if (sections.at(-1)?.id !== heading.id) sections.push({ id: heading.id, title: "", text: "" });
      const own = sections[sections.length - 1];
      if (own) own.title += run.text;
    } else if (!standsIn(run, passedOver)) {
      const block = blockOf(run);
      const own = sections[sections.length - 1];
      if (own) own.text += block === last ? run.text : ` ${run.text}`;
      last = block;
    }
  }
  return sections
    .map(({ id, title, text }) => ({ id, title: plain(title), text: plain(text) }))
    .filter(({ text }) => text !== "");
}
