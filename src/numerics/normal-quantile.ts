import { erfc } from "./error-function.js";

/** Distance of the 95th percentile of a normal distribution from its middle, in standard deviations. */
export const ninetyFifth = 1.6448536269514722;

/**
 * Number below which a standard normal variable falls with a given probability.
 *
 *     Φ(z) = p, from a rational start with one step of Halley
 *
 * @param p  probability [-], above 0 and below 1
 * @returns z [standard deviations]; NaN outside
 * Example: normalQuantile(0.95) → 1.6449
 */
export function normalQuantile(p: number): number {
  if (p > 0.5) return -normalQuantile(1 - p);
  const start = normalDeviate(p);
  const excess = erfc(-start / Math.SQRT2) / 2 - p;
  const step = excess * Math.sqrt(2 * Math.PI) * Math.exp((start * start) / 2);
  return start - step / (1 + (start * step) / 2);
}

/**
 * The same to nine digits and several times as fast: for samples.
 *
 * @param p  probability [-], above 0 and below 1
 * @returns z [standard deviations], within 1.2e-9 of itself; NaN outside
 * Example: normalDeviate(0.05) → -1.6449
 */
export function normalDeviate(p: number): number {
  if (!(p > 0 && p < 1)) return Number.NaN;
  if (p < 0.02425) return tail(Math.sqrt(-2 * Math.log(p)));
  return p > 0.97575 ? -tail(Math.sqrt(-2 * Math.log1p(-p))) : centre(p - 0.5);
}

function tail(q: number): number {
  const over =
    ((((-7.784894002430293e-3 * q - 0.3223964580411365) * q - 2.400758277161838) * q - 2.549732539343734) * q +
      4.374664141464968) *
      q +
    2.938163982698783;
  const under =
    (((7.784695709041462e-3 * q + 0.3224671290700398) * q + 2.445134137142996) * q + 3.754408661907416) * q + 1;
  return over / under;
}

function centre(q: number): number {
  const r = q * q;
  const over =
    (((((-39.69683028665376 * r + 220.9460984245205) * r - 275.9285104469687) * r + 138.357751867269) * r -
      30.66479806614716) *
      r +
      2.506628277459239) *
    q;
  const under =
    ((((-54.47609879822406 * r + 161.5858368580409) * r - 155.6989798598866) * r + 66.80131188771972) * r -
      13.28068155288572) *
      r +
    1;
  return over / under;
}
