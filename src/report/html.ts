import { escapeHtml } from "../notebook/escape.js";

/** HTML that is safe to put on a page as it stands. */
export class Markup {
  readonly text: string;

  constructor(text: string) {
    this.text = text;
  }
}

/** What a template may hold: markup stays, anything else is escaped, nothing is left out but `undefined` and `false`. */
export type Content = Markup | string | number | undefined | false | readonly Content[];

function textOf(content: Content): string {
  if (content === undefined || content === false) return "";
  if (content instanceof Markup) return content.text;
  if (typeof content === "object") return content.map(textOf).join("");
  return escapeHtml(String(content));
}

/**
 * Template tag for HTML: every value is escaped unless it is markup already.
 *
 * @param parts  the literal HTML
 * @param values  text, numbers, markup, or lists of them; attributes belong in double quotes
 * @returns markup
 * Example: html`<p>${"a < b"}</p>`.text → "<p>a &lt; b</p>"
 */
export function html(parts: TemplateStringsArray, ...values: readonly Content[]): Markup {
  return new Markup(parts.map((part, index) => part + textOf(values[index])).join(""));
}

/** Text between tags, where quotes and the sign for more stay as they are: code is full of them. */
export function textOnly(text: string): Markup {
  return new Markup(text.replaceAll("&", "&amp;").replaceAll("<", "&lt;"));
}

/**
 * Data as JSON that can stand inside a script element: no character in it can end the element or a line of script.
 *
 * @param value  any value that JSON can carry
 * @returns markup
 * Example: jsonForScript("</script>").text → "\"\\u003c/script>\""
 */
export function jsonForScript(value: unknown): Markup {
  return new Markup(
    JSON.stringify(value).replaceAll("<", "\\u003c").replaceAll("\u2028", "\\u2028").replaceAll("\u2029", "\\u2029"),
  );
}

/**
 * Script source that can stand inside a script element: sequences that HTML would read are written with an escape,
 * which means the same inside strings and regular expressions.
 *
 * @param source  JavaScript in which such sequences stand only inside strings, templates and regular expressions
 * @returns source
 * Example: scriptForPage("'</script>'") → "'\\x3c/script>'"
 */
export function scriptForPage(source: string): string {
  return source.replace(/<(?=!--|\/?script)/giu, "\\x3c");
}
