import { ReevingError } from "../quantity/errors.js";

/** A count with the range that it must keep to. */
interface CountInput {
  readonly quantity: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
}

/**
 * Returns a count when it is a whole number in its range, and refuses it otherwise.
 *
 * @param value  count [-], from least to most [-]; the quantity names it in words
 * @returns the count itself [-]
 * @throws ReevingError for any other number
 */
export function whole({ quantity, value, least, most }: CountInput): number {
  if (Number.isInteger(value) && value >= least && value <= most) return value;
  throw new ReevingError({
    quantity,
    value: String(value),
    allowed: `a whole number from ${least} to ${most}`,
    advice: "Count again; a larger purchase is made of tackles in series.",
  });
}
