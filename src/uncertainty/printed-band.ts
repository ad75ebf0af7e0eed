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
export function printBand({ value, low, high }: Band, digits = 2): string {
  const [middle, least, most] = [value, low, high].map((one) => figures(one, digits));
  return least === most ? middle! : `${middle} (${least} to ${most})`;
}
