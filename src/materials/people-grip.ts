import { standardGravity } from "../quantity/constants.js";
import type { SourceId } from "../sources/bibliography.js";
import { coefficient } from "../sources/coefficient.js";

/** Whose hand. */
export type Sex = "women" | "men";

/** Which hand. */
export type Hand = "right" | "left";

/** Pound-force [N], exact by definition. */
const poundForce = 0.45359237 * standardGravity;

/** Mean and standard deviation of each age group, as printed. */
type Groups = readonly (readonly [mean: number, deviation: number])[];

/** Grip norms that are printed as mean and standard deviation. */
export interface MeanNorm {
  readonly source: SourceId;
  /** Newtons in the printed unit. */
  readonly unit: number;
  /** First age of each group [year]. */
  readonly firstAges: readonly number[];
  /** Last age of the last group [year]. */
  readonly lastAge: number;
  readonly groups: Readonly<Record<Sex, Readonly<Record<Hand, Groups>>>>;
}

const germanMen: Groups = [
  [50.7, 8.2],
  [52.4, 8.3],
  [53.6, 8.2],
  [53.4, 9.8],
  [53.8, 9.3],
  [52.9, 8.4],
  [50.4, 8.4],
  [49.1, 8.5],
  [46.3, 8.4],
  [44.1, 7.3],
  [41.7, 7.6],
];
const germanWomen: Groups = [
  [32.5, 5.4],
  [33.6, 5.6],
  [33.3, 5.8],
  [34.2, 6.2],
  [34.5, 6.3],
  [33.4, 6.1],
  [32.2, 5.9],
  [30.0, 5.5],
  [29.0, 5.3],
  [27.6, 5.2],
  [26.0, 4.9],
];

/** Grip of one hand, mean and standard deviation by age. */
export const meanNorms = {
  /** 310 men and 328 women, seated, mean of three trials; the last group is open at the top and used up to 90 years. */
  "mathiowetz-1985": {
    source: "mathiowetz-1985",
    unit: poundForce,
    firstAges: [20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75],
    lastAge: 90,
    groups: {
      men: {
        right: [
          [121.0, 20.6],
          [120.8, 23.0],
          [121.8, 22.4],
          [119.7, 24.0],
          [116.8, 20.7],
          [109.9, 23.0],
          [113.6, 18.1],
          [101.1, 26.7],
          [89.7, 20.4],
          [91.1, 20.6],
          [75.3, 21.5],
          [65.7, 21.0],
        ],
        left: [
          [104.5, 21.8],
          [110.5, 16.2],
          [110.4, 21.7],
          [112.9, 21.7],
          [112.8, 18.7],
          [100.8, 22.8],
          [101.9, 17.0],
          [83.2, 23.4],
          [76.8, 20.3],
          [76.8, 19.8],
          [64.8, 18.1],
          [55.0, 17.0],
        ],
      },
      women: {
        right: [
          [70.4, 14.5],
          [74.5, 13.9],
          [78.7, 19.2],
          [74.1, 10.8],
          [70.4, 13.5],
          [62.2, 15.1],
          [65.8, 11.6],
          [57.3, 12.5],
          [55.1, 10.1],
          [49.6, 9.7],
          [49.6, 11.7],
          [42.6, 11.0],
        ],
        left: [
          [61.0, 13.1],
          [63.5, 12.2],
          [68.0, 17.7],
          [66.3, 11.7],
          [62.3, 13.8],
          [56.0, 12.7],
          [57.3, 10.7],
          [47.3, 11.9],
          [45.7, 10.1],
          [41.0, 8.2],
          [41.5, 10.2],
          [37.6, 8.9],
        ],
      },
    },
  },
  /** A weighted German sample; the hand is not told apart. */
  "steiber-2016": {
    source: "steiber-2016",
    unit: standardGravity,
    firstAges: [20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70],
    lastAge: 74,
    groups: {
      men: { right: germanMen, left: germanMen },
      women: { right: germanWomen, left: germanWomen },
    },
  },
} as const satisfies Record<string, MeanNorm>;

/** Percentiles of grip [kgf] of 2.4 million adults; every second age group of the table. */
export const percentileNorm = {
  source: "tomkinson-2025",
  unit: standardGravity,
  percents: [5, 10, 20, 30, 40, 50, 60, 70, 80, 90, 95],
  /** First age of each group of five years [year]. */
  firstAges: [20, 30, 40, 50, 60, 70],
  men: [
    [33.9, 36.8, 40.5, 43.2, 45.7, 48.0, 50.4, 52.9, 56.0, 60.1, 63.6],
    [35.0, 38.3, 42.2, 45.0, 47.4, 49.7, 52.0, 54.4, 57.4, 61.5, 64.9],
    [32.3, 36.0, 40.4, 43.6, 46.3, 48.8, 51.2, 53.9, 57.1, 61.5, 65.1],
    [28.9, 32.8, 37.4, 40.7, 43.5, 46.2, 48.8, 51.6, 54.8, 59.4, 63.1],
    [25.5, 29.1, 33.6, 36.9, 39.7, 42.4, 45.0, 47.8, 51.1, 55.6, 59.3],
    [21.9, 25.2, 29.3, 32.4, 35.1, 37.7, 40.3, 43.1, 46.3, 50.6, 54.1],
  ],
  women: [
    [19.7, 21.7, 24.0, 25.7, 27.2, 28.6, 30.0, 31.6, 33.6, 36.6, 39.1],
    [19.6, 21.8, 24.4, 26.4, 28.1, 29.7, 31.3, 33.1, 35.2, 38.0, 40.4],
    [18.3, 20.7, 23.7, 25.8, 27.6, 29.4, 31.1, 33.0, 35.2, 38.3, 40.8],
    [16.9, 19.4, 22.4, 24.5, 26.4, 28.2, 29.9, 31.8, 34.0, 37.1, 39.7],
    [15.2, 17.6, 20.6, 22.7, 24.5, 26.2, 27.9, 29.7, 31.8, 34.9, 37.4],
    [13.2, 15.5, 18.3, 20.3, 22.0, 23.6, 25.2, 26.9, 28.9, 31.8, 34.1],
  ],
} as const;

/** Grip by another way of measuring over the grip of the norms [-]. */
export const protocolFactor = coefficient({
  value: 1,
  unit: "1",
  low: 0.83,
  high: 1.17,
  status: "published",
  source: "tomkinson-2025",
  place: "dynamometer and posture change a norm by up to 10 %, mean or best of the trials by up to 17 %",
});
