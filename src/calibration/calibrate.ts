import { within } from "../quantity/guard.js";
import { figures } from "../quantity/print.js";
import type { Line } from "../reeving/line.js";
import { equalTurns } from "./equal-turns.js";
import { possiblePulls } from "./impossible.js";
import { fitLaw, type LawFit, type LawFitInput } from "./law-fit.js";
import { type LawBands, lawOf, lawOfPrior, type MeasuredLaw, priorOf } from "./measured-law.js";
import { findOutliers, type LeftOut } from "./outliers.js";
import type { Observation, Reading } from "./reading.js";
import { calibrationRecords } from "./records.js";
import { type EaseLaw, roveLaw } from "./rove-law.js";
import { unknownLine } from "./unknown-line.js";

/** What the readings of one line, dry or wet, came to. */
export interface LineCalibration {
  readonly line: string;
  readonly wet: boolean;
  /** Equal turns, where they were counted or the purchase tells them. */
  readonly turns?: number;
  readonly purchase: number;
  /** What the line leaves while it is eased, by the balance of its reeving; absent where that is the inverse of hauling. */
  readonly ease?: EaseLaw;
  /** Readings that were given. */
  readonly readings: number;
  /** Pulls that the fit rests on. */
  readonly pulls: readonly Observation[];
  readonly leftOut: readonly LeftOut[];
  /** From the readings alone; absent where they do not settle a ratio. */
  readonly fit?: MeasuredLaw;
  /** Whether readings at different loads tell the drag; otherwise the fit takes it as none. */
  readonly dragSettled: boolean;
  readonly prior: LawBands;
  /** Prior and readings together. */
  readonly posterior: MeasuredLaw;
  /** Above 1 where the readings scatter more than scale and hand explain: all errors are wider by it [-]. */
  readonly noiseFactor: number;
  readonly notes: readonly string[];
}

/** What is known and assumed besides the readings. */
export interface CalibrateOptions {
  /** Bands of ratio and drag of a line before it is measured; by default those of a line that nobody knows. */
  readonly prior?: (line: string, turns: number | undefined) => LawBands | undefined;
  /** A line as it was read, with the losses of its turns in proportion; by default of equal turns, as turns and purchase tell. */
  readonly rove?: (line: string) => Line | undefined;
  /** Scatter of a pull that is read again, over the pull [-]; by default the record. */
  readonly repeatability?: number;
}

/** Load over load from which two readings tell ratio and drag apart [-]. */
const differentLoads = 1.2;

/**
 * Ratio and drag of every line that was read, from the readings alone and together with what was known before.
 *
 *     T_haul = k T + c,   T_ease = (T − c) / k;   k = √(T_haul / T_ease) where there is one pair and no drag
 *
 * A tackle eases by its own balance: one loss a turn that gives the hauling ratio k leaves a T − b c, which is not the inverse.
 *
 * @param readings  readings of any number of lines; dry and wet are kept apart
 * @param options  prior bands, reeving, repeatability [-], 0.001 to 0.5
 * @returns one calibration a line, in the order in which they first appear; what was left out stands there with row and reason
 * Valid for a line whose loss is the same both ways: no ratchet that grips, no cleat.
 * Source: iso-28037 for the weighted fit. Example: calibrate([{ row: 1, line: "lead", load: 100, haul: 110, ease: 91, resolution: 1, wet: false }])[0].pulls.length → 2
 */
export function calibrate(readings: readonly Reading[], options: CalibrateOptions = {}): LineCalibration[] {
  const groups = new Map<string, Reading[]>();
  for (const reading of readings) {
    const key = `${reading.wet ? "wet" : "dry"} ${reading.line}`;
    const group = groups.get(key);
    if (group) group.push(reading);
    else groups.set(key, [reading]);
  }
  return [...groups.values()].map((group) => calibrateLine(group, options));
}

function calibrateLine(readings: readonly Reading[], options: CalibrateOptions): LineCalibration {
  const { line, wet, turns, purchase = 1 } = readings[0]!;
  const rove = roveOf(readings, options);
  const repeatability = within("share", options.repeatability ?? calibrationRecords.repeatability.value, 0.001, 0.5);
  const multiple = calibrationRecords.outlierMultiple.value;
  const prior = options.prior?.(line, turns) ?? unknownLine(turns, purchase);
  const possible = possiblePulls(readings, multiple * repeatability);
  const withoutDrag = !spread(possible.observations);
  const agreed = findOutliers(
    { observations: possible.observations, repeatability, withoutDrag, ease: rove.ease },
    multiple,
  );
  const dragSettled = spread(agreed.kept);
  const input: LawFitInput = { observations: agreed.kept, repeatability, ease: rove.ease };
  const fitted = settled(fitLaw({ ...input, withoutDrag: !dragSettled, start: agreed.law }));
  const noiseFactor = fitted === undefined ? 1 : noiseOf(fitted);
  const widened =
    fitted && noiseFactor > 1 ? fitLaw({ ...input, withoutDrag: !dragSettled, noiseFactor, start: fitted }) : fitted;
  const known = priorOf(prior);
  const joined = agreed.kept.length === 0 ? undefined : fitLaw({ ...input, prior: known, noiseFactor, start: fitted });
  const posterior = joined ? lawOf(joined) : lawOfPrior(known);
  const fit = widened && lawOf(widened);
  return {
    line,
    wet,
    ...(rove.turns !== undefined && { turns: rove.turns }),
    purchase,
    ...(rove.ease && { ease: rove.ease }),
    readings: readings.length,
    pulls: agreed.kept,
    leftOut: [...possible.leftOut, ...agreed.leftOut].sort((one, other) => one.row - other.row),
    ...(fit && { fit }),
    dragSettled: dragSettled && fit !== undefined,
    prior,
    posterior,
    noiseFactor,
    notes: [...rove.notes, ...notesOn({ fit, dragSettled, prior, posterior, noiseFactor })],
  };
}

