/**
 * Quantiles of many values, exact: the values are put in order only as far as needed.
 *
 *     q(p) = the value of rank round(p · (n − 1)), counted from 0
 *
 * Values that are already nearly in order, as those of a neighbouring case are, take far less work: columns that are
 * given along are put in the same order, so that the next case can be filled from them.
 *
 * @param values  numbers, at least one; their order is changed
 * @param shares  probabilities from small to large [-], each 0 to 1
 * @param into  takes the quantiles, as many as shares
 * @param along  columns as long as the values, put in the same order
 * Example: (() => { const into = new Float64Array(1); quantilesInPlace(Float64Array.of(3, 1, 2), [0.5], into); return into[0]; })() → 2
 */
export function quantilesInPlace(
  values: Float64Array,
  shares: readonly number[],
  into: Float64Array,
  along: readonly Float64Array[] = [],
): void {
  const last = values.length - 1;
  let from = 0;
  for (let index = 0; index < shares.length; index++) {
    const k = Math.round(shares[index]! * last);
    if (k >= from) select(values, k, from, last, along);
    into[index] = values[k]!;
    from = k + 1;
  }
}

/** Puts the value of rank k in its place between the given ends, smaller ones before it, larger ones after it. */
function select(values: Float64Array, k: number, from: number, to: number, along: readonly Float64Array[]): void {
  let left = from;
  let right = to;
  while (right > left) {
    if (right - left > 600) {
      // A narrow window around the rank, found in a sample, makes the next pass throw most values away at once.
      const n = right - left + 1;
      const m = k - left + 1;
      const z = Math.log(n);
      const s = Math.exp((2 * z) / 3) / 2;
      const d = Math.sqrt((z * s * (n - s)) / n) / 2;
      const shift = m < n / 2 ? -d : d;
      const low = Math.max(left, Math.floor(k - (m * s) / n + shift));
      const high = Math.min(right, Math.floor(k + ((n - m) * s) / n + shift));
      select(values, k, low, high, along);
    }
    const pivot = values[k]!;
    let i = left;
    let j = right;
    swap(values, left, k, along);
    if (values[right]! > pivot) swap(values, right, left, along);
    while (i < j) {
      swap(values, i, j, along);
      i++;
      j--;
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
    }
    if (values[left] === pivot) {
      swap(values, left, j, along);
    } else {
      j++;
      swap(values, j, right, along);
    }
    if (j <= k) left = j + 1;
    if (k <= j) right = j - 1;
  }
}

function swap(values: Float64Array, i: number, j: number, along: readonly Float64Array[]): void {
  const kept = values[i]!;
  values[i] = values[j]!;
  values[j] = kept;
  for (let column = 0; column < along.length; column++) {
    const other = along[column]!;
    const beside = other[i]!;
    other[i] = other[j]!;
    other[j] = beside;
  }
}
