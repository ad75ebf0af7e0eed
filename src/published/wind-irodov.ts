import { convert } from "../quantity/parse.js";
import { apparentWind } from "../wind/apparent.js";
import type { CheckSet } from "./row.js";

function example(): ReturnType<typeof apparentWind> {
  return apparentWind({
    windSpeed: convert(15, "km/h", "m/s"),
    trueWindAngle: convert(60, "deg", "rad"),
    boatSpeed: convert(30, "km/h", "m/s"),
  });
}

const common = {
  evidence: "published",
  status: "published",
  source: "irodov-problems",
  place: "problem 1.6, answer",
} as const;

/** Wind on a ship that steams at twice the speed of a wind from ahead. */
export const windIrodov: CheckSet = {
  topic: "wind",
  rows: [
    {
      ...common,
      id: "irodov-problems-speed",
      quantity: "wind on a ship at 30 km/h in a wind of 15 km/h at 60°",
      printed: "40",
      unit: "km/h",
      compute: () => convert(example().apparentWindSpeed, "m/s", "km/h"),
    },
    {
      ...common,
      id: "irodov-problems-angle",
      quantity: "angle of the same wind from the course",
      printed: "19",
      unit: "deg",
      compute: () => convert(example().apparentWindAngle, "rad", "deg"),
    },
  ],
};
