import { convert } from "../quantity/parse.js";
import { trueWind } from "../wind/apparent.js";
import type { CheckSet } from "./row.js";

function example(): ReturnType<typeof trueWind> {
  const sixKnots = convert(6, "kn", "m/s");
  return trueWind({ apparentWindSpeed: sixKnots, apparentWindAngle: convert(150, "deg", "rad"), boatSpeed: sixKnots });
}

/** True wind of a boat that runs at 6 kn and feels 6 kn. */
export const windOrcSpeedGuide: CheckSet = {
  topic: "wind",
  rows: [
    {
      id: "orc-speed-guide-true-wind",
      quantity: "true wind of a boat at 6 kn that feels 6 kn at 150°",
      printed: "11.6",
      unit: "kn",
      compute: () => convert(example().windSpeed, "m/s", "kn"),
      evidence: "published",
      status: "published",
      source: "orc-speed-guide",
      place: "Appendix A, worked example, part 1",
    },
    {
      id: "orc-speed-guide-true-angle",
      quantity: "true wind angle of the same boat",
      printed: "165",
      readingError: 1e-9,
      unit: "deg",
      compute: () => convert(example().trueWindAngle, "rad", "deg"),
      evidence: "exact",
      status: "published",
      source: "orc-speed-guide",
      place: "the triangle has two equal sides: half of 30° less than 180°",
    },
  ],
};
