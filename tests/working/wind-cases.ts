import { pressingForce } from "../../src/motion/sail.js";
import { standardGravity } from "../../src/quantity/constants.js";
import { airDensity, dryAirGasConstant, dynamicPressure } from "../../src/wind/air.js";
import { apparentWind, heeledApparentWind } from "../../src/wind/apparent.js";
import { boomSheetLoad, fixedLeadSheetLoad, forceAcrossBoom } from "../../src/wind/boom-sheet.js";
import { leadSheetLoad } from "../../src/wind/clew-sheet.js";
import { sailCoefficients } from "../../src/wind/coefficients.js";
import { halyardLoad, outhaulLoad } from "../../src/wind/corner-load.js";
import { edgePull, windOnEdge } from "../../src/wind/edge.js";
import { gustLoadFactor } from "../../src/wind/gust.js";
import { ruleLoad } from "../../src/wind/load-rule.js";
import { logLawFactor, powerLawFactor } from "../../src/wind/profile.js";
import { coefficientForce, sailForce } from "../../src/wind/sail-force.js";
import { type Case, mirror } from "./cases.js";

const air = { airDensity: [1, 1.4], apparentWindSpeed: [1, 20], sailArea: [2, 20] } as const;
const lever = [0.5, 3] as const;
const edge = { edgeLoad: [1, 40], lineLength: [3, 8], sag: [0.1, 0.4] } as const;
const boom = { acrossForce: [50, 500], forceLever: lever, sheetLever: lever, sheetAngle: [0.5, 2.5] } as const;
const beta = [0.2, 2.9] as const;

/** Lift and drag of a square metre of sail in a wind that presses with one pascal. */
const onUnit = (lift: number, drag: number, apparentWindAngle: number) =>
  coefficientForce({
    liftCoefficient: lift / 200,
    dragCoefficient: drag / 200,
    sailArea: 200,
    airDensity: 2,
    apparentWindSpeed: 1,
    apparentWindAngle,
  });

const forceOf = (v: Readonly<Record<string, number>>) =>
  coefficientForce({
    liftCoefficient: v.liftCoefficient ?? 0,
    dragCoefficient: v.dragCoefficient ?? 0,
    sailArea: v.sailArea!,
    airDensity: v.airDensity!,
    apparentWindSpeed: v.apparentWindSpeed!,
    apparentWindAngle: 1,
  });

