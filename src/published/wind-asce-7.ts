import { convert } from "../quantity/parse.js";
import { airDensity, dynamicPressure } from "../wind/air.js";
import { coefficientOfRule } from "../wind/load-rule.js";
import type { CheckSet } from "./row.js";

function pressureInPoundsPerSquareFoot(speed: number): number {
  const density = airDensity({ temperature: 288.15, pressure: 101_325 });
  return convert(dynamicPressure({ airDensity: density, apparentWindSpeed: speed }), "Pa", "lbf/ft^2");
}

/** Velocity pressure in imperial units. */
export const windAsce7: CheckSet = {
  topic: "wind",
  rows: [
    {
      id: "asce-7-mile-per-hour",
      quantity: "dynamic pressure of a wind of one mile per hour",
      printed: "0.00256",
      unit: "lbf/ft^2",
      compute: () => pressureInPoundsPerSquareFoot(convert(1, "mi/h", "m/s")),
      evidence: "published",
      status: "published",
      source: "asce-7",
      place: "velocity pressure, constant 0.00256",
    },
    {
      id: "asce-7-knot",
      quantity: "dynamic pressure of a wind of one knot",
      printed: "0.0033855",
      unit: "lbf/ft^2",
      compute: () => pressureInPoundsPerSquareFoot(convert(1, "kn", "m/s")),
      evidence: "independent",
      status: "published",
      source: "asce-7",
      place: "the same constant worked out by hand from 0.0023769 slug/ft³",
    },
    {
      id: "asce-7-rule-coefficient",
      quantity: "coefficient of a rule with 0.004 lbf/(ft² kn²)",
      printed: "1.18",
      unit: "1",
      compute: () => coefficientOfRule({ imperialConstant: 0.004 }),
      evidence: "independent",
      status: "published",
      source: "asce-7",
      place: "0.004 / 0.0033855 worked out by hand",
    },
  ],
};
