import { normalDeviate } from "../numerics/normal-quantile.js";
import { quantilesInPlace } from "../numerics/order-statistics.js";
import { sobolPoints } from "../numerics/sobol-sequence.js";
import { ValueError } from "../quantity/errors.js";
import type { Band } from "../sources/band.js";
import { type Bounds, drawer } from "./distribution.js";
import { defaultSeed, type SampleOptions } from "./uncertain-input.js";

/** How a model is sampled. */
export interface SampledBandOptions<Name extends string> extends SampleOptions {
  /** What an input cannot go beyond, as `boundsOf` gives it. */
  readonly bounds?: Readonly<Partial<Record<Name, Bounds>>>;
  /** Whether the middle is the result at the middle of every input, in place of the median of the sample. */
  readonly ownMiddle?: boolean;
}

const ends = [0.05, 0.5, 0.95] as const;
const modelSamples = 1024;

/**
 * Range of a result from the ranges of what it is made of, by sampling: for models that bend or fold, and for many inputs.
 *
 *     median, 5th and 95th percentile of model(draws), one even point a draw
 *
 * @param inputs  named bands [SI]
 * @param model  the result [any unit] from one value of each input
 * @param options  samples [-], 1,024 when absent, seed [-], bounds of inputs [SI], and what stands in the middle
 * @returns median with its 90 % band [unit of the model]
 * @throws ValueError for bands out of order, or a result that is no finite number
 * Valid for inputs that do not depend on each other.
 * Source: common practice. Example: sampledBand({ a: { value: 2, low: 1, high: 4 } }, ({ a }) => 3 * a).value → 6
 */
export function sampledBand<Name extends string>(
  inputs: Readonly<Record<Name, Band>>,
  model: (values: Record<Name, number>) => number,
  options: SampledBandOptions<Name> = {},
): Band {
  return preparedSample(inputs, model, options)((result) => result);
}

/**
 * A sample whose draws are made ready once, to be asked for one result after the other.
 *
 * @param inputs  named bands [SI]
 * @param prepare  what is made of one value of each input, such as a line; it keeps no hold of the values
 * @param options  as for one band
 * @returns function from a result [any unit] of what is ready to its median with its 90 % band [unit of the result]
 */
export function preparedSample<Name extends string, Ready>(
  inputs: Readonly<Record<Name, Band>>,
  prepare: (values: Record<Name, number>) => Ready,
  { samples = modelSamples, seed = defaultSeed, bounds, ownMiddle = false }: SampledBandOptions<Name>,
): (result: (ready: Ready) => number) => Band {
  const names = Object.keys(inputs) as Name[];
  const draws = names.map((name) => drawer(inputs[name], bounds?.[name]));
  const columns = sobolPoints({ dimensions: Math.max(1, names.length), count: samples, seed });
  const values = {} as Record<Name, number>;
  const valuesAt = (i: number) => {
    for (let j = 0; j < names.length; j++) values[names[j]!] = draws[j]!(normalDeviate(columns[j]![i]!));
    return values;
  };
  const all = Array.from({ length: samples }, (_, i) => prepare(valuesAt(i)));
  for (const name of names) values[name] = inputs[name].value;
  const middle = ownMiddle ? [prepare(values)] : [];
  return (result) => {
    const results = Float64Array.from(all, result);
    const bad = results.findIndex((one) => !Number.isFinite(one));
    if (bad >= 0) throw notFinite(results[bad]!, valuesAt(bad));
    const found = new Float64Array(ends.length);
    quantilesInPlace(results, ends, found);
    const [own = found[1]!] = middle.map(result);
    return { low: found[0]!, value: own, high: found[2]! };
  };
}

function notFinite(result: number, values: Readonly<Record<string, number>>): ValueError {
  return new ValueError({
    quantity: "result of a model",
    value: `${result} at ${JSON.stringify(values)}`,
    allowed: "a finite number for every draw",
    advice: "Narrow the spread of the inputs to where the model holds.",
  });
}
