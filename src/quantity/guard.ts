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
  if (typeof value === "number" && value >= low && value <= high && !wholeDegrees(entry, value)) return value;
  const hint = degreesHint(entry, value, high);
  throw new ValueError({
    quantity: `${entry.label} (${name})`,
    value: withUnit(value, entry.unit),
    allowed: `a finite number from ${withUnit(low, entry.unit)} to ${withUnit(high, entry.unit)}`,
    advice: `${hint}Give it in ${entry.unit === "1" ? "no unit" : entry.unit}, for example parseQuantity("${name}", "${entry.example}").`,
  });
}

const wholeTurn = 2 * Math.PI;
/** Above this, a wrap in whole fives is what somebody writes who thinks in degrees [rad]. */
const leastWholeDegrees = 20;

/** Whether an angle that may be several turns was given in degrees: 30, 45, 60 are no wraps that anybody measures in radians. */
function wholeDegrees({ unit, maximum }: VocabularyEntry, value: number): boolean {
  return unit === "rad" && maximum > wholeTurn && value > leastWholeDegrees && value % 5 === 0;
}

/** What to say to an angle beyond its range that would lie in it as degrees. */
function degreesHint(entry: VocabularyEntry, value: number, high: number): string {
  const radians = (value * Math.PI) / 180;
  const degrees = entry.unit === "rad" && radians <= high && (value > high || wholeDegrees(entry, value));
  return degrees ? `It looks like degrees: ${withUnit(value, "deg")} is ${Number(radians.toPrecision(4))} rad. ` : "";
}

/**
 * The same for one quantity that is looked at again and again: its range is looked up once.
 *
 * @param name  quantity of the vocabulary
 * @returns function that returns a value inside the range and refuses any other as `within` does [SI]
 * Example: guard("ropeDiameter")(0.006) → 0.006
 */
export function guard(name: QuantityName): (value: number) => number {
  const entry: VocabularyEntry = vocabulary[name];
  const { minimum, maximum } = entry;
  return (value) =>
    typeof value === "number" && value >= minimum && value <= maximum && !wholeDegrees(entry, value)
      ? value
      : within(name, value);
}
