import { figures } from "../quantity/print.js";
import { checkedBoat } from "./checked-boat.js";
import { allowedOptions } from "./limit.js";
import type { Chosen, PlanOption } from "./plan-option.js";
import type { PlannedBoat } from "./planned-boat.js";
import { printTotal } from "./total.js";

/** What another option of a line would save at the hand, and what it takes. */
export interface Gain {
  readonly option: PlanOption;
  /** [N] */
  readonly savedForce: number;
  /** [kg]; below 0 when it is lighter as well. */
  readonly addedMass: number;
  /** [cent]; below 0 when it is cheaper as well. */
  readonly addedCost: number;
}

/** Where the next gram and the next euro go furthest on one line. */
export interface Priority {
  readonly line: string;
  readonly now: PlanOption;
  /** The option that saves most newtons for each gram added; absent when none is easier on the hand. */
  readonly byMass?: Gain & { readonly newtonsPerGram: number };
  /** The option that saves most newtons for each euro added. */
  readonly byCost?: Gain & { readonly newtonsPerEuro: number };
  readonly words: string;
}

/**
 * Orders the lines of a boat by what the next gram saves at the hand: it shows where a bigger block pays and where it does not.
 *
 *     newtons a gram = (F_now − F) / (m − m_now), the best of all options of the line; infinite where nothing is added
 *
 * Limits of the lines are kept; limits on totals of the boat are not looked at.
 *
 * @param boat  lines with options, limits
 * @param choice  option of each line now
 * @returns lines, best first
 * @throws PlanError or ValueError for a boat that cannot be planned
 */
export function priorities(boat: PlannedBoat, choice: readonly Chosen[]): Priority[] {
  checkedBoat(boat);
  const found = choice.map((chosen) => ({ chosen, ...gainsOf(chosen, boat) }));
  const rate = ({ byMass }: (typeof found)[number]) => byMass?.newtonsPerGram ?? -1;
  const sorted = found.sort((a, b) => (rate(a) === rate(b) ? 0 : rate(b) - rate(a)));
  const best = sorted.find(({ byMass }) => byMass !== undefined && Number.isFinite(byMass.newtonsPerGram));
  return sorted.map(({ chosen: { line, option }, byMass, byCost }) => ({
    line: line.name,
    now: option,
    ...(byMass && { byMass }),
    ...(byCost && { byCost }),
    words: `${line.name}: ${wordsOf(byMass, best && { line: best.chosen.line.name, rate: rate(best) }, line.name)}`,
  }));
}

function gainsOf({ line, option: now }: Chosen, { limits }: PlannedBoat): Pick<Priority, "byMass" | "byCost"> {
  const gains = allowedOptions(line, limits)
    .filter(({ handForce }) => handForce < now.handForce)
    .map((option): NonNullable<Priority["byMass"]> & NonNullable<Priority["byCost"]> => {
      const savedForce = now.handForce - option.handForce;
      const addedMass = option.mass.dry - now.mass.dry;
      const addedCost = option.cost - now.cost;
      const newtonsPerGram = rateOf(savedForce, 1000 * addedMass);
      const newtonsPerEuro = rateOf(savedForce, addedCost / 100);
      return { option, savedForce, addedMass, addedCost, newtonsPerGram, newtonsPerEuro };
    });
  if (gains.length === 0) return {};
  return {
    byMass: mostOf(gains, ({ newtonsPerGram }) => newtonsPerGram),
    byCost: mostOf(gains, ({ newtonsPerEuro }) => newtonsPerEuro),
  };
}

const rateOf = (saved: number, added: number) => (added > 0 ? saved / added : Number.POSITIVE_INFINITY);

/** The gain with the highest rate; of equals the one that saves more. */
function mostOf<G extends Gain>(gains: readonly G[], rate: (gain: G) => number): G {
  return gains.reduce((best, gain) => {
    if (rate(gain) === rate(best)) return gain.savedForce > best.savedForce ? gain : best;
    return rate(gain) > rate(best) ? gain : best;
  });
}

function wordsOf(gain: Priority["byMass"], best: { line: string; rate: number } | undefined, line: string): string {
  if (!gain) return "nothing in the catalogue is easier on the hand within the limits";
  const { option, savedForce, addedMass, newtonsPerGram } = gain;
  const saved = `${option.words} saves ${figures(savedForce)} N at the hand`;
  if (!Number.isFinite(newtonsPerGram)) return `${saved} and adds no mass`;
  const price = `${saved} for ${printTotal("dry", addedMass)}, ${figures(newtonsPerGram, 2)} N a gram`;
  if (!best || best.line === line) return `${price}: here the next gram goes furthest`;
  return `${price}; a gram on ${best.line} saves ${figures(best.rate / newtonsPerGram, 2)} times as much`;
}
