import { logLawFactor } from "../wind/profile.js";
import type { CheckRow, CheckSet } from "./row.js";

/** The equation reads u2 = u_z · 4.87 / ln(67.8 z − 5.42): the log law above grass, whose zero plane is lifted. */
const roughnessLength = 1 / 67.8;
const zeroPlane = 5.42 / 67.8;

function windAt2m(windAt10m: number): number {
  const factor = logLawFactor({ height: 2 - zeroPlane, referenceHeight: 10 - zeroPlane, roughnessLength });
  return windAt10m * factor;
}

const table = [
  ["example-14", 3.2, "2.39", "example 14 of chapter 3, as worked on the reference page", "published"],
  ["second-program", 5, "3.74", "equation 47, as worked in the manual of another program", "independent"],
] as const;

const rows = table.map(
  ([name, windAt10m, printed, place, evidence]): CheckRow => ({
    id: `fao-56-${name}`,
    quantity: `wind at 2 m above grass for ${windAt10m} m/s at 10 m`,
    printed,
    unit: "m/s",
    compute: () => windAt2m(windAt10m),
    evidence,
    status: "published",
    source: "fao-56",
    place,
  }),
);

/** Log law above grass. */
export const windFao56: CheckSet = { topic: "wind", rows };
