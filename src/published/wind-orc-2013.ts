import { convert } from "../quantity/parse.js";
import { sailForce } from "../wind/sail-force.js";
import type { SailName } from "../wind/sail-table.js";
import type { CheckRow, CheckSet } from "./row.js";

/** Sail, area [m²], apparent wind [kn], angle [°], whole force [N]. */
const table: readonly (readonly [SailName, number, number, number, string])[] = [
  ["main", 7, 12, 28, "233.2"],
  ["main", 7, 12, 60, "208.2"],
  ["main", 7, 12, 90, "194.2"],
  ["main", 7, 12, 120, "209.3"],
  ["main", 7, 12, 180, "220.5"],
  ["symmetricSpinnaker", 10, 15, 67, "574"],
  ["gennaker", 10, 15, 100, "498"],
];

const rows = table.map(
  ([sail, sailArea, knots, degrees, printed]): CheckRow => ({
    id: `orc-coefficients-2013-${sail.toLowerCase()}-${degrees}`,
    quantity: `force on a ${sail.replace("S", " s")} of ${sailArea} m² in ${knots} kn at ${degrees}°`,
    printed,
    unit: "N",
    compute: () =>
      sailForce({
        edition: "orc-2013",
        sail,
        sailArea,
        apparentWindSpeed: convert(knots, "kn", "m/s"),
        apparentWindAngle: convert(degrees, "deg", "rad"),
        airDensity: 1.225,
      }).sailForce,
    evidence: "independent",
    status: "published",
    source: "orc-coefficients-2013",
    place: "resultant of the printed coefficients, worked out by hand",
  }),
);

/** Whole force on a sail: arithmetic only, the coefficients are those of the table. */
export const windOrc2013: CheckSet = { topic: "wind", rows };
