import type { PlanLine } from "./plan-option.js";
import type { TotalName } from "./total-name.js";

/** A limit on one measure of one line. */
export interface MeasureLimit {
  readonly kind: "measure";
  readonly line: string;
  readonly measure: string;
  readonly sense: "at most" | "at least";
  readonly bound: number;
  /** Unit of the measure, for sentences. */
  readonly unit?: string;
}

/** A limit on a total of the whole boat. */
export interface TotalLimit {
  readonly kind: "total";
  readonly total: TotalName;
  /** In the unit of the total. */
  readonly atMost: number;
}

/** A limit of a plan. */
export type PlanLimit = MeasureLimit | TotalLimit;

/** What of the limits of one line nothing in the catalogue keeps. */
export interface LineConflict {
  readonly line: string;
  /** As they are asked for. */
  readonly limits: readonly MeasureLimit[];
  /** True: the line is planned as near to them as it gets. False: somebody could be hurt, and the line stays as it is, unplanned. */
  readonly planned: boolean;
}

/** All lines of a boat and all limits that they must meet together. */
export interface PlannedBoat {
  readonly lines: readonly PlanLine[];
  readonly limits: readonly PlanLimit[];
  /** All conflicts, line by line; the limits above are those that can be kept. None when absent. */
  readonly conflicts?: readonly LineConflict[];
  /** The user's own word for what things cost in; a cent is a hundredth of it. None when absent. */
  readonly currency?: string;
}
