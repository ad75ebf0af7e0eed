import { powerLawFactor } from "../wind/profile.js";
import { shearExponents } from "../wind/shear.js";
import type { CheckRow, CheckSet } from "./row.js";

const { extremeWind, designSea } = shearExponents;

/** Height [m], exponent and ratio to the wind at 10 m [-]. */
const table = [
  ["extreme", 2, extremeWind.value, "0.8377"],
  ["sea", 2, designSea.value, "0.7983"],
  ["extreme", 5, extremeWind.value, "0.9266"],
  ["sea", 5, designSea.value, "0.9075"],
] as const;

const rows = table.map(
  ([name, height, exponent, printed]): CheckRow => ({
    id: `iec-61400-${name}-${height}-m`,
    quantity: `wind at ${height} m over that at 10 m, power law with ${exponent}`,
    printed,
    unit: "1",
    compute: () => powerLawFactor({ height, referenceHeight: 10, exponent }),
    evidence: "independent",
    status: "published",
    source: "iec-61400",
    place: "power law with the printed exponent, worked out by hand",
  }),
);

/** Power law with the exponents of the design standards. */
export const windIec61400: CheckSet = { topic: "wind", rows };
