import { convert } from "../quantity/parse.js";
import { bearingRatio } from "../reeving/bearing.js";
import { collarMoment, frictionOfMoment, sealDrag } from "../reeving/bearing-moments.js";
import { pitchDiameter } from "../reeving/block-geometry.js";
import { loadOfGroovePressure } from "../reeving/groove-pressure.js";
import { sheaveWraps } from "../reeving/sheave-wraps.js";
import { publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";

const inch = (value: number) => convert(value, "inch", "m");
const degrees = (radians: number) => (radians * 180) / Math.PI;

/** Ratio of a 4 in pulley on a fixed 2 in shaft, friction 0.20. */
const shaftRatio = (wrapAngle: number) =>
  bearingRatio({ bearingFriction: 0.2, pinRadius: inch(1), pitchDiameter: inch(4), wrapAngle });

/** Loss of two ball bearings under 500 kg, at the middle of an 11 mm rope on a 50 mm sheave, over the tension. */
function ballBearingLoss(): number {
  const bearingLoad = convert(500, "kgf", "N");
  const pinRadius = 0.01;
  const bearingFriction = frictionOfMoment({
    frictionMoment: convert(2 * 126, "N mm", "N m"),
    bearingLoad,
    pinRadius,
  });
  const pitch = pitchDiameter({ sheaveDiameter: 0.05, ropeDiameter: 0.011 });
  return bearingRatio({ bearingFriction, pinRadius, pitchDiameter: pitch, wrapAngle: Math.PI }) - 1;
}

const openPair = sheaveWraps({ largeDiameter: 0.24, smallDiameter: 0.12, distance: 0.3 });

const rows: readonly CheckRow[] = [
  publishedRow(
    "beer-johnston-friction",
    "raise",
    "pull that raises 500 lb over a 4 in pulley on a fixed 2 in shaft, friction 0.20",
    "611.111111",
    "lbf",
    "example 8.6, p. 423",
    () => 500 * shaftRatio(Math.PI),
  ),
  publishedRow(
    "beer-johnston-friction",
    "hold",
    "least pull that holds it",
    "409",
    "lbf",
    "example 8.6, p. 423",
    () => 500 / shaftRatio(Math.PI),
  ),
  {
    ...publishedRow(
      "beer-johnston-friction",
      "sideways",
      "level pull that raises it: the rope turned by a right angle",
      "577",
      "lbf",
      "example 8.6, p. 423; the source rounds its angle to 40.9°, which is worth 1 lbf",
      () => 500 * shaftRatio(Math.PI / 2),
    ),
    readingError: 1,
  },
  publishedRow(
    "poysti-2020",
    "ball-newtons",
    "pull that two ball bearings of 126 N mm each cost on a 50 mm sheave under 500 kg",
    "8.3",
    "N",
    "share of the ball bearings; the rope is one of 11 mm",
    () => convert(250, "kgf", "N") * ballBearingLoss(),
  ),
  publishedRow(
    "poysti-2020",
    "ball-share",
    "the same over the tension",
    "0.34",
    "%",
    "share of the ball bearings",
    () => 100 * ballBearingLoss(),
  ),
  publishedRow(
    "feyrer-wire-ropes",
    "seals",
    "pull against two lip seals of 0.01 N/mm on a pin of five rope diameters, times D over d²",
    "1.6",
    "N/mm",
    "eq. 3.102",
    () => {
      const d = 0.01;
      const pitch = 0.2;
      const drag = sealDrag({ sealFriction: convert(0.01, "N/mm", "N/m"), pinDiameter: 5 * d, pitchDiameter: pitch });
      return convert((drag * pitch) / (d * d), "N/m", "N/mm");
    },
  ),
  publishedRow(
    "jindal-design",
    "groove-pressure",
    "load on a 480 mm sheave with 12 mm rope at a groove pressure of 0.0025 of 1960 MPa",
    "28.224",
    "kN",
    "example 24-3, p. 636",
    () =>
      convert(
        loadOfGroovePressure({ groovePressure: 0.0025 * 1960e6, ropeDiameter: 0.012, sheaveDiameter: 0.48 }),
        "N",
        "kN",
      ),
  ),
  publishedRow(
    "tayal-mechanics",
    "thrust",
    "friction moment of a 300 mm disc under 20 kN, friction 0.12",
    "240.000000",
    "N m",
    "example 7.11",
    () => collarMoment({ frictionCoefficient: 0.12, axialForce: 20_000, outerRadius: 0.15, innerRadius: 0 }),
  ),
  publishedRow(
    "bevan-machines",
    "collar",
    "power lost in a collar of 8 and 6 in radius under 16 long tons at 120 a minute, friction 0.04",
    "19.24",
    "hp",
    "example 3, p. 193",
    () => {
      const moment = collarMoment({
        frictionCoefficient: 0.04,
        axialForce: convert(16 * 2240, "lbf", "N"),
        outerRadius: inch(8),
        innerRadius: inch(6),
      });
      return convert((moment * 2 * Math.PI * 120) / 60, "W", "hp");
    },
  ),
  publishedRow(
    "tayal-mechanics",
    "open-large",
    "wrap on the larger of two pulleys, 24 and 12 cm, 30 cm apart",
    "203.073918",
    "deg",
    "example 7.1",
    () => degrees(openPair.large),
  ),
  publishedRow("tayal-mechanics", "open-small", "wrap on the smaller of them", "156.926082", "deg", "example 7.1", () =>
    degrees(openPair.small),
  ),
  publishedRow(
    "tayal-mechanics",
    "crossed",
    "wrap on both of two pulleys, 0.6 and 0.3 m, 3.5 m apart, the belt crossed",
    "194.774097",
    "deg",
    "example 7.2",
    () => degrees(sheaveWraps({ largeDiameter: 0.6, smallDiameter: 0.3, distance: 3.5, crossed: true }).large),
  ),
];

/** Bearings, seals, grooves and wraps. */
export const sizeLosses: CheckSet = { topic: "size", rows };
