import { bearings } from "../materials/bearings.js";
import { blockLosses } from "../materials/block-losses.js";
import { stiffnessLaws } from "../materials/stiffness.js";
import { knot, zeroCelsius } from "../quantity/constants.js";
import { stiffnessOf } from "../reeving/bending.js";
import type { Rope, Sheave } from "../reeving/station.js";
import { coefficient } from "../sources/coefficient.js";
import { airDensity } from "../wind/air.js";
import { clewSheetLoad } from "../wind/clew-sheet.js";
import { windOnEdge } from "../wind/edge.js";
import { sailForce } from "../wind/sail-force.js";

/** Angles are shown in degrees and kept in radians. */
export function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

/** Air at 15 °C and standard pressure [kg/m³]. */
export const air = airDensity({ temperature: zeroCelsius + 15, pressure: 101325 });

/** Where the gennaker of the demo skiff stands [m], and how deep its free edges sag [m]. The boat is invented. */
const gennaker = {
  head: { ahead: 0.2, lee: 0.3, up: 5.8 },
  tack: { ahead: 1.8, lee: 0, up: 0.7 },
  clew: { ahead: -1.1, lee: 1.1, up: 1.1 },
  leechSag: 0.55,
  footSag: 0.45,
};
const [area, leech, foot] = [12, 5, 3.1];

function loadAtOneKnot(): number {
  const { sailForce: force } = sailForce({
    edition: "orc-2013",
    sail: "gennaker",
    sailArea: area,
    apparentWindSpeed: knot,
    apparentWindAngle: radians(100),
    airDensity: air,
  });
  // Each of the three edges is taken to carry a third of the wind load.
  const onEdge = (edgeLength: number) => windOnEdge({ share: 1 / 3, sailForce: force, edgeLength });
  return clewSheetLoad({ ...gennaker, leechLoad: onEdge(leech), footLoad: onEdge(foot) }).sheetLoad;
}

let perSquareKnot: number | undefined;

/** Load of the demo skiff's gennaker sheet [N], reaching, from the apparent wind [kn]: it grows with the square of the wind. */
export function gennakerLoad(wind: number): number {
  perSquareKnot ??= loadAtOneKnot();
  return perSquareKnot * wind ** 2;
}

/** Apparent wind [kn] that makes a load of the gennaker sheet [N]. */
export function windForLoad(load: number): number {
  return Math.sqrt(load / gennakerLoad(1));
}

/** Marks of a second scale: loads of the gennaker sheet by the wind that makes them. */
export function windMarks(winds: readonly number[]) {
  return {
    title: "Apparent wind",
    measure: "wind",
    marks: winds.map((wind) => ({ at: gennakerLoad(wind), value: wind })),
  } as const;
}

/** Pull that starts a clean block; its range is that of small open blocks. */
export const blockDrag = coefficient({ ...blockLosses.ballDrag, value: 0.05 });

/** A rope with a braided cover, diameter in m. */
export function braidedRope(diameter: number): Rope {
  return { diameter, stiffness: stiffnessOf(stiffnessLaws.braidedCover) };
}

/** A ball-bearing sheave with a groove that leaves the rope room [m, rad]. */
export function ballSheave({ diameter, wrapAngle }: Pick<Sheave, "diameter" | "wrapAngle">): Sheave {
  return {
    kind: "sheave",
    name: "block",
    diameter,
    wrapAngle,
    pinRadius: (bearings.ball.radiusShare.value * diameter) / 2,
    bearingFriction: bearings.ball.friction.value,
    drag: blockDrag.value,
  };
}

/** Evenly spread numbers from one end to the other. */
export function evenly(from: number, to: number, count: number): number[] {
  const numbers: number[] = [];
  for (let index = 0; index < count; index++) numbers.push(from + ((to - from) * index) / (count - 1));
  return numbers;
}
