import { fibres } from "../materials/fibres.js";
import { ValueError } from "../quantity/errors.js";
import { figures } from "../quantity/print.js";
import { type Verdict, worseBy } from "../quantity/verdict.js";
import type { RopeMake } from "./make.js";
import { type LineJob, type LineLimit, lineLimits } from "./thin-limits.js";

/** A rope of any size: everything but its diameter and what its maker states for one size. */
export type RopeKind = Omit<RopeMake, "diameter" | "ratedStrength">;

/** A kind of rope at another size; what was stated for its own size grows with the square. */
function sized(kind: RopeKind & Partial<RopeMake>, diameter: number): RopeMake {
  const { ratedStrength, diameter: own, ...rest } = kind;
  if (ratedStrength === undefined || own === undefined) return { ...rest, diameter };
  return { ...rest, diameter, ratedStrength: ratedStrength * (diameter / own) ** 2 };
}

/** Rope sizes that shops sell [m]. */
export const stockDiameters: readonly number[] = [
  0.9, 1.2, 1.5, 1.8, 2, 2.5, 3, 3.5, 4, 5, 6, 7, 8, 9, 10, 11, 12, 14, 16,
].map((millimetres) => millimetres / 1000);

/** How a line stands at one size. */
export interface SizeStanding {
  readonly diameter: number;
  readonly limits: readonly LineLimit[];
  /** No limit fails at the middle of its range. */
  readonly passes: boolean;
}

/** How thin a line may get. */
export interface Thinnest {
  /** Every size that was tried, thinnest first. */
  readonly sizes: readonly SizeStanding[];
  /** Thinnest size that passes; absent when none does. */
  readonly thinnest?: SizeStanding;
  /** Limit that fails first on the next thinner size; absent when the thinnest size that was tried passes. */
  readonly firstLimit?: LineLimit;
}

/**
 * How thin a line may get before something stops it, and what that is.
 *
 *     thinnest size whose limits all have a middle margin of 1 or more, with every size above it up to the next failure
 *
 * The middle decides, because the safety factor already covers what the estimate does not know.
 *
 * @param kind  fibre, construction, cover
 * @param job  loads [N], lengths [m], hardware
 * @param sizes  diameters to try [m], rising; by default those that shops sell
 * @returns sizes [m] with their limits, the thinnest that passes, and the limit that stops the next
 * @throws ValueError for no size, sizes that do not rise, or an impossible job
 * Source: cordage-institute-1401, section 4, for the safety factor; each limit names its own.
 */
export function howThin(kind: RopeKind, job: LineJob, sizes: readonly number[] = stockDiameters): Thinnest {
  if (sizes.length === 0 || sizes.some((size, index) => index > 0 && !(size > (sizes[index - 1] ?? size))))
    throw new ValueError({
      quantity: "sizes to try",
      value: JSON.stringify(sizes),
      allowed: "at least one diameter, each larger than the one before",
      advice: "Sort the sizes, the thinnest first.",
    });
  const standings = sizes.map((diameter): SizeStanding => {
    const limits = lineLimits(sized(kind, diameter), job);
    return { diameter, limits, passes: limits.every(({ margins }) => margins.middle >= 1) };
  });
  const at = standings.findIndex(({ passes }) => passes);
  const thinnest = standings[at];
  const below = thinnest === undefined ? standings.at(-1) : standings[at - 1];
  const failing = below?.limits.filter(({ margins }) => margins.middle < 1) ?? [];
  const firstLimit = failing.sort((one, other) => one.margins.middle - other.margins.middle)[0];
  return {
    sizes: standings,
    ...(thinnest !== undefined && { thinnest }),
    ...(firstLimit !== undefined && { firstLimit }),
  };
}

/**
 * Judgement about a line at one size, with the nearest size that passes.
 *
 * @param make  rope
 * @param job  loads [N], lengths [m], hardware
 * @param shop  sizes that could be bought instead [m], and other ropes to try where no size of this one passes
 * @returns verdict: the limit that is worst decides. A line that fails is led to the nearest size without a failure, a
 *   line in doubt to the nearest that holds.
 * @throws ValueError for an impossible job
 * Source: cordage-institute-1401, section 4, for the safety factor; each limit names its own.
 */
export function thinVerdict(
  make: RopeMake,
  job: LineJob,
  shop: { readonly sizes?: readonly number[]; readonly others?: readonly RopeKind[] } = {},
): Verdict {
  const worst = lineLimits(make, job).reduce((one, other) => (isWorse(other, one) ? other : one));
  const subject = `${figures(1000 * make.diameter)} mm ${fibres[make.fibre].name}: ${worst.name}`;
  const { outcome, reason } = worst;
  if (outcome === "enough") return { subject, outcome, reason };
  const good = (size: SizeStanding) =>
    outcome === "not enough" ? size.passes : size.limits.every((limit) => limit.outcome === "enough");
  for (const kind of [make, ...(shop.others ?? [])]) {
    const [nearest] = howThin(kind, job, shop.sizes)
      .sizes.filter(good)
      .sort((one, other) => distance(one.diameter, make) - distance(other.diameter, make));
    if (nearest === undefined) continue;
    const other = kind === make ? "" : ` ${fibres[kind.fibre].name}`;
    return { subject, outcome, reason, change: `take ${figures(1000 * nearest.diameter)} mm${other}` };
  }
  return { subject, outcome, reason };
}

const distance = (diameter: number, make: RopeMake) => Math.abs(Math.log(diameter / make.diameter));

function isWorse(one: LineLimit, other: LineLimit): boolean {
  const order = worseBy(other.outcome, one.outcome);
  if (order !== 0) return order < 0;
  return one.outcome === "not enough"
    ? one.margins.middle < other.margins.middle
    : one.margins.worst < other.margins.worst;
}
