import { type QuantityName, vocabulary } from "../quantity/vocabulary.js";
import type { Line } from "../reeving/line.js";
import type { Direction } from "../reeving/mechanism-loads.js";
import type { Ratchet, Ring, Rope, Sheave, Turn } from "../reeving/station.js";
import { turnLoss } from "../reeving/turn.js";
import type { Band } from "../sources/band.js";
import { formulas } from "./catalogue.js";
import { formula } from "./formula.js";
import { tackleBalance } from "./tackle-balance.js";
import { worked } from "./worked.js";
import type { Working } from "./working.js";

/** A record or a working that a number of a line may come from. */
export type NumberSource = Working | Band;

const lossOf = (sign: string, words: string) => ({ quantity: "tensionRatio", sign, words }) as const;
const slidingLoss = lossOf("k_s", "sliding, or the bearing");

const twoLosses = formula({
  id: "two-losses",
  title: "Ratio of one turn",
  text: "bending * own",
  symbols: { bending: lossOf("k_b", "bending of the rope"), own: slidingLoss },
  result: "tensionRatio",
  source: "statics",
  valid: "losses one after the other",
  mirrors: "turnLoss",
});
const twoDrags = formula({
  id: "two-drags",
  title: "Drag of one turn",
  text: "own * bendingDrag + drag",
  symbols: {
    own: slidingLoss,
    bendingDrag: { quantity: "constantDrag", sign: "c_b", words: "bending loss that does not grow with load" },
    drag: { quantity: "constantDrag", sign: "c_d", words: "grit and seals" },
  },
  result: "constantDrag",
  source: "statics",
  valid: "losses one after the other",
  mirrors: "turnLoss",
});
const pinMoment = formula({
  id: "pin-moment",
  title: "Friction of a bearing over the pull, at the rope",
  text: "bearingFriction * pinRadius / (pitch / 2)",
  symbols: {
    bearingFriction: "bearingFriction",
    pinRadius: "pinRadius",
    pitch: { quantity: "sheaveDiameter", sign: "D_pitch", words: "diameter at the middle of the rope" },
  },
  result: { quantity: "bearingFriction", sign: "m", words: "friction of the bearing at the rope" },
  source: "statics",
  valid: "friction that follows the load",
});
const bearingTurn = formula({
  id: "bearing-turn",
  title: "Bearing of a sheave",
  text: "(1 - moment^2 + 2 * (moment * sin(wrapAngle / 2))^2 + 2 * moment * sin(wrapAngle / 2) * sqrt(1 - moment^2 + (moment * sin(wrapAngle / 2))^2)) / (1 - moment^2)",
  symbols: {
    moment: { quantity: "bearingFriction", sign: "m", words: "friction of the bearing at the rope" },
    wrapAngle: "wrapAngle",
  },
  result: "tensionRatio",
  source: "donzelli-1999",
  valid: "up to half a turn",
  mirrors: "bearingRatio",
});

/** Ratio [-] and drag [N] of a turn, each with its working where there is one. */
export type LawWorking = Readonly<Record<"ratio" | "drag", Working | number>>;

const nearness = 1e-9;
const same = (one: number, other: number) => Math.abs(one - other) <= nearness * Math.max(1, Math.abs(other));

/** A turn of a line, and the way the line moves. */
export interface TurnOnLine {
  readonly turn: Turn;
  readonly rope: Rope;
  readonly direction: Direction;
  /** Records and workings that numbers of the turn come from; a number that none of them has stands alone. */
  readonly sources?: readonly NumberSource[];
}

/**
 * The working of the law of one turn: from the sources where the turn is a plain one, else the bare numbers of the model.
 *
 *     T_pulled = k · T_other + c
 *
 * @param turn  sheave, ring, ratchet or a measured turn [m, rad, N]
 * @param rope  diameter [m] and stiffness
 * @param direction  hauling or easing
 * @param sources  records and workings of the turn's numbers
 * @returns ratio [-] and drag [N]
 * @throws ValueError for a turn that cannot exist
 * Example: turnWorking({ turn: { kind: "measured", name: "lead", tensionRatio: 1.1 }, rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, direction: "hauling" }).ratio → 1.1
 */
