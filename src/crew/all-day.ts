import { fatigueSets, type MuscleGroup, personalSpread } from "../materials/people-fatigue.js";
import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { figures } from "../quantity/print.js";
import { outcomeOf, type Verdict } from "../quantity/verdict.js";
import { type Band, bandOf } from "../sources/band.js";
import { type Crews, crewDays, type DayColumns } from "./crew-days.js";
import type { Interval } from "./day-schedule.js";
import { type HoldValues, heldPerNewton, holdCauses } from "./grip-demand.js";
import { type DayTable, dayByFactor, dayTable, type SheetOption } from "./sheet-option.js";

/** A crew and a day. */
export interface AllDay {
  readonly intervals: readonly Interval[];
  /** Largest grip of one rested hand on a handle [N]. */
  readonly maximumGrip: Band;
  /** The hand when absent. */
  readonly group?: MuscleGroup;
}

const largestFactor = 1024;
/** How near the factor is found, over the factor. */
const nearness = 2 ** -22;

/** Largest factor on all loads at which the hand never gives out; largestFactor when none that was tried is too much. */
function factorFor(
  table: DayTable,
  { option, group }: { readonly option: SheetOption; readonly group: MuscleGroup },
  values: Readonly<Record<string, number>>,
): number {
  const set = fatigueSets[group];
  const crews = {
    holdingTension: Float64Array.of(values.maximumGrip! * heldPerNewton(option.hold, values as HoldValues)),
    fatigueRate: Float64Array.of(set.fatigueRate.value * values.fatigue!),
    recoveryRate: Float64Array.of(set.recoveryRate.value * values.recovery!),
    restFactor: Float64Array.of(values.rest!),
  };
  const dayAt = dayByFactor(table, option, values);
  const holds = (factor: number) =>
    crewDays({ day: dayAt(factor), crews, group }).givesOut[0] === Number.POSITIVE_INFINITY;
  const guess = Math.min(largestFactor, proportionalFactor(dayAt, crews));
  if (guess >= largestFactor && holds(largestFactor)) return largestFactor;
  let width = nearness;
  while (width < 1 && !holds(guess * (1 - width))) width *= 8;
  let low = guess * Math.max(0, 1 - width);
  width = nearness;
  while (holds(guess * (1 + width)) && guess * (1 + width) < largestFactor) width *= 8;
  let high = guess * (1 + width);
  if (high >= largestFactor && holds(largestFactor)) return largestFactor;
  while (high - low > 2 * nearness * high) {
    const middle = 0.5 * (low + high);
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** Rounds in which the guess takes up what of the line's loss does not grow with load. */
const guessRounds = 3;

/** A first guess: in the model without its seam, all that a hand that has not given out feels grows with the load. */
function proportionalFactor(dayAt: (factor: number) => DayColumns, crews: Crews): number {
  const holding = crews.holdingTension[0]!;
  const F = crews.fatigueRate[0]!;
  const R = crews.recoveryRate[0]!;
  const restRate = crews.restFactor[0]! * R;
  let factor = 1;
  for (let round = 0; round < guessRounds; round++) {
    const { lengths, handForces } = dayAt(factor);
    let tired = 0;
    let most = 0;
    for (let i = 0; i < lengths.length; i++) {
      const f = handForces[i]! / holding;
      const level = (F * f) / R;
      const before = tired;
      tired =
        f === 0 ? tired * Math.exp(-restRate * lengths[i]!) : level + (tired - level) * Math.exp(-R * lengths[i]!);
      most = Math.max(most, f === 0 ? 0 : f + Math.max(before, tired));
    }
    if (most === 0) return largestFactor;
    factor = Math.min(largestFactor, factor / most);
  }
  return factor;
}

/**
 * How much heavier a day could be before the hand gives out.
 *
 *     largest s at which the demand of s times every load stays within the capacity all day, found by halving round a first guess
 *
 * @param intervals  stretches of the day [s], with their loads [N]
 * @param maximumGrip  F_max of one rested hand on a handle [N], with its range
 * @param group  muscles; the hand when absent
 * @param option  the sheet: how it is held, what its line loses
 * @param known  causes that are taken at their middle, to see what is left of the range: friction, thinLine, oneOverTwo, maximumGrip, fatigue, recovery, rest, or a cause of the option
 * @returns factor on all loads [-], with the range that grip, friction, line, fatigue, recovery and rest give; 1024 when nothing was too much
 * @throws ValueError for an impossible grip, diameter or angle, or a known cause that is none
 * Valid as crewDays; the same factor on the load of a leg is the highest load that the crew holds in it all day.
 * Source: xia-frey-law-2008, solved for the load.
 * Example: allDayFactor({ intervals: dayIntervals({ length: 9, races: [] }), maximumGrip: { value: 300, low: 280, high: 320 }, option: { name: "bare", parts: [], hold: { cover: { strands: 16, fibre: "polyester", wet: false }, diameter: 0.008, hands: 1 }, causes: {}, lineWith: () => ({ rope: { diameter: 0.008, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [] }) } }).value → 1024
 */
export function allDayFactor({
  option,
  known = [],
  ...day
}: AllDay & { readonly option: SheetOption; readonly known?: readonly string[] }): Band {
  within("maximumGrip", day.maximumGrip.value, 1);
  const inputs: Record<string, Band> = {
    ...option.causes,
    ...holdCauses(option.hold),
    maximumGrip: day.maximumGrip,
    fatigue: personalSpread.fatigue,
    recovery: personalSpread.recovery,
    rest: fatigueSets[day.group ?? "hand"].restFactor,
  };
  for (const name of known) {
    const { value } = inputs[name] ?? refuseName(name, Object.keys(inputs));
    inputs[name] = { value, low: value, high: value };
  }
  const table = dayTable(day.intervals);
  return bandOf(inputs, (values) => factorFor(table, { option, group: day.group ?? "hand" }, values));
}

function refuseName(name: string, names: readonly string[]): never {
  throw new ValueError({
    quantity: "what is known exactly",
    value: `"${name}"`,
    allowed: names.join(", "),
    advice: "Name one of the causes of this option.",
  });
}

/** A way to rig the sheet, with how much heavier its day could be. */
export interface RatedOption {
  readonly option: SheetOption;
  readonly factor: Band;
}

/** How many parts of one are not in the other. */
function partsChanged({ option: one }: RatedOption, { option: other }: RatedOption): number {
  return one.parts.filter((part) => !other.parts.includes(part)).length;
}

/**
 * Which ways to rig the sheet a crew holds all day, and the nearest change that gets there.
 *
 *     holds when the factor on the loads of the day is 1 or more at the bad end of its range, doubtful when only in the middle
 *
 * @param rated  options with their factors [-] from allDayFactor, all for one day
 * @returns one verdict for each option, in order; the change is the passing option with the fewest other parts, or, when none passes, the load that would
 * Valid for the day for which the factors were worked out.
 * Source: common practice, the nearest change is found by trying the options.
 * Example: allDayVerdicts([]) → []
 */
export function allDayVerdicts(rated: readonly RatedOption[]): Verdict[] {
  const passing = rated.filter(({ factor }) => factor.low >= 1);
  return rated.map((one) => {
    const { value, low, high } = one.factor;
    const outcome = outcomeOf({ middle: value, worst: low });
    const reason = `the hand lasts the day up to ${figures(value, 2)} times its loads (likely ${figures(low, 2)} to ${figures(high, 2)})`;
    const verdict: Verdict = { subject: one.option.name, outcome, reason };
    if (outcome === "enough") return verdict;
    const [better] = [...passing].sort(
      (a, b) => partsChanged(one, a) - partsChanged(one, b) || a.factor.value - b.factor.value,
    );
    const change =
      better === undefined
        ? `none of the options passes over its range; this one does at ${figures(low, 2)} times the loads of this day`
        : `${better.option.name}: up to ${figures(better.factor.value, 2)} times the loads (likely ${figures(better.factor.low, 2)} to ${figures(better.factor.high, 2)})`;
    return { ...verdict, change };
  });
}
