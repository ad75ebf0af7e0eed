import { dynamicPressure } from "../wind/air.js";
import type { CheckRow, CheckSet } from "./row.js";

const speed = Math.hypot(25.7222, 10.2889, 3.0867);
const table = [
  ["sea-level", 1.225, "475.9252"],
  ["aloft", 0.3639, "141.3789"],
] as const;

const rows = table.map(
  ([place, airDensity, printed]): CheckRow => ({
    id: `dynamic-pressure-cases-${place}`,
    quantity: `dynamic pressure of ${speed.toFixed(2)} m/s in air of ${airDensity} kg/m³`,
    printed,
    unit: "Pa",
    compute: () => dynamicPressure({ airDensity, apparentWindSpeed: speed }),
    evidence: "independent",
    status: "published",
    source: "dynamic-pressure-cases",
    place: "second example",
  }),
);

/** Dynamic pressure as another program prints it. */
export const windDynamicPressure: CheckSet = { topic: "wind", rows };
