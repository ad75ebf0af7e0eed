import type { SailEditionTables } from "../sail-table.js";

const mainAngles = [0, 7, 9, 12, 28, 60, 90, 120, 150, 180];
const jibAngles = [7, 15, 20, 27, 50, 60, 100, 150, 180];
const spinnakerAngles = [28, 41, 50, 60, 67, 75, 100, 115, 130, 150, 180];
const jibDrag = [0.05, 0.032, 0.031, 0.037, 0.25, 0.35, 0.73, 0.95, 0.9];

/** Tables of the 2013 velocity-prediction documentation. */
export const orc2013: SailEditionTables = {
  title: "ORC 2013",
  source: "orc-coefficients-2013",
  sails: {
    main: {
      angleDegrees: mainAngles,
      lift: [0, 0.948, 1.138, 1.25, 1.427, 1.269, 1.125, 0.838, 0.296, -0.112],
      drag: [0.034, 0.017, 0.015, 0.015, 0.026, 0.113, 0.383, 0.969, 1.316, 1.345],
    },
    mainSimpleRig: {
      angleDegrees: mainAngles,
      lift: [0, 0.862, 1.052, 1.164, 1.347, 1.239, 1.125, 0.838, 0.296, -0.112],
      drag: [0.043, 0.026, 0.023, 0.023, 0.033, 0.113, 0.383, 0.969, 1.316, 1.345],
    },
    jib: {
      angleDegrees: jibAngles,
      lift: [0, 1.1, 1.475, 1.5, 1.43, 1.25, 0.4, 0, -0.1],
      drag: jibDrag,
    },
    jibSimpleRig: {
      angleDegrees: jibAngles,
      lift: [0, 1, 1.375, 1.45, 1.43, 1.25, 0.4, 0, -0.1],
      drag: jibDrag,
    },
    // The table of the adjustable jib with the printed factors for a boom:
    // lift × 1.05 at 60° and × 1.3 at 100°, drag × 1.1, 1.2 and 1.3 at 100°, 150° and 180°.
    jibOnBoom: {
      angleDegrees: jibAngles,
      lift: [0, 1.1, 1.475, 1.5, 1.43, 1.25 * 1.05, 0.4 * 1.3, 0, -0.1],
      drag: [0.05, 0.032, 0.031, 0.037, 0.25, 0.35, 0.73 * 1.1, 0.95 * 1.2, 0.9 * 1.3],
    },
    symmetricSpinnaker: {
      angleDegrees: spinnakerAngles,
      lift: [0, 0.978, 1.241, 1.454, 1.456, 1.437, 1.19, 0.951, 0.706, 0.425, 0],
      drag: [0.213, 0.321, 0.425, 0.587, 0.598, 0.619, 0.85, 0.911, 0.935, 0.935, 0.935],
    },
    // The drag of both gennakers dips at 67° in the copy: a slip there cannot be excluded.
    gennaker: {
      angleDegrees: spinnakerAngles,
      lift: [0.026, 1.018, 1.277, 1.471, 1.513, 1.444, 1.137, 0.829, 0.56, 0.25, -0.12],
      drag: [0.191, 0.28, 0.366, 0.523, 0.448, 0.556, 0.757, 0.79, 0.776, 0.62, 0.4],
    },
    gennakerOnPole: {
      angleDegrees: spinnakerAngles,
      lift: [0.085, 1.114, 1.36, 1.513, 1.548, 1.479, 1.207, 0.956, 0.706, 0.425, 0],
      drag: [0.17, 0.238, 0.306, 0.459, 0.392, 0.493, 0.791, 0.894, 0.936, 0.936, 0.936],
    },
    codeZero: {
      angleDegrees: [7, 19, 26, 35, 42, 53, 70, 100, 120, 150, 180],
      lift: [0, 1, 1.785, 2.15, 2.2, 1.9, 1.45, 0.8, 0.45, 0.15, -0.07],
      drag: [0.065, 0.045, 0.065, 0.08, 0.14, 0.28, 0.47, 0.74, 0.85, 0.82, 0.72],
    },
  },
};
