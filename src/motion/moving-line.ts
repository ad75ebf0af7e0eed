import { standardGravity } from "../quantity/constants.js";
import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import type { PreparedLine } from "../reeving/line.js";

/** What hangs on the load end, as functions of the travel: metres hauled in since the start, below zero when gone out. */
export interface MovingLoad {
  /** Mass that moves with the load end [kg]. */
  readonly mass: (travel: number) => number;
  /** Mass that joins for each metre hauled in, such as a sail drawn out of its bag [kg/m]; none when absent. */
  readonly gain?: (travel: number) => number;
  /** Pull of gravity against hauling [N]; none when absent. */
  readonly weight?: (travel: number) => number;
  /** Pull of the wind against hauling [N]; none when absent. */
  readonly wind?: (travel: number) => number;
  /** Friction of sail, hanks or luff that stands against either motion [N]; none when absent. */
  readonly rub?: (travel: number) => number;
  /** Drag of the air over the square of the speed [N s²/m²]; none when absent. */
  readonly drag?: number;
}

/** The rope itself, as far as its mass counts. */
export interface MovingRope {
  /** [kg/m], wet when it is wet. */
  readonly linearDensity: number;
  /** Length between the load end and the first station at the start [m]. */
  readonly loadSide: number;
  /** Part of that length that it hangs down [-]: 1 upright, 0 level. */
  readonly loadSlope: number;
  /** Length between the first station and the hand that moves at the speed of the hand [m]. */
  readonly handSide: number;
  /** Height of the last station above the hand [m]; below zero when the hand is higher. */
  readonly handDrop: number;
}

/** A line with all that it moves. */
export interface MovingLine {
  readonly line: PreparedLine;
  readonly load: MovingLoad;
  readonly rope?: MovingRope;
  /** Mass that moves with the hand [kg]; none when absent. */
  readonly handMass?: number;
  /** Acceleration of gravity that acts on the rope [m/s²]; the standard one when absent. */
  readonly gravity?: number;
}

/** Which way a line moves. */
export type Way = "in" | "out";

/** What a line does at one moment. */
export interface Moment {
  /** Of the load end, above zero towards hauling [m/s²]. */
  readonly acceleration: number;
  /** At the hand [N]; more than was offered where the hand has to follow a line that runs slack. */
  readonly handForce: number;
  readonly loadTension: number;
  /** Work a second, each as it enters the balance of energy [W]. */
  readonly power: {
    readonly gravity: number;
    readonly wind: number;
    readonly sail: number;
    readonly stations: number;
    readonly joining: number;
  };
}

/** Where the line is, how fast its load end moves, what the hand offers and what draws at the load end besides. */
export interface Situation {
  readonly travel: number;
  /** Speed of the load end, 0 or more whichever way [m/s]. */
  readonly speed: number;
  readonly way: Way;
  readonly hand: number;
  /** Pull at the load end against hauling, by a crew [N]. */
  readonly retrieval: number;
}

const none = () => 0;

/** A line with all functions there, ready for the integration. */
export interface ReadyLine {
  /** Mass that moves, brought to the speed of the load end [kg]. */
  readonly movingMass: (travel: number) => number;
  readonly velocityRatio: number;
  /** What it does in a situation: the answer holds until the next question, so that thousands of them make no garbage. */
  readonly moment: (situation: Situation) => Moment;
}

/**
 * Makes a moving line ready: what it does at every travel, speed and hand force.
 *
 *     T_load = W + P ± R ± b v² + M_load a,   T_hand = F + H − M_hand VR a,   both bound by the statics of the line
 *
 * The stations lose what they lose in the statics, by direction of motion. A line cannot push: where the load runs
 * faster than the line, the tension is nothing and the hand follows. What joins the motion from rest (a sail out of its bag, the tail
 * of a line that runs out) has to be set moving; what comes to rest takes its energy along.
 *
 * @param moving  line, load [kg, N], rope [kg/m, m] and mass at the hand [kg]
 * @returns functions of travel [m], speed [m/s] and forces [N]
 * @throws ValueError for a mass that is not above zero, or another number that cannot be
 * Valid for a line that does not stretch; the rope between stations counts with the hand side. In a purchase the mass of
 * the moving rope is taken as at the start.
 * Source: statics, with the inertia of load and rope at both ends.
 */
