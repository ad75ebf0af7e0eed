/** Widths of characters, in shares of the size of the text, of a wide sans serif: others take less. */
const groups: readonly (readonly [string, number])[] = [
  ["ijl'|I", 0.3],
  [" .,:;!ft()[]/-r", 0.41],
  ["cksvxyzJ", 0.58],
  ["mMWw%→↑↓=+", 0.95],
  ["ABCDEGHKNOQRSTUVXYZ", 0.72],
];
const usual = 0.64;

const widths = new Map(groups.flatMap(([characters, width]) => [...characters].map((one) => [one, width] as const)));

/** Width that a text may take [px] at a size [px]. */
export function textWidth(text: string, size: number): number {
  let sum = 0;
  for (const character of text) sum += widths.get(character) ?? usual;
  return sum * size;
}

/** A text in lines of at most so many pixels, broken at spaces and after hyphens; a longer word stands alone. */
export function wrapText(text: string, size: number, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.trim().split(/\s+/u)) {
    let between = " ";
    for (const part of word.split(/(?<=\p{L}-)(?=\p{L})/u)) {
      const last = lines.at(-1);
      const longer = `${last ?? ""}${between}${part}`;
      if (last !== undefined && textWidth(longer, size) <= most) lines[lines.length - 1] = longer;
      else lines.push(part);
      between = "";
    }
  }
  return lines;
}

/** How much wider strong text is. */
export const strongWidth = 1.13;

/** Width of the widest of some lines [px]. */
export function widestLine(lines: readonly string[], size: number): number {
  return Math.max(0, ...lines.map((line) => textWidth(line, size)));
}
