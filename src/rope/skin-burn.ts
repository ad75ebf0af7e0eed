import { skinLimits } from "../materials/skin.js";
import { zeroCelsius } from "../quantity/constants.js";
import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";

/** Constants of the damage law as plain numbers. */
export interface DamageLaw {
  /** [1/s] */
  readonly damageFactor: number;
  /** [K] */
  readonly activation: number;
}

const coldest = zeroCelsius;
/** Above this temperature damage is counted at its rate [K]. */
export const hottestCounted = 473.15;

/**
 * Rate at which heat damages living skin.
 *
 *     dΩ/dt = P · exp(−E/(R T))
 *
 * @param temperature  T of the living skin [K], 273.15 to 473.15
 * @param law  P [1/s] and E/R [K]
 * @returns damage a second [1/s]; a burn when it adds up to 1
 * @throws ValueError outside this range
 * Valid from about 44 °C, where damage begins, to about 70 °C.
 * Source: henriques-1947, from memory. Example: 1 / damageRate(320.15, { damageFactor: 3.1e98, activation: 75000 }) → 1773
 */
export function damageRate(temperature: number, { damageFactor, activation }: DamageLaw): number {
  return rateAt(within("contactTemperature", temperature, coldest, hottestCounted), Math.log(damageFactor), activation);
}

function rateAt(kelvin: number, logFactor: number, activation: number): number {
  return Math.exp(logFactor - activation / kelvin);
}

/**
 * Time for which living skin stands a steady temperature before it is burnt.
 *
 *     t = exp(E/(R T)) / P
 *
 * @param temperature  T of the living skin [K], 273.15 to 473.15
 * @returns time with its range [s]
 * @throws ValueError outside this range
 * Valid from about 44 °C to about 70 °C; skin in hot water stands a few seconds more at 60 °C, since it must warm up first.
 * Source: henriques-1947, from memory. Example: timeToBurn(324.15).value > 60 → true
 */
export function timeToBurn(temperature: number): Band {
  return bandOf(
    { damageFactor: skinLimits.damageFactor, activation: skinLimits.activation },
    (law) => 1 / damageRate(temperature, law),
  );
}

/**
 * Burn dose of a course of temperatures.
 *
 *     Ω = ∫ dΩ/dt dt, by trapezoids; above 200 °C the rate of 200 °C is taken
 *
 * @param temperatures  of the living skin [K]
 * @param times  at which it has them, one for each, rising [s]
 * @param law  P [1/s] and E/R [K]
 * @returns dose Ω [-]: burnt at 1
 * @throws ValueError for a temperature below 0 °C, or lists that differ in length
 * Source: henriques-1947, from memory. Example: burnDose([320.15, 320.15], [0, 1773], { damageFactor: 3.1e98, activation: 75000 }) → 1.0
 */
export function burnDose(temperatures: readonly number[], times: readonly number[], law: DamageLaw): number {
  if (temperatures.length !== times.length) {
    throw new ValueError({
      quantity: "course of temperatures",
      value: `${temperatures.length} temperatures at ${times.length} times`,
      allowed: "one time for each temperature",
      advice: "Give lists of one length.",
    });
  }
  within("contactTemperature", Math.min(...temperatures), coldest);
  const logFactor = Math.log(law.damageFactor);
  let dose = 0;
  let before = 0;
  for (const [index, temperature] of temperatures.entries()) {
    const rate = rateAt(Math.min(temperature, hottestCounted), logFactor, law.activation);
    if (index > 0) dose += ((times[index]! - times[index - 1]!) * (before + rate)) / 2;
    before = rate;
  }
  return dose;
}
