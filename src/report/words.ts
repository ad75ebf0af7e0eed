import { type GlossaryTerm, glossary } from "./glossary.js";
import { html, Markup } from "./html.js";
import type { PageIds } from "./markdown.js";
import { sentenceAt } from "./sentence.js";
import { standsIn, textRuns } from "./textruns.js";

/** Where no word is looked for: code, formulas, drawings, workings, lists of sources, what repeats the page. */
const passedOver: ReadonlySet<string> = new Set([
  ..."script style code pre math svg nav".split(" "),
  ...".formula .how .trace .numbers .checks .totals .sources .answers .contents .trial".split(" "),
]);

/** Where a word counts as used, and stays as it is. */
const unlinked: ReadonlySet<string> = new Set(
  "h1 h2 h3 h4 h5 h6 a button summary label figure table dl legend".split(" "),
);

function pattern(form: string): string {
  return form.replace(/[$()*+.?[\\\]^{|}]/gu, "\\$&").replace(/[\s-]+/gu, "[\\s\\u00a0-]+");
}

const termOf = new Map<string, GlossaryTerm>();
const unitOf = new Map<string, GlossaryTerm>();
for (const term of glossary) {
  for (const form of term.forms) termOf.set(folded(form), term);
  for (const form of term.behindNumber) unitOf.set(form, term);
}

const anyTerm = new RegExp(
  `(?<![\\p{L}\\p{N}_])(?:${glossary
    .flatMap(({ forms, behindNumber }) => [...forms, ...behindNumber])
    .sort((one, other) => other.length - one.length)
    .map(pattern)
    .join("|")})(?![\\p{L}\\p{N}_])`,
  "giu",
);

/** A form as it is looked up. */
function folded(form: string): string {
  return form.replace(/[\s\u00a0-]+/gu, " ").toLowerCase();
}

/** Whether a word with several meanings stands beside words that tell that the term is meant. */
function isMeant({ beside }: GlossaryTerm, markup: string, at: number): boolean {
  if (beside === undefined) return true;
  return new RegExp(`(?<!\\p{L})(?:${beside.join("|")})`, "iu").test(sentenceAt(markup, at));
}

/** The terms that a page uses: marks the first use of each in its prose, and lists them. A unit behind a number is no link. */
export class PageWords {
  readonly #ids: PageIds;
  readonly #used = new Map<GlossaryTerm, string>();
  readonly #linked = new Set<GlossaryTerm>();

  constructor(ids: PageIds) {
    this.#ids = ids;
  }

  /**
   * A piece of the page with links from the first use of each term in the prose; pieces come in the order of the page.
   *
   * @param piece  HTML of the page
   * @returns the same, but for the links
   */
  link(piece: Markup): Markup {
    const { text } = piece;
    let made = "";
    let done = 0;
    for (const run of textRuns(text)) {
      if (standsIn(run, passedOver)) continue;
      const mayLink = !standsIn(run, unlinked);
      const raw = text.slice(run.start, run.end);
      for (const { 0: found, index } of raw.matchAll(anyTerm)) {
        const unit = /[\d)][\s\u00a0]$/u.test(raw.slice(0, index)) ? unitOf.get(found) : undefined;
        const term = unit ?? termOf.get(folded(found));
        if (term === undefined || !isMeant(term, text, run.start + index)) continue;
        const id = this.#used.get(term) ?? this.#ids.take(`word ${term.term}`);
        this.#used.set(term, id);
        if (!mayLink || unit !== undefined || this.#linked.has(term)) continue;
        this.#linked.add(term);
        const at = run.start + index;
        made += `${text.slice(done, at)}${html`<a class="word" href="#${id}">${found}</a>`.text}`;
        done = at + found.length;
      }
    }
    return new Markup(made + text.slice(done));
  }

  /** The terms that were met, folded, in the order of the alphabet; nothing where there were none. */
  list(): Markup | undefined {
    if (this.#used.size === 0) return undefined;
    const entries = glossary.flatMap((term) => {
      const id = this.#used.get(term);
      return id === undefined ? [] : [{ id, ...term }];
    });
    return html`<details class="words"><summary>${entries.length} words of the trade, as this page means them</summary>
<dl>
${entries.map(({ id, term, meaning }) => html`<div id="${id}"><dt>${term}</dt><dd>${meaning}</dd></div>\n`)}</dl></details>
`;
  }
}
