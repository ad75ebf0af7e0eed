import { ValueError } from "./errors.js";
import { type QuantityName, vocabulary } from "./vocabulary.js";
import type { VocabularyEntry } from "./vocabulary-entry.js";

/** A number with its SI unit, as messages print it: `-0.006 m`, `NaN`. */
export function withUnit(value: number, unit: string): string {
  const digits = Number.isFinite(value) ? String(Number(value.toPrecision(6))) : String(value);
  return unit === "1" ? digits : `${digits} ${unit}`;
}

/**
 * Returns the value when it is a finite number inside the range, and refuses it loudly otherwise.
 *
 *     minimum ≤ value ≤ maximum
 *
 * @param name  quantity of the vocabulary: gives words, unit and example
 * @param value  number in the quantity's unit [SI]
 * @param minimum  least value [SI], by default the least that is physically possible
 * @param maximum  largest value [SI], by default the largest that is physically possible
 * @returns the value itself [SI]
 * @throws ValueError when the value is not finite or outside the range
 * Example: within("ropeDiameter", 0.006) → 0.006
 */
export function within(name: QuantityName, value: number, minimum?: number, maximum?: number): number {
  const entry: VocabularyEntry = vocabulary[name];
  const low = minimum ?? entry.minimum;
  const high = maximum ?? entry.maximum;
  if (typeof value === "number" && value >= low && value <= high) return value;
  throw new ValueError({
    quantity: `${entry.label} (${name})`,
    value: withUnit(value, entry.unit),
    allowed: `a finite number from ${withUnit(low, entry.unit)} to ${withUnit(high, entry.unit)}`,
    advice: `Give it in ${entry.unit === "1" ? "no unit" : entry.unit}, for example parseQuantity("${name}", "${entry.example}").`,
  });
}

/**
 * The same for one quantity that is looked at again and again: its range is looked up once.
 *
 * @param name  quantity of the vocabulary
 * @returns function that returns a value inside the range and refuses any other as `within` does [SI]
 * Example: guard("ropeDiameter")(0.006) → 0.006
 */
export function guard(name: QuantityName): (value: number) => number {
  const { minimum, maximum }: VocabularyEntry = vocabulary[name];
  return (value) => (typeof value === "number" && value >= minimum && value <= maximum ? value : within(name, value));
}