export const windCases: Readonly<Record<string, Case>> = {
  airDensity: {
    inputs: { pressure: [9e4, 1.1e5], gasConstant: [dryAirGasConstant.value], temperature: [260, 320] },
    code: ({ pressure, temperature }) => airDensity({ pressure: pressure!, temperature: temperature! }),
  },
  dynamicPressure: mirror({ airDensity: [1, 1.4], apparentWindSpeed: [1, 30] }, dynamicPressure),
  windByPower: mirror({ height: [1, 100], referenceHeight: [2, 100], shearExponent: [0.05, 0.4] }, (v) =>
    powerLawFactor({ ...v, exponent: v.shearExponent }),
  ),
  windByLog: mirror({ height: [2, 100], referenceHeight: [5, 100], roughnessLength: [1e-4, 0.1] }, logLawFactor),
  gustLoad: mirror({ gustFactor: [1, 2] }, gustLoadFactor),
  apparentSpeed: mirror(
    { windSpeed: [2, 20], trueWindAngle: beta, boatSpeed: [0, 10] },
    (v) => apparentWind(v).apparentWindSpeed,
  ),
  apparentAngle: {
    inputs: { windSpeed: [8, 20], trueWindAngle: beta, boatSpeed: [0, 5], apparentWindSpeed: [] },
    code: ({ windSpeed, trueWindAngle, boatSpeed }) =>
      apparentWind({ windSpeed: windSpeed!, trueWindAngle: trueWindAngle!, boatSpeed: boatSpeed! }).apparentWindAngle,
  },
  heeledSpeed: mirror(
    { apparentWindSpeed: [2, 20], apparentWindAngle: beta, heelAngle: [0, 1] },
    (v) => heeledApparentWind(v).apparentWindSpeed,
  ),
  inducedDrag: {
    inputs: { liftCoefficient: [], aspectRatio: [1, 10], share: [0.005] },
    code: ({ aspectRatio }) => {
      const at = { edition: "orc-2013", sail: "main", apparentWindAngle: 1 } as const;
      const wind = { ...at, sailArea: 7, apparentWindSpeed: 6, airDensity: 1.2 };
      const table = sailCoefficients(at).dragCoefficient;
      return sailForce({ ...wind, effectiveAspectRatio: aspectRatio! }).dragCoefficient - table;
    },
  },
  sailForce: {
    inputs: { liftCoefficient: [0.2, 2], dragCoefficient: [0.05, 1], ...air },
    code: (v) => forceOf(v).sailForce,
  },
  sailLift: { inputs: { liftCoefficient: [0.2, 2], ...air }, code: (v) => forceOf(v).lift },
  sailDrag: { inputs: { dragCoefficient: [0.05, 1], ...air }, code: (v) => forceOf(v).drag },
  drive: mirror(
    { sailLift: [100, 500], sailDrag: [5, 60], apparentWindAngle: [0.8, 2.8] },
    (v) => onUnit(v.sailLift, v.sailDrag, v.apparentWindAngle).drive,
  ),
  sideForce: mirror(
    { sailLift: [100, 500], sailDrag: [5, 60], apparentWindAngle: [0.1, 1.3] },
    (v) => onUnit(v.sailLift, v.sailDrag, v.apparentWindAngle).side,
  ),
  ruleLoad: mirror({ loadCoefficient: [0.5, 2], ...air }, ruleLoad),
  forceAcrossBoom: mirror({ drive: [10, 300], boomAngle: [0, 1.5], sideForce: [10, 400] }, (v) =>
    forceAcrossBoom({ drive: v.drive, side: v.sideForce, boomAngle: v.boomAngle }),
  ),
  boomSheetLevel: mirror(
    boom,
    (v) => boomSheetLoad({ ...v, forceAcross: v.acrossForce, leechPull: 0, clewLever: 1, vangShare: 0 }).levelPull,
  ),
  boomSheetDown: mirror(
    { leechPull: [10, 500], clewLever: lever, vangShare: [0, 0.9], sheetLever: lever },
    (v) => boomSheetLoad({ ...v, forceAcross: 0, forceLever: 1 }).downPull,
  ),
  boomSheet: mirror(
    { levelPull: [10, 500], downPull: [10, 500] },
    (v) =>
      boomSheetLoad({
        forceAcross: v.levelPull,
        forceLever: 1,
        sheetLever: 1,
        leechPull: v.downPull,
        clewLever: 1,
        vangShare: 0,
      }).sheetLoad,
  ),
  fixedLeadSheet: mirror(
    { ...boom, sheetSlope: [0, 1.3] },
    (v) => fixedLeadSheetLoad({ ...v, forceAcross: v.acrossForce }).sheetLoad,
  ),
  clewSheet: mirror(
    { leechTension: [20, 500], clewAngle: [1, 2], leadAngle: [0.2, 0.9] },
    (v) => leadSheetLoad(v).sheetLoad,
  ),
  windOnEdge: mirror({ share: [0, 1], sailForce: [10, 500], lineLength: [1, 8] }, (v) =>
    windOnEdge({ ...v, edgeLength: v.lineLength }),
  ),
  edgeTension: mirror(edge, (v) => edgePull({ ...v, chord: v.lineLength }).chordTension),
  leechTension: mirror(edge, (v) => edgePull({ ...v, chord: v.lineLength }).endTension),
  halyard: {
    inputs: { ...edge, sailMass: [0.5, 20], gravity: [standardGravity] },
    code: (v) =>
      halyardLoad({ luffLoad: v.edgeLoad!, luffLength: v.lineLength!, luffSag: v.sag!, sailMass: v.sailMass! }),
  },
  outhaul: mirror({ ...edge, leechTension: [10, 300], leechAngle: [0.8, 1.5] }, (v) =>
    outhaulLoad({ ...v, footLoad: v.edgeLoad, footLength: v.lineLength, footSag: v.sag }),
  ),
  pressing: mirror({ pressingCoefficient: [0.1, 1], blanketed: [0, 0.9], ...air }, pressingForce),
};
