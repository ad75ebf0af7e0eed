import type { Verdict } from "../quantity/verdict.js";
import type { CheckedDemand } from "./line-check.js";

/**
 * A demand of a line as a judgement to be shown, with what mends or settles it.
 *
 * @param line  name of the line
 * @param demand  of that line
 * @returns judgement: its change is the proposal, what to measure, or what would have to give
 */
export function demandVerdict(line: string, demand: CheckedDemand): Verdict {
  const { subject, outcome, reason, proposal, settle, gives } = demand;
  const words = proposal?.words ?? (outcome === "can't tell" ? settle : undefined) ?? gives;
  const change = outcome === "enough" ? undefined : words;
  return { subject: `${line}: ${subject}`, outcome, reason, ...(change !== undefined && { change }) };
}
