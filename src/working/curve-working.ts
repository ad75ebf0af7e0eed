import { ValueError } from "../quantity/errors.js";
import { inUnit } from "./agreement.js";
import { lastStep, type Working, type WorkingStep } from "./working.js";

/** How the points of a curve come about: one of them worked out, and what alone the others have in its place. */
export interface CurveWorking {
  /** Place of the point on the curve, from 0. */
  readonly row: number;
  readonly working: Working;
  /** Words of the one number that changes from point to point, wherever it stands. */
  readonly changes: string;
  /** Place along the lower axis from which the steps hold, where they do not at every point. */
  readonly from?: number;
}

/** A curve, and a way to work out each of its points. */
export interface WorkedCurve {
  /** Places along the lower axis, as the figure has them. */
  readonly x: readonly number[];
  /** Values of the curve, as the figure has them; `null` leaves a gap. */
  readonly y: readonly (number | null)[];
  /** Unit of the values; that of the formula when absent. */
  readonly unit?: string;
  /** Place from which the steps hold; all along the curve when absent. */
  readonly from?: number;
  /** The working of the point at a place along the lower axis. */
  readonly make: (x: number) => Working;
}

/** How near each point of a curve must come to its working [-]. */
const nearness = 1e-6;

/**
 * The working of a curve: all its points are worked out by the same steps, and held equal to the curve; the middle one is kept.
 *
 *     |y − worked(x)| ≤ 10⁻⁶ · |y| at every point
 *
 * @param curve  places, values and their unit, where the steps begin to hold, and the working of the point at a place
 * @returns the middle point worked out, and the words of the one number that changes along the curve
 * @throws ValueError for a point that its working does not give, for steps that differ, or where more than one number changes
 * Example: curveWorking({ x: [1, 2, 3], y: [0, 1, 2], make: (x) => worked(formulas.deadBand, { haulingForce: x, easingForce: 1 }) }).row → 1
 */
export function curveWorking({ x, y, unit, from, make }: WorkedCurve): CurveWorking {
  const points = x.flatMap((at, row) => {
    const value = y[row];
    return value === null || value === undefined || (from !== undefined && at < from)
      ? []
      : [{ at, row, value, working: make(at) }];
  });
  for (const { at, value, working } of points) checkPoint(at, value, working, unit);
  const middle = Math.round((x.length - 1) / 2);
  const kept = points.find(({ row }) => row === middle) ?? points.at(-1);
  if (kept === undefined) throw refused("no point", "a curve of two points or more", "Leave its working out.");
  const changed = new Set(points.flatMap(({ working }) => changesBetween(kept.working.steps, working.steps)));
  if (changed.size === 0)
    throw refused("nothing that changes along it", "one number that changes", "Work the number out once.");
  const later = from !== undefined && x.some((at, row) => at < from && typeof y[row] === "number");
  const changes = [...changed].join(" and ");
  return { row: kept.row, working: kept.working, changes, ...(later && { from }) };
}

function checkPoint(at: number, value: number, working: Working, unit: string | undefined): void {
  const { result } = lastStep(working);
  const own = inUnit(working.value, result.unit, unit ?? (result.unit === "1" ? undefined : result.unit));
  if (own !== undefined && Math.abs(own - value) <= nearness * Math.abs(value) + 1e-12) return;
  throw refused(`${value} at ${at}`, `${own} ${unit ?? result.unit}, as it was worked out`, "Work out what is drawn.");
}

/** Words of the given numbers in which two workings differ: one number, in one or several places, of the same steps. */
function changesBetween(some: readonly WorkingStep[], others: readonly WorkingStep[]): string[] {
  if (JSON.stringify(some.map(formOf)) !== JSON.stringify(others.map(formOf)))
    throw refused("points with other steps", "the same steps at every point", "Cut the curve where its steps change.");
  const changed = some.flatMap(({ symbols }, index) =>
    symbols.flatMap(({ words, value, step, solved }, place) => {
      const other = others[index]!.symbols[place]!.value;
      return step !== undefined || solved || near(other, value) ? [] : [{ words, value, other }];
    }),
  );
  const [first] = changed;
  if (changed.some(({ value, other }) => !near(value, first!.value) || !near(other, first!.other)))
    throw refused(
      `${changed.map(({ words }) => words).join(", ")} that change along it`,
      "one number that changes",
      "Work its points out one by one.",
    );
  return changed.map(({ words }) => words);
}

function near(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-12 * Math.abs(one);
}

/** What a step does, without its numbers. */
function formOf(step: WorkingStep): unknown {
  const texts = step.kind === "formula" ? step.text : step.equations.map(({ left, right }) => [left, right]);
  return [step.id, texts, step.symbols.map(({ name, step: from }) => [name, from])];
}

function refused(value: string, allowed: string, advice: string): ValueError {
  return new ValueError({ quantity: "working of a curve", value, allowed, advice });
}
