import { dynamicPressure } from "../wind/air.js";
import { logLawFactor } from "../wind/profile.js";
import type { CheckRow, CheckSet } from "./row.js";

const roughnessLength = 0.01;
/** Roughness factor at 10 m: terrain factor 0.19 · (z0 / 0.05)^0.07, times ln(10 / z0). */
const roughnessFactorAt10 = 0.19 * (roughnessLength / 0.05) ** 0.07 * Math.log(10 / roughnessLength);

function roughnessFactor(height: number): number {
  return roughnessFactorAt10 * logLawFactor({ height, referenceHeight: 10, roughnessLength });
}

/** Height [m] and roughness factor [-]. */
const table = [
  [5, "1.055"],
  [5.5, "1.071"],
  [20, "1.290"],
  [25, "1.328"],
  [35, "1.385"],
  [40, "1.408"],
] as const;

const rows = table.map(
  ([height, printed]): CheckRow => ({
    id: `en-1991-1-4-roughness-${String(height).replace(".", "-")}-m`,
    quantity: `roughness factor at ${height} m from that at 10 m, terrain of 0.01 m`,
    printed,
    unit: "1",
    compute: () => roughnessFactor(height),
    evidence: "published",
    status: "published",
    source: "en-1991-1-4",
    place: "section 4.3.2, column of the roughness factor",
  }),
);

/** Mean wind with height, and basic velocity pressure. */
export const windEn1991: CheckSet = {
  topic: "wind",
  rows: [
    ...rows,
    {
      id: "en-1991-1-4-mean-wind",
      quantity: "mean wind at 5 m for a basic wind of 40.9 m/s",
      printed: "43.1",
      unit: "m/s",
      compute: () => 40.9 * roughnessFactor(5),
      evidence: "published",
      status: "published",
      source: "en-1991-1-4",
      place: "section 4.3.1, mean wind velocity",
    },
    {
      id: "en-1991-1-4-basic-pressure",
      quantity: "velocity pressure of 40.9 m/s in air of 1.25 kg/m³",
      printed: "1.046",
      unit: "kPa",
      compute: () => dynamicPressure({ airDensity: 1.25, apparentWindSpeed: 40.9 }) / 1000,
      evidence: "published",
      status: "published",
      source: "en-1991-1-4",
      place: "section 4.5, basic velocity pressure",
    },
  ],
};
