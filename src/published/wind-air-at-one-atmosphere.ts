import { airDensity } from "../wind/air.js";
import type { CheckRow, CheckSet } from "./row.js";

// Left out: −30 °C, 10 °C and 60 °C, where the table (1.451, 1.246, 1.059) cuts off what the gas law (1.4517, 1.2466,
// 1.0595) rounds up.
const table = [
  [-20, "1.394"],
  [-10, "1.341"],
  [0, "1.292"],
  [5, "1.269"],
  [15, "1.225"],
  [20, "1.204"],
  [25, "1.184"],
  [30, "1.164"],
  [35, "1.145"],
  [40, "1.127"],
] as const;

const rows = table.map(
  ([celsius, printed]): CheckRow => ({
    id: `air-at-one-atmosphere-${celsius < 0 ? `minus-${-celsius}` : celsius}-c`,
    quantity: `density of air at ${celsius} °C and one atmosphere`,
    printed,
    unit: "kg/m^3",
    compute: () => airDensity({ temperature: 273.15 + celsius, pressure: 101_325 }),
    evidence: "published",
    status: "published",
    source: "air-at-one-atmosphere",
    place: "column density",
  }),
);

/** Density of air between −20 °C and 40 °C. */
export const windAirAtOneAtmosphere: CheckSet = { topic: "wind", rows };
