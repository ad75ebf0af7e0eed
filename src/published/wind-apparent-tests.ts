import { convert } from "../quantity/parse.js";
import { apparentWind, heeledApparentWind } from "../wind/apparent.js";
import type { CheckRow, CheckSet } from "./row.js";

const common = { evidence: "independent", status: "published", source: "apparent-wind-tests" } as const;

/** True wind angle [°], boat speed and apparent wind speed, both in the unit of a true wind of 10. */
const table = [
  ["beam-reach", 90, 10, "14.1421"],
  ["running", 180, 3, "7"],
  ["head-to-wind", 0, 10, "20"],
  ["astern", 0, -10, "0"],
] as const;

const rows = table.map(
  ([name, degrees, boatSpeed, printed]): CheckRow => ({
    ...common,
    id: `apparent-wind-tests-${name}`,
    quantity: `apparent wind for a true wind of 10 m/s at ${degrees}° and a boat speed of ${boatSpeed} m/s`,
    printed,
    unit: "m/s",
    compute: () =>
      apparentWind({ windSpeed: 10, trueWindAngle: convert(degrees, "deg", "rad"), boatSpeed }).apparentWindSpeed,
    place: `case ${name.replaceAll("-", " ")}`,
  }),
);

/** Apparent wind as another program has it. */
export const windApparentTests: CheckSet = {
  topic: "wind",
  rows: [
    ...rows,
    {
      ...common,
      id: "apparent-wind-tests-beam-reach-angle",
      quantity: "apparent wind angle on a beam reach at the speed of the wind",
      printed: "45",
      unit: "deg",
      compute: () => {
        const wind = apparentWind({ windSpeed: 10, trueWindAngle: Math.PI / 2, boatSpeed: 10 });
        return convert(wind.apparentWindAngle, "rad", "deg");
      },
      readingError: 1e-9,
      place: "case beam reach, exact",
    },
    {
      ...common,
      id: "apparent-wind-tests-flat-on-the-side",
      quantity: "apparent wind angle of a boat on its side",
      printed: "0",
      unit: "deg",
      compute: () => {
        const wind = { apparentWindSpeed: 10, apparentWindAngle: Math.PI / 4, heelAngle: Math.PI / 2 };
        return convert(heeledApparentWind(wind).apparentWindAngle, "rad", "deg");
      },
      readingError: 1e-9,
      place: "heel of 90°, exact",
    },
  ],
};
