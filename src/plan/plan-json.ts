import type { Outcome } from "../quantity/verdict.js";
import type { Front } from "./front.js";
import { limitWords } from "./limit.js";
import type { LimitPrice } from "./limit-price.js";
import type { PlanList } from "./list.js";
import type { Optimum } from "./optimum.js";
import type { Chosen, PlanOption } from "./plan-option.js";
import type { PlannedBoat } from "./planned-boat.js";
import type { Gain, Priority } from "./priorities.js";
import { totalNames, totalOf, totalsOf } from "./total.js";

/** Results of a plan to write out. */
export interface PlanResults {
  readonly name?: string;
  /** The boat that was planned: its limits, options and currency. */
  readonly boat?: PlannedBoat;
  /** Limits kept at the bad end of the range. */
  readonly robust?: boolean;
  /** Limits that cannot be kept, in words. */
  readonly conflicts?: readonly string[];
  /** How each line stands as planned. */
  readonly standings?: readonly { readonly line: string; readonly outcome: Outcome }[];
  /** What the boat has now. */
  readonly before?: readonly Chosen[];
  readonly best?: Optimum;
  readonly front?: Front;
  readonly prices?: readonly LimitPrice[];
  readonly priorities?: readonly Priority[];
  /** Lists to buy and make, by name. */
  readonly lists?: Readonly<Record<string, PlanList>>;
}

/**
 * Results of a plan as JSON: options by name, totals with their units, proofs, prices, lists.
 *
 * @param results  what there is of best plan, front, prices, priorities and lists
 * @returns text, two spaces a level, with a line end
 * Example: JSON.parse(planJson({})).units.dry → "kg"
 */
export function planJson({
  name,
  boat,
  robust,
  conflicts,
  standings,
  before,
  best,
  front,
  prices,
  priorities,
  lists,
}: PlanResults): string {
  const currency = boat?.currency;
  const results = {
    ...(name !== undefined && { name }),
    ...(robust !== undefined && { robust }),
    ...(conflicts && { conflicts }),
    ...(standings && { standings }),
    units: Object.fromEntries(totalNames.map((total) => [total, totalOf(total).unit])),
    ...(currency !== undefined && { currency }),
    ...(boat && {
      limits: boat.limits.map((limit) => ({ words: limitWords(limit, currency), ...limit })),
      lines: boat.lines.map((line) => ({ name: line.name, options: line.options.map(plainOption) })),
    }),
    ...(before && { before: { choice: before.map(plainChoice), totals: totalsOf(before) } }),
    ...(best && { best: plain(best) }),
    ...(front && { front: { goal: front.goal, complete: front.complete, points: front.points.map(plain) } }),
    ...(prices && {
      prices: prices.map(({ limit, total, saved, loosened, words }) => ({
        limit: limitWords(limit, currency),
        total,
        saved,
        ...(loosened && { loosened: { limit: limitWords(loosened.limit, currency), saved: loosened.saved } }),
        words,
      })),
    }),
    ...(priorities && {
      priorities: priorities.map(({ line, now, byMass, byCost, byHardware, words }) => ({
        line,
        now: now.id,
        ...(byMass && { byMass: plainGain(byMass) }),
        ...(byCost && { byCost: plainGain(byCost) }),
        ...(byHardware && { byHardware: plainGain(byHardware) }),
        words,
      })),
    }),
    ...(lists && { lists }),
  };
  return `${JSON.stringify(results, finite, 2)}\n`;
}

/** A number without end would be lost: it is written as a word. */
function finite(_: string, value: unknown): unknown {
  return typeof value === "number" && !Number.isFinite(value) ? String(value) : value;
}

function plain({ choice, totals, proofs }: Optimum) {
  return { choice: choice.map(plainChoice), totals, proofs };
}

const plainChoice = ({ line, option }: Chosen) => ({ line: line.name, option: option.id });
const plainOption = ({ words: _, ...option }: PlanOption) => option;
const plainGain = <G extends Gain>({ option, ...numbers }: G) => ({ option: option.id, ...numbers });
