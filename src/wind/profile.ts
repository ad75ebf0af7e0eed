import { within } from "../quantity/guard.js";
import { insideModel } from "./validity.js";

/** Heights between which a wind speed is moved. */
interface Heights {
  /** Height at which the wind is wanted [m]. */
  readonly height: number;
  /** Height at which the wind is known [m]. */
  readonly referenceHeight: number;
}

/** Input of the power law. */
export interface PowerLawInput extends Heights {
  /** Shear exponent [-]: see `shearExponents`. */
  readonly exponent: number;
}

/** Input of the log law. */
export interface LogLawInput extends Heights {
  /** Roughness length [m]: see `roughnessLengths`. */
  readonly roughnessLength: number;
}

/** Input of the offshore profile. */
export interface OffshoreProfileInput {
  /** Mean over one hour at 10 m above the sea [m/s]. */
  readonly hourlyMeanSpeed: number;
  /** Height at which the wind is wanted [m]. */
  readonly height: number;
}

/** Input of the offshore gust. */
export interface OffshoreGustInput extends OffshoreProfileInput {
  /** Time over which the gust is averaged [s]. */
  readonly duration: number;
}

function surfaceLayerHeight(quantity: string, value: number, minimum: number): number {
  return insideModel({
    quantity,
    value: within("height", value),
    unit: "m",
    minimum,
    maximum: 200,
    advice: "The wind profile holds between the roughness of the surface and the top of the surface layer.",
  });
}

/**
 * Wind speed at a height over wind speed at a reference height, by the power law.
 *
 *     V / V_r = (z / z_r)^a
 *
 * @param height           z [m], 1 to 200
 * @param referenceHeight  z_r [m], 1 to 200
 * @param exponent         a [-], 0 to 0.5, see `shearExponents`
 * @returns ratio of wind speeds [-]
 * Valid as a fit over a few tens of metres; the exponent depends on surface and stability, and spreads widely.
 * Source: iec-61400, normal wind profile.
 * Example: powerLawFactor({ height: 2, referenceHeight: 10, exponent: 0.11 }) → 0.8377
 */
export function powerLawFactor({ height, referenceHeight, exponent }: PowerLawInput): number {
  const z = surfaceLayerHeight("height", height, 1);
  const zr = surfaceLayerHeight("reference height", referenceHeight, 1);
  const a = insideModel({
    quantity: "shear exponent",
    value: within("shearExponent", exponent),
    unit: "1",
    minimum: 0,
    maximum: 0.5,
    advice: "Take one of shearExponents: published values lie between 0.06 and 0.4.",
  });
  return (z / zr) ** a;
}

/**
 * Wind speed at a height over wind speed at a reference height, by the log law.
 *
 *     V / V_r = ln(z / z0) / ln(z_r / z0)
 *
 * @param height           z [m], above 10 roughness lengths and 1 m, up to 200
 * @param referenceHeight  z_r [m], above 10 roughness lengths and 1 m, up to 200
 * @param roughnessLength  z0 [m], see `roughnessLengths`
 * @returns ratio of wind speeds [-]
 * Valid for air of neutral stability over an even surface; count heights from the zero plane where plants or houses lift it.
 * Source: wind-profile-table, log law.
 * Example: logLawFactor({ height: 2, referenceHeight: 10, roughnessLength: 0.0002 }) → 0.8513
 */
export function logLawFactor({ height, referenceHeight, roughnessLength }: LogLawInput): number {
  const z0 = within("roughnessLength", roughnessLength, undefined, 2);
  const lowest = Math.max(1, 10 * z0);
  const z = surfaceLayerHeight("height", height, lowest);
  const zr = surfaceLayerHeight("reference height", referenceHeight, lowest);
  return Math.log(z / z0) / Math.log(zr / z0);
}

/**
 * Mean wind at a height over the open sea, from the mean over one hour at 10 m.
 *
 *     U(z) = U0 · [1 + C · ln(z / 10)],  C = 0.0573 · sqrt(1 + 0.15 · U0)
 *
 * @param hourlyMeanSpeed  U0 [m/s], 5 to 60
 * @param height           z [m], 1 to 140
 * @returns mean over one hour [m/s]
 * Valid for strong wind over open sea; below about 10 m/s the stability of the air matters more than this profile.
 * Source: iso-19901-1, wind profile.
 * Example: offshoreMeanSpeed({ hourlyMeanSpeed: 10, height: 2 }) → 8.542
 */
export function offshoreMeanSpeed({ hourlyMeanSpeed, height }: OffshoreProfileInput): number {
  const u0 = offshoreSpeed(hourlyMeanSpeed);
  const c = 0.0573 * Math.sqrt(1 + 0.15 * u0);
  return u0 * (1 + c * Math.log(offshoreHeight(height) / 10));
}

/**
 * Turbulence intensity at a height over the open sea.
 *
 *     I_u(z) = 0.06 · (1 + 0.043 · U0) · (z / 10)^−0.22
 *
 * @param hourlyMeanSpeed  U0, mean over one hour at 10 m [m/s], 5 to 60
 * @param height           z [m], 1 to 140
 * @returns turbulence intensity [-]
 * Valid where the mean profile is.
 * Source: iso-19901-1, turbulence intensity.
 * Example: offshoreTurbulence({ hourlyMeanSpeed: 10, height: 10 }) → 0.0858
 */
export function offshoreTurbulence({ hourlyMeanSpeed, height }: OffshoreProfileInput): number {
  return 0.06 * (1 + 0.043 * offshoreSpeed(hourlyMeanSpeed)) * (offshoreHeight(height) / 10) ** -0.22;
}

/**
 * Highest mean over a short time within one hour, over the open sea.
 *
 *     u(z, t) = U(z) · [1 − 0.41 · I_u(z) · ln(t / 3600)]
 *
 * @param hourlyMeanSpeed  U0, mean over one hour at 10 m [m/s], 5 to 60
 * @param height           z [m], 1 to 140
 * @param duration         t, averaging time of the gust [s], 1 to 3600
 * @returns gust speed [m/s]
 * Valid where the mean profile is; at 3600 s it is the mean profile.
 * Source: iso-19901-1, wind speed for averaging times up to one hour.
 * Example: offshoreGust({ hourlyMeanSpeed: 10, height: 10, duration: 3 }) → 12.494
 */
export function offshoreGust({ hourlyMeanSpeed, height, duration }: OffshoreGustInput): number {
  const t = insideModel({
    quantity: "gust duration",
    value: within("gustDuration", duration),
    unit: "s",
    minimum: 1,
    maximum: 3600,
    advice: "The gust of ISO 19901-1 is the highest mean over a part of one hour: give its length in seconds.",
  });
  const intensity = offshoreTurbulence({ hourlyMeanSpeed, height });
  return offshoreMeanSpeed({ hourlyMeanSpeed, height }) * (1 - 0.41 * intensity * Math.log(t / 3600));
}

function offshoreSpeed(value: number): number {
  return insideModel({
    quantity: "mean wind over one hour at 10 m",
    value,
    unit: "m/s",
    minimum: 5,
    maximum: 60,
    advice: "The profile of ISO 19901-1 is for strong wind at sea: use the log law in lighter air.",
  });
}

function offshoreHeight(value: number): number {
  return insideModel({
    quantity: "height above the sea",
    value,
    unit: "m",
    minimum: 1,
    maximum: 140,
    advice: "The profile of ISO 19901-1 was read for heights up to 140 m.",
  });
}
