import katex from "katex";
import type { MarkdownIt, StateBlock, StateInline } from "markdown-it";
import { ReportError } from "./errors.js";
import { Markup } from "./html.js";
import { lightMathml } from "./mathml.js";

/**
 * A formula as MathML, which browsers draw with their own fonts.
 *
 * @param formula  TeX
 * @param place  where it stands, for the message
 * @param display  on a line of its own
 * @returns markup
 * @throws ReportError when the formula cannot be read or asks for more than mathematics
 * Example: formulaHtml({ formula: "e^{\\mu\\theta}", place: "a.ipynb, cell 1", display: false })
 */
export function formulaHtml({ formula, place, display }: { formula: string; place: string; display: boolean }): Markup {
  const broken = (why: string) => new ReportError(place, `the formula "${formula}" cannot be set: ${why}`);
  try {
    const text = katex.renderToString(formula, {
      displayMode: display,
      output: "mathml",
      throwOnError: true,
      strict: "ignore",
      trust: ({ command }) => {
        throw broken(`${command} is not allowed on a page.`);
      },
    });
    return new Markup(lightMathml(text));
  } catch (error) {
    if (error instanceof ReportError) throw error;
    throw broken(error instanceof Error ? error.message : String(error));
  }
}

/** `$...$` in a line: no space inside the marks, no digit after the closing one, so that prices stay prices, and none across a code span. */
function readInline(state: StateInline, silent: boolean): boolean {
  if (state.src[state.pos] !== "$") return false;
  const start = state.pos + 1;
  if (/^[\s$]?$/u.test(state.src[start] ?? "")) return false;
  let end = start;
  while (end < state.posMax && state.src[end] !== "$") end += state.src[end] === "\\" ? 2 : 1;
  if (end >= state.posMax || /\s/u.test(state.src[end - 1] ?? "") || /\d/u.test(state.src[end + 1] ?? "")) return false;
  const content = state.src.slice(start, end);
  if (content.includes("`")) return false;
  if (!silent) state.push("formula", "", 0).content = content;
  state.pos = end + 1;
  return true;
}

/** `$$...$$` as a block of its own, over one line or several. */
function readBlock(state: StateBlock, startLine: number, endLine: number, silent: boolean): boolean {
  const lineText = (line: number) =>
    state.src.slice((state.bMarks[line] ?? 0) + (state.tShift[line] ?? 0), state.eMarks[line] ?? 0).trim();
  const first = lineText(startLine);
  if (!first.startsWith("$$")) return false;
  const lines = [first.slice(2)];
  let line = startLine;
  while (!lines[lines.length - 1]?.endsWith("$$")) {
    line += 1;
    if (line >= endLine) return false;
    lines.push(lineText(line));
  }
  if (silent) return true;
  const token = state.push("formula_block", "", 0);
  token.content = lines.join("\n").slice(0, -2).trim();
  token.block = true;
  token.map = [startLine, line + 1];
  state.line = line + 1;
  return true;
}

/** Adds formulas to a markdown reader; the place for messages is `env.place`. */
export function addFormulas(markdown: MarkdownIt): void {
  markdown.inline.ruler.after("escape", "formula", readInline);
  markdown.block.ruler.before("paragraph", "formula_block", readBlock, {
    alt: ["paragraph", "reference", "blockquote", "list"],
  });
  const render =
    (display: boolean) => (tokens: readonly { content: string }[], index: number, _: unknown, env: unknown) => {
      const formula = tokens[index]?.content ?? "";
      const place = String((env as { place?: string } | undefined)?.place ?? "");
      const math = formulaHtml({ formula, place, display }).text;
      return display ? `<div class="formula" tabindex="0">${math}</div>\n` : math;
    };
  markdown.renderer.rules.formula = render(false);
  markdown.renderer.rules.formula_block = render(true);
}
