import { checkedBoat } from "./checked-boat.js";
import { PlanError } from "./plan-error.js";
import type { PlanLine, PlanOption } from "./plan-option.js";
import type { PlannedBoat } from "./planned-boat.js";

/**
 * The same boat at the bad end of the friction band: its limits must hold at the 95th percentile.
 *
 *     measures and hand forces of each option are replaced by those of the 95th percentile
 *
 * @param boat  lines whose options carry `measuresRobust`
 * @returns boat to plan with
 * @throws PlanError when a limit is set on a measure that has no value at the 95th percentile
 */
export function robustBoat(boat: PlannedBoat): PlannedBoat {
  const { lines, limits, ...others } = checkedBoat(boat);
  const robust = lines.map((line): PlanLine => {
    const limited = limits.flatMap((limit) =>
      limit.kind === "measure" && limit.line === line.name ? [limit.measure] : [],
    );
    return { ...line, options: line.options.map((option) => robustOption(option, limited, line.name)) };
  });
  return { ...others, lines: robust, limits };
}

function robustOption(option: PlanOption, limited: readonly string[], line: string): PlanOption {
  const { measuresRobust = {}, measures, handForce, handForceRobust = handForce } = option;
  const missing = limited.find((measure) => !Object.hasOwn(measuresRobust, measure));
  if (missing !== undefined)
    throw new PlanError({
      quantity: `${missing} of "${line}", option "${option.id}"`,
      value: "no value at the 95th percentile",
      allowed: "a member of measuresRobust for each measure with a limit",
      advice: "Give it; where friction plays no part it is the same as in measures.",
    });
  return { ...option, handForce: handForceRobust, measures: { ...measures, ...measuresRobust } };
}
