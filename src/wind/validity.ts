import { OutsideModelError, ValueError } from "../quantity/errors.js";
import { withUnit } from "../quantity/guard.js";

/** A number, and the range over which a model may be used. */
export interface ValidityRange {
  /** What the number is, in words. */
  readonly quantity: string;
  readonly value: number;
  /** SI unit; "1" for a pure number. */
  readonly unit: string;
  readonly minimum: number;
  readonly maximum: number;
  /** The model that sets the range, and what to do outside it. */
  readonly advice: string;
}

/**
 * Returns the value when the model may be used there, and refuses it loudly otherwise.
 *
 *     minimum ≤ value ≤ maximum
 *
 * @param quantity  what the number is, in words
 * @param value     number [unit]
 * @param unit      SI unit; "1" for a pure number
 * @param minimum   least value of the model [unit]
 * @param maximum   largest value of the model [unit]
 * @param advice    the model that sets the range, and what to do
 * @returns the value itself [unit]
 * @throws ValueError when the value is not finite, OutsideModelError when it lies outside the range
 * Example: insideModel({ quantity: "gust duration", value: 3, unit: "s", minimum: 1, maximum: 3600, advice: "" }) → 3
 */
export function insideModel({ quantity, value, unit, minimum, maximum, advice }: ValidityRange): number {
  if (value >= minimum && value <= maximum) return value;
  const allowed = `${withUnit(minimum, unit)} to ${withUnit(maximum, unit)}`;
  const detail = { quantity, value: withUnit(value, unit), allowed, advice };
  throw Number.isFinite(value) ? new OutsideModelError(detail) : new ValueError(detail);
}
