import { dynamicPressure } from "../wind/air.js";
import type { CheckSet } from "./row.js";

/** Dynamic pressure in thin air. */
export const windAerodynamicsHomework: CheckSet = {
  topic: "wind",
  rows: [
    {
      id: "aerodynamics-homework-1",
      quantity: "dynamic pressure of 60 m/s in air of 0.85 kg/m³",
      printed: "1530",
      unit: "Pa",
      compute: () => dynamicPressure({ airDensity: 0.85, apparentWindSpeed: 60 }),
      evidence: "published",
      status: "published",
      source: "aerodynamics-homework",
      place: "problem 1",
    },
  ],
};