export function turnWorking({ turn, rope, direction, sources = [] }: TurnOnLine): LawWorking {
  const { haul, ease, grip } = turnLoss({ turn, rope }).law;
  const law = direction === "hauling" ? haul : ease;
  const plain = { ratio: law.ratio, drag: law.drag };
  if (turn.kind === "measured" || grip !== undefined) return plain;
  const from: Sought = (value, quantity) => sourceOf(value, quantity, sources);
  const size = { ropeDiameter: rope.diameter, sheaveDiameter: turn.diameter };
  const { tensionTerm, constantTerm, diameterTerm } = rope.stiffness;
  const own = ownLoss(turn, direction, size, from);
  const ratio = worked(twoLosses, {
    bending: worked(formulas.bending, { ...size, bendingCoefficient: from(tensionTerm, "bendingCoefficient") }),
    own,
  });
  const bendingDrag = worked(formulas.bendingDrag, {
    ...size,
    bendingDrag: from(constantTerm, "bendingDrag"),
    bendingDragOfSize: from(diameterTerm, "bendingDragOfSize"),
  });
  const drag = worked(twoDrags, { own, bendingDrag, drag: from(turn.drag ?? 0, "constantDrag") });
  return same(ratio.value, law.ratio) && same(drag.value, law.drag) ? { ratio, drag } : plain;
}

type Sought = (value: number, quantity: QuantityName) => NumberSource | number;

/** The record of a number, or its own working, where there is one of the same unit; else the number alone. */
function sourceOf(value: number, quantity: QuantityName, sources: readonly NumberSource[]): NumberSource | number {
  const { unit } = vocabulary[quantity];
  return sources.find((one) => one.value === value && !("unit" in one && one.unit !== unit)) ?? value;
}

/** Loss of a turn beside bending: a rope slides on a ring, and on a ratchet that holds; else the sheave turns on its bearing. */
function ownLoss(
  turn: Ring | Sheave | Ratchet,
  direction: Direction,
  size: Readonly<Record<"ropeDiameter" | "sheaveDiameter", number>>,
  from: Sought,
): Working {
  const { wrapAngle } = turn;
  if (turn.kind === "ring")
    return worked(formulas.capstan, {
      frictionCoefficient: from(turn.frictionCoefficient, "frictionCoefficient"),
      wrapAngle,
    });
  if (turn.kind === "ratchet" && direction === "easing")
    return worked(formulas.capstan, {
      frictionCoefficient: from(turn.treadFriction, "frictionCoefficient"),
      wrapAngle,
    });
  const moment = worked(pinMoment, {
    bearingFriction: from(turn.bearingFriction, "bearingFriction"),
    pinRadius: turn.pinRadius,
    pitch: worked(formulas.pitchDiameter, size),
  });
  return worked(bearingTurn, { moment, wrapAngle });
}

/** A line under a load. */
export interface LineUnderLoad {
  readonly line: Line;
  /** [N], or the working that gave it. */
  readonly load: number | Working;
  readonly direction: Direction;
  /** Records and workings that numbers of the line come from; a number that none of them has stands alone. */
  readonly sources?: readonly NumberSource[];
}

/**
 * The working of what a line asks of the hand: from the load on, station by station.
 *
 *     T_pulled = k · T_other + c   at each turn; a purchase by the balance of its blocks
 *
 * @param line  rope and stations [m, rad, N]
 * @param load  at the sail end [N], or the working that gave it
 * @param direction  hauling or easing
 * @param sources  records and workings of the line's numbers
 * @returns the working of the hand force [N]; the bare load for a line without stations
 * @throws OutsideModelError when a part of a purchase hangs slack
 * Example: lineWorking({ line: { rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1 }] }, load: 100, direction: "hauling" }).value → 110
 */
export function lineWorking({ line, load, direction, sources = [] }: LineUnderLoad): Working {
  const { rope, stations } = line;
  const pulled = stations.reduce<Working | number>((tension, station) => {
    if (station.kind === "tackle") return tackleBalance({ reeving: station.reeving, rope, load: tension, direction });
    if (station.kind === "cleat") return tension;
    const { ratio, drag } = turnWorking({ turn: station, rope, direction, sources });
    const law = direction === "hauling" ? formulas.haulingTurn : formulas.easingTurn;
    return worked(law, { tensionRatio: ratio, loadTension: tension, constantDrag: drag });
  }, load);
  return typeof pulled === "number" ? worked(bareRope, { loadTension: pulled }) : pulled;
}

const bareRope = formula({
  id: "bare-rope",
  title: "Pull of a rope that passes nothing",
  text: "loadTension",
  symbols: { loadTension: "loadTension" },
  result: "handTension",
  source: "statics",
  valid: "a straight rope",
});
