import type { QuantityName } from "../quantity/vocabulary.js";
import type { SourceId } from "../sources/bibliography.js";
import type { Status } from "../sources/status.js";
import type { FormulaSource } from "./formula.js";

/** Where a number comes from that was put into a formula: of a coefficient record. */
export interface NumberOrigin {
  readonly low: number;
  readonly high: number;
  readonly status?: Status;
  readonly source?: SourceId;
  readonly place?: string;
}

/** A name of a formula with its number. */
export interface WorkedSymbol {
  readonly name: string;
  readonly quantity: QuantityName;
  readonly sign: string;
  readonly words: string;
  /** [SI] */
  readonly value: number;
  /** SI unit; "1" for a pure number. */
  readonly unit: string;
  /** Range and origin, when the number is a record or has a range. */
  readonly origin?: NumberOrigin;
  /** Place among the steps, from 0, of the one whose result the number is. */
  readonly step?: number;
  /** Found by solving the equations of its step. */
  readonly solved?: true;
}

/** What a step comes to. */
export interface WorkedResult {
  readonly quantity: QuantityName;
  readonly sign: string;
  readonly words: string;
  /** [SI] */
  readonly value: number;
  readonly unit: string;
}

interface StepWords {
  readonly id: string;
  readonly title: string;
  readonly symbols: readonly WorkedSymbol[];
  readonly result: WorkedResult;
  readonly source: FormulaSource;
  readonly valid: string;
  /** Function of this library that computes the same. */
  readonly mirrors?: string;
}

/** One formula with its numbers. */
export interface FormulaStep extends StepWords {
  readonly kind: "formula";
  /** The formula, in the names of the symbols. */
  readonly text: string;
  /** The same with numbers and units, in plain text. */
  readonly substitution: string;
}

/** One equation of a balance with its numbers. */
export interface WorkedEquation {
  readonly words: string;
  readonly left: string;
  readonly right: string;
  /** Both sides with numbers and units, in plain text. */
  readonly substitution: string;
  /** Left less right, over the larger of both [-]. */
  readonly residual: number;
}

/** A system of equations that was solved; the solution stands in them. */
export interface BalanceStep extends StepWords {
  readonly kind: "balance";
  readonly equations: readonly WorkedEquation[];
  /** Largest residual that counts as solved [-]. */
  readonly allowed: number;
}

/** One step of a working. */
export type WorkingStep = FormulaStep | BalanceStep;

/** How a number was worked out, as data: its steps in order, the last of which gives the number. */
export interface Working {
  readonly steps: readonly WorkingStep[];
  /** Result of the last step [SI]. */
  readonly value: number;
}

/** The step that gives the number of a working. */
export function lastStep({ steps }: Working): WorkingStep {
  const last = steps[steps.length - 1];
  if (last === undefined) throw new Error("a working without steps");
  return last;
}
