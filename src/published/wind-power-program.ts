import { logLawFactor } from "../wind/profile.js";
import type { CheckRow, CheckSet } from "./row.js";

/** Wind at 10 m [m/s] and wind at 100 m [m/s]. */
const table = [
  [5, "7.74136523"],
  [6.5, "10.0637748"],
] as const;

const rows = table.map(
  ([windAt10m, printed]): CheckRow => ({
    id: `wind-power-program-tests-${String(windAt10m).replace(".", "-")}`,
    quantity: `wind at 100 m for ${windAt10m} m/s at 10 m, log law with 0.15 m`,
    printed,
    unit: "m/s",
    compute: () => windAt10m * logLawFactor({ height: 100, referenceHeight: 10, roughnessLength: 0.15 }),
    evidence: "independent",
    status: "published",
    source: "wind-power-program-tests",
    place: "test of the logarithmic profile",
  }),
);

/** Log law as another program has it. */
export const windPowerProgram: CheckSet = { topic: "wind", rows };
