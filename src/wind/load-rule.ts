import { within } from "../quantity/guard.js";
import { dynamicPressure } from "./air.js";

/** Input of the one-coefficient rule. */
export interface RuleLoadInput {
  /** Load over dynamic pressure and area [-]. */
  readonly loadCoefficient: number;
  /** Area of the sail [m²]. */
  readonly sailArea: number;
  /** Apparent wind speed [m/s]. */
  readonly apparentWindSpeed: number;
  /** Air density [kg/m³]. */
  readonly airDensity: number;
}

/**
 * Sheet load by the classical rule with one coefficient: to compare with, not to design by.
 *
 *     load = C · q · A
 *
 * @param loadCoefficient    C [-], 0 to 5
 * @param sailArea           A [m²], 0.0001 to 2000
 * @param apparentWindSpeed  V_A [m/s], 0 to 100
 * @param airDensity         rho [kg/m³], 0 to 5
 * @returns load [N]
 * Valid as a comparison: it knows neither wind angle nor where the sheet pulls.
 * Source: asce-7, pressure times area; the coefficient is the user's.
 * Example: ruleLoad({ loadCoefficient: 1, sailArea: 10, apparentWindSpeed: 10, airDensity: 1.225 }) → 612.5
 */
export function ruleLoad({ loadCoefficient, sailArea, ...air }: RuleLoadInput): number {
  return coefficientInRange(loadCoefficient) * dynamicPressure(air) * within("sailArea", sailArea);
}

// Exact by definition: pound-force in newtons, foot in metres, knot in metres a second.
const poundForce = 4.4482216152605;
const foot = 0.3048;
const knot = 1852 / 3600;
/** Density for which the imperial constants of books are made: sea level of the standard atmosphere [kg/m³]. */
const standardDensity = 1.225;

/** A rule in pounds-force, square feet and knots. */
export interface ImperialRuleInput {
  /** Constant K of load = K · A · V², in lbf/(ft² kn²). */
  readonly imperialConstant: number;
}

/**
 * Load coefficient behind a rule that is written in pounds-force, square feet and knots.
 *
 *     C = K / 0.0033855, which is K · (lbf / ft²) / (rho · kn² / 2)
 *
 * @param imperialConstant  K of load = K · A · V² [lbf/(ft² kn²)], 0 to 0.0169
 * @returns load coefficient C [-]
 * Valid for air of 1.225 kg/m³, as such rules suppose.
 * Source: iso-2533, density at sea level; units by definition.
 * Example: coefficientOfRule({ imperialConstant: 0.004 }) → 1.18
 */
export function coefficientOfRule({ imperialConstant }: ImperialRuleInput): number {
  const pressure = (imperialConstant * poundForce) / foot ** 2;
  return coefficientInRange(pressure / (0.5 * standardDensity * knot ** 2));
}

function coefficientInRange(value: number): number {
  return within("loadCoefficient", value);
}
