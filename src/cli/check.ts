import { type BoatCheck, checkBoat } from "../boat/check.js";
import { byNeed, type Demand, isOpen } from "../boat/demand.js";
import type { CheckedDemand, LineCheck } from "../boat/line-check.js";
import type { ThingToDo } from "../boat/things-to-do.js";
import { figures, printForce } from "../quantity/print.js";
import { type Outcome, outcomes } from "../quantity/verdict.js";
import type { Band } from "../sources/band.js";
import { boatJson, readBoat } from "./boats.js";
import { aligned, wrapped } from "./columns.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";

/** What `haulbook check` was asked. */
export interface CheckOptions {
  readonly boat: string;
  readonly json: boolean;
  /** Customs and comfort as well. */
  readonly notes: boolean;
}

const withRange = ({ value, low, high }: Band, factor = 1) =>
  `${figures(factor * value)} (${figures(factor * low)}–${figures(factor * high)})`;

/** Lines by their outcome, such as `9 enough, 2 can't tell, 1 not enough`. */
export function countWords(lines: readonly { readonly outcome: Outcome }[]): string {
  return outcomes.map((outcome) => `${lines.filter((line) => line.outcome === outcome).length} ${outcome}`).join(", ");
}

function numberTable({ lines, currency }: BoatCheck): string {
  const titles = ["line", "haul [N]", "hold [N]", "out [N]", "dry [g]", "wet [g]", currency === "" ? "cost" : currency];
  const rows = lines.map(({ name, feel, budget, outcome }) => [
    name,
    withRange(feel.hauling),
    withRange(feel.easing),
    withRange(feel.runOutLoad),
    withRange(budget.dry, 1000),
    figures(1000 * budget.wet.value),
    figures(budget.cost),
    outcome,
  ]);
  return aligned(
    [[...titles, "all in all"], ...rows],
    titles.map((_, column) => column > 0),
  );
}

/** What a change does, such as `hold 54 N (5.5 kg) → 60 N (6.1 kg); 12 g lighter; 67 EUR to buy`. */
function doesWords({ hand, mass, price, alsoMeets, watch }: NonNullable<ThingToDo["does"]>, currency: string): string {
  const grams = 1000 * mass;
  const weight =
    Math.abs(grams) < 0.5 ? "no heavier" : `${figures(Math.abs(grams))} g ${grams > 0 ? "heavier" : "lighter"}`;
  const parts = [
    `${hand.what} ${printForce(hand.before)} → ${printForce(hand.after)}`,
    weight,
    price === 0 ? "nothing to buy" : `${figures(price)} ${currency} to buy`.replace("  ", " "),
  ];
  if (alsoMeets.length > 0) parts.push(`also gives enough of: ${alsoMeets.join(", ")}`);
  if (watch !== undefined) parts.push(`keep an eye on: ${watch.subject} (${marginWords(watch)})`);
  return parts.join("; ");
}

/** Where a demand stands, 1 is just enough. */
function marginWords({ margins: { middle, worst }, least }: Demand): string {
  const asked = least === 1 ? "" : `, of which ${figures(least, 2)} is asked`;
  return `${figures(middle, 2)} of what is asked, ${figures(worst, 2)} at the bad end${asked}`;
}

const lead = { change: "Take", measure: "Measure:", give: "It has to give:" } as const;

function thingWords({ line, because, kind, words, does }: ThingToDo, currency: string): string {
  const effect = does === undefined ? "" : ` (${doesWords(does, currency)})`;
  return `${line}: ${lead[kind]} ${words}${effect}. Because of ${because.subject}: ${because.outcome}; ${because.reason}.`;
}

function openWords(name: string, one: CheckedDemand): string {
  const steps = [
    ...(one.outcome === "can't tell" && one.settle !== undefined ? [`To know: ${one.settle}`] : []),
    ...(one.proposal === undefined ? [] : [`To mend: ${one.proposal.words}`]),
  ];
  const next = steps.length > 0 ? steps : [one.gives ?? ""];
  const said = [one.reason, ...next].map((words) => `${words[0]!.toUpperCase()}${words.slice(1)}.`);
  return `${name}, ${one.subject} (${one.consequence}): ${one.outcome}, ${marginWords(one)}. ${said.join(" ")}`;
}

const isNote = ({ consequence, outcome }: Demand) => consequence === "comfort" && outcome !== "enough";

/** Demands of all lines in the order of need. */
function listed(
  lines: readonly LineCheck[],
  of: (one: Demand) => boolean,
  words: (name: string, one: CheckedDemand) => string,
) {
  return lines
    .flatMap(({ name, demands }) => demands.filter(of).map((one) => ({ name, one })))
    .sort((first, second) => byNeed(first.one, second.one))
    .map(({ name, one }) => wrapped(words(name, one), "- "));
}

/** The tables and the lists of a check, for a terminal. */
function report(check: BoatCheck, notes: boolean): string {
  const { currency, lines, thingsToDo } = check;
  const cost = `${figures(check.cost, 4)} ${currency}`.trim();
  const sums = `All lines: ${figures(check.dry.value)} kg dry (${figures(check.dry.low)} to ${figures(check.dry.high)}), ${figures(check.wet.value)} kg wet, cost ${cost}.`;
  const totals = check.totals
    .filter(isOpen)
    .map(({ subject, outcome, reason }) => `Limit on ${subject}: ${outcome}; ${reason}.`);
  const things = thingsToDo.map((thing, index) => wrapped(thingWords(thing, currency), `${index + 1}. `));
  const open = listed(lines, isOpen, openWords);
  const noted = listed(lines, isNote, (name, { subject, reason }) => `${name}, ${subject}: ${reason}.`);
  const head =
    thingsToDo.length === 0
      ? "Nothing to do."
      : thingsToDo.length === 1
        ? "One thing to do"
        : `${thingsToDo.length === 2 ? "Two" : "Three"} things to do`;
  return `${[
    `${check.name}: ${lines.length} ${lines.length === 1 ? "line" : "lines"}, ${countWords(lines)}.`,
    "",
    head,
    ...things,
    "",
    numberTable(check),
    "",
    "In brackets: 5th to 95th percentile of what friction, loads and ropes may be.",
    "",
    sums,
    ...totals,
    ...check.contradictions.map((words) => wrapped(`Stated loads do not go together: ${words}.`, "")),
    ...(open.length === 0
      ? []
      : ["", "All that is not enough or cannot be told, the gravest first (1 is all that is asked)", ...open]),
    ...(noted.length === 0
      ? []
      : notes
        ? ["", "Notes: customs and comfort", ...noted]
        : ["", `${noted.length} ${noted.length === 1 ? "note" : "notes"} of custom and comfort: --notes shows them.`]),
    "",
    "Estimates for comparing: rated strength, class rules and a qualified rigger decide.",
  ].join("\n")}\n`;
}

/** `haulbook check`: how every line of a boat stands; 1 where something that can hurt somebody is not enough. */
export async function check({ boat, json, notes }: CheckOptions, surroundings: Surroundings): Promise<ExitCode> {
  const found = checkBoat(await readBoat(boat, surroundings));
  surroundings.out(json ? boatJson(found) : report(found, notes));
  return found.safe ? exitCodes.done : exitCodes.failed;
}
