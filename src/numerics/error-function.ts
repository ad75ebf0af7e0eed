const rootPi = Math.sqrt(Math.PI);

/** Below this the series converges fast, above it the continued fraction does. */
const branch = 2;

/**
 * Complementary error function without the factor exp(−x²), which would underflow or overflow.
 *
 *     exp(x²) · erfc(x)
 *
 * @param x  argument [-], −5 or more
 * @returns scaled value [-], about 1 / (x √π) for large x
 * Example: scaledErfc(0) → 1
 */
export function scaledErfc(x: number): number {
  if (x < branch) return Math.exp(x * x) * (1 - erf(x));
  let tail = x;
  for (let term = 60; term >= 1; term -= 1) tail = x + term / 2 / tail;
  return 1 / (rootPi * tail);
}

/**
 * Complementary error function.
 *
 *     erfc(x) = 2/√π · ∫ from x to ∞ of exp(−s²) ds
 *
 * @param x  argument [-]
 * @returns value between 0 and 2 [-]
 * Example: erfc(1) → 0.1573
 */
export function erfc(x: number): number {
  return x < branch ? 1 - erf(x) : Math.exp(-x * x) * scaledErfc(x);
}

/**
 * Integral of the complementary error function from x to infinity.
 *
 *     ierfc(x) = exp(−x²)/√π − x · erfc(x)
 *
 * @param x  argument [-], 0 or more
 * @returns value [-], 1/√π at 0
 * Example: integratedErfc(0) → 0.5642
 */
export function integratedErfc(x: number): number {
  return Math.exp(-x * x) * (1 / rootPi - x * scaledErfc(x));
}

/** Series whose terms all have one sign: nothing cancels. */
function erf(x: number): number {
  if (x < -5) return -1;
  let term = x;
  let sum = x;
  for (let n = 1; Math.abs(term) > 1e-17 * Math.abs(sum); n += 1) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / rootPi) * Math.exp(-x * x) * sum;
}
