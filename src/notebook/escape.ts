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

const characters = new Map(Object.entries(entities).map(([character, entity]) => [entity, character]));

/**
 * Text behind what `escapeHtml` wrote.
 *
 * @param escaped  text with the signs of HTML spelled out
 * @returns the text itself
 * Example: plainText("a &lt; b") → "a < b"
 */
export function plainText(escaped: string): string {
  return escaped.includes("&") ? escaped.replace(/&[#\w]+;/gu, (entity) => characters.get(entity) ?? entity) : escaped;
}
