/** Control characters but the line end, marks that turn the direction of writing, and ends of lines that terminals do not take for such. */
const unseen = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu;

/**
 * Text that somebody else may have written, as a terminal may show it: what could move its cursor, colour it or turn its writing
 * stands as a code instead.
 *
 * @param text  anything that is printed
 * @returns the same text, without a sign that a terminal acts upon; lines stay lines, joiners inside numbers stay
 * Example: shownText("a\u001b[2Jb") → "a\\u001b[2Jb"
 */
export function shownText(text: string): string {
  return text.replaceAll(unseen, (sign) =>
    ours.has(sign) ? sign : `\\u${sign.codePointAt(0)!.toString(16).padStart(4, "0")}`,
  );
}

/** Ends of lines, tabs, and what keeps the two ends of a range on one line: our own texts have them. */
const ours: ReadonlySet<string> = new Set(["\n", "\t", "\u2060"]);
