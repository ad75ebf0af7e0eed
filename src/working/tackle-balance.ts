import { OutsideModelError } from "../quantity/errors.js";
import { figures } from "../quantity/print.js";
import { lawOf, stateUnder } from "../reeving/balance.js";
import { mechanismOf } from "../reeving/mechanism.js";
import { type Direction, sidesOf } from "../reeving/mechanism-loads.js";
import type { Reeving } from "../reeving/reeving.js";
import type { Rope } from "../reeving/station.js";
import { balanced, type Equation } from "./balance.js";
import type { FormulaSymbol } from "./formula.js";
import type { WorkedInput } from "./symbol-value.js";
import type { Working } from "./working.js";

/** A purchase under a load. */
export interface TackleUnderLoad {
  readonly reeving: Reeving;
  readonly rope: Rope;
  /** [N], or the working that gave it. */
  readonly load: number | Working;
  readonly direction: Direction;
}

/** Symbols with their numbers, as they are gathered. */
class Gathered {
  readonly symbols: Record<string, FormulaSymbol> = {};
  readonly values: Record<string, WorkedInput> = {};

  add(name: string, symbol: FormulaSymbol, value: WorkedInput): string {
    this.symbols[name] = symbol;
    this.values[name] = value;
    return name;
  }
}

/** Names that equal numbers share: `k` alone, or `k_1`, `k_2` where they differ. */
function sharedNames(gathered: Gathered, numbers: readonly number[], kind: "ratio" | "drag"): Map<number, string> {
  const different = [...new Set(numbers)];
  const sign = kind === "ratio" ? "k" : "c";
  return new Map(
    different.map((value, index) => {
      const one = different.length === 1;
      const symbol: FormulaSymbol = {
        quantity: kind === "ratio" ? "tensionRatio" : "constantDrag",
        sign: one ? sign : `${sign}_${index + 1}`,
      };
      return [value, gathered.add(`${kind}${index + 1}`, symbol, value)];
    }),
  );
}

/**
 * The working of the hand force of a purchase: the balance of every turn and every moving block, with the solved tensions in it.
 *
 *     each turn    T_pulled = k · T_other + c
 *     each block   Σ T · cos = load
 *
 * @param tackle  reeving, rope [m], load [N], direction
 * @returns the working; its result is the hand force [N]
 * @throws OutsideModelError when a part hangs slack, ReevingError for a reeving that is no purchase
 * Example: tackleBalance({ reeving: tackle({ parts: 2, hauledFrom: "fixed", turn: { kind: "measured", name: "sheave", tensionRatio: 1.1 } }), rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, load: 100, direction: "hauling" }).value → 57.62
 */
export function tackleBalance({ reeving, rope, load, direction }: TackleUnderLoad): Working {
  const mechanism = mechanismOf(reeving, rope);
  const W = typeof load === "number" ? load : load.value;
  const { straight, gripping } = stateUnder(mechanism, W, direction);
  const gathered = new Gathered();
  const loadName = gathered.add("load", { quantity: "loadTension", sign: "W", words: "load" }, load);
  const parts = mechanism.parts.map(({ from, to }, part) => {
    const value = straight.slope[part]! * W + straight.offset[part]!;
    if (value < 0) throw slack(`the part from ${from} to ${to}`, value);
    const hand = part === mechanism.handPart;
    const words = hand ? "hand force" : `tension from ${from} to ${to}`;
    const symbol: FormulaSymbol = { quantity: "tension", sign: hand ? "T_hand" : `T_${part + 1}`, words };
    return gathered.add(`part${part + 1}`, symbol, value);
  });
  const laws = mechanism.turns.map((turn, index) => lawOf(turn, direction, gripping.has(index)));
  const ratios = sharedNames(
    gathered,
    laws.map(({ ratio }) => ratio),
    "ratio",
  );
  const drags = sharedNames(
    gathered,
    laws.map(({ drag }) => drag).filter((drag) => drag > 0),
    "drag",
  );
  const turns = mechanism.turns.map((turn, index): Equation => {
    const { pulled, other } = sidesOf(turn, direction);
    const { ratio, drag } = laws[index]!;
    const added = drag > 0 ? ` + ${drags.get(drag)}` : "";
    return {
      words: `${turn.turn.name} ${index + 1}`,
      left: parts[pulled]!,
      right: `${ratios.get(ratio)} * ${parts[other]!}${added}`,
    };
  });
  const blocks = mechanism.moving.map(({ name, pulls, loadAlong }): Equation => {
    const terms = [
      ...pulls.map(({ part, along }) => ({ along, name: parts[part]! })),
      { along: loadAlong, name: loadName },
    ];
    const side = (sign: 1 | -1) =>
      terms
        .filter(({ along }) => sign * along > 0)
        .map((term) => (Math.abs(term.along) === 1 ? term.name : `${Math.abs(term.along)} * ${term.name}`))
        .join(" + ");
    return { words: `${name} block`.replace("block block", "block"), left: side(-1), right: side(1) };
  });
  return balanced({
    id: `tackle-${direction}`,
    title: `Balance of the purchase, ${direction}`,
    equations: [...turns, ...blocks],
    symbols: gathered.symbols,
    values: gathered.values,
    solved: parts,
    answer: parts[mechanism.handPart]!,
    source: "statics",
    valid: "a line that just moves, every part taut",
    mirrors: "prepareLine",
  });
}

function slack(where: string, value: number): OutsideModelError {
  return new OutsideModelError({
    quantity: "balance of a purchase",
    value: `${where} would carry ${figures(value)} N`,
    allowed: "parts that are all taut",
    advice: "Ask for a larger load.",
  });
}
