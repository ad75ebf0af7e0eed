import { type BoatCheck, checkBoat, type LineCheck } from "../boat/check.js";
import { worstOutcome } from "../boat/compare.js";
import { type Aspect, aspects, byNeed, type Judgement } from "../boat/judgement.js";
import { figures } from "../quantity/print.js";
import type { Outcome } from "../quantity/verdict.js";
import type { Band } from "../sources/band.js";
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
  weighs: "is too heavy",
  costs: "costs too much",
};

/** Outcome with the least margin at the bad end of the range, such as `yes 1.4`; a margin of ten says enough. */
function verdictCell({ judgements }: LineCheck, aspect: Aspect): string {
  const own = judgements.filter((one) => one.aspect === aspect);
  if (own.length === 0) return outcomeWord(undefined);
  const worst = worstOutcome({ judgements }, aspect);
  const margin = Math.min(...own.map(({ margins }) => (worst === "fails" ? margins.middle : margins.worst)));
  return `${outcomeWord(worst)} ${margin >= 10 ? ">10" : figures(margin, 2)}`;
}

const withRange = ({ value, low, high }: Band, factor = 1) =>
  `${figures(factor * value)} (${figures(factor * low)}–${figures(factor * high)})`;

function numbers({ name, feel, budget }: LineCheck): string[] {
  return [
    name,
    withRange(feel.hauling),
    withRange(feel.easing),
    withRange(feel.runOutLoad),
    withRange(budget.dry, 1000),
    figures(1000 * budget.wet.value),
    figures(budget.cost),
  ];
}

function mending(name: string, one: Judgement): string {
  const doubt = one.outcome === "doubtful" ? "perhaps " : "";
  const change = one.change === undefined ? "No single change of the catalogue mends it." : `Try ${one.change}.`;
  return `${name}: ${doubt}${questions[one.aspect]} (${one.subject}): ${one.reason}. ${change}`;
}

/** Verdicts line by line; what a line is not asked for has a dash. */
function verdictTable({ lines }: BoatCheck): string {
  const rows = lines.map((line) => [line.name, ...aspects.map((aspect) => verdictCell(line, aspect))]);
  return aligned([["line", ...aspects], ...rows], []);
}

function numberTable({ lines, currency }: BoatCheck): string {
  const titles = ["line", "haul [N]", "hold [N]", "out [N]", "dry [g]", "wet [g]", currency === "" ? "cost" : currency];
  return aligned(
    [titles, ...lines.map(numbers)],
    titles.map((_, column) => column > 0),
  );
}

/** The tables and the lists of a check, for a terminal. */
function report(check: BoatCheck): string {
  const { currency } = check;
  const cost = `${figures(check.cost, 4)} ${currency}`.trim();
  const sums = `All lines: ${figures(check.dry.value)} kg dry (${figures(check.dry.low)} to ${figures(check.dry.high)}), ${figures(check.wet.value)} kg wet, cost ${cost}.`;
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
  const more = mend.length === 0 ? [] : ["", "Then:", ...mend.map((words) => `- ${words}`)];
  const doubts = check.lines.flatMap(({ name, judgements }) => {
    const own = judgements.filter(({ outcome }) => outcome === "doubtful").sort(byNeed);
    const words = own.map(
      ({ subject, margins }) => `${subject} ${figures(margins.worst, 2)}–${figures(margins.middle, 2)}`,
    );
    return own.length === 0 ? [] : [`- ${name}: ${words.join(", ")}`];
  });
  const doubtWords =
    doubts.length === 0
      ? []
      : ["", "In doubt, with the margin at the bad end and in the middle of the range (1 is just enough):", ...doubts];
  return `${[
    check.name,
    "",
    verdictTable(check),
    "",
    "Beside each verdict: its least margin at the bad end of the range, of a NO in the middle; 1 is just enough.",
    "",
    numberTable(check),
    "",
    "In brackets: 5th to 95th percentile of what friction, loads and ropes may be.",
    "",
    sums,
    ...totals,
    "",
    firstWords,
    ...more,
    ...doubtWords,
    "",
    "Estimates for comparing: rated strength, class rules and a qualified rigger decide.",
  ].join("\n")}\n`;
}

/** `haulbook check`: a verdict for every line of a boat; 1 where a line breaks, is not held or burns the hand. */
export async function check({ boat, json }: CheckOptions, surroundings: Surroundings): Promise<ExitCode> {
  const found = checkBoat(await readBoat(boat, surroundings));
  surroundings.out(json ? `${JSON.stringify(found, undefined, 2)}\n` : report(found));
  return found.safe ? exitCodes.done : exitCodes.failed;
}
