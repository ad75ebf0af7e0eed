/** A middle value with the ends of its range: 5th and 95th percentile. A coefficient record is one. */
export interface Band {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Range of a result from the ranges of what it is made of.
 *
 *     each input goes to its ends alone; the shifts of the result are added in squares,
 *     of logarithms where the result keeps its sign above zero, otherwise as they are
 *
 * @param inputs  named bands [SI]
 * @param model  the result [any unit] from one value of each input
 * @returns the result at the middle values, with its range [unit of the model]
 * Valid for inputs that do not depend on each other and a result that does not fold back between their ends.
 * Example: bandOf({ a: { value: 2, low: 1, high: 4 } }, ({ a }) => 3 * a).high → 12
 */
export function bandOf<Name extends string>(
  inputs: Readonly<Record<Name, Band>>,
  model: (values: Record<Name, number>) => number,
): Band {
  return bandsOf(inputs, (values) => ({ result: model(values) })).result;
}

/**
 * Ranges of several results of one model, worked out together: each end of each input is tried once.
 *
 *     each result as by bandOf
 *
 * @param inputs  named bands [SI]
 * @param model  results by name [any unit] from one value of each input
 * @returns each result at the middle values, with its range [unit of the result]
 * Valid as bandOf. Example: bandsOf({ a: { value: 2, low: 1, high: 4 } }, ({ a }) => ({ twice: 2 * a, more: 3 * a })).more.high → 12
 */
export function bandsOf<Name extends string, Result extends string>(
  inputs: Readonly<Record<Name, Band>>,
  model: (values: Record<Name, number>) => Readonly<Record<Result, number>>,
): Record<Result, Band> {
  const names = Object.keys(inputs) as Name[];
  const middle = Object.fromEntries(names.map((name) => [name, inputs[name].value])) as Record<Name, number>;
  const values = model(middle);
  const at = (name: Name, end: number) => (end === middle[name] ? values : model({ ...middle, [name]: end }));
  const ends = names.map((name) => [at(name, inputs[name].low), at(name, inputs[name].high)] as const);
  const results = Object.keys(values) as Result[];
  const bands = results.map((result) => {
    const value = values[result];
    const reached = ends.map(([low, high]) => [low[result], high[result]] as const);
    return [result, bandFrom(value, reached)] as const;
  });
  return Object.fromEntries(bands) as Record<Result, Band>;
}

/** A result and what it becomes at the two ends of each input. */
function bandFrom(value: number, reached: readonly (readonly [number, number])[]): Band {
  const ends = reached.map((results) => ({ least: Math.min(value, ...results), most: Math.max(value, ...results) }));
  if (value > 0 && ends.every(({ least }) => least > 0)) {
    const shift = (end: (one: { least: number; most: number }) => number) =>
      Math.exp(Math.hypot(...ends.map((one) => Math.log(end(one) / value))));
    return { value, low: value / shift(({ least }) => least), high: value * shift(({ most }) => most) };
  }
  const shift = (end: (one: { least: number; most: number }) => number) =>
    Math.hypot(...ends.map((one) => end(one) - value));
  return { value, low: value - shift(({ least }) => least), high: value + shift(({ most }) => most) };
}
