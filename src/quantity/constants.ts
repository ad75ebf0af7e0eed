/** Standard gravity [m/s²], exact by definition. */
export const standardGravity = 9.80665;
