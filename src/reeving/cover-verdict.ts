import { coverName } from "../materials/covers.js";
import { treads } from "../materials/surfaces.js";
import { wearVerdict } from "../materials/wear.js";
import { figures } from "../quantity/print.js";
import { type Outcome, outcomeOf, outcomes, type Verdict } from "../quantity/verdict.js";
import { type Band, bandOf } from "../sources/band.js";
import type { CoverEffect } from "./cover-effect.js";

/** Covers and treads tried on one line, and what is asked of them. */
export interface CoverDemands {
  readonly effects: readonly CoverEffect[];
  /** Hand force that the crew can keep up [N]. */
  readonly handLimit: Band;
  /** Load in the lightest wind in which the line must still run out [N]. */
  readonly lightLoad: Band;
}

/** How a load stands against its limit, from the share of the limit that it uses. */
function against(used: Band, limit: Band): Outcome {
  const { value, high } = bandOf({ used, limit }, (one) => one.used / one.limit);
  return outcomeOf({ middle: 1 / value, worst: 1 / high });
}

const worst = (found: readonly Outcome[]): Outcome => outcomes.findLast((one) => found.includes(one)) ?? "enough";

const range = ({ value, low, high }: Band) =>
  `${figures(value, 2)} N${low === high ? "" : ` (${figures(low, 2)} to ${figures(high, 2)})`}`;
const name = ({ cover, tread }: CoverEffect) => `${coverName(cover)}, on a ${treads[tread].name}`;

/** One cover on its tread against the three demands; the reason names those that are in the way, or all when none is. */
function judge(effect: CoverEffect, { handLimit, lightLoad }: CoverDemands): Verdict {
  const { easing, runOutLoad } = effect;
  const wear = wearVerdict(effect);
  const demands = [
    {
      outcome: against(easing, handLimit),
      reason: `asks the hand for ${range(easing)}, which can keep up ${range(handLimit)}`,
    },
    {
      outcome: against(runOutLoad, lightLoad),
      reason: `runs out from ${range(runOutLoad)}, light air gives ${range(lightLoad)}`,
    },
    { outcome: wear.outcome, reason: wear.reason },
  ];
  const outcome = worst(demands.map((demand) => demand.outcome));
  const named = outcome === "enough" ? demands : demands.filter((demand) => demand.outcome !== "enough");
  return { subject: name(effect), outcome, reason: named.map(({ reason }) => reason).join("; ") };
}

/** How many of strands, fibre and tread differ. */
function thingsChanged(one: CoverEffect, other: CoverEffect): number {
  const pairs = [
    [one.cover.strands, other.cover.strands],
    [one.cover.fibre, other.cover.fibre],
    [one.tread, other.tread],
  ];
  return pairs.filter(([from, to]) => from !== to).length;
}

/** Steps of friction between two covers on their treads. */
function frictionApart(one: CoverEffect, other: CoverEffect): number {
  return Math.abs(Math.log(one.friction.value / other.friction.value));
}

/**
 * Whether each cover on its tread spares the hand in a breeze, still runs out in light air and lasts, and the nearest one that does.
 *
 *     holds when hold ≤ hand limit, run-out load ≤ load in light air and wear ≤ what lasts, each over its range
 *
 * @param effects  results of coverEffects at the load of the breeze, of one tread or of several
 * @param handLimit  hand force that can be kept up [N], with its range
 * @param lightLoad  load in the lightest wind in which the line must run [N], with its range
 * @returns one verdict for each effect; the change is the one of them, in the same state, that passes with the fewest of strands, fibre and tread changed, then with the nearest friction
 * Valid for effects of one line at one load.
 * Source: common practice, a sheet must be held in a breeze, run in light air and last. Example: coverVerdicts({ effects: [], handLimit: { value: 60, low: 45, high: 80 }, lightLoad: { value: 20, low: 20, high: 20 } }) → []
 */
export function coverVerdicts(asked: CoverDemands): Verdict[] {
  const judged = asked.effects.map((effect) => ({ effect, verdict: judge(effect, asked) }));
  const passing = judged.filter(({ verdict }) => verdict.outcome === "enough").map(({ effect }) => effect);
  return judged.map(({ effect, verdict }) => {
    if (verdict.outcome === "enough") return verdict;
    const [better] = passing
      .filter(({ cover }) => cover.wet === effect.cover.wet)
      .sort(
        (one, other) =>
          thingsChanged(one, effect) - thingsChanged(other, effect) ||
          frictionApart(one, effect) - frictionApart(other, effect),
      );
    return better === undefined ? verdict : { ...verdict, change: `${name(better)}: hold ${range(better.easing)}` };
  });
}
