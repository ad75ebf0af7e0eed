import { type TextLine, textWidth } from "./shapes.js";

/** A number and its unit stay together: this stands for the space between them while lines are broken. */
const bond = "\u2060";

/**
 * Breaks a text into lines that are not wider than the room for them: at spaces, and inside words only where one is too wide.
 *
 * @param line  text with its look
 * @param room  [px]
 * @returns lines with the same look
 */
export function wrapped(line: TextLine, room: number): TextLine[] {
  const fits = (text: string) => textWidth({ ...line, text: text.replaceAll(bond, " ") }) <= room;
  const lines: string[] = [];
  const words = line.text
    .replaceAll(/(?<=\d) (?=N\b|m\b|kgf)/gu, bond)
    .trim()
    .split(/\s+/u);
  for (const word of words.flatMap((one) => pieces(one, fits))) {
    const longer = `${lines.at(-1) ?? ""} ${word}`;
    if (lines.length > 0 && fits(longer)) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines.map((text) => ({ ...line, text: text.replaceAll(bond, "\u00a0") }));
}

/** A word cut where it does not fit into a line. */
function pieces(word: string, fits: (text: string) => boolean): string[] {
  if (fits(word)) return [word];
  const cut: string[] = [""];
  for (const character of word) {
    const longer = cut.at(-1)! + character;
    if (cut.at(-1) !== "" && !fits(longer)) cut.push(character);
    else cut[cut.length - 1] = longer;
  }
  return cut;
}

/** The first lines; the last of them ends in an ellipsis where more were cut off. */
export function firstLines(lines: readonly TextLine[], most: number): TextLine[] {
  if (lines.length <= most) return [...lines];
  const last = lines[most - 1]!;
  return [...lines.slice(0, most - 1), { ...last, text: `${Array.from(last.text).slice(0, -1).join("")}…` }];
}
