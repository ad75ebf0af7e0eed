import { figures } from "../quantity/print.js";
import type { PlanLine, PlanOption } from "./plan-option.js";
import type { MeasureLimit, PlanLimit } from "./planned-boat.js";
import { countOf, countsWithin, printTotal, totalOf } from "./total.js";
import type { TotalName } from "./total-name.js";

/** A value so near to a bound meets it: it differs by the rounding of sums alone. */
const rounding = 1e-9;

/** Whether an option meets a limit on a measure of its line. */
export function meets(option: PlanOption, { measure, sense, bound }: MeasureLimit): boolean {
  const value = option.measures[measure]!;
  const room = Number.isFinite(bound) ? rounding * Math.abs(bound) : 0;
  return sense === "at most" ? value <= bound + room : value >= bound - room;
}

/** Unit of limits on what there is of a demand. */
export const ofWhatIsAsked = "of what is asked";

/** A bound with its unit. */
function printBound({ unit }: MeasureLimit, bound: number): string {
  if (unit === ofWhatIsAsked && bound === 1) return "all that is asked";
  return unit === undefined || unit === "1" ? figures(bound, 6) : `${figures(bound, 6)} ${unit}`;
}

/**
 * A limit in words.
 *
 * @param limit  of a line or of the boat
 * @param currency  word for what things cost in; none when absent
 * @returns text such as `mainsheet: pull at most 250 N`, `dry mass at most 1.2 kg`
 * Example: limitWords({ kind: "total", total: "dry", atMost: 0.9 }) → "dry mass at most 900 g"
 */
export function limitWords(limit: PlanLimit, currency?: string): string {
  if (limit.kind === "total") return `${totalOf(limit.total).words} at most ${boundWords(limit, currency)}`;
  const sense = limit.unit === ofWhatIsAsked && limit.bound === 1 ? "has" : limit.sense;
  return `${limit.line}: ${limit.measure} ${sense} ${boundWords(limit)}`;
}

/** The bound of a limit with its unit. */
export function boundWords(limit: PlanLimit, currency?: string): string {
  return limit.kind === "total" ? printTotal(limit.total, limit.atMost, 6, currency) : printBound(limit, limit.bound);
}

/** Most counts that limits allow a total; infinite without such a limit. */
export function capOf(limits: readonly PlanLimit[], name: TotalName): number {
  const caps = limits.flatMap((limit) =>
    limit.kind === "total" && limit.total === name ? [countsWithin(name, limit.atMost)] : [],
  );
  return Math.min(Number.POSITIVE_INFINITY, ...caps);
}

/** Options of a line that meet the limits on its measures, and the limit on the largest hand force. */
export function allowedOptions(line: PlanLine, limits: readonly PlanLimit[]): PlanOption[] {
  const own = limits.filter((limit) => limit.kind === "measure" && limit.line === line.name) as MeasureLimit[];
  const most = capOf(limits, "worstHandForce");
  return line.options.filter(
    (option) => own.every((limit) => meets(option, limit)) && countOf("worstHandForce", line, option) <= most,
  );
}
