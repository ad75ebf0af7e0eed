import { type LeastSquares, weightedLeastSquares } from "../numerics/least-squares.js";
import { publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";

/** Fit of a polynomial without its first powers: `powers` 0 and 1 make a straight line. */
function polynomial(
  x: readonly number[],
  y: readonly number[],
  sigmas: readonly number[],
  powers: readonly number[],
): LeastSquares {
  const fit = weightedLeastSquares({
    columns: powers.map((power) => Float64Array.from(x, (value) => value ** power)),
    observed: Float64Array.from(y),
    sigmas: Float64Array.from(sigmas),
  });
  if (!fit) throw new Error("the printed points settle every unknown");
  return fit;
}

const error = ({ covariance }: LeastSquares, unknown: number) => Math.sqrt(covariance[unknown]?.[unknown] ?? 0);
const residualError = ({ sumOfSquares, degreesOfFreedom }: LeastSquares) => Math.sqrt(sumOfSquares / degreesOfFreedom);

/** One to six, with two columns of readings whose errors are known. */
const guides = [
  {
    name: "equal",
    y: [3.3, 5.6, 7.1, 9.3, 10.7, 12.1],
    sigmas: [0.5, 0.5, 0.5, 0.5, 0.5, 0.5],
    place: "§6.3, p. 13, equal weights",
    printed: ["1.867", "0.465", "1.757", "0.120", "-0.050", "1.665"],
  },
  {
    name: "unequal",
    y: [3.2, 4.3, 7.6, 8.6, 11.7, 12.8],
    sigmas: [0.5, 0.5, 0.5, 1, 1, 1],
    place: "§6.3, p. 15, unequal weights",
    printed: ["0.885", "0.530", "2.057", "0.178", "-0.082", "4.131"],
  },
] as const;

const guideRows = guides.flatMap(({ name, y, sigmas, place, printed }): CheckRow[] => {
  const line = () => polynomial([1, 2, 3, 4, 5, 6], y, sigmas, [0, 1]);
  const parts: readonly [id: string, words: string, of: () => number][] = [
    ["intercept", "intercept", () => line().values[0] ?? Number.NaN],
    ["intercept-error", "error of the intercept", () => error(line(), 0)],
    ["slope", "slope", () => line().values[1] ?? Number.NaN],
    ["slope-error", "error of the slope", () => error(line(), 1)],
    ["covariance", "covariance of both", () => line().covariance[0]?.[1] ?? Number.NaN],
    ["chi-squared", "weighted sum of squares", () => line().sumOfSquares],
  ];
  return parts.map(([id, words, of], index) =>
    publishedRow(
      "iso-28037",
      `${name}-${id}`,
      `weighted line, ${name} weights: ${words}`,
      printed[index] ?? "",
      "1",
      place,
      of,
    ),
  );
});

/** Calibration of an ozone monitor. */
const norris = {
  x: [
    0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5,
    11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1,
    448.9, 0.5,
  ],
  y: [
    0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8,
    557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2,
    0.2,
  ],
} as const;

/** Calibration of a load cell: deflection under 150 000 to 3 000 000, twice. */
const pontius = {
  x: Array.from({ length: 40 }, (_, index) => 150_000 * (1 + (index % 20))),
  y: [
    0.11019, 0.21956, 0.32949, 0.43899, 0.54803, 0.65694, 0.76562, 0.87487, 0.98292, 1.09146, 1.20001, 1.30822, 1.41599,
    1.52399, 1.63194, 1.73947, 1.84646, 1.95392, 2.06128, 2.16844, 0.11052, 0.22018, 0.32939, 0.43886, 0.54798, 0.65739,
    0.76596, 0.87474, 0.983, 1.0915, 1.20004, 1.30818, 1.41613, 1.52408, 1.63159, 1.73965, 1.84696, 1.95445, 2.06177,
    2.16829,
  ],
} as const;

const noIntercept = {
  x: [60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70],
  y: [130, 131, 132, 133, 134, 135, 136, 137, 138, 139, 140],
} as const;

const equal = (points: readonly number[]) => points.map(() => 1);
const norrisFit = () => polynomial(norris.x, norris.y, equal(norris.y), [0, 1]);
const pontiusFit = () => polynomial(pontius.x, pontius.y, equal(pontius.y), [0, 1, 2]);
const noInterceptFit = () => polynomial(noIntercept.x, noIntercept.y, equal(noIntercept.y), [1]);

/** Certified values: what follows E in print is the unit of the row. */
const certified: readonly (readonly [id: string, words: string, printed: string, power: number, of: () => number])[] = [
  ["norris-b0", "Norris, intercept", "-0.262323073774029", 0, () => norrisFit().values[0] ?? Number.NaN],
  ["norris-b1", "Norris, slope", "1.00211681802045", 0, () => norrisFit().values[1] ?? Number.NaN],
  ["norris-sd-b0", "Norris, error of the intercept", "0.232818234301152", 0, () => spreadOf(norrisFit(), 0)],
  ["norris-sd-b1", "Norris, error of the slope", "0.429796848199937", -3, () => spreadOf(norrisFit(), 1)],
  ["norris-residual", "Norris, residual deviation", "0.884796396144373", 0, () => residualError(norrisFit())],
  ["pontius-b0", "Pontius, constant", "0.673565789473684", -3, () => pontiusFit().values[0] ?? Number.NaN],
  ["pontius-b1", "Pontius, slope", "0.732059160401003", -6, () => pontiusFit().values[1] ?? Number.NaN],
  ["pontius-b2", "Pontius, square term", "-0.316081871345029", -14, () => pontiusFit().values[2] ?? Number.NaN],
  ["pontius-sd-b0", "Pontius, error of the constant", "0.107938612033077", -3, () => spreadOf(pontiusFit(), 0)],
  ["pontius-sd-b1", "Pontius, error of the slope", "0.157817399981659", -9, () => spreadOf(pontiusFit(), 1)],
  ["pontius-sd-b2", "Pontius, error of the square term", "0.486652849992036", -16, () => spreadOf(pontiusFit(), 2)],
  ["pontius-residual", "Pontius, residual deviation", "0.205177424076185", -3, () => residualError(pontiusFit())],
  ["noint1-b1", "NoInt1, slope", "2.07438016528926", 0, () => noInterceptFit().values[0] ?? Number.NaN],
  ["noint1-sd-b1", "NoInt1, error of the slope", "0.165289256198347", -1, () => spreadOf(noInterceptFit(), 0)],
  ["noint1-squares", "NoInt1, sum of squares", "127.272727272727", 0, () => noInterceptFit().sumOfSquares],
];

/** Error of an unknown where the scatter is not known beforehand: taken from the residuals. */
function spreadOf(fit: LeastSquares, unknown: number): number {
  return error(fit, unknown) * residualError(fit);
}

/** What a fit in double precision leaves of fifteen certified digits, in the unit of the row. */
const doublePrecision = 1e-12;

const certifiedRows = certified.map(([id, words, printed, power, of]): CheckRow => {
  const unit = power === 0 ? "1" : `1e${power}`;
  const place = "certified values, linear regression; computed in double precision, which keeps about twelve digits";
  const row = publishedRow("nist-strd", id, words, printed, unit, place, () => of() / 10 ** power);
  return { ...row, readingError: doublePrecision };
});

/** Weighted fits against printed ones. */
export const fitExamples: CheckSet = { topic: "calibration", rows: [...guideRows, ...certifiedRows] };
