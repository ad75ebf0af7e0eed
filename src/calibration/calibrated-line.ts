import { logRoot } from "../numerics/log-root.js";
import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { figures } from "../quantity/print.js";
import type { Line } from "../reeving/line.js";
import type { Measured } from "../reeving/station.js";
import type { LineCalibration } from "./calibrate.js";
import { withFactors } from "./line-factors.js";
import { lineLaw } from "./line-law.js";

/** What brings a line of the catalogue to what was measured. */
export interface CalibrationFactors {
  /** Factor on bearing, bending and sliding [-]. */
  readonly lossFactor: number;
  /** Factor on everything that does not grow with load [-]; 0 where there was nothing to multiply. */
  readonly dragFactor: number;
  /** What no factor reaches: one turn more, at the hand end. */
  readonly extra?: Measured;
}

/** A line whose model agrees with what was measured. */
export interface CalibratedLine extends CalibrationFactors {
  readonly line: Line;
}

/** What a line is to be brought to. */
export interface CalibrationTarget {
  /** k of the whole line [-], at least 1. */
  readonly ratio: number;
  /** c of the whole line at the hand [N], at least 0. */
  readonly drag: number;
  /** About the load of the readings [N]. */
  readonly load: number;
}

const range = { least: 1e-3, most: 30 } as const;

/**
 * A line brought to a measured ratio and drag: one factor on all that grows with load, one on all that does not.
 *
 *     k(f) = k measured;   c(g) = c measured
 *
 * The share of each turn stays as the catalogue has it. What factors cannot reach, because a cause is not there
 * to be multiplied, is added as one measured turn at the hand end.
 *
 * @param line  rope and stations [m, rad, N]; untouched
 * @param target  ratio [-], 1 to 1e12, drag [N], 0 or more, load [N], above 0
 * @returns the line with its two factors [-]
 * @throws ReevingError for a line with a ratchet or a closed cleat, ValueError for an impossible target
 * Valid near the load of the readings where friction depends on load.
 * Source: statics. Example: calibratedLine({ rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1 }] }, { ratio: 1.2, drag: 0, load: 100 }).lossFactor → 2
 */
export function calibratedLine(line: Line, { ratio, drag, load }: CalibrationTarget): CalibratedLine {
  const k = within("tensionRatio", ratio);
  const c = within("constantDrag", drag);
  const at = within("loadTension", load, 1e-6);
  const lossFactor = lossFactorFor(line, k, at);
  const scaled = withFactors(line, lossFactor, 1);
  const own = lineLaw(scaled, at).drag;
  const dragFactor = own > 1e-9 ? c / own : 0;
  const brought = own > 1e-9 ? withFactors(line, lossFactor, dragFactor) : scaled;
  const reached = lineLaw(brought, at);
  const missing = { ratio: k / reached.ratio, drag: c - (k / reached.ratio) * reached.drag };
  const needed = missing.ratio > 1 + 1e-6 || missing.drag > 1e-6;
  const factors = { lossFactor, dragFactor, ...(needed && { extra: extraTurn(missing) }) };
  return { line: asCalibrated(line, factors), ...factors };
}

/**
 * A line of the same rope and the same make of blocks as one that was measured, brought along with it.
 *
 * @param line  rope and stations [m, rad, N]; untouched
 * @param factors  what brought the measured line to its readings [-]
 * @returns the line with the factors; the tread of a ratchet keeps its friction, as that was not read
 * Source: statics. Example: asCalibrated({ rope: { diameter: 0.006, stiffness: { tensionTerm: 10, constantTerm: 0, diameterTerm: 0 } }, stations: [] }, { lossFactor: 2, dragFactor: 1 }).rope.stiffness.tensionTerm → 20
 */
export function asCalibrated(line: Line, { lossFactor, dragFactor, extra }: CalibrationFactors): Line {
  const brought = withFactors(line, lossFactor, dragFactor);
  return extra === undefined ? brought : { ...brought, stations: [...brought.stations, extra] };
}

function lossFactorFor(line: Line, ratio: number, load: number): number {
  const ratioAt = (factor: number) => lineLaw(withFactors(line, factor, 1), load).ratio;
  return ratioAt(1) - 1 < 1e-9 ? 1 : factorReaching(ratioAt, ratio);
}

/**
 * The factor at which a line has a ratio, or as near as coefficients that can exist bring it.
 *
 * @param ratioAt  ratio of the line [-] over a factor on what it loses [-]
 * @param ratio  that is wanted [-]
 * @returns factor [-], 0.001 to about 30
 */
export function factorReaching(ratioAt: (factor: number) => number, ratio: number): number {
  const step = 1.25;
  let most = 1;
  while (most < range.most && ratioAt(most) < ratio && canBe(() => ratioAt(step * most))) most *= step;
  return logRoot((factor) => 1e5 * (ratio - ratioAt(factor)), { least: range.least, most });
}

/** Whether a model accepts its coefficients: a friction beyond what exists is refused. */
function canBe(model: () => number): boolean {
  try {
    return Number.isFinite(model());
  } catch (error) {
    if (error instanceof ValueError) return false;
    throw error;
  }
}

function extraTurn({ ratio, drag }: { readonly ratio: number; readonly drag: number }): Measured {
  return {
    kind: "measured",
    name: "measured beyond the catalogue",
    tensionRatio: Math.max(1, ratio),
    drag: Math.max(0, drag),
  };
}

/**
 * A line brought to what its readings, with what was known before, make most likely.
 *
 * @param line  rope and stations [m, rad, N]
 * @param calibration  its readings worked out
 * @returns the line with its two factors [-]
 * Source: statics.
 */
export function lineAsMeasured(line: Line, calibration: LineCalibration): CalibratedLine {
  const { posterior } = calibration;
  return calibratedLine(line, {
    ratio: Math.max(1, posterior.ratio.value),
    drag: Math.max(0, posterior.drag.value),
    load: loadOfReadings(calibration),
  });
}

/** About the load of the readings [N]; 100 N where none could be used. */
export function loadOfReadings({ pulls, purchase }: Pick<LineCalibration, "pulls" | "purchase">): number {
  const mean = pulls.reduce((sum, { tension }) => sum + tension, 0) / Math.max(1, pulls.length);
  return purchase * (mean > 0 ? mean : 100);
}

/**
 * What a page says of a line that was measured, or was not.
 *
 * @param calibration  its readings worked out
 * @returns a sentence
 */
export function calibrationWords(calibration: LineCalibration): string {
  const { line, wet, pulls, readings, prior, posterior } = calibration;
  const expected = `${figures(prior.ratio.value)} (likely ${figures(prior.ratio.low)} to ${figures(prior.ratio.high)})`;
  if (pulls.length === 0) return `${line}: not measured; a ratio of ${expected} is assumed.`;
  const { ratio, drag } = posterior;
  return `${line}: measured${wet ? " wet" : ""}, ${readings} ${readings === 1 ? "reading" : "readings"}. Ratio ${figures(ratio.value)} (95 %: ${figures(ratio.low)} to ${figures(ratio.high)}), drag ${figures(Math.max(0, drag.value), 2)} N, in place of the assumed ${expected}.`;
}
