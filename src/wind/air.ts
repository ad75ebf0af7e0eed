import { within } from "../quantity/guard.js";
import { coefficient } from "../sources/coefficient.js";

/** Specific gas constant of dry air: universal gas constant over molar mass, both of the standard atmosphere. */
export const dryAirGasConstant = coefficient({
  value: 8314.32 / 28.9644,
  unit: "J/(kg K)",
  low: 287.05,
  high: 287.06,
  status: "published",
  source: "standard-atmosphere-1976",
  place:
    "8314.32 J/(kmol K) over 28.9644 kg/kmol (listed at crnslab.org/util/atmo.php); other tables round it to 287.05 or 287.058",
});

/** State of the air. */
export interface AirState {
  /** Air temperature [K]. */
  readonly temperature: number;
  /** Air pressure [Pa]. */
  readonly pressure: number;
}

/**
 * Density of dry air as an ideal gas.
 *
 *     rho = p / (R · T)
 *
 * @param temperature  T [K], 173.15 to 373.15
 * @param pressure     p [Pa], 0 to 200 000
 * @returns density [kg/m³]
 * Valid for dry air at outdoor temperatures and pressures; moist air is lighter, by 1 to 2 % on a hot damp day.
 * Source: standard-atmosphere-1976, equation of state.
 * Example: airDensity({ temperature: 288.15, pressure: 101325 }) → 1.225
 */
export function airDensity({ temperature, pressure }: AirState): number {
  return within("pressure", pressure) / (dryAirGasConstant.value * within("temperature", temperature));
}

/** Air that meets a sail or a wall. */
export interface MovingAir {
  /** Air density [kg/m³]. */
  readonly airDensity: number;
  /** Wind speed at the body: on a boat that moves, the apparent wind [m/s]. */
  readonly apparentWindSpeed: number;
}

/**
 * Dynamic pressure of the wind: the pressure that stops the air.
 *
 *     q = rho · V² / 2
 *
 * @param airDensity         rho [kg/m³], 0 to 5
 * @param apparentWindSpeed  V, wind speed at the body [m/s], 0 to 100
 * @returns dynamic pressure [Pa]
 * Valid far below the speed of sound: at 100 m/s compression adds 2 %.
 * Source: asce-7, velocity pressure.
 * Example: dynamicPressure({ airDensity: 1.225, apparentWindSpeed: 10 }) → 61.25
 */
export function dynamicPressure({ airDensity: rho, apparentWindSpeed: v }: MovingAir): number {
  return 0.5 * within("airDensity", rho) * within("apparentWindSpeed", v) ** 2;
}
