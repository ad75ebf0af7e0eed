import { ValueError } from "../quantity/errors.js";

/** Beyond this many deviations the tail is worked out by a continued fraction. */
const tailFrom = 3;
const tailTerms = 80;
const halvings = 60;

/**
 * Share of a normal distribution that lies below a number of deviations from its middle.
 *
 *     Φ(z) = 1/2 + φ(z)·(z + z³/3 + z⁵/(3·5) + …),   in the tails Φ(−z) = φ(z)/(z + 1/(z + 2/(z + …)))
 *
 * @param z  deviations from the middle [-], any number
 * @returns share below [-], 0 to 1
 * Source: common practice, series and continued fraction of the textbooks.
 * Example: normalShare(1) → 0.841345
 */
export function normalShare(z: number): number {
  if (Number.isNaN(z)) return z;
  if (z > tailFrom) return 1 - lowerTail(z);
  if (z < -tailFrom) return lowerTail(-z);
  let term = z;
  let sum = z;
  for (let n = 3; Math.abs(term) > 1e-17 * Math.abs(sum); n += 2) {
    term *= (z * z) / n;
    sum += term;
  }
  return 0.5 + density(z) * sum;
}

function density(z: number): number {
  return Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
}

function lowerTail(z: number): number {
  if (z === Number.POSITIVE_INFINITY) return 0;
  let fraction = z;
  for (let n = tailTerms; n > 0; n--) fraction = z + n / fraction;
  return density(z) / fraction;
}

/**
 * Number of deviations below which a share of a normal distribution lies.
 *
 *     Φ(z) = share, solved by halving
 *
 * @param share  share below [-], above 0, below 1
 * @returns deviations from the middle [-]
 * @throws ValueError for a share that is not between 0 and 1
 * Source: common practice, normalShare solved back.
 * Example: normalQuantile(0.95) → 1.644854
 */
export function normalQuantile(share: number): number {
  if (!(share > 0 && share < 1)) {
    throw new ValueError({
      quantity: "share of a distribution",
      value: String(share),
      allowed: "above 0, below 1",
      advice: "No finite value has nothing, or everything, below it.",
    });
  }
  if (share > 0.5) return -normalQuantile(1 - share);
  let low = -40;
  let high = 0;
  for (let i = 0; i < halvings; i++) {
    const middle = 0.5 * (low + high);
    if (normalShare(middle) < share) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}
