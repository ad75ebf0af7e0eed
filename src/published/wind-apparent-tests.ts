import { convert } from "../quantity/parse.js";
import { apparentWind, heeledApparentWind } from "../wind/apparent.js";
import type { CheckRow, CheckSet } from "./row.js";

const common = { evidence: "independent", status: "published", source: "apparent-wind-tests" } as const;

/** What is left of a whole number after rounding in the computer. */
const exact = 1e-9;

/** True wind angle [°], boat speed, apparent wind speed and what it may be off, in the unit of a true wind of 10. */
const table = [
  ["beam-reach", 90, 10, "14.1421", 5e-5],
  ["running", 180, 3, "7", exact],
  ["head-to-wind", 0, 10, "20", exact],
  ["astern", 0, -10, "0", exact],
] as const;

const rows = table.map(
  ([name, degrees, boatSpeed, printed, readingError]): CheckRow => ({
    ...common,
    id: `apparent-wind-tests-${name}`,
    quantity: `apparent wind for a true wind of 10 m/s at ${degrees}° and a boat speed of ${boatSpeed} m/s`,
    printed,
    readingError,
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
      readingError: exact,
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
      readingError: exact,
      place: "heel of 90°, exact",
    },
  ],
};
