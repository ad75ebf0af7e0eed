import type { Chosen } from "./plan-option.js";
import { totalsOf } from "./total.js";

/** Mass of one line, or of all [kg]. */
export interface MassShare {
  readonly dry: number;
  readonly wet: number;
  readonly aloft: number;
}

/** Where the mass of a plan is. */
export interface MassBudget {
  /** Heaviest first; `share` of the dry mass of all lines [-]. */
  readonly lines: readonly (MassShare & { readonly line: string; readonly share: number })[];
  readonly all: MassShare;
}

/**
 * Mass of a plan, line by line: dry, wet, and dry aloft.
 *
 * @param choice  option of each line
 * @returns mass [kg] and shares [-]
 * Example: massBudget([]).all.dry → 0
 */
export function massBudget(choice: readonly Chosen[]): MassBudget {
  const { dry, wet, aloft } = totalsOf(choice);
  const lines = choice.map((chosen) => {
    const own = totalsOf([chosen]);
    return { line: chosen.line.name, dry: own.dry, wet: own.wet, aloft: own.aloft, share: dry > 0 ? own.dry / dry : 0 };
  });
  return { lines: lines.sort((a, b) => b.dry - a.dry), all: { dry, wet, aloft } };
}
