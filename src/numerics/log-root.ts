/** Where to seek, both above zero. */
export interface Between {
  readonly least: number;
  readonly most: number;
}

/**
 * Where a falling function of a positive number crosses zero, sought on the logarithm of the number.
 *
 * False position with halved weights: fast where the function is nearly straight over the logarithm.
 *
 * @param excess  function that falls as its argument grows [any unit]
 * @param between  least and most that are looked at [unit of the argument]
 * @returns the crossing, or the end nearer to it when there is none between [unit of the argument]
 * Example: logRoot((x) => Math.log(9 / x), { least: 0.1, most: 100 }) → 9
 */
export function logRoot(excess: (argument: number) => number, { least, most }: Between): number {
  let [low, high] = [Math.log(least), Math.log(most)];
  let [above, below] = [excess(least), excess(most)];
  if (above <= 0) return least;
  if (below >= 0) return most;
  for (let turn = 0; turn < 60; turn += 1) {
    const next = low + ((high - low) * above) / (above - below);
    const found = excess(Math.exp(next));
    if (Math.abs(found) < 1e-5) return Math.exp(next);
    if (found > 0) {
      [low, above] = [next, found];
      below /= 2;
    } else {
      [high, below] = [next, found];
      above /= 2;
    }
  }
  return Math.exp((low + high) / 2);
}
