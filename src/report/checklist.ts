import type { CheckResult } from "../published/row.js";
import type { Evidence, Status } from "../sources/status.js";
import { ReportError } from "./errors.js";

/** Check results that one report shows. */
interface ReportChecks {
  readonly report: string;
  readonly results: readonly CheckResult[];
}

/** A check with the reports that show it. */
export interface SharedCheck extends CheckResult {
  readonly reports: readonly string[];
}

/** Kinds of evidence that are counted, the strongest first. */
export const evidenceKinds: readonly Evidence[] = ["published", "independent", "exact", "recorded"];

/** What each kind of evidence is worth, in words. */
export const evidenceMeaning: Readonly<Record<Evidence, string>> = {
  published: "a printed table, figure or worked example",
  independent: "another method or another program",
  exact: "a limit or an identity",
  recorded: "our own earlier output: an alarm for changes, no evidence",
  none: "a rule of the trade that nobody printed",
};

const statuses: readonly Status[] = ["published", "common practice", "from memory", "invented for the demo"];

/** Whether something read from a file is a kind of evidence. */
export function isEvidenceKind(value: unknown): value is Evidence {
  return value === "none" || evidenceKinds.some((kind) => kind === value);
}

/** Whether something read from a file is a status. */
export function isStatus(value: unknown): value is Status {
  return statuses.some((status) => status === value);
}

/** Share of the allowed deviation that a check uses; an exact check that holds uses nothing. */
export function shareOfAllowed({ deviation, allowed, holds }: CheckResult): number {
  if (allowed > 0) return Math.abs(deviation) / allowed;
  return holds ? 0 : Number.POSITIVE_INFINITY;
}

/** Whether a check rests on something that was looked up; the others are shown apart and prove nothing. */
export function wasLookedUp({ status }: CheckResult): boolean {
  return status === "published";
}

/** The check that uses the largest share of what it is allowed. */
export function worstOf<Check extends CheckResult>(checks: readonly Check[]): Check | undefined {
  return checks.reduce<Check | undefined>(
    (worst, check) => (worst === undefined || shareOfAllowed(check) > shareOfAllowed(worst) ? check : worst),
    undefined,
  );
}

/**
 * Every check once, with the reports that show it.
 *
 * @param reports  check results of each report
 * @returns checks in the order of their ids
 * @throws ReportError when a check shows different numbers or words in two places
 * Example: sharedChecks([{ report: "a", results }])[0]?.reports → ["a"]
 */
export function sharedChecks(reports: readonly ReportChecks[]): SharedCheck[] {
  const seen = new Map<string, SharedCheck>();
  for (const { report, results } of reports) {
    for (const result of results) {
      const earlier = seen.get(result.id);
      if (earlier === undefined) {
        seen.set(result.id, { ...result, reports: [report] });
        continue;
      }
      const differs = (Object.keys(result) as (keyof CheckResult)[]).find((field) => result[field] !== earlier[field]);
      if (differs !== undefined) {
        throw new ReportError(
          `check ${result.id}`,
          `${differs} is ${earlier[differs]} in ${earlier.reports[0]} and ${result[differs]} in ${report}. ` +
            "If only some reports were built since the last change, build all of them; otherwise give the checks different ids.",
        );
      }
      if (!earlier.reports.includes(report)) seen.set(result.id, { ...earlier, reports: [...earlier.reports, report] });
    }
  }
  return [...seen.values()].sort((one, other) => (one.id < other.id ? -1 : one.id > other.id ? 1 : 0));
}

/** A failing check in words: what was computed, expected and allowed. */
export function failureText({ id, quantity, computed, expected, allowed, unit }: CheckResult): string {
  const tail = unit === "1" ? "" : ` ${unit}`;
  return `check ${id} fails: ${quantity}: computed ${computed}${tail}, expected ${expected}${tail}, allowed deviation ${allowed}${tail}`;
}

/** The public list: one entry a check, without what only pages need. */
export function checksJson(checks: readonly SharedCheck[]): string {
  const entries = checks.map(
    ({ id, quantity, computed, expected, unit, allowed, deviation, evidence, source, status, place, reports }) => ({
      id,
      quantity,
      computed,
      expected,
      unit,
      allowed,
      deviation,
      evidence,
      source,
      status,
      place,
      reports,
    }),
  );
  return `${JSON.stringify(entries, undefined, 2)}\n`;
}