export function readyLine({ line, load, rope, handMass = 0, gravity = standardGravity }: MovingLine): ReadyLine {
  const VR = line.velocityRatio;
  const density = rope === undefined ? 0 : within("linearDensity", rope.linearDensity);
  const loadSide = lengthOf(rope?.loadSide);
  const handSide = lengthOf(rope?.handSide);
  const slope = rope === undefined ? 0 : within("share", rope.loadSlope);
  const passes = VR === 1 ? density : 0;
  const hang = density * gravity * (rope === undefined ? 0 : within("travel", rope.handDrop));
  const handInertia = (within("mass", handMass) + density * handSide) * VR;
  const { weight = none, wind = none, rub = none, gain = none } = load;
  const drag = within("fallDrag", load.drag ?? 0);
  const left = (travel: number) => Math.max(0, loadSide - (VR === 1 ? travel : 0));
  const loadInertia = (travel: number) => load.mass(travel) + density * left(travel);
  refuseNoMass(load.mass(0));

  const now = { still: 0, mass: 1, offered: 0 };
  /** What is missing at the hand or left at the load for an acceleration, by the way of the motion. */
  const surpluses = {
    in: (a: number) =>
      line.handForce(Math.max(0, now.still + now.mass * a), "hauling") - (now.offered - handInertia * a),
    out: (a: number) => now.still + now.mass * a - line.runOutLoad(Math.max(0, now.offered - handInertia * a)),
  };
  const power = { gravity: 0, wind: 0, sail: 0, stations: 0, joining: 0 };
  const found = { acceleration: 0, handForce: 0, loadTension: 0, power };

  const moment = ({ travel, speed, way, hand, retrieval }: Situation): Moment => {
    const mass = loadInertia(travel);
    const pulledDown = weight(travel) + density * gravity * slope * left(travel);
    const blown = wind(travel);
    const joins = gain(travel);
    const against = rub(travel) + drag * speed * speed;
    const tailPull = way === "out" ? density * (VR * speed) ** 2 : 0;
    const sailPull = way === "in" ? joins * speed * speed : 0;
    const still = pulledDown + blown + retrieval + sailPull + (way === "in" ? against : -against);
    const offered = hand + hang + tailPull;
    now.still = still;
    now.mass = mass;
    now.offered = offered;
    const limp = -still / mass;
    const surplus = surpluses[way];
    const missing = surplus(limp);
    const acceleration = missing >= 0 ? limp : root(surplus, limp, missing, (Math.abs(still) + hand + 1) / mass);
    const loadTension = Math.max(0, still + mass * acceleration);
    const handTension = way === "in" ? line.handForce(loadTension, "hauling") : offered - handInertia * acceleration;
    const sign = way === "in" ? 1 : -1;
    found.acceleration = acceleration;
    found.handForce = way === "in" ? Math.max(hand, handTension - hang + handInertia * acceleration) : hand;
    found.loadTension = loadTension;
    power.gravity = sign * (hang * VR - pulledDown) * speed;
    power.wind = -sign * blown * speed;
    power.sail = against * speed;
    power.stations = sign * (VR * handTension - loadTension) * speed;
    power.joining = (tailPull * VR + sailPull) * speed - (sign / 2) * (joins - passes) * speed ** 3;
    return found;
  };
  return { movingMass: (travel) => loadInertia(travel) + handInertia * VR, velocityRatio: VR, moment };
}

function lengthOf(length: number | undefined): number {
  return length === undefined || length === 0 ? 0 : within("lineLength", length);
}

function refuseNoMass(mass: number): void {
  if (mass > 0 && Number.isFinite(mass)) return;
  throw new ValueError({
    quantity: "mass at the load end (sailMass)",
    value: `${mass} kg`,
    allowed: "a finite number above 0 kg",
    advice: "Give the mass of the sail or load; nothing without mass can be followed in its motion.",
  });
}

/** Root of a rising function, from a place where its value is below zero. */
function root(rising: (x: number) => number, start: number, below: number, width: number): number {
  let low = start;
  let fLow = below;
  let step = width;
  let high = low + step;
  let fHigh = rising(high);
  while (fHigh < 0 && step < 1e18) {
    low = high;
    fLow = fHigh;
    step *= 4;
    high = low + step;
    fHigh = rising(high);
  }
  let side = 0;
  for (let count = 0; count < 200; count++) {
    const middle = count % 8 === 7 ? (low + high) / 2 : (low * fHigh - high * fLow) / (fHigh - fLow);
    if (!(high - low > 1e-14 * (Math.abs(low) + Math.abs(high)))) return middle;
    const value = rising(middle);
    if (Math.abs(value) < 1e-11) return middle;
    if (value < 0) {
      low = middle;
      fLow = value;
      if (side === -1) fHigh /= 2;
      side = -1;
    } else {
      high = middle;
      fHigh = value;
      if (side === 1) fLow /= 2;
      side = 1;
    }
  }
  return (low + high) / 2;
}
