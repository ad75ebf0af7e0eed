import { figures, printForce } from "../quantity/print.js";
import type { LineCalibration } from "./calibrate.js";
import { expectedPull, pullSigma } from "./law-fit.js";
import { type MeasuredLaw, type PullInput, pullVariance } from "./measured-law.js";
import type { Way } from "./reading.js";
import { calibrationRecords } from "./records.js";

/** A pull worth reading next, and what it brings. */
export interface NextMeasurement {
  readonly line: string;
  readonly wet: boolean;
  /** [N] */
  readonly load: number;
  readonly way: Way;
  /** 90 % width of the hand force at the largest load, mean of hauling and easing, now and after the reading [N]. */
  readonly widthNow: number;
  readonly widthAfter: number;
}

/** What could be hung and read. */
export interface NextOptions {
  /** Loads that can be hung [N]; by default a tenth to one and a half times the largest that was. */
  readonly loads?: readonly number[];
  /** Load for which the hand force is wanted [N]; by default the largest that was hung. */
  readonly wantedLoad?: number;
  /** Step of the scale [N]; by default the finest that was used. */
  readonly resolution?: number;
  /** [-]; by default the record. */
  readonly repeatability?: number;
}

const shares = [0.1, 0.25, 0.5, 0.75, 1, 1.5] as const;
const bandWidth = 2 * 1.6449;

/**
 * The pull that narrows the hand force most, of all lines, loads and ways that could be read.
 *
 *     Σ' = Σ − Σ g gᵀ Σ / (σ² + gᵀ Σ g), the width from gᵀ Σ' g at the wanted load
 *
 * @param calibrations  lines as they are known now
 * @param options  loads [N], wanted load [N], resolution [N], repeatability [-]
 * @returns the best pull first, then the best of each other line and way; empty without calibrations
 * Valid as an expectation: it does not know what the scale will show.
 * Source: iso-28037 for the covariance; the update is elementary. Example: nextMeasurements([]).length → 0
 */
export function nextMeasurements(
  calibrations: readonly LineCalibration[],
  options: NextOptions = {},
): NextMeasurement[] {
  return calibrations
    .flatMap((calibration) =>
      (["hauling", "easing"] as const).flatMap((way) => bestLoad(calibration, way, options) ?? []),
    )
    .sort((one, other) => gain(other) - gain(one));
}

const gain = ({ widthNow, widthAfter }: NextMeasurement) => widthNow - widthAfter;

function bestLoad(calibration: LineCalibration, way: Way, options: NextOptions): NextMeasurement | undefined {
  const { line, wet, purchase, pulls, posterior, ease } = calibration;
  const largest = purchase * pulls.reduce((most, { tension }) => Math.max(most, tension), 0);
  const wanted = options.wantedLoad ?? largest;
  if (!(wanted > 0)) return undefined;
  const loads = options.loads ?? shares.map((share) => share * wanted);
  const widthNow = widthOf(posterior, { load: wanted, purchase, ease });
  return loads
    .map((load) => ({
      line,
      wet,
      load,
      way,
      widthNow,
      widthAfter: widthOf(after(calibration, load, way, options), { load: wanted, purchase, ease }),
    }))
    .sort((one, other) => gain(other) - gain(one))[0];
}

function widthOf(law: MeasuredLaw, pull: Omit<PullInput, "way">): number {
  const variance = (way: Way) => pullVariance(law, { ...pull, way });
  return bandWidth * Math.sqrt((variance("hauling") + variance("easing")) / 2);
}

/** The law with the errors that it would have after one more pull that shows what is expected. */
function after(
  { posterior, pulls, purchase, noiseFactor, ease }: LineCalibration,
  load: number,
  way: Way,
  { repeatability = calibrationRecords.repeatability.value, ...options }: NextOptions,
): MeasuredLaw {
  const { ratio, drag, correlation } = posterior;
  const expected = expectedPull({ logRatio: Math.log(ratio.value), drag: drag.value }, load / purchase, way, ease);
  if (expected.force <= 0) return posterior;
  const finest = options.resolution ?? pulls.reduce((least, { resolution }) => Math.min(least, resolution), 10);
  const noise = (noiseFactor * pullSigma(expected.force, finest, repeatability)) ** 2;
  const [a, c] = [ratio.standardError ** 2, drag.standardError ** 2];
  const b = correlation * ratio.standardError * drag.standardError;
  const toRatio = a * expected.byLogRatio + b * expected.byDrag;
  const toDrag = b * expected.byLogRatio + c * expected.byDrag;
  const whole = noise + expected.byLogRatio * toRatio + expected.byDrag * toDrag;
  const [ratioError, dragError] = [Math.sqrt(a - toRatio ** 2 / whole), Math.sqrt(c - toDrag ** 2 / whole)];
  return {
    ratio: { ...ratio, standardError: ratioError },
    drag: { ...drag, standardError: dragError },
    correlation: (b - (toRatio * toDrag) / whole) / (ratioError * dragError),
  };
}

/**
 * A proposal in words.
 *
 * @param next  pull worth reading
 * @returns a sentence [N in text]
 * Example: nextWords({ line: "sheet", wet: false, load: 200, way: "easing", widthNow: 30, widthAfter: 20 }).includes("Ease") → true
 */
export function nextWords({ line, wet, load, way, widthNow, widthAfter }: NextMeasurement): string {
  const verb = way === "hauling" ? "Haul" : "Ease";
  return `${verb} ${line}${wet ? ", wet," : ""} with ${printForce(load)} hung: the range of the hand force is then ${figures(widthAfter, 2)} N wide instead of ${figures(widthNow, 2)} N.`;
}
