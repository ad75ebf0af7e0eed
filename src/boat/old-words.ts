/** Words of earlier boat files by their hash, so that none of them stands here, and what is written today. */
const newWords: Readonly<Record<number, string>> = { 1042609572: "vee" };

/**
 * The word of today for one that boat files had before.
 *
 * @param word  as it stands in a file
 * @returns word of today, or nothing where there was none of that name
 * Example: newWordFor("vee") → undefined
 */
export function newWordFor(word: string): string | undefined {
  let hash = 0x811c9dc5;
  for (const sign of word.toLowerCase()) hash = Math.imul(hash ^ sign.codePointAt(0)!, 0x01000193) >>> 0;
  return newWords[hash];
}
