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
  const names = Object.keys(inputs) as Name[];
  const middle = Object.fromEntries(names.map((name) => [name, inputs[name].value])) as Record<Name, number>;
  const value = model(middle);
  const unsure = names.filter((name) => inputs[name].low !== inputs[name].high);
  const ends = unsure.map((name) => {
    const { low, high } = inputs[name];
    const results = [model({ ...middle, [name]: low }), model({ ...middle, [name]: high })];
    return { least: Math.min(value, ...results), most: Math.max(value, ...results) };
  });
  if (value > 0 && ends.every(({ least }) => least > 0)) {
    const shift = (end: (one: { least: number; most: number }) => number) =>
      Math.exp(Math.hypot(...ends.map((one) => Math.log(end(one) / value))));
    return { value, low: value / shift(({ least }) => least), high: value * shift(({ most }) => most) };
  }
  const shift = (end: (one: { least: number; most: number }) => number) =>
    Math.hypot(...ends.map((one) => end(one) - value));
  return { value, low: value - shift(({ least }) => least), high: value + shift(({ most }) => most) };
}
