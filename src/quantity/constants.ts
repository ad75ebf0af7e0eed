/** Standard gravity [m/s²], exact by definition. */
export const standardGravity = 9.80665;

/** 0 °C [K], exact by definition. */
export const zeroCelsius = 273.15;
