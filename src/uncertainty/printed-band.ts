import { figures } from "../quantity/print.js";
import type { Band } from "../sources/band.js";

/**
 * A band for a cell of a table: middle, and the 90 % range in brackets.
 *
 * @param band  value, low and high [any unit]
 * @param digits  significant figures [-]; 2 when absent
 * @returns text such as `85 (70 to 105)`; the number alone where the band has no width
 * Example: printBand({ value: 84.6, low: 70.2, high: 104.9 }) → "85 (70 to 100)"
 */
export function printBand(band: Band, digits = 2): string {
  return joined(band, digits, digits);
}

/**
 * A middle value that is asked for precisely, with the 90 % range in brackets as coarse as it may be.
 *
 * @param band  value, low and high [any unit]
 * @param digits  significant figures of the middle [-]; 3 when absent
 * @returns text such as `84.6 (70 to 110)`; the number alone where the ends of the range print alike
 * Example: printWithRange({ value: 84.6, low: 70.2, high: 108.2 }) → "84.6 (70 to 110)"
 */
export function printWithRange(band: Band, digits = 3): string {
  return joined(band, digits, fittingDigits(band));
}

/**
 * The 90 % range alone: two figures, or three where two would leave out the middle or spoil the width.
 *
 * @param band  value, low and high [any unit]
 * @param digits  significant figures [-]; as many as fit when absent
 * @returns text such as `70 to 110`; a range without end says so
 * Example: printRange({ value: 84.6, low: 70.2, high: 108.2 }) → "70 to 110"
 */
export function printRange(band: Band, digits = fittingDigits(band)): string {
  return `${figures(band.low, digits)} to ${end(band.high, digits)}`;
}

/** A share of the width by which rounding may move an end [-]. */
const movedAtMost = 0.15;

/** Two figures, or three where two would leave out the middle or move an end by much of the width. */
function fittingDigits({ value, low, high }: Band): number {
  const [least, most] = [Number(low.toPrecision(2)), Number(high.toPrecision(2))];
  if (!Number.isFinite(high)) return 2;
  const moved = Math.max(Math.abs(least - low), Math.abs(most - high));
  return least <= value && value <= most && moved <= movedAtMost * (high - low) ? 2 : 3;
}

function joined({ value, low, high }: Band, digits: number, endDigits: number): string {
  const [least, most] = [figures(low, endDigits), end(high, endDigits)];
  return least === most ? figures(value, digits) : `${figures(value, digits)} (${least} to ${most})`;
}

function end(value: number, digits: number): string {
  return value === Number.POSITIVE_INFINITY ? "no end" : figures(value, digits);
}
