import { blockLosses } from "../materials/block-losses.js";
import { practice } from "../materials/practice.js";
import { fastExp } from "../numerics/exponential.js";
import { sheaveRatio } from "./bearing.js";
import { bendingLaw } from "./bending.js";
import { cheekContact } from "./cheek.js";
import { type Law, noLoss } from "./law.js";
import type { FactorName } from "./scaled.js";
import type { Measured, Rope, Turn } from "./station.js";
import { turnLoss } from "./turn.js";

/** Cases that are worked through together: the scratch arrays stay in the processor's cache. */
export const chunkSize = 512;

/** One factor of a chunk: values from `base` on. */
export interface FactorColumn {
  values: Float64Array;
  base: number;
}

/** The factors of a chunk, by cause. */
export type FactorColumns = Readonly<Record<FactorName, FactorColumn>>;

/** T_hand = slope · T_load + offset, for a chunk of cases. */
export interface AffineColumns {
  readonly slope: Float64Array;
  readonly offset: Float64Array;
}

/** The law of one turn for a chunk of cases. */
export interface LawColumns {
  readonly hauling: AffineColumns;
  readonly easing: AffineColumns;
  /** Fills the columns for a chunk; allocates nothing. */
  fill(factors: FactorColumns, count: number): void;
}

/** Whether a turn rolls or its rope slides: a ratchet does either. */
export type Mode = "free" | "gripped";

/**
 * Columns of the law of one turn, for many sets of factors.
 *
 * The same physics as for a single turn: what does not depend on the factors is worked out once, here.
 *
 * @param turn  sheave, ring, ratchet or measured turn [m, rad, N]
 * @param rope  rope on it [m]
 * @param mode  for a ratchet: free, or gripped
 * @returns columns and their filler
 * @throws ValueError for an impossible turn, as for a single one
 */
export function lawColumns(turn: Turn, rope: Rope, mode: Mode): LawColumns {
  turnLoss({ turn, rope });
  const columns = (): AffineColumns => ({ slope: new Float64Array(chunkSize), offset: new Float64Array(chunkSize) });
  const hauling = columns();
  const easing = columns();
  const put = putterOf(turn, rope, hauling, easing);
  return { hauling, easing, fill: fillerOf(turn, rope, mode, put) };
}

/** Name of a law: turns of one name share their columns. */
export function lawKey(turn: Turn, mode: Mode): string {
  const { name: _name, ...rest } = turn;
  if (rest.kind !== "ratchet") return JSON.stringify(rest);
  const { treadFriction, engageLoad: _engageLoad, ...sheave } = rest;
  return JSON.stringify(mode === "free" ? { ...sheave, kind: "sheave" } : { ...sheave, treadFriction });
}

/** Stores the law of one case, from the own ratio of its turn and the factors of bending and drag. */
type Put = (i: number, own: number, bendFactor: number, dragFactor: number) => void;

/** The loss that a turn has besides bending, cheeks, shared lines and constant drag. */
function fillerOf(turn: Turn, rope: Rope, mode: Mode, put: Put): LawColumns["fill"] {
  if (turn.kind === "measured") {
    const extra = turn.tensionRatio - 1;
    return ({ bearing, bending, drag }, count) => {
      for (let i = 0; i < count; i++) {
        const own = 1 + bearing.values[bearing.base + i]! * extra;
        put(i, own, bending.values[bending.base + i]!, drag.values[drag.base + i]!);
      }
    };
  }
  if (turn.kind === "ring") return capstan(turn.frictionCoefficient * turn.wrapAngle, "sliding", put);
  if (turn.kind === "ratchet" && mode === "gripped") return capstan(turn.treadFriction * turn.wrapAngle, "tread", put);
  const unit = turn.bearingFriction * (turn.pinRadius / ((turn.diameter + rope.diameter) / 2));
  const sine = Math.abs(Math.sin(turn.wrapAngle / 2));
  const sliding = Math.exp(blockLosses.grooveFriction.value * turn.wrapAngle);
  return ({ bearing, bending, drag }, count) => {
    for (let i = 0; i < count; i++) {
      const own = sheaveRatio(unit * bearing.values[bearing.base + i]!, sine, sliding);
      put(i, own, bending.values[bending.base + i]!, drag.values[drag.base + i]!);
    }
  };
}

function capstan(angle: number, name: "sliding" | "tread", put: Put): LawColumns["fill"] {
  return (factors, count) => {
    const { bending, drag } = factors;
    const { values, base } = factors[name];
    for (let i = 0; i < count; i++) {
      const own = fastExp(angle * values[base + i]!);
      put(i, own, bending.values[bending.base + i]!, drag.values[drag.base + i]!);
    }
  };
}

/**
 * Adds bending, cheeks, shared lines and constant drag to a ratio, in the order of a single turn; easing undoes
 * hauling: T_hand = (T_load − c) / k.
 */
function putterOf(turn: Turn, rope: Rope, hauling: AffineColumns, easing: AffineColumns): Put {
  const constant = turn.drag ?? 0;
  const bending = turn.kind === "measured" ? noLoss : bendingOf(turn, rope);
  const bend = bending.ratio - 1;
  const bendDrag = bending.drag;
  const cheek = turn.kind === "measured" ? 1 : cheekOf(turn, rope);
  const extra = turn.kind !== "measured" && (turn.lines ?? 1) > 1 ? practice.sharedLeadFactor.value - 1 : 0;
  const { slope, offset } = hauling;
  const { slope: easingSlope, offset: easingOffset } = easing;
  return (i, own, bendFactor, dragFactor) => {
    const rubbed = own * cheek;
    const alone = rubbed * (1 + bend * bendFactor);
    const shared = extra === 0 ? 1 : alone ** extra;
    const ratio = alone * shared;
    const drag = rubbed * bendDrag * bendFactor * (shared + extra) + constant * dragFactor;
    const inverse = 1 / ratio;
    slope[i] = ratio;
    offset[i] = drag;
    easingSlope[i] = inverse;
    easingOffset[i] = -drag * inverse;
  };
}

function bendingOf(turn: Exclude<Turn, Measured>, { diameter: ropeDiameter, stiffness }: Rope): Law {
  return bendingLaw({ ropeDiameter, sheaveDiameter: turn.diameter, wrapAngle: turn.wrapAngle, stiffness });
}

function cheekOf(turn: Exclude<Turn, Measured>, { diameter: ropeDiameter }: Rope): number {
  if (turn.kind === "ring" || turn.grooveWidth === undefined) return 1;
  return cheekContact({ ropeDiameter, grooveWidth: turn.grooveWidth, wrapAngle: turn.wrapAngle }).ratio;
}
