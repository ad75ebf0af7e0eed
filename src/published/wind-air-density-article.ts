import { airDensity } from "../wind/air.js";
import type { CheckRow, CheckSet } from "./row.js";

// Left out: 0 °C and below (printed 1.2922 to 1.4224). The table takes 287.058 J/(kg K) for the gas constant, 2 parts in
// 100 000 more than here: there the last digit differs by up to 0.6.
const table = [
  [5, "1.2690"],
  [10, "1.2466"],
  [15, "1.2250"],
  [20, "1.2041"],
  [25, "1.1839"],
  [30, "1.1644"],
  [35, "1.1455"],
] as const;

const rows = table.map(
  ([celsius, printed]): CheckRow => ({
    id: `air-density-article-${celsius}-c`,
    quantity: `density of air at ${celsius} °C and one atmosphere`,
    printed,
    unit: "kg/m^3",
    compute: () => airDensity({ temperature: 273.15 + celsius, pressure: 101_325 }),
    evidence: "published",
    status: "published",
    source: "air-density-article",
    place: "table of temperatures",
  }),
);

/** Density of air between 5 °C and 35 °C, and in one standard state at another pressure. */
export const windAirDensityArticle: CheckSet = {
  topic: "wind",
  rows: [
    ...rows,
    {
      id: "air-density-article-100-kpa",
      quantity: "density of air at 0 °C and 100 kPa",
      printed: "1.2754",
      unit: "kg/m^3",
      compute: () => airDensity({ temperature: 273.15, pressure: 100_000 }),
      evidence: "published",
      status: "published",
      source: "air-density-article",
      place: "standard temperature and pressure",
    },
  ],
};
