import { PlanError } from "./plan-error.js";
import type { Chosen } from "./plan-option.js";
import type { PlannedBoat } from "./planned-boat.js";
import { lessBy, type Totals, totalNames, totalsOf } from "./total.js";
import type { TotalName } from "./total-name.js";

/**
 * A choice from the names of its options, such as what a boat sails with now.
 *
 * @param boat  lines with options
 * @param ids  option of each line, by the line's name
 * @returns choice in the order of the lines
 * @throws PlanError for a line without an option, an option that the line does not have, a line that the boat does not have
 */
export function choiceFrom(boat: PlannedBoat, ids: Readonly<Record<string, string>>): Chosen[] {
  const names = boat.lines.map(({ name }) => name);
  const stranger = Object.keys(ids).find((name) => !names.includes(name));
  if (stranger !== undefined) refuse(`line "${stranger}"`, "not on this boat", names);
  return boat.lines.map((line) => {
    const id = Object.hasOwn(ids, line.name) ? ids[line.name] : undefined;
    const option = line.options.find((one) => one.id === id);
    if (!option) {
      const known = line.options.map((one) => one.id);
      return refuse(`option of the line "${line.name}"`, id === undefined ? "none named" : `"${id}"`, known);
    }
    return { line, option };
  });
}

function refuse(quantity: string, value: string, allowed: readonly string[]): never {
  throw new PlanError({ quantity, value, allowed: allowed.join(", "), advice: "Correct the name." });
}

/** One line before and after. */
export interface LineChange {
  readonly line: string;
  /** Words of the option. */
  readonly before: string;
  readonly after: string;
  readonly changed: boolean;
  /** After less before, in the unit of each total. */
  readonly difference: Totals;
}

/** A boat before and after. */
export interface BeforeAfter {
  readonly lines: readonly LineChange[];
  readonly before: Totals;
  readonly after: Totals;
  readonly difference: Totals;
}

/**
 * Sets two choices of one boat side by side, line by line.
 *
 * @param before  option of each line before
 * @param after  option of each line after, the same lines in the same order
 * @returns lines, totals, differences (after less before) [kg, cent, N, -, min]
 * @throws PlanError when the two are not about the same lines
 * Example: beforeAfter([], []).difference.dry → 0
 */
export function beforeAfter(before: readonly Chosen[], after: readonly Chosen[]): BeforeAfter {
  const [names, others] = [before, after].map((choice) => choice.map(({ line }) => line.name));
  if (names!.join("\n") !== others!.join("\n")) refuse("lines after", others!.join(", "), names!);
  const [was, is] = [totalsOf(before), totalsOf(after)];
  const lines = before.map((old, index): LineChange => {
    const now = after[index]!;
    return {
      line: old.line.name,
      before: old.option.words,
      after: now.option.words,
      changed: old.option.id !== now.option.id,
      difference: less(totalsOf([now]), totalsOf([old])),
    };
  });
  return { lines, before: was, after: is, difference: less(is, was) };
}

function less(first: Totals, second: Totals): Totals {
  const entries = totalNames.map((name) => [name, lessBy(name, first[name], second[name])] as const);
  return Object.fromEntries(entries) as Record<TotalName, number>;
}
