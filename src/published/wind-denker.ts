import { airDensity } from "../wind/air.js";
import type { CheckRow, CheckSet } from "./row.js";

/** Height [m], temperature [K], pressure [Pa] and density [kg/m³]. */
const table = [
  [0, 288.15, 101_325, "1.224999"],
  [11_000, 216.65, 22_632.1, "0.363918"],
  [20_000, 216.65, 5474.89, "0.088035"],
  [32_000, 228.65, 868.019, "0.013225"],
] as const;

const rows = table.map(
  ([height, temperature, pressure, printed]): CheckRow => ({
    id: `denker-altimetry-${height}-m`,
    quantity: `density of air in the standard atmosphere at ${height} m`,
    printed,
    unit: "kg/m^3",
    compute: () => airDensity({ temperature, pressure }),
    evidence: "published",
    status: "published",
    source: "denker-altimetry",
    place: "section 1, table of layers",
  }),
);

/** Density at the layers of the standard atmosphere, over two powers of ten of pressure. */
export const windDenker: CheckSet = { topic: "wind", rows };
