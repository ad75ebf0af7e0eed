/** Standard gravity [m/s²], exact by definition. */
export const standardGravity = 9.80665;

/** 0 °C [K], exact by definition. */
export const zeroCelsius = 273.15;

/** One pound-force [N], exact by definition. */
export const poundForce = 4.4482216152605;

/** One knot [m/s], exact by definition: 1852 m in an hour. */
export const knot = 1852 / 3600;
