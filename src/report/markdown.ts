import MarkdownIt, { type StateInline, type Token } from "markdown-it";
import { markerAt } from "../notebook/marker.js";
import { ReportError } from "./errors.js";
import { addFormulas } from "./formula.js";
import { html, Markup } from "./html.js";
import { unparted } from "./unparted.js";

/** Hands out ids that are unique on one page. */
export class PageIds {
  readonly #used = new Set<string>();

  /** An id from words: lower case, hyphens, a number when it is taken already. */
  take(words: string): string {
    const base =
      words
        .normalize("NFKD")
        .replace(/\p{M}/gu, "")
        .toLowerCase()
        .replace(/[^\p{L}\p{N}]+/gu, "-")
        .replace(/^-+|-+$/gu, "") || "part";
    let id = base;
    for (let count = 2; this.#used.has(id); count++) id = `${base}-${count}`;
    this.#used.add(id);
    return id;
  }
}

/** Where a piece of markdown stands and which ids its headings may take. */
interface ProsePlace {
  /** For messages: notebook file and cell. */
  readonly place: string;
  readonly ids: PageIds;
  /** Numbers that open their workings; without them a marked number stands as plain text. */
  readonly numbers?: NumberMarks;
}

/** Marks a number of a text so that it opens its working. */
interface NumberMarks {
  mark(name: string, text: string, place?: string): Markup;
}

/** A heading of the first or second level, with the prose below it. */
interface ProsePart {
  /** Left out for prose above any heading. */
  readonly heading?: { readonly level: 1 | 2; readonly markup: Markup; readonly text: string };
  readonly body: Markup;
}

/** Only web pages, mail, and places relative to this page: a path from the root means the disk where a page is opened from a folder. */
function isSafeLink(address: string): boolean {
  const plain = address.replace(/\p{Cc}|\s/gu, "");
  if (/^(?:[\\/]|%5c)/iu.test(plain)) return false;
  return /^(?:https?:|mailto:)/iu.test(plain) || !/^[^/?#]*:/u.test(plain);
}

function plainText(tokens: readonly Token[] | null): string {
  return (tokens ?? [])
    .map(({ type, content, children }) =>
      type.endsWith("break") ? " " : children?.length ? plainText(children) : content,
    )
    .join("");
}

const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false });
markdown.validateLink = isSafeLink;
addFormulas(markdown);
markdown.renderer.rules.image = (tokens, index, _options, env) => {
  throw new ReportError(
    String(env?.place ?? ""),
    `the picture "${tokens[index]?.content ?? ""}" cannot be carried by a page; show a figure from a code cell instead.`,
  );
};
markdown.renderer.rules.text = (tokens, index) => html`${unparted(tokens[index]?.content ?? "")}`.text;
markdown.renderer.rules.table_open = () => '<div class="scroll" role="group" aria-label="Table" tabindex="0"><table>\n';
markdown.renderer.rules.table_close = () => "</table></div>\n";

/** `[[name: number]]`: a number whose working is known. */
function readMarked(state: StateInline, silent: boolean): boolean {
  const place = String((state.env as { place?: string } | undefined)?.place ?? "");
  let found: ReturnType<typeof markerAt>;
  try {
    found = markerAt(state.src, state.pos);
  } catch (error) {
    throw new ReportError(place, error instanceof Error ? error.message : String(error));
  }
  if (found === undefined || state.pos + found.length > state.posMax) return false;
  if (!silent) {
    const token = state.push("worked", "", 0);
    token.content = found.marked.text;
    token.meta = { name: found.marked.name };
  }
  state.pos += found.length;
  return true;
}

markdown.inline.ruler.before("link", "worked", readMarked);
markdown.renderer.rules.worked = (tokens, index, _options, env) => {
  const { content = "", meta } = tokens[index] ?? {};
  const { place, numbers } = (env ?? {}) as Partial<ProsePlace>;
  return (numbers?.mark(String(meta?.name), content, place) ?? html`${unparted(content)}`).text;
};

/** Gives headings ids; lower levels than a section keep their order below it. */
function nameHeadings(tokens: readonly Token[], ids: PageIds): void {
  tokens.forEach((token, index) => {
    if (token.type === "heading_open" && Number(token.tag.slice(1)) > 2) {
      token.attrSet("id", ids.take(plainText(tokens[index + 1]?.children ?? null)));
    }
  });
}

/**
 * Markdown as HTML, raw HTML shown as text.
 *
 * @param source  markdown with `$...$` and `$$...$$` formulas
 * @param at  place for messages, ids for headings
 * @returns markup of blocks
 * @throws ReportError when a formula is broken or a picture is asked for
 * Example: markdownBlocks("**86 N**", { place: "a.ipynb", ids: new PageIds() })
 */
export function markdownBlocks(source: string, at: ProsePlace): Markup {
  const env = { place: at.place, numbers: at.numbers };
  const tokens = markdown.parse(source, env);
  nameHeadings(tokens, at.ids);
  return new Markup(markdown.renderer.render(tokens, markdown.options, env));
}

/** One line of markdown as HTML, without a paragraph around it. */
export function markdownLine(source: string, at: Pick<ProsePlace, "place">): Markup {
  return new Markup(markdown.renderInline(source.trim(), { place: at.place }));
}

/** One line of markdown as plain text. */
export function markdownText(source: string): string {
  return plainText(markdown.parseInline(source.trim(), {}));
}

/**
 * A prose cell cut at its headings of the first and second level.
 *
 * @param source  markdown of the cell
 * @param at  place for messages, ids for lower headings
 * @returns the parts in order; the first has no heading when prose comes before any
 * @throws ReportError as in markdownBlocks
 * Example: markdownParts("## Why\nFriction.", at)[0]?.heading?.text → "Why"
 */
export function markdownParts(source: string, at: ProsePlace): ProsePart[] {
  const env = { place: at.place, numbers: at.numbers };
  const tokens = markdown.parse(source, env);
  nameHeadings(tokens, at.ids);
  const render = (some: Token[]) => new Markup(markdown.renderer.render(some, markdown.options, env));
  const cuts = tokens.flatMap((token, index) =>
    token.type === "heading_open" && token.level === 0 && (token.tag === "h1" || token.tag === "h2") ? [index] : [],
  );
  const parts: ProsePart[] = [];
  if (cuts[0] !== 0 && tokens.length > 0) parts.push({ body: render(tokens.slice(0, cuts[0])) });
  cuts.forEach((cut, index) => {
    const line = tokens[cut + 1];
    const heading = {
      level: tokens[cut]?.tag === "h1" ? (1 as const) : (2 as const),
      markup: new Markup(markdown.renderInline(line?.content ?? "", { place: at.place })),
      text: plainText(line?.children ?? null).trim(),
    };
    parts.push({ heading, body: render(tokens.slice(cut + 3, cuts[index + 1])) });
  });
  return parts;
}
