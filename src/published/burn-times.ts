import { zeroCelsius } from "../quantity/constants.js";
import type { SourceId } from "../sources/bibliography.js";

/** Time in hot water after which skin was burnt. */
export interface BurnTime {
  /** Of the water [K]. */
  readonly temperature: number;
  /** To a burn that heals [s]. */
  readonly secondDegree: number;
  /** To a burn through the skin [s]. */
  readonly thirdDegree: number;
}

const minute = 60;
const hour = 3600;

function row(celsius: number, secondDegree: number, thirdDegree: number): BurnTime {
  return { temperature: celsius + zeroCelsius, secondDegree, thirdDegree };
}

/** The table of Moritz and Henriques as it is repeated on a secondary page: shown beside the model, no check. */
export const burnTimes: readonly BurnTime[] = [
  row(45, 2 * hour, 3 * hour),
  row(47, 20 * minute, 45 * minute),
  row(48, 15 * minute, 20 * minute),
  row(49, 8 * minute, 10 * minute),
  row(51, 2 * minute, 4.2 * minute),
  row(55, 17, 30),
  row(60, 3, 5),
];

/** Where that table was read. */
export const burnTimesSource: SourceId = "moritz-henriques";
