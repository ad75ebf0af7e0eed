import { figures } from "../quantity/print.js";
import { outcomeOf, type Verdict } from "../quantity/verdict.js";
import { type Band, bandOf } from "../sources/band.js";
import { fraying, type RubbingFibre, rubbing } from "./rubbing.js";

/** One line that runs on another. */
export interface ChafeInput {
  /** Fibre whose fraying is asked for. */
  readonly fibre: RubbingFibre;
  /** Fibre that it runs on. */
  readonly against: RubbingFibre;
}

/** Bands that the fraying rate is made of. For a like pair both frictions are one and the same number. */
function causes({ fibre, against }: ChafeInput) {
  const own = { own: rubbing[fibre].friction, frailty: rubbing[fibre].frailty };
  const reference = { reference: rubbing.polyester.friction };
  return { ...own, ...(against !== fibre && { other: rubbing[against].friction }), ...reference };
}

/** A polyester side is its own reference: one number, not two that vary apart. */
function rateOf({ fibre, against }: ChafeInput, values: Record<string, number>): number {
  const frictionOf = (one: RubbingFibre) =>
    one === "polyester" ? values.reference! : one === fibre ? values.own! : values.other!;
  const pair = Math.sqrt(frictionOf(fibre) * frictionOf(against));
  return (pair / values.reference!) * values.frailty!;
}

/**
 * How fast a fibre frays where it runs on another, over polyester on polyester.
 *
 *     r = frailty · √(μ_fibre · μ_against) / μ_polyester
 *
 * Friction work at equal load and slide, times how much of the fibre that work frays. Friction of two different fibres is
 * taken as the geometric middle of each on itself: a modelling choice.
 *
 * @param fibre  fibre whose fraying is asked for
 * @param against  fibre that it runs on
 * @returns fraying rate with its range [-]; 1 for polyester on polyester
 * Valid for comparing pairs of lines; water, sand and sharp edges are left out.
 * Source: brown-burgoyne-1999, wear in step with load and slide. Example: chafeRate({ fibre: "aramid", against: "aramid" }).value → 4.58
 */
export function chafeRate(input: ChafeInput): Band {
  return bandOf<string>(causes(input), (values) => rateOf(input, values));
}

/** Margin of one side below the rate that passes. */
function marginOf(input: ChafeInput): Band {
  return bandOf<string>({ ...causes(input), limit: fraying }, (values) => values.limit! / rateOf(input, values));
}

/** Two lines that touch while they run. */
export interface TouchingLines {
  readonly first: RubbingFibre;
  readonly second: RubbingFibre;
}

const bothSides = ({ first, second }: TouchingLines): readonly ChafeInput[] =>
  first === second
    ? [{ fibre: first, against: first }]
    : [
        { fibre: first, against: second },
        { fibre: second, against: first },
      ];

function outcome(lines: TouchingLines): Verdict["outcome"] {
  const margins = bothSides(lines).map(marginOf);
  return outcomeOf({
    middle: Math.min(...margins.map(({ value }) => value)),
    worst: Math.min(...margins.map(({ low }) => low)),
  });
}

function worstRate(lines: TouchingLines): number {
  return Math.max(...bothSides(lines).map((side) => chafeRate(side).value));
}

/** A polyester cover on one of the lines, on the one that frays most first; if neither helps, on both. */
function nearest(lines: TouchingLines): TouchingLines | undefined {
  const { first, second } = lines;
  const one: TouchingLines[] = [
    { first: "polyester", second },
    { first, second: "polyester" },
  ];
  const choices = [
    ...one.sort((a, b) => worstRate(a) - worstRate(b)),
    { first: "polyester", second: "polyester" } as const,
  ];
  return choices.find((other) => outcome(other) === "enough");
}

/**
 * Whether two lines that touch while they run stay smooth, why, and on how many of them a polyester cover mends it.
 *
 *     holds when the fraying rate of each side, at the bad end of its range, is below the rate that passes
 *
 * @param first  fibre on the outside of one line
 * @param second  fibre on the outside of the other
 * @returns verdict; the change is absent when the pair holds
 * Valid for clean lines that touch; lines led apart do not chafe at all.
 * Source: common practice, aramid frays on aramid and polyester beside it stays smooth. Example: chafeVerdict({ first: "aramid", second: "aramid" }).outcome → "not enough"
 */
export function chafeVerdict(lines: TouchingLines): Verdict {
  const side = (input: ChafeInput) => {
    const { value, low, high } = chafeRate(input);
    const spread = low === high ? "" : ` (${figures(low, 2)} to ${figures(high, 2)})`;
    return `${rubbing[input.fibre].name} ${figures(value, 2)}${spread}`;
  };
  const limit = `up to ${figures(fraying.value, 2)} (${figures(fraying.low, 2)} to ${figures(fraying.high, 2)}) stays smooth`;
  const verdict = {
    subject: `${rubbing[lines.first].name} running on ${rubbing[lines.second].name}`,
    outcome: outcome(lines),
    reason: `fraying rate of ${bothSides(lines).map(side).join(", of ")}, where polyester on polyester has 1; ${limit}`,
  };
  const better = verdict.outcome === "enough" ? undefined : nearest(lines);
  if (better === undefined) return verdict;
  return {
    ...verdict,
    change: `${rubbing[better.first].name} on ${rubbing[better.second].name}: fraying rate ${figures(worstRate(better), 2)}`,
  };
}
