import { dynamicPressure } from "../wind/air.js";
import { coefficientForce } from "../wind/sail-force.js";
import type { CheckRow, CheckSet } from "./row.js";

const airDensity = 1.2;

/** Wind speed [m/s] and load [Pa]: nine of fifty rows, from one end to the other; all fifty agree. */
const table = [
  [1, "0.6"],
  [3, "5.4"],
  [5, "15"],
  [9, "49"],
  [12, "86"],
  [15, "135"],
  [20, "240"],
  [35, "735"],
  [50, "1500"],
] as const;

const rows = table.map(
  ([apparentWindSpeed, printed]): CheckRow => ({
    id: `wind-load-table-${apparentWindSpeed}`,
    quantity: `dynamic pressure at ${apparentWindSpeed} m/s in air of 1.2 kg/m³`,
    printed,
    unit: "Pa",
    compute: () => dynamicPressure({ airDensity, apparentWindSpeed }),
    evidence: "published",
    status: "published",
    source: "wind-load-table",
    place: "table wind speed, wind load",
  }),
);

/** Wind load on a square metre, and on a wall. */
export const windLoadTable: CheckSet = {
  topic: "wind",
  rows: [
    ...rows,
    {
      id: "wind-load-table-wall",
      quantity: "force of 35 m/s on a wall of 10 m²",
      printed: "7350",
      unit: "N",
      compute: () =>
        coefficientForce({
          liftCoefficient: 0,
          dragCoefficient: 1,
          sailArea: 10,
          apparentWindSpeed: 35,
          apparentWindAngle: Math.PI,
          airDensity,
        }).drive,
      evidence: "published",
      status: "published",
      source: "wind-load-table",
      place: "example, hurricane on a wall",
    },
  ],
};
