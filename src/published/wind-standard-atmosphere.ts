import { convert } from "../quantity/parse.js";
import { airDensity } from "../wind/air.js";
import type { CheckSet } from "./row.js";

const slug = convert(1, "lbf", "N") / convert(1, "ft", "m");
const cubicFoot = convert(1, "ft^3", "m^3");

// The page also prints 0.07648 lb/ft³; its own 1.225 kg/m³ is 0.07647 lb/ft³, so that row is left out.

/** Sea-level density in the units of the imperial wind-load rules. */
export const windStandardAtmosphere: CheckSet = {
  topic: "wind",
  rows: [
    {
      id: "standard-atmosphere-1976-slug",
      quantity: "density of air at 15 °C and 101 325 Pa in slug per cubic foot",
      printed: "0.0023769",
      unit: "slug/ft^3",
      compute: () => (airDensity({ temperature: 288.15, pressure: 101_325 }) * cubicFoot) / slug,
      evidence: "published",
      status: "published",
      source: "standard-atmosphere-1976",
      place: "sea level",
    },
  ],
};
