import { ValueError } from "../quantity/errors.js";
import type { CheckResult, CheckRow } from "./row.js";

/**
 * Half of the last digit of a number as it is printed.
 *
 * @param printed  decimal number, such as `0.309` or `153552935`
 * @returns half a unit of the last printed digit, in the unit of the number
 * @throws ValueError when the text is not a plain decimal number
 * Example: halfLastDigit("0.309") → 0.0005
 */
export function halfLastDigit(printed: string): number {
  const match = /^-?\d+(?:\.(\d+))?$/u.exec(printed);
  if (!match) {
    throw new ValueError({
      quantity: "printed value",
      value: JSON.stringify(printed),
      allowed: "a plain decimal number",
      advice: "Write the digits as they are printed, such as 0.309.",
    });
  }
  return 0.5 * 10 ** -(match[1]?.length ?? 0);
}

/**
 * Compares a model with an expected value, within what the printed digits allow.
 *
 *     holds when |computed − expected| ≤ allowed
 *
 * @param row  expected value and model call, in the unit of the row
 * @returns the comparison, in the unit of the row
 * Example: compare({ printed: "1.41", compute: () => Math.SQRT2, ... }).holds → true
 */
export function compare(row: CheckRow): CheckResult {
  const expected = Number(row.printed);
  const allowed = row.readingError ?? halfLastDigit(row.printed);
  const computed = row.compute();
  const deviation = computed - expected;
  const rounding = 1e-12 * Math.max(1, Math.abs(expected));
  return {
    id: row.id,
    quantity: row.quantity,
    computed,
    expected,
    unit: row.unit,
    allowed,
    deviation,
    holds: Math.abs(deviation) <= allowed + rounding,
    evidence: row.evidence,
    status: row.status,
    source: row.source,
    place: row.place,
  };
}
