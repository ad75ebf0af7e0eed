/** Where a sentence begins or ends in markup: behind its stop, or at the edge of a block. */
const edge = /[.!?](?=\s|<)|<\/?(?:p|li|t[dhr]|d[dt]|h\d|div|section|caption|figcaption|summary|button)\b/gu;

/**
 * The sentence around a place of a page, as a reader sees it.
 *
 * @param markup  HTML
 * @param at  place in it
 * @returns text without tags
 * Example: sentenceAt("<p>One. A <b>ring</b> slides. Two.</p>", 13).trim() → ". A ring slides"
 */
export function sentenceAt(markup: string, at: number): string {
  let start = 0;
  for (const { index } of markup.matchAll(edge)) {
    if (index >= at) return plain(markup.slice(start, index));
    start = index;
  }
  return plain(markup.slice(start));
}

function plain(markup: string): string {
  return markup.replaceAll(/<[^>]*>/gu, "");
}
