import { beaufortSpeed } from "../wind/beaufort.js";
import type { CheckRow, CheckSet } from "./row.js";

/** Lower and upper speed of the bands of force 1 to 11 [m/s]. */
const bands = [
  [0.3, 1.5],
  [1.6, 3.3],
  [3.4, 5.4],
  [5.5, 7.9],
  [8.0, 10.7],
  [10.8, 13.8],
  [13.9, 17.1],
  [17.2, 20.7],
  [20.8, 24.4],
  [24.5, 28.4],
  [28.5, 32.6],
] as const;

const rows = bands.map(
  ([low, high], i): CheckRow => ({
    id: `wmo-beaufort-${i + 1}`,
    quantity: `middle of Beaufort force ${i + 1}, by formula against the band ${low} to ${high} m/s`,
    printed: ((low + high) / 2).toFixed(2),
    unit: "m/s",
    compute: () => beaufortSpeed({ beaufort: i + 1 }),
    readingError: (high - low) / 2,
    evidence: "independent",
    status: "from memory",
    source: "wmo-beaufort",
    place: "bands in m/s; expected is the middle, allowed half the width; the formula is from memory",
  }),
);

/** The Beaufort formula stays inside the published band of each force. */
export const windBeaufort: CheckSet = { topic: "wind", rows };
