import fc from "fast-check";

const steps = 1_000_000;

/** Numbers spread evenly over a range, ends included; plain doubles of the same range lie next to zero nearly always. */
export const evenly = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: steps }).map((step) => (step === steps ? max : min + ((max - min) * step) / steps));
