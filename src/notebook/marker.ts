import { ValueError } from "../quantity/errors.js";

/** A number in a text whose working is known under a name. */
export interface MarkedNumber {
  readonly name: string;
  /** As printed. */
  readonly text: string;
}

const name = /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/u;
const inside = /^([a-z][a-z0-9-]*): +(\S(?:.*\S)?)$/u;
/** Double square brackets on one line, and whether an address follows, as behind the text of a link. */
const brackets = /^\[\[([^[\]\n]*)\]\](\(|\[(?!\[))?/u;

/**
 * Whether a working may be called so.
 *
 * @param text  a name
 * @returns true for lower case letters, digits and single hyphens
 * Example: isMarkerName("hold-18-kn") → true
 */
export function isMarkerName(text: string): boolean {
  return name.test(text);
}

/**
 * What stands between double square brackets at a place of a text.
 *
 * @param text  any text
 * @param at  place of the first bracket
 * @returns the marked number with the length of the whole mark; nothing when no pair of brackets begins there
 * @throws ValueError for brackets that hold something else
 * Example: markerAt("hold [[hold: 86 N]]", 5)?.marked.name → "hold"
 */
export function markerAt(
  text: string,
  at: number,
): { readonly marked: MarkedNumber; readonly length: number } | undefined {
  const found = text.startsWith("[[", at) ? brackets.exec(text.slice(at)) : null;
  if (found === null) return undefined;
  const [, content = "", address] = found;
  const whole = `[[${content}]]`;
  const [, called = "", number = ""] = inside.exec(content) ?? [];
  if (isMarkerName(called)) return { marked: { name: called, text: number }, length: whole.length };
  if (address !== undefined) return undefined;
  throw new ValueError({
    quantity: "marked number",
    value: `"${whole}"`,
    allowed: '"[[name: number]]", the name in lower case with hyphens',
    advice: 'Write it like "[[hold: 86 N]]"; in prose a backslash before the brackets keeps them as they are.',
  });
}

/**
 * A text cut at its marked numbers.
 *
 * @param text  any text
 * @returns texts and marked numbers, in order
 * @throws ValueError for double brackets that hold something else
 * Example: markedPieces("[[hold: 86 N]] now").length → 2
 */
export function markedPieces(text: string): (string | MarkedNumber)[] {
  const pieces: (string | MarkedNumber)[] = [];
  let plain = "";
  for (let at = 0; at < text.length; ) {
    const found = markerAt(text, at);
    if (found === undefined) {
      plain += text[at];
      at += 1;
      continue;
    }
    if (plain !== "") pieces.push(plain);
    plain = "";
    pieces.push(found.marked);
    at += found.length;
  }
  return plain === "" ? pieces : [...pieces, plain];
}

/**
 * A text without marks: its numbers stand as they are printed.
 *
 * @param text  any text
 * @returns the same text, names and brackets gone
 * @throws ValueError for double brackets that hold something else
 * Example: plainMarked("hold [[hold: 86 N]]") → "hold 86 N"
 */
export function plainMarked(text: string): string {
  return markedPieces(text)
    .map((piece) => (typeof piece === "string" ? piece : piece.text))
    .join("");
}
