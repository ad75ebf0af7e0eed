import { figures } from "../quantity/print.js";
import { checkedBoat } from "./checked-boat.js";
import { allowedOptions, capOf } from "./limit.js";
import type { Chosen, PlanOption } from "./plan-option.js";
import type { PlannedBoat } from "./planned-boat.js";
import { countsOf, printTotal, totalNames } from "./total.js";

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

/** Other hardware for the rope that the line has, such as a bigger block. */
export interface HardwareGain extends Gain {
  /** [g/N]; 0 where it adds nothing. */
  readonly gramsPerNewton: number;
  /** Blocks, rings and cleats of the line [-]. */
  readonly pieces: number;
}

/** Where the next gram and the next bit of money go furthest on one line. */
export interface Priority {
  readonly line: string;
  readonly now: PlanOption;
  /** The option that saves most newtons for each gram added; absent when none is easier on the hand. */
  readonly byMass?: Gain & { readonly newtonsPerGram: number };
  /** The option that saves most newtons for what it costs, in units of the currency, whatever that is. */
  readonly byCost?: Gain & { readonly newtonsPerEuro: number };
  /** The hardware that saves most newtons for each gram added, rope as it is; absent when none is easier on the hand. */
  readonly byHardware?: HardwareGain;
  readonly words: string;
}

/**
 * Orders the lines of a boat by what the next gram saves at the hand: it shows where a bigger block pays and where it does not.
 *
 *     newtons a gram = (F_now − F) / (m − m_now), the best of all options of the line; infinite where nothing is added
 *
 * A loaded line loses much in few blocks, so that a bigger one saves much; a lightly loaded line with many blocks carries many grams
 * for little. Limits of the lines are kept, and those on totals of the boat with every other line as it is; a total that is
 * over its limit already must not grow.
 *
 * @param boat  lines with options, limits
 * @param choice  option of each line now
 * @returns lines, best first
 * @throws PlanError or ValueError for a boat that cannot be planned
 */
export function priorities(boat: PlannedBoat, choice: readonly Chosen[]): Priority[] {
  checkedBoat(boat);
  const found = choice.map((chosen, index) => ({ chosen, ...gainsOf({ boat, choice, index }) }));
  const rate = ({ byMass }: (typeof found)[number]) => byMass?.newtonsPerGram ?? -1;
  const sorted = found.sort((a, b) => (rate(a) === rate(b) ? 0 : rate(b) - rate(a)));
  const best = sorted.find(({ byMass }) => byMass !== undefined && Number.isFinite(byMass.newtonsPerGram));
  const dearer = sorted.flatMap(({ chosen, byHardware }) =>
    byHardware && byHardware.gramsPerNewton > 0 ? [{ line: chosen.line.name, ...byHardware }] : [],
  );
  const cheapest = dearer.sort((a, b) => a.gramsPerNewton - b.gramsPerNewton)[0];
  return sorted.map(({ chosen: { line, option }, byMass, byCost, byHardware }) => ({
    line: line.name,
    now: option,
    ...(byMass && { byMass }),
    ...(byCost && { byCost }),
    ...(byHardware && { byHardware }),
    words: `${line.name}: ${[
      wordsOf(byMass, best && { line: best.chosen.line.name, rate: rate(best) }, line.name),
      ...(byHardware
        ? [hardwareWords({ gain: byHardware, same: byHardware.option === byMass?.option }, option, line.name, cheapest)]
        : []),
    ].join("; ")}`,
  }));
}

interface Place {
  readonly boat: PlannedBoat;
  readonly choice: readonly Chosen[];
  readonly index: number;
}

function gainsOf(place: Place): Pick<Priority, "byMass" | "byCost" | "byHardware"> {
  const { boat, choice, index } = place;
  const { line, option: now } = choice[index]!;
  const gains = allowedOptions(line, boat.limits)
    .filter((option) => option.handForce < now.handForce && keepsTotals(place, option))
    .map((option) => {
      const savedForce = now.handForce - option.handForce;
      const addedMass = option.mass.dry - now.mass.dry;
      const addedCost = option.cost - now.cost;
      const newtonsPerGram = rateOf(savedForce, 1000 * addedMass);
      const newtonsPerEuro = rateOf(savedForce, addedCost / 100);
      return { option, savedForce, addedMass, addedCost, newtonsPerGram, newtonsPerEuro };
    });
  if (gains.length === 0) return {};
  const hardware = gains.filter(({ option }) => JSON.stringify(option.pieces) === JSON.stringify(now.pieces));
  return {
    byMass: mostOf(gains, ({ newtonsPerGram }) => newtonsPerGram),
    byCost: mostOf(gains, ({ newtonsPerEuro }) => newtonsPerEuro),
    ...(hardware.length > 0 && { byHardware: hardwareGain(mostOf(hardware, ({ newtonsPerGram }) => newtonsPerGram)) }),
  };
}

function hardwareGain({ option, savedForce, addedMass, addedCost }: Gain): HardwareGain {
  const pieces = option.parts.reduce((sum, { count }) => sum + count, 0);
  return {
    option,
    savedForce,
    addedMass,
    addedCost,
    gramsPerNewton: Math.max(0, (1000 * addedMass) / savedForce),
    pieces,
  };
}

/** Whether the boat with another option on one line stays within its totals, or at least does not go further over them. */
function keepsTotals({ boat, choice, index }: Place, option: PlanOption): boolean {
  const after = choice.with(index, { line: choice[index]!.line, option });
  return totalNames.every((name) => {
    const cap = capOf(boat.limits, name);
    if (!Number.isFinite(cap)) return true;
    const counts = countsOf(name, after);
    return counts <= cap || counts <= countsOf(name, choice);
  });
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
  const price = `${saved} for ${printTotal("dry", addedMass)}, ${figures(1 / newtonsPerGram, 2)} g a newton`;
  if (!best || best.line === line) return `${price}: here the next gram goes furthest`;
  return `${price}; a gram on ${best.line} saves ${figures(best.rate / newtonsPerGram, 2)} times as much`;
}

/** Where a bigger block pays and where it does not: loaded lines with few blocks against lightly loaded ones with many. */
function hardwareWords(
  { gain, same }: { readonly gain: HardwareGain; readonly same: boolean },
  { handForce }: PlanOption,
  line: string,
  cheapest: { readonly line: string; readonly gramsPerNewton: number } | undefined,
): string {
  const { option, savedForce, addedMass, gramsPerNewton, pieces } = gain;
  const what = same ? "with this hardware alone it" : `for hardware alone, ${option.words}`;
  const loaded = `at ${figures(handForce, 2)} N in the hand and ${pieces} ${pieces === 1 ? "piece" : "pieces"} of hardware`;
  if (gramsPerNewton === 0) return `${what} pays: it saves ${figures(savedForce, 2)} N ${loaded} and adds no mass`;
  const price = `${figures(savedForce, 2)} N for ${printTotal("dry", addedMass)}, ${figures(gramsPerNewton, 2)} g a newton`;
  if (cheapest === undefined || cheapest.line === line) return `${what} pays here first: ${price}, ${loaded}`;
  const times = gramsPerNewton / cheapest.gramsPerNewton;
  const verdict = times < paying ? "pays" : "does not pay";
  return `${what} ${verdict}: ${price}, ${figures(times, 2)} times that on ${cheapest.line}, ${loaded}`;
}

/** Judged: up to so many times the grams a newton of the best line a change is still worth thinking about. */
const paying = 3;
