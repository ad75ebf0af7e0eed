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
  const trials = trialsOf(inputs, model);
  const results = Object.keys(trials.middle) as Result[];
  return Object.fromEntries(results.map((result) => [result, bandOfTrials(trials, (one) => one[result])])) as Record<
    Result,
    Band
  >;
}

/** What a model makes of the middle values, and of each input at its low and at its high end. */
export interface Trials<Made> {
  readonly middle: Made;
  readonly ends: readonly (readonly [Made, Made])[];
}

/**
 * What a model makes of the middle values and of each end of each input: kept where several results are wanted one after the other.
 *
 * @param inputs  named bands [SI]
 * @param make  what is made of one value of each input
 * @returns what it made, for `bandOfTrials`
 * Example: trialsOf({ a: { value: 2, low: 1, high: 4 } }, ({ a }) => 3 * a).ends → [[3, 12]]
 */
export function trialsOf<Name extends string, Made>(
  inputs: Readonly<Record<Name, Band>>,
  make: (values: Record<Name, number>) => Made,
): Trials<Made> {
  const names = Object.keys(inputs) as Name[];
  const values = Object.fromEntries(names.map((name) => [name, inputs[name].value])) as Record<Name, number>;
  const middle = make(values);
  const at = (name: Name, end: number) => (end === values[name] ? middle : make({ ...values, [name]: end }));
  return { middle, ends: names.map((name) => [at(name, inputs[name].low), at(name, inputs[name].high)] as const) };
}

/**
 * Range of a result that follows from what was made at each end.
 *
 *     as by bandOf
 *
 * @param trials  from `trialsOf`
 * @param resultOf  the result [any unit] from what was made
 * @returns the result with its range [unit of the result]
 * Valid as bandOf. Example: bandOfTrials(trialsOf({ a: { value: 2, low: 1, high: 4 } }, ({ a }) => a), (a) => 3 * a).high → 12
 */
export function bandOfTrials<Made>({ middle, ends }: Trials<Made>, resultOf: (made: Made) => number): Band {
  const value = resultOf(middle);
  const at = (made: Made) => (made === middle ? value : resultOf(made));
  return bandFrom(
    value,
    ends.map(([low, high]) => [at(low), at(high)] as const),
  );
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
