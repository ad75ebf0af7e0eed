import { ValueError } from "../quantity/errors.js";
import type { CheckResult, CheckRow } from "./row.js";

/** A printed number and half of its last digit. */
export interface Printed {
  readonly value: number;
  readonly halfDigit: number;
}

/**
 * Reads a number as it is printed, with half a unit of its last digit, or half a step of its fraction.
 *
 * @param printed  decimal number or mixed fraction, such as `0.309`, `153552935` or `9 1/7`
 * @returns value and half a digit, in the unit of the number
 * @throws ValueError when the text is neither
 * Example: readPrinted("0.309").halfDigit → 0.0005
 */
export function readPrinted(printed: string): Printed {
  const fraction = /^(\d+) (\d+)\/(\d+)$/u.exec(printed);
  if (fraction) {
    const [whole, over, under] = fraction.slice(1).map(Number) as [number, number, number];
    return { value: whole + over / under, halfDigit: 0.5 / under };
  }
  const match = /^-?\d+(?:\.(\d+))?$/u.exec(printed);
  if (!match) {
    throw new ValueError({
      quantity: "printed value",
      value: JSON.stringify(printed),
      allowed: "a plain decimal number or a mixed fraction",
      advice: "Write the digits as they are printed, such as 0.309 or 9 1/7.",
    });
  }
  return { value: Number(printed), halfDigit: 0.5 * 10 ** -(match[1]?.length ?? 0) };
}

/**
 * Compares a model with an expected value, within what the printed digits allow.
 *
 *     holds when |computed − expected| ≤ allowed
 *
 * @param row  expected value and model call, in the unit of the row
 * @returns the comparison, in the unit of the row
 * Example: compare({ id: "root", quantity: "root of two", printed: "1.41", unit: "1", compute: () => Math.SQRT2, evidence: "exact", status: "published", source: "statics", place: "arithmetic" }).holds → true
 */
export function compare(row: CheckRow): CheckResult {
  const { value: expected, halfDigit } = readPrinted(row.printed);
  const allowed = row.readingError ?? halfDigit;
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
    ...(row.source !== undefined && { source: row.source }),
    place: row.place,
  };
}
