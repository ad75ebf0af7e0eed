import { convert } from "../quantity/parse.js";
import { powerLawFactor } from "../wind/profile.js";
import { shearExponents } from "../wind/shear.js";
import type { CheckSet } from "./row.js";

const common = {
  evidence: "published",
  status: "published",
  source: "noon-forensic",
  place: "section 2.3",
} as const;

function factor(feet: number, referenceFeet: number): number {
  return powerLawFactor({
    height: convert(feet, "ft", "m"),
    referenceHeight: convert(referenceFeet, "ft", "m"),
    exponent: shearExponents.openLand.value,
  });
}

/** One-seventh power law over clear ground. */
export const windNoon: CheckSet = {
  topic: "wind",
  rows: [
    {
      ...common,
      id: "noon-forensic-50-ft",
      quantity: "wind at 50 ft above that at 20 ft",
      printed: "14",
      unit: "%",
      compute: () => 100 * (factor(50, 20) - 1),
    },
    {
      ...common,
      id: "noon-forensic-15-ft",
      quantity: "wind at 15 ft below that at 32.8 ft",
      printed: "11",
      unit: "%",
      compute: () => 100 * (1 - factor(15, 32.8)),
    },
    {
      ...common,
      id: "noon-forensic-10-ft",
      quantity: "wind at 10 ft below that at 32.8 ft",
      printed: "16",
      unit: "%",
      compute: () => 100 * (1 - factor(10, 32.8)),
    },
    {
      ...common,
      id: "noon-forensic-81-mph",
      quantity: "wind at 10 ft for 81 mile/h at the weather station",
      printed: "68",
      unit: "mile/h",
      compute: () => 81 * factor(10, 32.8),
    },
  ],
};
