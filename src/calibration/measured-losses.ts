import { ninetyFifth } from "../numerics/normal-quantile.js";
import type { Line } from "../reeving/line.js";
import type { Band } from "../sources/band.js";
import type { LineCalibration } from "./calibrate.js";
import { asCalibrated, calibratedLine, loadOfReadings } from "./calibrated-line.js";

/** What is not sure of a measured line, in place of the ranges of its catalogue, and the line at values of it. */
export interface MeasuredLosses {
  /** Standard deviates by name [-], each 0 in the middle: they do not depend on each other. */
  readonly ranges: Readonly<Record<string, Band>>;
  /** The line at values of the ranges; another line of the same rope and make of blocks where one is given. */
  readonly lineWith: (values: Readonly<Record<string, number>>, catalogue?: Line) => Line;
}

const names = { loss: "loss of the turns, as measured", drag: "drag of the turns, as measured" } as const;
const deviate: Band = { value: 0, low: -ninetyFifth, high: ninetyFifth };

/**
 * Measured losses of the turns of a line, for whoever takes ranges by name.
 *
 *     k = k₀ · exp(s_k z₁),   c = c₀ + s_c (ρ z₁ + √(1 − ρ²) z₂);   one factor on the loss of all turns, one on their drag
 *
 * @param line  rope and stations as the catalogue has them [m, rad, N], ratchets switched off and cleats open
 * @param calibration  its readings worked out
 * @returns two ranges [-], and the line with the losses that they give
 * @throws ReevingError for a line with a ratchet or a closed cleat
 * Valid near the load of the readings.
 * Source: statics.
 */
export function measuredLosses(line: Line, calibration: LineCalibration): MeasuredLosses {
  const { ratio, drag, correlation } = calibration.posterior;
  const load = loadOfReadings(calibration);
  const apart = Math.sqrt(Math.max(0, 1 - correlation ** 2));
  return {
    ranges: { [names.loss]: deviate, [names.drag]: deviate },
    lineWith: (values, catalogue = line) => {
      const [one, other] = [values[names.loss] ?? 0, values[names.drag] ?? 0];
      const factors = calibratedLine(line, {
        ratio: Math.max(1, ratio.value * Math.exp(ratio.standardError * one)),
        drag: Math.max(0, drag.value + drag.standardError * (correlation * one + apart * other)),
        load,
      });
      return asCalibrated(catalogue, factors);
    },
  };
}