/** How the readings' line eases, and what had to be assumed of it. */
interface RoveReadings {
  readonly ease?: EaseLaw;
  readonly turns?: number;
  readonly notes: readonly string[];
}

/** The reeving behind the readings of one line: as given, as turns and purchase tell, or unknown. */
function roveOf(readings: readonly Reading[], { rove }: CalibrateOptions): RoveReadings {
  const { line, turns, purchase = 1 } = readings[0]!;
  const given = rove?.(line);
  const load = readings.reduce((most, reading) => Math.max(most, reading.load), 1);
  if (given !== undefined) return { ...easeOf(given, load), ...(turns !== undefined && { turns }), notes: [] };
  const equal = equalTurns({ turns, purchase });
  if (equal !== undefined) {
    const notes =
      purchase === 1 ? [] : [`Fitted through ${equal.words}, one loss at each of its ${equal.turns} turns.`];
    return { ...easeOf(equal.line, load), turns: equal.turns, notes };
  }
  return {
    ...(turns !== undefined && { turns }),
    notes:
      purchase === 1
        ? []
        : [
            `How a purchase of ${figures(purchase)}:1 is rove${turns === undefined ? "" : ` with ${turns} turns`} is not known: it is taken to lose the same share both ways, which a tackle does not.`,
          ],
  };
}

/** Only where a tackle is among the stations does a line ease by another law than the inverse of hauling. */
function easeOf(line: Line, load: number): Pick<RoveReadings, "ease"> {
  return line.stations.some(({ kind }) => kind === "tackle") ? { ease: roveLaw(line, load) } : {};
}

/** Largest error of the logarithm of a ratio that is worth a number [-]. */
const widestError = 1;

/** A fit that says something; nothing where its pulls leave the ratio open. */
function settled(fit: LawFit | undefined): LawFit | undefined {
  return fit && Math.sqrt(fit.covariance[0]) < widestError ? fit : undefined;
}

/** Whether pulls at clearly different loads are there. */
function spread(observations: readonly Observation[]): boolean {
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (const { tension } of observations) {
    least = Math.min(least, tension);
    most = Math.max(most, tension);
  }
  return most > differentLoads * least;
}

/** Factor on all errors: the readings' own scatter, where it is more than chance allows once in twenty. */
function noiseOf({ sumOfSquares, degreesOfFreedom: n }: { sumOfSquares: number; degreesOfFreedom: number }): number {
  if (n < 1) return 1;
  const ninth = 2 / (9 * n);
  const expectedAtMost = n * (1 - ninth + 1.6449 * Math.sqrt(ninth)) ** 3;
  return sumOfSquares > expectedAtMost ? Math.sqrt(sumOfSquares / n) : 1;
}

function notesOn({
  fit,
  dragSettled,
  prior,
  posterior,
  noiseFactor,
}: {
  readonly fit: MeasuredLaw | undefined;
  readonly dragSettled: boolean;
  readonly prior: LawBands;
  readonly posterior: MeasuredLaw;
  readonly noiseFactor: number;
}): string[] {
  const notes: string[] = [];
  if (fit === undefined) notes.push("The pulls alone do not settle a ratio: what was known before counts for most.");
  else if (!dragSettled)
    notes.push(
      "One load alone does not tell drag from ratio: the readings by themselves are taken without drag. Read a second load.",
    );
  if (noiseFactor > 1)
    notes.push(
      `The readings scatter ${figures(noiseFactor, 2)} times as much as scale and hand explain: all intervals are wider by that.`,
    );
  if (fit && dragSettled && fit.drag.low < 0) notes.push("The drag cannot be told from none.");
  if (fit && fit.ratio.low < 1) notes.push("The ratio cannot be told from that of a line without friction.");
  const { ratio } = posterior;
  if (fit && (ratio.low > prior.ratio.high || ratio.high < prior.ratio.low))
    notes.push(
      `The line lies outside of what was expected of it, ${figures(prior.ratio.low)} to ${figures(prior.ratio.high)}: look for a twisted line, a seized sheave or a wrong count of turns.`,
    );
  return notes;
}
