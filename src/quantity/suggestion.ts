/** Number of letters to add, drop or change to turn one word into the other. */
function distance(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let i = 1; i <= one.length; i++) {
    const next = [i];
    for (let j = 1; j <= other.length; j++) {
      const changed = (row[j - 1] ?? 0) + (one[i - 1] === other[j - 1] ? 0 : 1);
      next.push(Math.min(changed, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[other.length] ?? 0;
}

/**
 * The known word that someone probably meant.
 *
 * @param word  as typed
 * @param known  words that would have been right
 * @returns the nearest, when it is near enough to be a slip or begins the same way
 * Example: suggestion("how-hrad", ["how-hard", "light-air"]) → "how-hard"
 */
export function suggestion(word: string, known: readonly string[]): string | undefined {
  const ranked = known
    .map((name) => ({
      name,
      far: word.length > 2 && name.includes(word) ? 0 : distance(word.toLowerCase(), name.toLowerCase()),
    }))
    .sort((one, other) => one.far - other.far);
  const [nearest] = ranked;
  return nearest && nearest.far <= Math.max(2, Math.floor(nearest.name.length / 3)) ? nearest.name : undefined;
}
