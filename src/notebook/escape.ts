const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/**
 * Text as it may stand in HTML, between tags or in a quoted attribute.
 *
 * @param text  any text
 * @returns the same text with the signs of HTML spelled out
 * Example: escapeHtml("a < b") → "a &lt; b"
 */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/gu, (character) => entities[character] ?? character);
}
