import { within } from "../quantity/guard.js";

/** A ring-shaped face that is pressed against another while it turns. */
export interface CollarInput {
  readonly frictionCoefficient: number;
  /** [N] */
  readonly axialForce: number;
  readonly outerRadius: number;
  /** 0 for a full disc. */
  readonly innerRadius: number;
}

/**
 * Friction moment of a sheave's side, or of any collar, pressed sideways.
 *
 *     M = (2/3) · μ · P · (R³ − r³) / (R² − r²),   for even pressure
 *
 * @param frictionCoefficient  μ [-], 0 to 4
 * @param axialForce  P [N], 0 or more
 * @param outerRadius  R [m], above 0
 * @param innerRadius  r [m], 0 to R
 * @returns friction moment [N m]
 * @throws ValueError outside these ranges
 * Source: bevan-machines, eq. 6.36; tayal-mechanics, example 7.11. Example: collarMoment({ frictionCoefficient: 0.12, axialForce: 20000, outerRadius: 0.15, innerRadius: 0 }) → 240
 */
export function collarMoment({ frictionCoefficient, axialForce, outerRadius, innerRadius }: CollarInput): number {
  const mu = within("frictionCoefficient", frictionCoefficient);
  const R = within("pinRadius", outerRadius);
  const r = within("pinRadius", innerRadius, 0, R);
  // (R³ − r³) / (R² − r²) without the common factor R − r: it keeps its value for a thin collar.
  return ((2 / 3) * mu * within("tension", axialForce) * (R * R + R * r + r * r)) / (R + r);
}

/**
 * Friction coefficient of a bearing from the moment that was measured under a load.
 *
 *     μ_b = M / (F · r)
 *
 * @param frictionMoment  M [N m], 0 or more
 * @param bearingLoad  F [N], above 0
 * @param pinRadius  r, where that coefficient is taken [m], above 0
 * @returns friction coefficient [-]
 * @throws ValueError outside these ranges, or for a coefficient above 1
 * Source: poysti-2020, bearing of a sheave. Example: frictionOfMoment({ frictionMoment: 0.252, bearingLoad: 4903.3, pinRadius: 0.01 }) → 0.00514
 */
export function frictionOfMoment({
  frictionMoment,
  bearingLoad,
  pinRadius,
}: {
  readonly frictionMoment: number;
  readonly bearingLoad: number;
  readonly pinRadius: number;
}): number {
  const moment = within("frictionMoment", frictionMoment);
  return within("bearingFriction", moment / (within("blockLoad", bearingLoad, 1e-9) * within("pinRadius", pinRadius)));
}

/** Lip seals on the pin of a sheave. */
export interface SealInput {
  readonly sealFriction: number;
  readonly pinDiameter: number;
  /** Diameter at the middle of the rope [m]. */
  readonly pitchDiameter: number;
  /** Number of seals; 2 when absent. */
  readonly seals?: number;
}

/**
 * Pull that turns a sheave against its seals, whatever the load.
 *
 *     c = N · π · q · d_pin² / D
 *
 * @param sealFriction  q, friction for each length of lip [N/m], 0 or more
 * @param pinDiameter  d_pin, where the lips touch [m], above 0
 * @param pitchDiameter  D [m], above 0
 * @param seals  N [-], 0 to 8; 2 when absent
 * @returns constant drag [N]
 * @throws ValueError outside these ranges
 * Source: feyrer-wire-ropes, eq. 3.101. Example: sealDrag({ sealFriction: 10, pinDiameter: 0.05, pitchDiameter: 0.2 }) → 0.785
 */
export function sealDrag({ sealFriction, pinDiameter, pitchDiameter, seals = 2 }: SealInput): number {
  const pin = within("sheaveDiameter", pinDiameter);
  const count = within("lineCount", seals, 0);
  return (count * Math.PI * within("sealFriction", sealFriction) * pin * pin) / within("sheaveDiameter", pitchDiameter);
}
