import { countsOfOption } from "./candidates.js";
import { meets } from "./limit.js";
import type { PlanLine, PlanOption } from "./plan-option.js";
import type { MeasureLimit } from "./planned-boat.js";
import { totalNames } from "./total.js";

/** Most options of one line. */
const mostOptions = 40;

/**
 * The options of a line that are worth planning with: as it is, those that keep its limits and that no other beats in every total, then
 * those that break fewest limits, lightest first.
 */
export function worthKeeping(line: PlanLine, limits: readonly MeasureLimit[], robust: boolean): PlanLine {
  const measuresAt = (option: PlanOption) => (robust ? option.measuresRobust : undefined) ?? option.measures;
  const rated = line.options.map((option, index) => ({
    option,
    index,
    counts: countsOfOption(line, option),
    broken: limits.filter((limit) => !meets({ ...option, measures: measuresAt(option) }, limit)).length,
  }));
  type Rated = (typeof rated)[number];
  const beats = (one: Rated, other: Rated) =>
    one.broken <= other.broken &&
    totalNames.every((name) => one.counts[name] <= other.counts[name]) &&
    (one.index < other.index || totalNames.some((name) => one.counts[name] < other.counts[name]));
  const rank = (one: Rated) => [
    one.index === 0 ? 0 : 1,
    one.broken,
    rated.some((other) => other !== one && beats(other, one)) ? 1 : 0,
    one.counts.dry,
    one.index,
  ];
  const sorted = rated
    .map((one) => ({ one, rank: rank(one) }))
    .sort((a, b) => {
      const at = a.rank.findIndex((value, i) => value !== b.rank[i]);
      return at < 0 ? 0 : a.rank[at]! - b.rank[at]!;
    });
  const kept = sorted.slice(0, mostOptions).map(({ one }) => one);
  return { ...line, options: kept.sort((a, b) => a.index - b.index).map(({ option }) => option) };
}
