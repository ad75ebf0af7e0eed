/**
 * Quantiles of many values, exact: the values are put in order only as far as needed.
 *
 *     q(p) = x_(k) + (h − k) · (x_(k+1) − x_(k)),   h = p · (n − 1),   k = ⌊h⌋
 *
 * @param values  numbers, at least one; their order is changed
 * @param shares  probabilities from small to large [-], each 0 to 1
 * @param into  takes the quantiles, as many as shares
 * Example: (() => { const into = new Float64Array(1); quantilesInPlace(Float64Array.of(3, 1, 2), [0.5], into); return into[0]; })() → 2
 */
export function quantilesInPlace(values: Float64Array, shares: readonly number[], into: Float64Array): void {
  const last = values.length - 1;
  let from = 0;
  for (let index = 0; index < shares.length; index++) {
    const h = shares[index]! * last;
    const k = Math.floor(h);
    select(values, k, from, last);
    const lower = values[k]!;
    from = k;
    if (h === k || k === last) {
      into[index] = lower;
      continue;
    }
    let upper = values[k + 1]!;
    for (let i = k + 2; i <= last; i++) if (values[i]! < upper) upper = values[i]!;
    into[index] = lower + (h - k) * (upper - lower);
  }
}

/** Puts the value of rank k in its place between the given ends, smaller ones before it, larger ones after it. */
function select(values: Float64Array, k: number, from: number, to: number): void {
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
      select(values, k, low, high);
    }
    const pivot = values[k]!;
    let i = left;
    let j = right;
    swap(values, left, k);
    if (values[right]! > pivot) swap(values, right, left);
    while (i < j) {
      swap(values, i, j);
      i++;
      j--;
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
    }
    if (values[left] === pivot) {
      swap(values, left, j);
    } else {
      j++;
      swap(values, j, right);
    }
    if (j <= k) left = j + 1;
    if (k <= j) right = j - 1;
  }
}

function swap(values: Float64Array, i: number, j: number): void {
  const kept = values[i]!;
  values[i] = values[j]!;
  values[j] = kept;
}
