/**
 * Solves a square system in place by elimination with row exchange, for several right sides at once.
 *
 *     A · X = B
 *
 * @param size  number of equations, 1 or more
 * @param matrix  A, row after row, size × size; overwritten
 * @param sides  B, row after row, size × count; overwritten with X
 * @returns false when the system has no single solution (the contents are then without meaning)
 * Example: solveLinear(1, Float64Array.of(2), Float64Array.of(8)) → true
 */
export function solveLinear(size: number, matrix: Float64Array, sides: Float64Array): boolean {
  const count = sides.length / size;
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let row = column + 1; row < size; row++) {
      if (Math.abs(matrix[row * size + column]!) > Math.abs(matrix[pivot * size + column]!)) pivot = row;
    }
    const head = matrix[pivot * size + column]!;
    if (!(Math.abs(head) > 1e-12)) return false;
    if (pivot !== column) {
      swapRows(matrix, size, pivot, column);
      swapRows(sides, count, pivot, column);
    }
    for (let row = 0; row < size; row++) {
      const factor = row === column ? 0 : matrix[row * size + column]! / head;
      if (factor === 0) continue;
      for (let k = column; k < size; k++) matrix[row * size + k]! -= factor * matrix[column * size + k]!;
      for (let k = 0; k < count; k++) sides[row * count + k]! -= factor * sides[column * count + k]!;
    }
  }
  for (let row = 0; row < size; row++) {
    for (let k = 0; k < count; k++) sides[row * count + k]! /= matrix[row * size + row]!;
  }
  return true;
}

function swapRows(values: Float64Array, width: number, first: number, second: number): void {
  for (let k = 0; k < width; k++) {
    const kept = values[first * width + k]!;
    values[first * width + k] = values[second * width + k]!;
    values[second * width + k] = kept;
  }
}
