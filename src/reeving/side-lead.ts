import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { collarMoment } from "./bearing-moments.js";
import { pitchDiameter } from "./block-geometry.js";

/** A line that comes to its sheave from one side. */
export interface SideLeadInput {
  readonly tension: number;
  readonly leadAngle: number;
  /** Friction of the sheave's side on its cheek, with its range [-]. */
  readonly sideFriction: Band;
  readonly sheaveDiameter: number;
  readonly ropeDiameter: number;
  /** Inner edge of the face that rubs over the radius of the sheave [-]. */
  readonly innerShare: number;
}

/**
 * Pull that a sheave costs more when the line leads off its plane: its side rubs on the cheek as a collar does.
 *
 *     ΔT = M / R_pitch,   M of a collar under P = T · sin λ
 *
 * @param tension  T of the part that leads off [N], 0 or more
 * @param leadAngle  λ off the plane of the sheave [rad], 0 to 1.5
 * @param sideFriction  side of the sheave on cheek, with its range [-]
 * @param sheaveDiameter  groove bottom [m], taken as the outer edge of the face that rubs
 * @param ropeDiameter  [m]
 * @param innerShare  inner edge of that face over the radius of the sheave [-], 0 to 1
 * @returns extra pull with its range [N]
 * @throws ValueError outside these ranges
 * Valid for a block that cannot turn into the line; one on a swivel or soft strop does.
 * Source: bevan-machines, eq. 6.36; the friction comes from memory. Example: sideLeadLoss({ tension: 300, leadAngle: 0.1, sideFriction: { value: 0.2, low: 0.2, high: 0.2 }, sheaveDiameter: 0.04, ropeDiameter: 0.006, innerShare: 0.2 }).value → 3.588
 */
export function sideLeadLoss(input: SideLeadInput): Band {
  const axialForce = within("tension", input.tension) * Math.sin(within("leadAngle", input.leadAngle));
  const outerRadius = input.sheaveDiameter / 2;
  const innerRadius = within("share", input.innerShare) * outerRadius;
  return bandOf(
    { sideFriction: input.sideFriction },
    ({ sideFriction }) =>
      collarMoment({ frictionCoefficient: sideFriction, axialForce, outerRadius, innerRadius }) /
      (pitchDiameter(input) / 2),
  );
}
