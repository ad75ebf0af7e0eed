import { within } from "../quantity/guard.js";

/** Wind over the ground as seen from the boat. */
export interface TrueWind {
  /** True wind speed [m/s]. */
  readonly windSpeed: number;
  /** Angle from the bow to the true wind [rad]. */
  readonly trueWindAngle: number;
}

/** Wind felt on the boat. */
export interface ApparentWind {
  /** Apparent wind speed [m/s]. */
  readonly apparentWindSpeed: number;
  /** Angle from the bow to the apparent wind [rad]. */
  readonly apparentWindAngle: number;
}

/** Speed of the boat. */
interface BoatMotion {
  /** Speed of the boat ahead, astern below zero [m/s]. */
  readonly boatSpeed: number;
}

/** Input of the apparent wind. */
export interface ApparentWindInput extends TrueWind, BoatMotion {}

/** Input of the true wind. */
export interface TrueWindInput extends ApparentWind, BoatMotion {}

/** Input of the apparent wind on a heeled boat. */
export interface HeeledWindInput extends ApparentWind {
  /** Angle of the mast from upright [rad]. */
  readonly heelAngle: number;
}

/**
 * Apparent wind from true wind and boat speed.
 *
 *     V_A² = (V_T · sin β_T)² + (V_T · cos β_T + V_B)²,  tan β_A = V_T · sin β_T / (V_T · cos β_T + V_B)
 *
 * @param windSpeed      V_T [m/s], 0 to 60
 * @param trueWindAngle  β_T, from the bow [rad], 0 to π
 * @param boatSpeed      V_B, ahead [m/s], −30 to 60
 * @returns apparent wind speed V_A [m/s] and angle β_A from the bow [rad], 0 to π; the angle is 0 where there is no wind
 * Valid for a boat that moves along its bow: leeway and current are left out.
 * Source: orc-speed-guide, Appendix A.
 * Example: apparentWind({ windSpeed: 10, trueWindAngle: Math.PI / 2, boatSpeed: 10 }).apparentWindSpeed → 14.142
 */
export function apparentWind({ windSpeed, trueWindAngle, boatSpeed }: ApparentWindInput): ApparentWind {
  const { speed, angle } = addAlongBow({
    speed: within("windSpeed", windSpeed),
    angle: within("trueWindAngle", trueWindAngle),
    ahead: within("boatSpeed", boatSpeed),
  });
  return { apparentWindSpeed: speed, apparentWindAngle: angle };
}

/**
 * True wind from apparent wind and boat speed.
 *
 *     V_T² = (V_A · sin β_A)² + (V_A · cos β_A − V_B)²,  tan β_T = V_A · sin β_A / (V_A · cos β_A − V_B)
 *
 * @param apparentWindSpeed  V_A [m/s], 0 to 100
 * @param apparentWindAngle  β_A, from the bow [rad], 0 to π
 * @param boatSpeed          V_B, ahead [m/s], −30 to 60
 * @returns true wind speed V_T [m/s] and angle β_T from the bow [rad], 0 to π; the angle is 0 where there is no wind
 * Valid for a boat that moves along its bow: leeway and current are left out.
 * Source: orc-speed-guide, Appendix A.
 * Example: trueWind({ apparentWindSpeed: 10, apparentWindAngle: Math.PI / 3, boatSpeed: 5 }).windSpeed → 8.660
 */
export function trueWind({ apparentWindSpeed, apparentWindAngle, boatSpeed }: TrueWindInput): TrueWind {
  const { speed, angle } = addAlongBow({
    speed: within("apparentWindSpeed", apparentWindSpeed),
    angle: within("apparentWindAngle", apparentWindAngle),
    ahead: -within("boatSpeed", boatSpeed),
  });
  return { windSpeed: speed, trueWindAngle: angle };
}

/**
 * Apparent wind in the plane square to the mast of a heeled boat.
 *
 *     tan β_H = tan β_A · cos φ,  V_H² = V_A² · (cos² β_A + sin² β_A · cos² φ)
 *
 * @param apparentWindSpeed  V_A, level with the water [m/s], 0 to 100
 * @param apparentWindAngle  β_A, level with the water [rad], 0 to π
 * @param heelAngle          φ [rad], 0 to π/2
 * @returns the part of the wind that the sails feel: speed V_H [m/s] and angle β_H from the bow [rad]
 * Valid without trim by the bow; at 90° of heel only the wind along the boat is left, from ahead (0) or astern (π).
 * Source: apparent-wind-tests, heeled apparent wind.
 * Example: heeledApparentWind({ apparentWindSpeed: 10, apparentWindAngle: Math.PI / 4, heelAngle: Math.PI / 3 }).apparentWindSpeed → 7.906
 */
export function heeledApparentWind({ apparentWindSpeed, apparentWindAngle, heelAngle }: HeeledWindInput): ApparentWind {
  const v = within("apparentWindSpeed", apparentWindSpeed);
  const beta = within("apparentWindAngle", apparentWindAngle);
  const across = v * Math.sin(beta) * Math.cos(within("heelAngle", heelAngle));
  const along = v * Math.cos(beta);
  return { apparentWindSpeed: Math.hypot(along, across), apparentWindAngle: Math.atan2(across, along) };
}

/** A wind, and a head wind to add to it. */
interface WindAndHeadWind {
  readonly speed: number;
  readonly angle: number;
  readonly ahead: number;
}

function addAlongBow({ speed, angle, ahead }: WindAndHeadWind): { speed: number; angle: number } {
  const across = speed * Math.sin(angle);
  const along = speed * Math.cos(angle) + ahead;
  return { speed: Math.hypot(along, across), angle: Math.atan2(across, along) };
}
