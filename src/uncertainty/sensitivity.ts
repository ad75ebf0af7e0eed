import { mostDimensions, sobolPoints, whole } from "../numerics/sobol-sequence.js";
import { ValueError } from "../quantity/errors.js";

/** An index with the size of its own sampling error. */
export interface SensitivityIndex {
  readonly value: number;
  /** Standard error of the value, from repeats with shifted points. */
  readonly error: number;
}

/** How much of the variance of a result comes from one input. */
export interface Sensitivity {
  /** Share that would go if this input alone were known: first order. */
  readonly first: SensitivityIndex;
  /** Share that would stay if all other inputs were known: total order, with all that it does together with others. */
  readonly total: SensitivityIndex;
}

/** A result of several inputs, each even between 0 and 1, for many cases at once. */
export interface SensitivityInput {
  readonly dimensions: number;
  /** Takes a column for each input and fills the results. */
  readonly model: (columns: readonly Float64Array[], results: Float64Array) => void;
  /** Points of each repeat; 1,024 when absent. Powers of two are the most even. */
  readonly samples?: number;
  /** Repeats with shifted points, 2 or more; 8 when absent. */
  readonly repeats?: number;
  /** 1 when absent. */
  readonly seed?: number;
}

/** Indices of all inputs, and the moments of the result. */
export interface SensitivityResult {
  readonly inputs: readonly Sensitivity[];
  /** [unit of the result] */
  readonly mean: number;
  /** [unit of the result, squared] */
  readonly variance: number;
}

/**
 * First-order and total variance-based sensitivity of a result to each of its inputs.
 *
 *     S_i = mean[f(B) · (f(A with B_i) − f(A))] / V,   S_Ti = mean[(f(A) − f(A with B_i))²] / 2V
 *
 * A and B are two even samples; the results are taken from their mean first. Each repeat shifts the points anew, and
 * their scatter gives the sampling error.
 *
 * @param dimensions  inputs [-], 1 to 12
 * @param model  result from columns of inputs
 * @param samples  points of each repeat [-], 2 or more
 * @param repeats  [-], 2 or more
 * @param seed  [-]
 * @returns indices [-] with their standard errors [-]; all 0 for a result that never changes
 * @throws ValueError for counts out of range, or a result that is no finite number
 * Valid for inputs that do not depend on each other.
 * Source: saltelli-2010, estimators of table 2 (b) and (f). Example: sensitivityOf({ dimensions: 1, model: ([x], y) => y.set(x) }).inputs[0].total.value → 1
 */
export function sensitivityOf(input: SensitivityInput): SensitivityResult {
  const { dimensions, model, samples = 1024, repeats = 8, seed = 1 } = input;
  whole("inputs of a sensitivity", dimensions, 1, mostDimensions / 2);
  whole("points of a sensitivity", samples, 2, 2 ** 24);
  whole("repeats of a sensitivity", repeats, 2, 1000);
  const buffers = { a: new Float64Array(samples), b: new Float64Array(samples), mixed: new Float64Array(samples) };
  const run = (columns: readonly Float64Array[], results: Float64Array) => {
    model(columns, results);
    for (const value of results) if (!Number.isFinite(value)) throw notFinite(value);
  };
  const all = Array.from({ length: repeats }, (_, repeat) => {
    const points = sobolPoints({ dimensions: 2 * dimensions, count: samples, seed: seed * 4096 + repeat });
    return oneRepeat(points.slice(0, dimensions), points.slice(dimensions), run, buffers);
  });
  const index = (values: readonly number[]): SensitivityIndex => {
    const value = meanOf(values);
    const spread = values.reduce((sum, one) => sum + (one - value) ** 2, 0) / (repeats - 1);
    return { value, error: Math.sqrt(spread / repeats) };
  };
  return {
    inputs: Array.from({ length: dimensions }, (_, i) => ({
      first: index(all.map(({ first }) => first[i]!)),
      total: index(all.map(({ total }) => total[i]!)),
    })),
    mean: meanOf(all.map(({ mean }) => mean)),
    variance: meanOf(all.map(({ variance }) => variance)),
  };
}

interface Buffers {
  readonly a: Float64Array;
  readonly b: Float64Array;
  readonly mixed: Float64Array;
}

function oneRepeat(
  first: readonly Float64Array[],
  second: readonly Float64Array[],
  run: (columns: readonly Float64Array[], results: Float64Array) => void,
  { a, b, mixed }: Buffers,
) {
  const n = a.length;
  run(first, a);
  run(second, b);
  let mean = 0;
  for (let k = 0; k < n; k++) mean += (a[k]! + b[k]!) / (2 * n);
  let variance = 0;
  for (let k = 0; k < n; k++) variance += ((a[k]! - mean) ** 2 + (b[k]! - mean) ** 2) / (2 * n);
  const shares = first.map((_, i) => {
    run(
      first.map((column, j) => (j === i ? second[j]! : column)),
      mixed,
    );
    let together = 0;
    let apart = 0;
    for (let k = 0; k < n; k++) {
      together += (b[k]! - mean) * (mixed[k]! - a[k]!);
      apart += (a[k]! - mixed[k]!) ** 2;
    }
    return variance === 0
      ? { first: 0, total: 0 }
      : { first: together / n / variance, total: apart / (2 * n) / variance };
  });
  return { mean, variance, first: shares.map((one) => one.first), total: shares.map((one) => one.total) };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function notFinite(value: number): ValueError {
  return new ValueError({
    quantity: "result of a model",
    value: String(value),
    allowed: "a finite number for every sample",
    advice: "Narrow the spread of the inputs to where the model holds.",
  });
}
