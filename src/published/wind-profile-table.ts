import { logLawFactor } from "../wind/profile.js";
import { roughnessLengths } from "../wind/shear.js";
import type { CheckRow, CheckSet } from "./row.js";

/** Height [m] and ratio to the wind at 10 m [-]. */
const table = [
  [1, "0.7872"],
  [2, "0.8513"],
  [3, "0.8887"],
  [5, "0.9359"],
  [6, "0.9528"],
] as const;

const rows = table.map(
  ([height, printed]): CheckRow => ({
    id: `wind-profile-table-log-${height}-m`,
    quantity: `wind at ${height} m over that at 10 m, log law over open water`,
    printed,
    unit: "1",
    compute: () => logLawFactor({ height, referenceHeight: 10, roughnessLength: roughnessLengths.openWater.value }),
    evidence: "independent",
    status: "published",
    source: "wind-profile-table",
    place: "log law with the printed roughness length, worked out by hand",
  }),
);

/** Log law over open water. */
export const windProfileTable: CheckSet = { topic: "wind", rows };
