/**
 * Content that unfolds under a line of its own. Style sheets of notebook front ends take the mark of a fold away; it is put back,
 * so that a reader sees that there is more.
 *
 * @param line  HTML of what is always seen
 * @param content  HTML of what unfolds
 * @returns HTML
 */
export function foldHtml(line: string, content: string): string {
  return `<details><summary style="display: list-item">${line}</summary>${content}</details>`;
}
