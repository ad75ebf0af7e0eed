import { powerLawFactor } from "../wind/profile.js";
import { shearExponents } from "../wind/shear.js";
import type { CheckSet } from "./row.js";

/** Power law as another program has it. */
export const windTurbulenceProgram: CheckSet = {
  topic: "wind",
  rows: [
    {
      id: "turbulence-program-tests-50-m",
      quantity: "wind at 50 m for 10 m/s at 90 m, power law on land",
      printed: "8.890895361",
      unit: "m/s",
      compute: () =>
        10 * powerLawFactor({ height: 50, referenceHeight: 90, exponent: shearExponents.designLand.value }),
      evidence: "independent",
      status: "published",
      source: "turbulence-program-tests",
      place: "test of the wind-speed profile",
    },
  ],
};
