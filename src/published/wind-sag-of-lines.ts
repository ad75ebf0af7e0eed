import { edgePull } from "../wind/edge.js";
import type { CheckSet } from "./row.js";

/** Power line of 1 kg/m over 500 m that sags 3.125 m at a tension of 10 000 kgf. */
export const windSagOfLines: CheckSet = {
  topic: "wind",
  rows: [
    {
      id: "sag-of-lines-tension",
      quantity: "tension of a line of 1 kgf/m over 500 m with a sag of 3.125 m",
      printed: "10000",
      unit: "kgf",
      // Load and tension are both in kilograms-force; a tenth of the span and of the sag has a tenth of the tension.
      compute: () => 10 * edgePull({ edgeLoad: 1, chord: 50, sag: 0.3125 }).chordTension,
      evidence: "published",
      status: "published",
      source: "sag-of-lines",
      place: "worked example, last step",
    },
  ],
};
