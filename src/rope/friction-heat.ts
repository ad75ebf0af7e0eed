import { within } from "../quantity/guard.js";

/**
 * Heat that a running rope makes each second where it rubs.
 *
 *     P = F_lost · v
 *
 * @param lostForce  tension lost there [N], 0 to 1e6
 * @param speed  of the rope over what it rubs [m/s], 0 to 100
 * @returns friction power [W]
 * @throws ValueError outside these ranges
 * Source: statics, work of friction. Example: frictionPower({ lostForce: 60, speed: 3 }) → 180
 */
export function frictionPower({ lostForce, speed }: { readonly lostForce: number; readonly speed: number }): number {
  return within("lostForce", lostForce) * within("ropeSpeed", speed);
}

/**
 * Heat that friction makes while a rope, or a sliding body, moves through a distance.
 *
 *     Q = F_lost · s
 *
 * @param lostForce  force lost to friction [N], 0 to 1e6
 * @param distance  s [m], above 0, up to 1000
 * @returns heat [J]
 * @throws ValueError outside these ranges
 * Source: statics, work of friction. Example: frictionHeat({ lostForce: 981, distance: 10 }) → 9810
 */
export function frictionHeat({
  lostForce,
  distance,
}: {
  readonly lostForce: number;
  readonly distance: number;
}): number {
  return within("lostForce", lostForce) * within("lineLength", distance);
}

/**
 * Warming of a small body that keeps all the heat it gets.
 *
 *     ΔT = Q / (m · c)
 *
 * @param heat  Q [J], 0 or more
 * @param mass  m [kg], above 0
 * @param specificHeat  c [J/(kg K)]
 * @returns temperature rise [K]
 * @throws ValueError outside these ranges
 * Valid for a body that heats through while the heat comes in and loses none to the air: an upper bound of its mean temperature.
 * Source: openstax-brakes, example 14.2. Example: bulkRise({ heat: 1960, mass: 0.056, specificHeat: 900 }) → 38.9
 */
export function bulkRise({
  heat,
  mass,
  specificHeat,
}: {
  readonly heat: number;
  readonly mass: number;
  readonly specificHeat: number;
}): number {
  return within("heat", heat) / (within("mass", mass, 1e-9) * within("specificHeat", specificHeat));
}

/**
 * Warming of a rope that keeps all the heat of one passage, once it has spread through the rope.
 *
 *     ΔT = F_lost / (m' · c): the speed cancels, since a faster rope also carries more mass past
 *
 * @param lostForce  tension lost [N], 0 to 1e6
 * @param linearDensity  m' [kg/m]
 * @param specificHeat  c [J/(kg K)]
 * @returns temperature rise of the whole rope [K]
 * @throws ValueError outside these ranges
 * Source: statics, energy balance of one metre of rope. Example: passageRise({ lostForce: 100, linearDensity: 0.05, specificHeat: 1030 }) → 1.94
 */
export function passageRise({
  lostForce,
  linearDensity,
  specificHeat,
}: {
  readonly lostForce: number;
  readonly linearDensity: number;
  readonly specificHeat: number;
}): number {
  return (
    within("lostForce", lostForce) / (within("linearDensity", linearDensity) * within("specificHeat", specificHeat))
  );
}
