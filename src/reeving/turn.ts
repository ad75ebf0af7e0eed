import { blockLosses } from "../materials/block-losses.js";
import { practice } from "../materials/practice.js";
import { within } from "../quantity/guard.js";
import { sheaveRatio } from "./bearing.js";
import { bendingLaw } from "./bending.js";
import { cheekContact } from "./cheek.js";
import { checkPart } from "./known-part.js";
import { checkedLaw, inSeries, type Law, noLoss, type TurnLaw } from "./law.js";
import { capstanRatio } from "./sliding.js";
import type { Ratchet, Ring, Rope, Sheave, Turn } from "./station.js";

/** A cause of loss that can be switched off. */
export type Cause = "bearing" | "bending" | "sliding" | "cheek" | "shared" | "drag" | "measured";

/** The loss of one cause, taken alone. */
export interface CauseLoss extends Law {
  readonly cause: Cause;
}

/** Loss at a turn, with its causes. */
export interface TurnLoss {
  readonly law: TurnLaw;
  /** Causes while hauling. */
  readonly haulCauses: readonly CauseLoss[];
  /** Causes while easing; for a load-sensing ratchet while it grips. */
  readonly easeCauses: readonly CauseLoss[];
  /** What a reader should know: cheek contact, a shared lead. */
  readonly flags: readonly string[];
}

/** A turn with the rope on it, and causes to leave out. */
export interface TurnInput {
  readonly turn: Turn;
  readonly rope: Rope;
  readonly leaveOut?: readonly Cause[];
}

/**
 * Loss at one turn, from all its causes.
 *
 *     k = Π k_cause,   c = Σ c_cause (each raised by the ratios that follow it)
 *
 * The causes act one after another on the same rope, so their ratios multiply; small losses then add. Lines that
 * share a station lose more: the logarithm of the ratio and the drag of bending are raised by the shared-lead factor.
 *
 * @param turn  sheave, ring, ratchet or measured turn (sizes [m], angles [rad], forces [N])
 * @param rope  diameter [m] and stiffness
 * @param leaveOut  causes to switch off, to see each alone
 * @returns law for both directions, causes, flags
 * @throws ValueError for an impossible size, angle or coefficient
 * Source: britannica-1911 for bending, donzelli-1999 for bearings, euler-1769 for sliding. Example: turnLoss({ turn: { kind: "measured", name: "lead", tensionRatio: 1.09 }, rope: { diameter: 0.006, stiffness: { tensionTerm: 60, constantTerm: 40, diameterTerm: 1000000 } } }).law.haul.ratio → 1.09
 */
export function turnLoss({ turn, rope, leaveOut = [] }: TurnInput): TurnLoss {
  checkPart(turn);
  const keep = (causes: CauseLoss[]) => withOuter(turn, causes, new Set(leaveOut));
  const haulCauses = keep(
    turn.kind === "ring" ? slidingCauses(turn, rope, turn.frictionCoefficient) : freeCauses(turn, rope),
  );
  const easeCauses = turn.kind === "ratchet" ? keep(slidingCauses(turn, rope, turn.treadFriction)) : haulCauses;
  const haul = combined(haulCauses);
  const ease = combined(easeCauses);
  return {
    law:
      turn.kind === "ratchet" && turn.engageLoad !== undefined
        ? { haul, ease: haul, grip: { engageLoad: within("engageLoad", turn.engageLoad), gripped: ease } }
        : { haul, ease },
    haulCauses,
    easeCauses,
    flags: flagsOf(turn, rope),
  };
}

/** A sheave that turns, or a measured turn. */
function freeCauses(turn: Exclude<Turn, Ring>, rope: Rope): CauseLoss[] {
  if (turn.kind === "measured") {
    within("wrapAngle", turn.wrapAngle ?? Math.PI);
    const { ratio } = checkedLaw({ ratio: turn.tensionRatio, drag: turn.drag ?? 0 });
    return [{ cause: "measured", ratio, drag: 0 }];
  }
  const { bearingFriction, pinRadius, wrapAngle } = turn;
  const pitchRadius = within("sheaveDiameter", turn.diameter + rope.diameter) / 2;
  const m = within("bearingFriction", bearingFriction) * (within("pinRadius", pinRadius) / pitchRadius);
  const sliding = capstanRatio({ frictionCoefficient: blockLosses.grooveFriction.value, wrapAngle });
  const bearing = sheaveRatio(m, Math.abs(Math.sin(wrapAngle / 2)), sliding);
  return withCommon(turn, rope, { cause: "bearing", ratio: bearing, drag: 0 });
}

/** A ring, or a ratchet that is locked: the rope slides. */
function slidingCauses(turn: Ring | Ratchet, rope: Rope, frictionCoefficient: number): CauseLoss[] {
  const ratio = capstanRatio({ frictionCoefficient, wrapAngle: turn.wrapAngle });
  return withCommon(turn, rope, { cause: "sliding", ratio, drag: 0 });
}

/** What sheave, ring and ratchet have in common: bending and cheeks. */
function withCommon(turn: Sheave | Ring | Ratchet, rope: Rope, own: CauseLoss): CauseLoss[] {
  const bending = bendingLaw({
    ropeDiameter: rope.diameter,
    sheaveDiameter: turn.diameter,
    wrapAngle: turn.wrapAngle,
    stiffness: rope.stiffness,
  });
  const causes: CauseLoss[] = [{ cause: "bending", ...bending }, own];
  if (turn.kind !== "ring" && turn.grooveWidth !== undefined) {
    const { ratio } = cheekContact({
      ropeDiameter: rope.diameter,
      grooveWidth: turn.grooveWidth,
      wrapAngle: turn.wrapAngle,
    });
    causes.push({ cause: "cheek", ratio, drag: 0 });
  }
  return causes;
}

/** Leaves causes out; then what comes on top of those that are left: lines that share the station, and constant drag. */
function withOuter(turn: Turn, causes: readonly CauseLoss[], off: ReadonlySet<Cause>): CauseLoss[] {
  const kept = causes.filter(({ cause }) => !off.has(cause));
  const lines = turn.kind === "measured" ? 1 : within("lineCount", turn.lines ?? 1);
  if (lines > 1 && !off.has("shared")) {
    const extra = practice.sharedLeadFactor.value - 1;
    const alone = combined(kept);
    kept.push({ cause: "shared", ratio: alone.ratio ** extra, drag: alone.drag * extra });
  }
  const drag = within("constantDrag", turn.drag ?? 0);
  return off.has("drag") ? kept : [...kept, { cause: "drag", ratio: 1, drag }];
}

function combined(causes: readonly CauseLoss[]): Law {
  return causes.reduce<Law>(inSeries, noLoss);
}

function flagsOf(turn: Turn, rope: Rope): string[] {
  const flags: string[] = [];
  if ((turn.kind === "sheave" || turn.kind === "ratchet") && turn.grooveWidth !== undefined) {
    const g = turn.grooveWidth / rope.diameter;
    const limit = practice.cheekContactRatio.value;
    if (g < limit) {
      const kind = g < 1 ? "the groove is narrower than the rope" : "the rope touches the cheeks";
      flags.push(`${turn.name}: ${kind} (groove ${g.toFixed(2)} × rope, want ${limit.toFixed(2)} or more)`);
    }
  }
  if (turn.kind !== "measured" && (turn.lines ?? 1) > 1)
    flags.push(`${turn.name}: ${turn.lines} lines share this station: watch for chafe`);
  return flags;
}
