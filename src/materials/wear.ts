import { figures } from "../quantity/print.js";
import { outcomeOf, type Verdict } from "../quantity/verdict.js";
import { type Band, bandOf } from "../sources/band.js";
import { type Coefficient, coefficient } from "../sources/coefficient.js";
import { type Cover, type CoverFibre, coverFriction, coverName, type StrandCount } from "./covers.js";
import { type TreadName, treads } from "./surfaces.js";

function record(low: number, value: number, high: number, status: Coefficient["status"], place: string): Coefficient {
  return coefficient({ value, unit: "1", low, high, status, place });
}

const harshPlace = "no printed value found: a wide judged range; a marked rope eased a hundred times would narrow it";

/** How hard a tread is on a rope that slides over it, over toothed metal [-]. */
export const treadHarshness = {
  smooth: record(0.03, 0.08, 0.15, "from memory", harshPlace),
  ribbed: record(0.1, 0.25, 0.4, "from memory", harshPlace),
  faceted: record(0.35, 0.5, 0.7, "from memory", harshPlace),
  toothed: record(1, 1, 1, "common practice", "the reference: the harshest tread"),
} as const satisfies Record<TreadName, Coefficient>;

/** Wear of a fibre over that of polyester under the same slide [-]. */
export const fibreWear = {
  polyester: record(1, 1, 1, "common practice", "the reference"),
  aramidBlend: record(0.7, 1, 1.4, "from memory", "no printed comparison on treads found"),
  bareCore: record(0.5, 1, 2, "from memory", "no printed comparison on treads found"),
} as const satisfies Record<CoverFibre, Coefficient>;

/** Numbers of the wear rule that belong to no single tread or fibre. */
export const wearRule = {
  /** Exponent p of the coarseness (24 / strands)^p [-]. */
  coarsenessExponent: record(
    0.5,
    0.75,
    1,
    "from memory",
    "fewer strands of one cover are wider as 1/n and thicker as 1/√n; which of the two the tread bites is not known",
  ),
  /** Largest wear rate at which a rope lasts [-]. */
  lastingRate: record(
    1.05,
    1.2,
    1.5,
    "common practice",
    "a smooth 24-strand cover lasts on toothed metal (rate 1), a coarser one does not: the limit lies in between",
  ),
  /** Strands of a stripped core, which stand open to the tread [-]. */
  coreStrands: record(8, 12, 16, "common practice", "most stripped cores have twelve strands"),
} as const;

/** A cover on a tread. */
export interface WearInput {
  readonly tread: TreadName;
  readonly cover: Cover;
}

/** Bands that the wear rate is made of, by name. */
function causes({ tread, cover }: WearInput) {
  const strands: Band =
    cover.fibre === "bareCore"
      ? wearRule.coreStrands
      : { value: cover.strands, low: cover.strands, high: cover.strands };
  return {
    harsh: treadHarshness[tread],
    exponent: wearRule.coarsenessExponent,
    fibre: fibreWear[cover.fibre],
    strands,
  };
}

function rate({ harsh, exponent, fibre, strands }: Record<keyof ReturnType<typeof causes>, number>): number {
  return harsh * fibre * (24 / strands) ** exponent;
}

/**
 * How fast a locked tread wears a cover, over a smooth 24-strand polyester cover on toothed metal.
 *
 *     w = harshness · (24 / strands)^p · fibre factor
 *
 * Load, length of slide and water are taken as equal: it compares pairs on the same sheet, and gives no life in hours.
 *
 * @param tread  smooth, ribbed, faceted or toothed
 * @param cover  strands and fibre; the state does not count. A stripped core counts as its own strands
 * @returns wear rate with its range [-]; 1 for the reference pair
 * Valid for comparing; that wear grows with load and slide alike for every pair is taken from published wear of aramid yarn on aluminium.
 * Source: brown-burgoyne-1999, wear in step with load; factors are records of their own. Example: wearRate({ tread: "toothed", cover: { strands: 8, fibre: "polyester", wet: false } }).value → 2.28
 */
