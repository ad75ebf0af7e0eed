import { effortLimits } from "../materials/people-activity.js";
import { within } from "../quantity/guard.js";
import type { Band } from "../sources/band.js";

/**
 * Share of maximum that a hand may be asked for, over and over through a day, by the share of the time for which it is asked.
 *
 *     least and most of 1 − (D − 1/28800)^0.24 and 0.066 − 0.143 · ln D;   the middle is their mean
 *
 * @param dutyCycle  D, time under load over all time [-], 0.005 to 0.9
 * @returns share of maximum [-], with both rules as its ends
 * @throws ValueError for a duty cycle outside
 * Valid for work of a day: what can be kept up without harm, far below what a hand can be driven to in an hour.
 * Source: common practice, two rules of work design whose terms are from memory. Example: acceptableEffort({ dutyCycle: 0.5 }).low → 0.153
 */
export function acceptableEffort({ dutyCycle }: { readonly dutyCycle: number }): Band {
  const D = within("loadShare", dutyCycle, 0.005, 0.9);
  const { exponent, once, offset, slope } = effortLimits;
  const rules = [1 - (D - once.value) ** exponent.value, offset.value - slope.value * Math.log(D)];
  return { value: 0.5 * (rules[0]! + rules[1]!), low: Math.min(...rules), high: Math.max(...rules) };
}
