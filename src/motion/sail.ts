import { standardGravity } from "../quantity/constants.js";
import { within } from "../quantity/guard.js";
import { dynamicPressure } from "../wind/air.js";
import type { MovingLoad, MovingRope } from "./moving-line.js";

/** A sail on its halyard. */
export interface HoistedSail {
  /** [kg], wet when it is wet. */
  readonly sailMass: number;
  /** Height through which its head goes [m]. */
  readonly lift: number;
  /** Share of it that hangs on the halyard at the bottom [-]: 1 for a load that moves as a whole, little for a sail in its bag. */
  readonly headShare: number;
  /** Force with which the wind presses the whole sail against rig and stays [N]. */
  readonly pressing: number;
  /** Friction of the sail there [-]. */
  readonly rubbing: number;
  /** Drag of the air over the square of the sail's own speed [N s²/m²]; none when absent. */
  readonly fallDrag?: number;
}

/**
 * The load of a sail that goes up: what hangs on the halyard grows as the sail leaves its bag.
 *
 *     share(h) = s + (1 − s) · h / H,   m = m_sail · share,   W = m g,   R = μ · N_w · share
 *
 * @param sail  mass [kg], lift H [m], share s at the bottom [-], pressing force N_w [N], rubbing μ [-], fall drag [N s²/m²]
 * @returns mass [kg], what joins [kg/m], weight [N] and friction [N] over the travel
 * @throws ValueError for a mass that is not above zero, or another number that cannot be
 * Valid for a sail that unfolds evenly; cloth in the bag rests.
 * Source: common practice, hoisting from a bag. Example: sailGoingUp({ sailMass: 2, lift: 8, headShare: 0, pressing: 100, rubbing: 0.25 }).mass(4) → 1
 */
export function sailGoingUp(sail: HoistedSail): MovingLoad {
  return loadAt(sail, (travel) => travel);
}

/**
 * The load of a sail that comes down from the top: what hangs on the halyard shrinks as the sail comes to lie on deck.
 *
 *     as going up, with h = H − way down
 *
 * @param sail  as for a sail that goes up
 * @returns mass [kg], what joins or leaves [kg/m], weight [N] and friction [N] over the travel, which is below zero on the way down
 * @throws ValueError for a mass that is not above zero, or another number that cannot be
 * Source: common practice, a sail gathered on deck. Example: sailComingDown({ sailMass: 2, lift: 8, headShare: 0, pressing: 100, rubbing: 0.25 }).mass(-4) → 1
 */
export function sailComingDown(sail: HoistedSail): MovingLoad {
  return loadAt(sail, (travel) => sail.lift + travel);
}

function loadAt(sail: HoistedSail, heightAt: (travel: number) => number): MovingLoad {
  const m = within("sailMass", sail.sailMass);
  const H = within("lift", sail.lift);
  const s = within("share", sail.headShare);
  const rub = within("frictionCoefficient", sail.rubbing) * within("pressing", sail.pressing);
  const share = (travel: number) => s + (1 - s) * Math.min(1, Math.max(0, heightAt(travel) / H));
  const mass = (travel: number) => m * Math.max(1e-6, share(travel));
  return {
    mass,
    gain: () => (m * (1 - s)) / H,
    weight: (travel) => mass(travel) * standardGravity,
    rub: (travel) => rub * share(travel),
    drag: within("fallDrag", sail.fallDrag ?? 0),
  };
}

/** Wind on a sail that does not draw. */
export interface PressingInput {
  readonly sailArea: number;
  readonly apparentWindSpeed: number;
  readonly airDensity: number;
  /** Pressing force over dynamic pressure and area [-]. */
  readonly pressingCoefficient: number;
  /** Part of it that is gone in the lee of another sail [-]. */
  readonly blanketed: number;
}

/**
 * Force with which the wind presses a sail that does not draw against rig and stays.
 *
 *     N_w = c · (1 − s) · q · A
 *
 * @param sailArea  A [m²], 0.0001 to 2000
 * @param apparentWindSpeed  for q [m/s], 0 to 100
 * @param airDensity  for q [kg/m³], 0 to 5
 * @param pressingCoefficient  c [-], 0 to 3
 * @param blanketed  s [-], 0 to 1
 * @returns force [N]
 * @throws ValueError outside these ranges
 * Valid as an estimate: how a sail flogs is not known well; its coefficient is a judged range.
 * Source: common practice, a blanketed sail comes down more easily. Example: pressingForce({ sailArea: 18, apparentWindSpeed: 6, airDensity: 1.225, pressingCoefficient: 0.3, blanketed: 0.7 }) → 35.72
 */
export function pressingForce(input: PressingInput): number {
  const c = within("dragCoefficient", input.pressingCoefficient);
  const free = 1 - within("share", input.blanketed);
  return c * free * dynamicPressure(input) * within("sailArea", input.sailArea);
}

/** A halyard: how much of it hangs where. */
export interface HalyardInput {
  /** [kg/m], wet when it is wet. */
  readonly linearDensity: number;
  /** Height of the hoist [m]. */
  readonly lift: number;
  /** Length from the masthead to the hand [m]. */
  readonly handSide: number;
  /** Height of the masthead above the hand, as far as the rope hangs down [m]. */
  readonly handDrop: number;
}

/**
 * The rope of a halyard for the motion, with its sail at the bottom or at the top.
 *
 *     length on the sail's side = H at the bottom, 0 at the top
 *
 * @param halyard  linear density [kg/m], lift H [m], length [m] and height [m] on the hand's side
 * @param sailAt  where the sail is at the start
 * @returns the rope [kg/m, m]
 * Source: common practice, a halyard hangs on both sides of the masthead. Example: halyardRope({ linearDensity: 0.02, lift: 7, handSide: 9, handDrop: 7 }, "top").loadSide → 0
 */
export function halyardRope(halyard: HalyardInput, sailAt: "bottom" | "top"): MovingRope {
  const { linearDensity, lift, handSide, handDrop } = halyard;
  return { linearDensity, loadSide: sailAt === "bottom" ? within("lift", lift) : 0, loadSlope: 1, handSide, handDrop };
}

/**
 * Way that a boat sails in a time, in boat lengths.
 *
 *     n = V · t / L
 *
 * @param boatSpeed  V [m/s], 0 to 60
 * @param duration  t [s], 0 or more
 * @param boatLength  L [m], above 0, up to 200
 * @returns boat lengths [-]
 * @throws ValueError outside these ranges
 * Source: statics, way is speed times time. Example: boatLengths({ boatSpeed: 5, duration: 4.9, boatLength: 4.9 }) → 5
 */
export function boatLengths({
  boatSpeed,
  duration,
  boatLength,
}: {
  readonly boatSpeed: number;
  readonly duration: number;
  readonly boatLength: number;
}): number {
  return (within("boatSpeed", boatSpeed, 0) * within("duration", duration)) / within("boatLength", boatLength);
}
