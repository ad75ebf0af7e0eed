import { allowedOptions, capOf } from "./limit.js";
import type { PlanLine, PlanOption } from "./plan-option.js";
import type { PlanLimit, PlannedBoat } from "./planned-boat.js";
import { countOf, totalNames } from "./total.js";
import type { TotalName } from "./total-name.js";

/** A line with the options that are worth looking at, and what each adds to the totals, in whole counts. */
export interface Candidate {
  readonly line: PlanLine;
  readonly options: readonly PlanOption[];
  readonly counts: readonly Readonly<Record<TotalName, number>>[];
}

/** Most whole counts for each total; infinite where there is no limit. */
export type Caps = Readonly<Record<TotalName, number>>;

/** Caps that the limits of a boat set. */
export function capsOf(limits: readonly PlanLimit[]): Caps {
  return Object.fromEntries(totalNames.map((name) => [name, capOf(limits, name)])) as Record<TotalName, number>;
}

/**
 * Leaves out options that break a limit of their line, and options that another beats or equals in every total that counts.
 *
 * @param boat  lines and limits
 * @param wanted  totals that are made small
 * @returns candidates of each line; none where nothing meets the limits of the line
 */
export function candidatesOf({ lines, limits }: PlannedBoat, wanted: readonly TotalName[]): Candidate[] {
  const counted = totalNames.filter((name) => wanted.includes(name) || Number.isFinite(capOf(limits, name)));
  return lines.map((line) => {
    const all = allowedOptions(line, limits).map((option) => ({ option, counts: countsOfOption(line, option) }));
    const worth = all.filter((one, index) => !all.some((other, at) => beats(counted, other, one, at < index)));
    return { line, options: worth.map(({ option }) => option), counts: worth.map(({ counts }) => counts) };
  });
}

/** What an option adds to every total, in whole counts. */
export function countsOfOption(line: PlanLine, option: PlanOption): Record<TotalName, number> {
  const entries = totalNames.map((name) => [name, countOf(name, line, option)] as const);
  return Object.fromEntries(entries) as Record<TotalName, number>;
}

type Counted = { readonly counts: Readonly<Record<TotalName, number>> };

/** Better in one total and worse in none; of equals the earlier one. */
function beats(names: readonly TotalName[], { counts: a }: Counted, { counts: b }: Counted, earlier: boolean): boolean {
  if (!names.every((name) => a[name] <= b[name])) return false;
  return earlier || names.some((name) => a[name] < b[name]);
}