export function wearRate(input: WearInput): Band {
  return bandOf(causes(input), rate);
}

/** Margin of the wear rate below what lasts: middle and bad end. */
function marginOf(input: WearInput): Band {
  return bandOf({ ...causes(input), limit: wearRule.lastingRate }, ({ limit, ...values }) => limit / rate(values));
}

function outcome(input: WearInput): Verdict["outcome"] {
  const { value, low } = marginOf(input);
  return outcomeOf({ middle: value, worst: low });
}

/** Treads from kind to harsh, covers from coarse to smooth: one place further is one step. */
const treadOrder = (Object.keys(treads) as TreadName[]).sort(
  (one, other) => treadHarshness[one].value - treadHarshness[other].value,
);
const strandOrder: readonly StrandCount[] = [8, 16, 24];

/** Fewest steps of tread and strands to a pair that lasts; among equals the pair that grips most. */
function nearest({ tread, cover }: WearInput): WearInput | undefined {
  const strandChoices = cover.fibre === "bareCore" ? [cover.strands] : strandOrder;
  const steps = (other: WearInput) =>
    Math.abs(treadOrder.indexOf(other.tread) - treadOrder.indexOf(tread)) +
    Math.abs(strandOrder.indexOf(other.cover.strands) - strandOrder.indexOf(cover.strands));
  const grip = (other: WearInput) => coverFriction(other.cover, treads[other.tread]).value;
  return treadOrder
    .flatMap((name) => strandChoices.map((strands): WearInput => ({ tread: name, cover: { ...cover, strands } })))
    .filter((other) => outcome(other) === "enough")
    .sort((one, other) => steps(one) - steps(other) || grip(other) - grip(one))[0];
}

/** Words for what changes from one pair to another. */
function changeTo(from: WearInput, to: WearInput): string {
  const parts: string[] = [];
  if (to.cover.strands !== from.cover.strands) parts.push(`a ${to.cover.strands}-strand cover`);
  if (to.tread !== from.tread) parts.push(`a ${treads[to.tread].name}`);
  const friction = ({ tread, cover }: WearInput) => figures(coverFriction(cover, treads[tread]).value, 2);
  return (
    `${parts.join(" on ")}: wear rate ${figures(wearRate(to).value, 2)}, ` +
    `friction ${friction(to)} instead of ${friction(from)}`
  );
}

/**
 * Whether a cover lasts on a tread, why, and the smallest change of tread or strands that lasts.
 *
 *     holds when w · spread ≤ rate that lasts; the nearest pair is searched by trying all of them
 *
 * @param tread  smooth, ribbed, faceted or toothed
 * @param cover  strands, fibre and state
 * @returns verdict; the change is absent when the pair holds, or when no pair of this fibre does
 * Valid for a ratchet that is eased under load day after day; it is a judgement, not a life in hours.
 * Source: common practice, smooth covers on toothed metal and coarse ones on softer treads. Example: wearVerdict({ tread: "toothed", cover: { strands: 8, fibre: "polyester", wet: false } }).outcome → "not enough"
 */
export function wearVerdict(input: WearInput): Verdict {
  const wear = wearRate(input);
  const limit = wearRule.lastingRate;
  const verdict = {
    subject: `${coverName(input.cover)}, on a ${treads[input.tread].name}`,
    outcome: outcome(input),
    reason:
      `wear rate ${figures(wear.value, 2)}${range(wear)}, where a smooth cover on toothed metal has 1; ` +
      `up to ${figures(limit.value, 2)}${range(limit)} lasts`,
  };
  const better = verdict.outcome === "enough" ? undefined : nearest(input);
  return better === undefined ? verdict : { ...verdict, change: changeTo(input, better) };
}

function range({ low, high }: Band): string {
  return low === high ? "" : ` (${figures(low, 2)} to ${figures(high, 2)})`;
}
