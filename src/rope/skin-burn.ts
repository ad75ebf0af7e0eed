import { skinLimits } from "../materials/skin.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";

/** Constants of the damage law as plain numbers. */
export interface DamageLaw {
  /** [1/s] */
  readonly damageFactor: number;
  /** [K] */
  readonly activation: number;
}

const coldest = 273.15;
const hottest = 473.15;

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
  const kelvin = within("contactTemperature", temperature, coldest, hottest);
  return Math.exp(Math.log(damageFactor) - activation / kelvin);
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
 *     Ω = ∫ dΩ/dt dt, by trapezoids
 *
 * @param temperatures  of the living skin at equal steps, from the start [K]
 * @param step  length of a step [s], above 0
 * @param law  P [1/s] and E/R [K]
 * @returns dose Ω [-]: burnt at 1
 * @throws ValueError outside these ranges
 * Source: henriques-1947, from memory. Example: burnDose([320.15, 320.15], 1773, { damageFactor: 3.1e98, activation: 75000 }) → 1.0
 */
export function burnDose(temperatures: readonly number[], step: number, law: DamageLaw): number {
  const seconds = within("duration", step, 1e-9);
  const rates = temperatures.map((temperature) => damageRate(Math.min(temperature, hottest), law));
  return rates.slice(1).reduce((dose, rate, index) => dose + (seconds * (rate + rates[index]!)) / 2, 0);
}
