import { ValueError } from "../quantity/errors.js";
import { PlanError } from "./plan-error.js";
import type { PlanLine, PlanOption } from "./plan-option.js";
import type { MeasureLimit, PlanLimit, PlannedBoat } from "./planned-boat.js";
import { totalNames, totals } from "./total.js";

/**
 * Refuses a boat that cannot be planned.
 *
 * @param boat  lines with options, limits
 * @returns the same boat
 * @throws PlanError for no line, a line without options, a name met twice, a limit on something that is not there
 * @throws ValueError for a number that is not finite or below zero
 */
export function checkedBoat(boat: PlannedBoat): PlannedBoat {
  if (boat.lines.length === 0)
    throw new PlanError({
      quantity: "lines of the boat",
      value: "none",
      allowed: "one or more",
      advice: "Give the lines that the plan is about.",
    });
  refuseTwice(
    boat.lines.map(({ name }) => name),
    "line",
  );
  for (const line of boat.lines) checkLine(line);
  for (const limit of boat.limits) checkLimit(limit, boat);
  return boat;
}

function refuseTwice(names: readonly string[], what: string): void {
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  if (twice === undefined) return;
  throw new PlanError({
    quantity: `${what} "${twice}"`,
    value: "met twice",
    allowed: "every name once",
    advice: "Give each a name of its own.",
  });
}

function checkLine(line: PlanLine): void {
  if (line.options.length === 0)
    throw new PlanError({
      quantity: `options of the line "${line.name}"`,
      value: "none",
      allowed: "one or more",
      advice: "Add ropes or blocks to the catalogue that fit this line, or leave the line out.",
    });
  refuseTwice(
    line.options.map(({ id }) => id),
    `option of the line "${line.name}":`,
  );
  checkNumber(`weight of the line "${line.name}"`, line.weight ?? 1);
  for (const option of line.options) checkOption(option, `"${line.name}", option "${option.id}"`);
}

function checkOption(option: PlanOption, where: string): void {
  const { mass, cost, handForce, handForceRobust = 0, splices, minutes } = option;
  const numbers = { ...mass, cost, handForce, handForceRobust, splices, minutes };
  for (const [name, value] of Object.entries(numbers)) checkNumber(`${name} of ${where}`, value);
  for (const { rope, length } of option.pieces) checkNumber(`length of ${rope} of ${where}`, length);
  for (const { part, count } of option.parts) checkNumber(`count of ${part} of ${where}`, count);
  const measures = [option.measures, option.measuresRobust ?? {}].flatMap((one) => Object.entries(one));
  for (const [name, value] of measures) if (Number.isNaN(value)) refuseNumber(`${name} of ${where}`, value, "a number");
}

function checkNumber(quantity: string, value: number): void {
  if (!(Number.isFinite(value) && value >= 0)) refuseNumber(quantity, value, "a finite number, 0 or more");
}

function refuseNumber(quantity: string, value: number, allowed: string): never {
  throw new ValueError({ quantity, value: String(value), allowed, advice: "Look at what this option was made from." });
}

function checkLimit(limit: PlanLimit, { lines }: PlannedBoat): void {
  if (limit.kind === "measure") {
    checkMeasure(limit, lines);
    return;
  }
  if (!Object.hasOwn(totals, limit.total))
    refuseLimit(`limit on the total "${limit.total}"`, "no such total", totalNames.join(", "));
  checkNumber(`limit on ${totals[limit.total].words}`, limit.atMost);
}

function checkMeasure(limit: MeasureLimit, lines: readonly PlanLine[]): void {
  const { measure, bound } = limit;
  const what = `limit on ${measure} of the line "${limit.line}"`;
  const names = lines.map(({ name }) => name);
  const line = lines.find(({ name }) => name === limit.line) ?? refuseLimit(what, "no such line", names.join(", "));
  const without = line.options.find(({ measures }) => !Object.hasOwn(measures, measure));
  if (without) {
    const known = Object.keys(without.measures).join(", ") || "none";
    refuseLimit(what, `option "${without.id}" has no such measure`, known);
  }
  if (Number.isNaN(bound)) refuseNumber(what, bound, "a number");
}

function refuseLimit(quantity: string, value: string, allowed: string): never {
  throw new PlanError({ quantity, value, allowed, advice: "Correct the limit, or leave it out." });
}
