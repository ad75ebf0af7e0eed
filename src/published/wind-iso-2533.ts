import { airDensity } from "../wind/air.js";
import type { CheckSet } from "./row.js";

/** Sea level of the standard atmosphere. */
export const windIso2533: CheckSet = {
  topic: "wind",
  rows: [
    {
      id: "iso-2533-sea-level",
      quantity: "density of air at 15 °C and 101 325 Pa",
      printed: "1.225",
      unit: "kg/m^3",
      compute: () => airDensity({ temperature: 288.15, pressure: 101_325 }),
      evidence: "published",
      status: "published",
      source: "iso-2533",
      place: "sea level",
    },
  ],
};
