import { boomSheetLoad } from "../wind/boom-sheet.js";
import { edgePull } from "../wind/edge.js";
import { coefficientForce } from "../wind/sail-force.js";
import type { CheckSet } from "./row.js";

/** What is left of a whole number after rounding in the computer. */
const exact = 1e-9;
const common = { evidence: "exact", status: "published", source: "statics" } as const;
const panel = { edgeLoad: 10, chord: 5, sag: 0.25 };

/** Balances of force and moment that can be worked out on paper. */
export const windStatics: CheckSet = {
  topic: "wind",
  rows: [
    {
      ...common,
      id: "statics-boom-level",
      quantity: "sheet load for 200 N at 0.9 m, sheet at 2.0 m, square to the boom",
      printed: "90",
      readingError: exact,
      unit: "N",
      compute: () =>
        boomSheetLoad({
          forceAcross: 200,
          forceLever: 0.9,
          sheetLever: 2,
          leechPull: 0,
          clewLever: 2.5,
          vangShare: 0,
        }).sheetLoad,
      place: "moments about the mast in plan",
    },
    {
      ...common,
      id: "statics-boom-mid",
      quantity: "downward sheet pull over leech pull, sheet halfway along the boom",
      printed: "2",
      readingError: exact,
      unit: "1",
      compute: () =>
        boomSheetLoad({
          forceAcross: 0,
          forceLever: 1,
          sheetLever: 1.25,
          leechPull: 100,
          clewLever: 2.5,
          vangShare: 0,
        }).downPull / 100,
      place: "moments about the gooseneck, upright",
    },
    {
      ...common,
      id: "statics-panel-chord",
      quantity: "chord tension of an edge of 5 m with 10 N/m and a sag of 0.25 m",
      printed: "125",
      readingError: exact,
      unit: "N",
      compute: () => edgePull(panel).chordTension,
      place: "parabola",
    },
    {
      ...common,
      id: "statics-panel-end",
      quantity: "end tension of the same edge",
      printed: "127.5",
      unit: "N",
      compute: () => edgePull(panel).endTension,
      place: "parabola",
    },
    {
      ...common,
      id: "statics-sail-lift",
      quantity: "lift on 10 m² at 10 m/s with a coefficient of 1.5",
      printed: "918.75",
      readingError: exact,
      unit: "N",
      compute: () =>
        coefficientForce({
          liftCoefficient: 1.5,
          dragCoefficient: 0,
          sailArea: 10,
          apparentWindSpeed: 10,
          apparentWindAngle: 0.5,
          airDensity: 1.225,
        }).sailForce,
      place: "coefficient times dynamic pressure times area",
    },
  ],
};
