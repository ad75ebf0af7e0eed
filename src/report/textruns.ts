import { Parser } from "htmlparser2";

/** An element around a text. */
interface OpenElement {
  readonly name: string;
  readonly classes: readonly string[];
  readonly id: string | undefined;
}

/** A stretch of text of a page, without a tag in it. */
export interface TextRun {
  /** As a reader sees it. */
  readonly text: string;
  /** Where it stands in the markup: from the first character to behind the last. */
  readonly start: number;
  readonly end: number;
  /** Elements around it, the outermost first. */
  readonly inside: readonly OpenElement[];
}

/**
 * The texts of a piece of HTML with the elements around them.
 *
 * @param markup  HTML
 * @returns runs in the order of the markup
 * Example: textRuns("<p>a <b>b</b></p>").map(({ text }) => text) → ["a ", "b"]
 */
export function textRuns(markup: string): TextRun[] {
  const runs: TextRun[] = [];
  const open: OpenElement[] = [];
  const parser = new Parser({
    onopentag: (name, { class: classes = "", id }) => {
      open.push({ name, classes: classes.split(/\s+/u), id });
    },
    onclosetag: () => {
      open.pop();
    },
    ontext: (text) => {
      runs.push({ text, start: parser.startIndex, end: parser.endIndex + 1, inside: [...open] });
    },
  });
  parser.end(markup);
  return runs;
}

/** Whether a text stands inside one of some elements, named as a style sheet would: `pre` or `.note`. */
export function standsIn({ inside }: TextRun, selectors: ReadonlySet<string>): boolean {
  return inside.some(({ name, classes }) => selectors.has(name) || classes.some((one) => selectors.has(`.${one}`)));
}
