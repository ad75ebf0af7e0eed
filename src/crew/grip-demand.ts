import { protocolFactor } from "../materials/people-grip.js";
import { palmFactors } from "../materials/people-palm.js";
import { normalShare } from "../numerics/normal.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { gripStrength, type MeanNormName, type Person, sharesOf } from "./grip-strength.js";
import { gripOnDiameter, type HandHold, palmFriction } from "./hand-hold.js";

/** What holding a tension asks of the hand. */
export interface GripDemand {
  /** Grip force of the fingers of one hand [N]. */
  readonly gripForce: Band;
  /** Grip force over the maximum grip on this rope [-]. */
  readonly share: Band;
}

const sure = (value: number): Band => ({ value, low: value, high: value });

/** Bands that decide how well hands hold a rope, by name. */
export function holdCauses(hold: HandHold) {
  return {
    friction: palmFriction(hold),
    thinLine: palmFactors.thinLine,
    oneOverTwo: hold.hands === 2 ? palmFactors.oneOverTwo : sure(1),
  };
}

/** One value of each of them. */
export type HoldValues = Record<keyof ReturnType<typeof holdCauses>, number>;

/** Tension that a newton of grip on a handle holds on this rope [-]. */
export function heldPerNewton(
  { diameter, wrapAngle = 0 }: HandHold,
  { friction, thinLine, oneOverTwo }: HoldValues,
): number {
  const wrap = Math.exp(friction * within("wrapAngle", wrapAngle));
  return (2 * friction * wrap * gripOnDiameter({ diameter, thinLine })) / oneOverTwo;
}

/**
 * Largest tension that hands hold on a rope for a moment.
 *
 *     T = 2 · μ · e^(μ·θ) · k_d · F_max / c,   c = 1 for one hand, one-handed over two-handed strength for two
 *
 * @param hold  cover, diameter [m], hands, glove, wrap [rad]
 * @param maximumGrip  F_max of one rested hand on a handle [N], with its range
 * @returns tension [N] with its range, from friction, thin line and hands
 * @throws ValueError for an impossible grip, diameter or angle
 * Valid for a hand that closes round the rope; two faces carry the friction.
 * Source: buchholz-1988 for the two faces, euler-1769 for the wrap, fothergill-1991 for two hands.
 * Example: holdingTension({ hold: { cover: { strands: 8, fibre: "polyester", wet: false }, diameter: 0.025, hands: 1 }, maximumGrip: { value: 400, low: 400, high: 400 } }).value → 400
 */
export function holdingTension({ hold, maximumGrip }: { readonly hold: HandHold; readonly maximumGrip: Band }): Band {
  within("maximumGrip", maximumGrip.value);
  return bandOf({ ...holdCauses(hold), maximumGrip }, (values) => values.maximumGrip * heldPerNewton(hold, values));
}

/**
 * Grip that it takes to hold a tension, and its share of the most that the hand can do.
 *
 *     F_g = T · e^(−μ·θ) · c / (2 · μ),   f = F_g / (k_d · F_max)
 *
 * @param tension  T in the line at the hand [N], 0 to 1e6
 * @param hold  cover, diameter [m], hands, glove, wrap [rad]
 * @param maximumGrip  F_max of one rested hand on a handle [N], with its range
 * @returns grip force of one hand [N] and share of maximum [-], each with its range; a share above 1 slips
 * @throws ValueError for an impossible tension, grip, diameter or angle
 * Valid for a hand that closes round the rope.
 * Source: buchholz-1988 for the two faces, euler-1769 for the wrap, fothergill-1991 for two hands.
 * Example: gripDemand({ tension: 100, hold: { cover: { strands: 8, fibre: "polyester", wet: false }, diameter: 0.025, hands: 1 }, maximumGrip: { value: 400, low: 400, high: 400 } }).share.value → 0.25
 */
export function gripDemand({
  tension,
  hold,
  maximumGrip,
}: {
  readonly tension: number;
  readonly hold: HandHold;
  readonly maximumGrip: Band;
}): GripDemand {
  within("handTension", tension);
  within("maximumGrip", maximumGrip.value, 1);
  const causes = { ...holdCauses(hold), maximumGrip };
  const share = bandOf(causes, (values) => tension / (values.maximumGrip * heldPerNewton(hold, values)));
  const gripForce = bandOf(
    causes,
    (values) =>
      (tension * gripOnDiameter({ diameter: hold.diameter, thinLine: values.thinLine })) / heldPerNewton(hold, values),
  );
  return { gripForce, share };
}

/**
 * Share of people who can hold a tension for a moment.
 *
 *     1 − Φ((F_g / (k_d · p) − mean) / deviation)
 *
 * @param tension  T in the line at the hand [N], 0 to 1e6
 * @param hold  cover, diameter [m], hands, glove, wrap [rad]
 * @param norm  norm with mean and deviation
 * @param sex  women or men
 * @param age  a [year], in the range of the norm
 * @param hand  right when absent
 * @returns share [-], 0 to 1, with the range that friction, thin line, hands and the way of measuring give
 * @throws ValueError for an impossible tension, diameter or angle; OutsideModelError for an age outside the norm
 * Valid for rested hands of the general population.
 * Source: mathiowetz-1985, steiber-2016; friction judged by palmFriction.
 * Example: holdersOf({ tension: 0, hold: { cover: { strands: 8, fibre: "polyester", wet: false }, diameter: 0.008, hands: 1 }, norm: "steiber-2016", sex: "women", age: 30 }).value → 1
 */
export function holdersOf({
  tension,
  hold,
  norm,
  ...person
}: Person & { readonly tension: number; readonly hold: HandHold; readonly norm: MeanNormName }): Band {
  within("handTension", tension);
  const { mean, deviation } = gripStrength({ norm, ...person });
  const needed = bandOf(
    { ...holdCauses(hold), protocol: protocolFactor },
    ({ protocol, ...values }) => tension / (protocol * heldPerNewton(hold, values)),
  );
  return sharesOf(needed, (grip) => 1 - normalShare((grip - mean.value) / deviation));
}
