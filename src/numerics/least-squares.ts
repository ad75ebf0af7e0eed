/** A linear model and what was observed: each column holds the factors of one unknown. */
export interface LeastSquaresInput {
  readonly columns: readonly Float64Array[];
  readonly observed: Float64Array;
  /** Standard deviation of each observation, in its unit, above 0. */
  readonly sigmas: Float64Array;
}

/** Unknowns of a linear model with what is known about their errors. */
export interface LeastSquares {
  /** The unknowns, one a column. */
  readonly values: readonly number[];
  /** Covariance of the unknowns, for the standard deviations as given. */
  readonly covariance: readonly (readonly number[])[];
  /** Squares of (observed − model) / sigma, added. */
  readonly sumOfSquares: number;
  /** Observations less unknowns. */
  readonly degreesOfFreedom: number;
}

/**
 * Solves a linear model by weighted least squares, through reflections, which keep more digits than the normal equations.
 *
 *     minimise Σ ((y_i − Σ_j A_ij x_j) / σ_i)²,   covariance = (Aᵀ σ⁻² A)⁻¹
 *
 * @param columns  A, column after column [unit of y over unit of x]
 * @param observed  y [any unit]
 * @param sigmas  σ, one an observation [unit of y], above 0
 * @returns unknowns, covariance, sum of squares; nothing where the observations do not settle the unknowns
 * Valid for observations that do not depend on each other.
 * Source: iso-28037. Example: weightedLeastSquares({ columns: [Float64Array.of(1, 1, 1)], observed: Float64Array.of(1, 2, 6), sigmas: Float64Array.of(1, 1, 1) }).sumOfSquares → 14
 */
export function weightedLeastSquares({ columns, observed, sigmas }: LeastSquaresInput): LeastSquares | undefined {
  const rows = observed.length;
  const size = columns.length;
  if (rows < size) return undefined;
  const scaled = columns.map((column) => column.map((factor, row) => factor / sigmas[row]!));
  const side = observed.map((value, row) => value / sigmas[row]!);
  const lengths = scaled.map((column) => Math.sqrt(dot(column, column, 0)));
  for (const [index, column] of scaled.entries()) {
    if (!reflect(column, index, lengths[index]!, [...scaled.slice(index + 1), side])) return undefined;
  }
  const upper = (row: number, column: number) => scaled[column]![row]!;
  const values = backSubstitute(size, upper, side);
  const inverse = Array.from({ length: size }, (_, column) =>
    backSubstitute(
      size,
      upper,
      Float64Array.from({ length: size }, (_, row) => (row === column ? 1 : 0)),
    ),
  );
  const covariance = values.map((_, one) =>
    values.map((_, other) => inverse.reduce((sum, column) => sum + column[one]! * column[other]!, 0)),
  );
  return { values, covariance, sumOfSquares: dot(side, side, size), degreesOfFreedom: rows - size };
}

/** Turns the column into a multiple of the axis `index`, and the others with it; false when nothing of it is left. */
function reflect(column: Float64Array, index: number, whole: number, others: readonly Float64Array[]): boolean {
  const length = Math.sqrt(dot(column, column, index));
  if (!(length > 1e-13 * whole)) return false;
  const head = column[index]! > 0 ? -length : length;
  const mirror = column.slice(index);
  mirror[0]! -= head;
  const square = dot(mirror, mirror, 0);
  for (const other of others) {
    let along = 0;
    for (let k = 0; k < mirror.length; k++) along += mirror[k]! * other[index + k]!;
    const factor = (2 * along) / square;
    for (let k = 0; k < mirror.length; k++) other[index + k]! -= factor * mirror[k]!;
  }
  column[index] = head;
  return true;
}

function dot(one: Float64Array, other: Float64Array, from: number): number {
  let sum = 0;
  for (let k = from; k < one.length; k++) sum += one[k]! * other[k]!;
  return sum;
}

function backSubstitute(size: number, upper: (row: number, column: number) => number, side: Float64Array): number[] {
  const values = new Array<number>(size).fill(0);
  for (let row = size - 1; row >= 0; row--) {
    let rest = side[row]!;
    for (let column = row + 1; column < size; column++) rest -= upper(row, column) * values[column]!;
    values[row] = rest / upper(row, row);
  }
  return values;
}
