import { ValueError } from "../quantity/errors.js";

/**
 * Primitive polynomials (degree and inner coefficients) and first direction numbers, one line for each dimension after
 * the first.
 */
const directionTable: readonly (readonly [degree: number, inner: number, first: readonly number[]])[] = [
  [1, 0, [1]],
  [2, 1, [1, 3]],
  [3, 1, [1, 3, 1]],
  [3, 2, [1, 1, 1]],
  [4, 1, [1, 1, 3, 3]],
  [4, 4, [1, 3, 5, 13]],
  [5, 2, [1, 1, 5, 5, 17]],
  [5, 4, [1, 1, 5, 5, 5]],
  [5, 7, [1, 1, 7, 11, 19]],
  [5, 11, [1, 1, 5, 1, 1]],
  [5, 13, [1, 1, 1, 3, 11]],
  [5, 14, [1, 3, 5, 5, 31]],
  [6, 1, [1, 3, 3, 9, 7, 49]],
  [6, 13, [1, 1, 1, 15, 21, 21]],
  [6, 16, [1, 3, 1, 13, 27, 49]],
  [6, 19, [1, 1, 1, 15, 7, 5]],
  [6, 22, [1, 3, 1, 15, 13, 25]],
  [6, 25, [1, 1, 5, 5, 19, 61]],
  [7, 1, [1, 3, 7, 11, 23, 15, 103]],
  [7, 4, [1, 3, 7, 13, 13, 15, 69]],
  [7, 7, [1, 1, 3, 13, 7, 35, 63]],
  [7, 8, [1, 3, 5, 9, 1, 25, 53]],
  [7, 14, [1, 3, 1, 13, 9, 35, 107]],
];

const bits = 32;

/** Most dimensions that the sequence has. */
export const mostDimensions = directionTable.length + 1;

/** How many points of how many dimensions. */
export interface SobolInput {
  readonly dimensions: number;
  readonly count: number;
  /** Which digital shift: the same seed gives the same points. */
  readonly seed: number;
}

/**
 * Points that fill a cube evenly: Sobol's sequence, shifted digit by digit.
 *
 *     x_i = v_1 ⊕ v_2 ⊕ … over the binary digits of i in Gray code, ⊕ a random word of the seed for each dimension
 *
 * @param dimensions  1 to 24
 * @param count  points [-], 1 or more; most even for powers of two
 * @param seed  whole number [-], 0 or more
 * @returns a column for each dimension, values between 0 and 1, both left out
 * @throws ValueError for counts that are no whole numbers in range
 * Source: joe-kuo-2008, direction numbers. Example: sobolPoints({ dimensions: 2, count: 8, seed: 1 }).length → 2
 */
export function sobolPoints({ dimensions, count, seed }: SobolInput): Float64Array[] {
  whole("dimensions of a sample", dimensions, 1, mostDimensions);
  whole("number of samples", count, 1, 2 ** 26);
  whole("seed", seed, 0, 2 ** 32 - 1);
  return Array.from({ length: dimensions }, (_, dimension) => column(dimension, count, shiftOf(seed, dimension)));
}

/** Refuses what is no whole number within a range. */
export function whole(quantity: string, value: number, least: number, most: number): number {
  if (Number.isInteger(value) && value >= least && value <= most) return value;
  throw new ValueError({
    quantity,
    value: String(value),
    allowed: `a whole number from ${least} to ${most}`,
    advice: "Leave it out to take the default.",
  });
}

function column(dimension: number, count: number, shift: number): Float64Array {
  const directions = directionsOf(dimension);
  const values = new Float64Array(count);
  let word = shift;
  for (let i = 0; i < count; i++) {
    values[i] = ((word >>> 0) + 0.5) / 2 ** bits;
    word ^= directions[trailingOnes(i)]!;
  }
  return values;
}

function trailingOnes(i: number): number {
  return 31 - Math.clz32(~i & (i + 1));
}

function directionsOf(dimension: number): Int32Array {
  const directions = new Int32Array(bits);
  const row = directionTable[dimension - 1];
  if (row === undefined) {
    for (let k = 0; k < bits; k++) directions[k] = 1 << (bits - 1 - k);
    return directions;
  }
  const [degree, inner, first] = row;
  for (let k = 0; k < degree; k++) directions[k] = first[k]! << (bits - 1 - k);
  for (let k = degree; k < bits; k++) {
    let next = directions[k - degree]! ^ (directions[k - degree]! >>> degree);
    for (let j = 1; j < degree; j++) if ((inner >>> (degree - 1 - j)) & 1) next ^= directions[k - j]!;
    directions[k] = next;
  }
  return directions;
}

/** A well-mixed word of seed and dimension. */
function shiftOf(seed: number, dimension: number): number {
  let word = (seed ^ Math.imul(dimension + 1, 0x9e3779b1)) | 0;
  for (let turn = 0; turn < 2; turn++) {
    word = Math.imul(word ^ (word >>> 16), 0x7feb352d);
    word = Math.imul(word ^ (word >>> 15), 0x846ca68b);
    word ^= word >>> 16;
  }
  return word;
}
