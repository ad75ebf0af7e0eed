import { convert } from "../quantity/parse.js";
import { trueWind } from "../wind/apparent.js";
import type { CheckSet } from "./row.js";

function example(): ReturnType<typeof trueWind> {
  return trueWind({
    apparentWindSpeed: convert(33.46, "km/h", "m/s"),
    apparentWindAngle: Math.PI / 4,
    boatSpeed: convert(10, "km/h", "m/s"),
  });
}

const common = {
  evidence: "independent",
  status: "published",
  source: "flag-problem",
  place: "the asker's own numbers",
} as const;

/** A ship northward whose flag streams to the south-west, and a windsock ashore. */
export const windFlagProblem: CheckSet = {
  topic: "wind",
  rows: [
    {
      ...common,
      id: "flag-problem-speed",
      quantity: "true wind of a ship at 10 km/h that feels 33.46 km/h at 45°",
      printed: "27.32",
      unit: "km/h",
      compute: () => convert(example().windSpeed, "m/s", "km/h"),
    },
    {
      ...common,
      id: "flag-problem-angle",
      quantity: "true wind angle of the same ship",
      printed: "60",
      unit: "deg",
      compute: () => convert(example().trueWindAngle, "rad", "deg"),
    },
  ],
};
