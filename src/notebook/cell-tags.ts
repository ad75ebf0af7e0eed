/** Jupyter's established cell tags that change a run or a page. */
export const cellTags = {
  /** The cell runs; neither its code nor what it puts out stands on the page. */
  remove: "remove-cell",
  /** The cell runs and shows its outputs; its code does not stand on the page. */
  removeCode: "remove-input",
  /** The cell must end with an error; what it wrote stands with its code. */
  raises: "raises-exception",
} as const;

/**
 * Tags of a cell, from its metadata.
 *
 * @param metadata  of the cell
 * @returns its tags; nothing where it has none
 */
export function tagsOf(metadata: unknown): readonly string[] | undefined {
  if (typeof metadata !== "object" || metadata === null) return undefined;
  const { tags } = metadata as { readonly tags?: unknown };
  if (!Array.isArray(tags)) return undefined;
  const texts = tags.filter((tag) => typeof tag === "string");
  return texts.length === 0 ? undefined : texts;
}
