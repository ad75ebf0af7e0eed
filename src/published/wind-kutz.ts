import { airDensity } from "../wind/air.js";
import { readPrinted } from "./compare.js";
import type { CheckRow, CheckSet } from "./row.js";

/** Height [m], temperature [K], pressure [bar] and density [kg/m³] as printed. */
const table = [
  ["0", "288.15", "1.0133", "1.2250"],
  ["1000", "281.65", "0.8988", "1.1117"],
  ["2000", "275.15", "0.7950", "1.0066"],
  ["3000", "268.66", "0.7012", "0.9093"],
] as const;

const rows = table.map(([height, temperature, pressure, printed]): CheckRow => {
  const kelvin = readPrinted(temperature);
  const bar = readPrinted(pressure);
  const density = readPrinted(printed);
  return {
    id: `kutz-handbook-${height}-m`,
    quantity: `density of air in the standard atmosphere at ${height} m, from the printed temperature and pressure`,
    printed,
    unit: "kg/m^3",
    compute: () => airDensity({ temperature: kelvin.value, pressure: bar.value * 1e5 }),
    // Half the last digit of the density, and what half the last digits of pressure and temperature make of it.
    readingError: density.halfDigit + density.value * (bar.halfDigit / bar.value + kelvin.halfDigit / kelvin.value),
    evidence: "published",
    status: "published",
    source: "kutz-handbook",
    place: "Table 6; allowed: half a digit of the printed density, temperature and pressure",
  };
});

/** Density of the standard atmosphere up to 3000 m. */
export const windKutz: CheckSet = { topic: "wind", rows };
