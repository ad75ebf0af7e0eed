import { type BoatCheck, checkBoat, type LineCheck } from "../boat/check.js";
import { worstOutcome } from "../boat/compare.js";
import { type Aspect, aspects, byNeed, type Judgement } from "../boat/judgement.js";
import { figures } from "../quantity/print.js";
import type { Outcome } from "../quantity/verdict.js";
import { readBoat } from "./boats.js";
import { aligned } from "./columns.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";

/** What `haulbook check` was asked. */
export interface CheckOptions {
  readonly boat: string;
  readonly json: boolean;
}

/** How an outcome stands in a narrow column. */
export function outcomeWord(outcome: Outcome | undefined): string {
  const said = { holds: "yes", doubtful: "doubt", fails: "NO" } as const;
  return outcome === undefined ? "–" : said[outcome];
}

/** What each judgement is about, in words before a colon. */
const questions: Readonly<Record<Aspect, string>> = {
  holds: "does not hold",
  hauls: "is hard to haul",
  runs: "does not run out",
  stays: "does not stay",
  lasts: "does not last",
  strong: "is too weak",
};

function row(line: LineCheck): string[] {
  const { name, feel, budget } = line;
  return [
    name,
    figures(feel.hauling.value),
    figures(feel.easing.value),
    figures(feel.runOutLoad.value, 2),
    ...aspects.map((aspect) => outcomeWord(worstOutcome(line, aspect))),
    figures(1000 * budget.dry.value),
    figures(1000 * budget.wet.value),
    figures(budget.cost),
  ];
}

function mending(name: string, one: Judgement): string {
  const doubt = one.outcome === "doubtful" ? "perhaps " : "";
  const change = one.change === undefined ? "No single change of the catalogue mends it." : `Try ${one.change}.`;
  return `${name}: ${doubt}${questions[one.aspect]} (${one.subject}): ${one.reason}. ${change}`;
}

/** The table and the list of a check, for a terminal. */
function report(check: BoatCheck): string {
  const titles = ["line", "haul [N]", "hold [N]", "out [N]", ...aspects, "dry [g]", "wet [g]", check.currency];
  const numeric = titles.map((_, column) => (column > 0 && column < 4) || column > 3 + aspects.length);
  const table = aligned([titles, ...check.lines.map(row)], numeric);
  const sums = `All lines: ${figures(check.dry.value)} kg dry (${figures(check.dry.low)} to ${figures(check.dry.high)}), ${figures(check.wet.value)} kg wet, ${figures(check.cost, 4)} ${check.currency}.`;
  const totals = check.totals
    .filter(({ outcome }) => outcome !== "holds")
    .map(({ subject, reason }) => `Over the limit, ${subject}: ${reason}.`);
  const { first } = check;
  const isFirst = (name: string, { subject }: Judgement) => name === first?.line && subject === first.subject;
  const mend = check.lines.flatMap(({ name, judgements }) =>
    judgements
      .filter((one) => one.outcome === "fails" && !isFirst(name, one))
      .sort(byNeed)
      .map((one) => mending(name, one)),
  );
  const firstWords = first === undefined ? "Nothing to mend." : `First: ${mending(first.line, first)}`;
  const doubts = check.lines.reduce(
    (sum, { judgements }) => sum + judgements.filter(({ outcome }) => outcome === "doubtful").length,
    0,
  );
  const more = mend.length === 0 ? [] : ["", "Then:", ...mend.map((words) => `- ${words}`)];
  const doubtWords =
    doubts === 0
      ? []
      : ["", `${doubts} in doubt: right at the middle of the range, not over all of it; --json lists them.`];
  const caution = "Estimates for comparing: rated strength, class rules and a qualified rigger decide.";
  return `${[check.name, "", table, "", sums, ...totals, "", firstWords, ...more, ...doubtWords, "", caution].join("\n")}\n`;
}

/** `haulbook check`: a verdict for every line of a boat; 1 where a line breaks or is not held. */
export async function check({ boat, json }: CheckOptions, surroundings: Surroundings): Promise<ExitCode> {
  const found = checkBoat(await readBoat(boat, surroundings));
  surroundings.out(json ? `${JSON.stringify(found, undefined, 2)}\n` : report(found));
  return found.safe ? exitCodes.done : exitCodes.failed;
}
