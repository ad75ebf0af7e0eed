import { within } from "../quantity/guard.js";

/** Hand force [N] that a crew can give at a hand speed [m/s]. */
export type HandLaw = (speed: number) => number;

/** How a crew pulls: the ends and the bend of the curve of force over speed. */
export interface Pull {
  /** Force on a line that does not move, F_p [N]. */
  readonly greatestPull: number;
  /** Speed at which the hand no longer pulls, v_p [m/s]. */
  readonly greatestSpeed: number;
  /** a / F_p = b / v_p [-]. */
  readonly curvature: number;
}

/** A pull in strokes, hand over hand. */
export interface Strokes {
  /** Line taken in with one pull [m]. */
  readonly strokeLength: number;
  /** Pulls a second when nothing resists [1/s]. */
  readonly cycleRate: number;
  /** Share of such a cycle in which a hand pulls [-]. */
  readonly pullingShare: number;
}

/**
 * Force of a hand that pulls, by Hill's equation.
 *
 *     (F + a)(v + b) = (F_p + a) b,   F / F_p = (1 − u) / (1 + u / k),   u = v / v_p,   k = a / F_p = b / v_p
 *
 * @param pull  greatest pull F_p [N], greatest speed v_p [m/s], curvature k [-]
 * @returns a function from hand speed [m/s] to hand force [N]: nothing from v_p on; F_p when the line draws the hand along
 * @throws ValueError for a pull, speed or curvature that cannot be
 * Valid for a whole body that hauls only in so far as its muscles do; that a hand that is drawn along holds more is left out.
 * Source: mcmahon-1984, p. 24. Example: hillForce({ greatestPull: 250, greatestSpeed: 3, curvature: 0.25 })(1.5) → 41.667
 */
export function hillForce({ greatestPull, greatestSpeed, curvature }: Pull): HandLaw {
  const F = within("pullForce", greatestPull);
  const v = within("pullSpeed", greatestSpeed);
  const k = within("curvature", curvature);
  return (speed) => {
    const u = Math.max(0, speed) / v;
    return u >= 1 ? 0 : (F * (1 - u)) / (1 + u / k);
  };
}

/**
 * Hand speed at which a pull gives most power, over the greatest speed; the force there is the same share of the greatest.
 *
 *     v / v_p = F / F_p = k (√(1 + 1/k) − 1)
 *
 * @param curvature  k = a / F_p [-], 0.01 to 10
 * @returns share of the greatest speed [-]
 * @throws ValueError outside this range
 * Source: mcmahon-1984, the equation with its power made greatest. Example: bestSpeedShare(0.25) → 0.309
 */
export function bestSpeedShare(curvature: number): number {
  const k = within("curvature", curvature);
  return k * (Math.sqrt(1 + 1 / k) - 1);
}

/**
 * Power of a hand.
 *
 *     P = F · v
 *
 * @param handForce  F [N], 0 to 1e6
 * @param handSpeed  v [m/s], 0 to 100
 * @returns power [W]: work of a hand that hauls, or heat in a hand through which the line slides
 * @throws ValueError outside these ranges
 * Source: statics, work a second. Example: handPower({ handForce: 60, handSpeed: 2 }) → 120
 */
export function handPower({
  handForce,
  handSpeed,
}: {
  readonly handForce: number;
  readonly handSpeed: number;
}): number {
  return within("handTension", handForce) * within("handSpeed", handSpeed);
}

/**
 * Time between two pulls in which one hand reaches and the other only holds.
 *
 *     t = (1 − s) / f
 *
 * @param strokes  cycle rate f [1/s], 0.05 to 10, and share of the cycle that pulls s [-], 0 to 1
 * @returns time [s]
 * @throws ValueError outside these ranges
 * Source: common practice, hand over hand. Example: reachTime({ strokeLength: 0.6, cycleRate: 1.5, pullingShare: 0.6 }) → 0.267
 */
export function reachTime({ cycleRate, pullingShare }: Strokes): number {
  return (1 - within("share", pullingShare)) / within("cycleRate", cycleRate);
}

/**
 * Hand force over the mean speed of a pull in strokes: what strokes come to when starting and stopping cost nothing.
 *
 *     v_mean = s / (s / v + t),   F_mean(v_mean) = F(v)
 *
 * @param law  force over speed within a stroke
 * @param strokes  stroke length s [m], cycle rate [1/s] and share that pulls [-], for the time t between two pulls
 * @returns a function from mean hand speed [m/s] to hand force [N]
 * @throws ValueError for strokes that cannot be
 * Source: common practice, hand over hand. Example: meanForce(hillForce({ greatestPull: 250, greatestSpeed: 3, curvature: 0.25 }), { strokeLength: 0.6, cycleRate: 1.5, pullingShare: 0.6 })(0.9) → 41.667
 */
export function meanForce(law: HandLaw, strokes: Strokes): HandLaw {
  const s = within("strokeLength", strokes.strokeLength);
  const t = reachTime(strokes);
  return (mean) => {
    const left = s - Math.max(0, mean) * t;
    return left <= 0 ? 0 : law((Math.max(0, mean) * s) / left);
  };
}
