import { ninetyFifth } from "../numerics/normal-quantile.js";
import { ReevingError } from "../quantity/errors.js";
import { figures } from "../quantity/print.js";
import { type Line, prepareLine } from "../reeving/line.js";
import type { Reeving, Station } from "../reeving/reeving.js";
import { type FactorName, factorNames } from "../reeving/scaled.js";
import type { Turn } from "../reeving/station.js";
import { type Band, bandOf } from "../sources/band.js";
import type { UncertainInput } from "../uncertainty/uncertain-input.js";
import { calibrate, type LineCalibration } from "./calibrate.js";
import {
  asCalibrated,
  type CalibratedLine,
  calibrationWords,
  lineAsMeasured,
  loadOfReadings,
} from "./calibrated-line.js";
import { lineBands } from "./line-law.js";
import { measuredInputs } from "./measured-inputs.js";
import type { LawBands } from "./measured-law.js";
import type { Reading } from "./reading.js";
import { unknownLine } from "./unknown-line.js";

/** A line that a page computes with. */
export interface LineRequest {
  readonly name: string;
  /** Rope and stations as the catalogue has them; by the purchase of the readings where the page knows several. */
  readonly line: Line | ((purchase: number) => Line);
  /** What is not sure of it, as the catalogue has it. */
  readonly uncertainInputs: readonly UncertainInput[];
  /** About the load of interest [N]. */
  readonly load: number;
  /** Whether the line is wet on this page; dry when absent. */
  readonly wet?: boolean;
}

/** The line that stands: as it was measured where it was, as the catalogue has it otherwise. */
export interface StandingLine {
  readonly name: string;
  readonly wet: boolean;
  readonly measured: boolean;
  /** Whether there are readings of it that cannot stand for it here; the words say why. */
  readonly unfit: boolean;
  /** What a page says of it. */
  readonly words: string;
  /** Factor on all that grows with load, and on the rest, over the catalogue, with their ranges [-]; 1 where nothing was measured. */
  readonly factors: { readonly loss: Band; readonly drag: Band };
  /** A line of the same rope and blocks, as it stands; at other values of the two factors where they are drawn. */
  line(catalogue: Line, drawn?: { readonly loss: number; readonly drag: number }): Line;
  /** What is not sure of it: what was measured in place of the records of friction and drag; load and tread stay. */
  uncertainInputs(catalogue: readonly UncertainInput[]): readonly UncertainInput[];
  /** A record that a factor stands for now: without spread where the line was measured. */
  settled(record: Band): Band;
}

const measuredCauses: readonly string[] = ["bearing", "bending", "sliding", "drag"] satisfies FactorName[];

/**
 * The line that a page computes with: calibrated where the readings hold it, that of the catalogue otherwise.
 *
 * The readings count together with the records of the catalogue. A ratchet is read switched off: its tread keeps the
 * friction of the catalogue.
 *
 * @param request  name, line [m, rad, N], uncertain inputs, load [N]
 * @param readings  of any lines of one boat [N]; none when absent
 * @returns the line that stands, its uncertain inputs, and the words that a page shows
 * @throws ReevingError or ValueError for a line that cannot exist
 * Valid for lines of the same rope and the same make of blocks as the one that was read.
 * Source: statics. Example: standingLine({ name: "lead", line: { rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1 }] }, uncertainInputs: [], load: 100 }).measured → false
 */
export function standingLine(request: LineRequest, readings: readonly Reading[] = []): StandingLine {
  const { name, wet = false } = request;
  const title = `${name[0]?.toUpperCase() ?? ""}${name.slice(1)}${wet ? ", wet" : ""}`;
  const ofLine = readings.filter(({ line }) => line === name);
  const fitting = ofLine.filter((reading) => reading.wet === wet);
  const first = fitting[0];
  const unfit = (why: string) => fromCatalogue(request, `${title}: ${why}; catalogue values.`, true);
  if (ofLine.length === 0) return fromCatalogue(request, `${title}: not measured; catalogue values.`, false);
  if (first === undefined)
    return unfit(wet ? "read dry only, and here it is wet" : "read wet only, and here it is dry");
  const line = lineAt(request, first.purchase ?? 1);
  if (line === undefined)
    return unfit(`read with a purchase of ${figures(first.purchase ?? 1)}:1, which is not how it is rigged here`);
  const off = { ...line, stations: line.stations.map(switchedOff) };
  const [calibration] = calibrate(fitting, { prior: () => priorOf(off, request), rove: () => off });
  if (calibration === undefined || calibration.pulls.length === 0) return unfit(unusable(calibration));
  const treads = line.stations.some(({ kind }) => kind === "ratchet");
  return fromReadings({ request, title, off, treads, calibration });
}

function fromCatalogue({ name, wet = false }: LineRequest, words: string, unfit: boolean): StandingLine {
  const one = { value: 1, low: 1, high: 1 };
  return {
    name,
    wet,
    measured: false,
    unfit,
    words,
    factors: { loss: one, drag: one },
    line: (line) => line,
    uncertainInputs: (uncertainInputs) => uncertainInputs,
    settled: (record) => record,
  };
}

interface Found {
  readonly request: LineRequest;
  readonly title: string;
  /** The line of the readings, ratchets switched off. */
  readonly off: Line;
  /** Whether it has ratchets. */
  readonly treads: boolean;
  readonly calibration: LineCalibration;
}

function fromReadings({ request, title, off, treads, calibration }: Found): StandingLine {
  const { name, wet = false } = request;
  const { line: brought, ...calibrated } = lineAsMeasured(off, calibration);
  const load = loadOfReadings(calibration);
  const uncertainInputs = measuredInputs({ line: brought, law: calibration.posterior, load });
  return {
    name,
    wet,
    measured: true,
    unfit: false,
    words: [
      `${title}${calibrationWords(calibration).slice(name.length).replace(": measured wet", ": measured")}`,
      factorWords(calibrated),
      ...calibration.notes,
      ...calibration.leftOut.map(
        ({ row, pull }) => `Row ${row}, ${pull === "both" ? "the whole reading" : pull}, was left out.`,
      ),
      ...(treads ? ["The grip of the ratchet's tread was not read: it stays that of the catalogue."] : []),
    ].join(" "),
    factors: {
      loss: times(calibrated.lossFactor, uncertainInputs[0]!.record),
      drag: times(calibrated.dragFactor, dragShare(calibration)),
    },
    line: (catalogue, drawn) => asCalibrated(catalogue, drawn ? { ...calibrated, ...drawnFactors(drawn) } : calibrated),
    uncertainInputs: (catalogue) => [
      ...catalogue.filter(({ turns }) => !measuredCauses.includes(turns)),
      ...uncertainInputs,
    ],
    settled: ({ value }) => ({ value, low: value, high: value }),
  };
}

/** The line at a purchase; nothing where the page has none of that purchase. */
function lineAt({ line }: LineRequest, purchase: number): Line | undefined {
  try {
    const found = typeof line === "function" ? line(purchase) : line;
    return Math.abs(prepareLine(found).velocityRatio - purchase) < 1e-6 ? found : undefined;
  } catch (error) {
    if (typeof line === "function" && error instanceof ReevingError) return undefined;
    throw error;
  }
}

function unusable(calibration: LineCalibration | undefined): string {
  const [left] = calibration?.leftOut ?? [];
  return `none of its readings can be used${left === undefined ? "" : ` (row ${left.row}: ${left.reason})`}`;
}

/** Ratchets switched off, cleats open: how a line is read. */
function switchedOff(station: Station): Station {
  if (station.kind === "cleat") return { ...station, closed: false };
  if (station.kind === "tackle") return { ...station, reeving: reevingOff(station.reeving) };
  return turnOff(station);
}

function reevingOff(reeving: Reeving): Reeving {
  const ropes = reeving.ropes.map((rope) => ({
    ...rope,
    turns: rope.turns.map(({ body, turn }) => ({ body, turn: turnOff(turn) })),
  }));
  return { ...reeving, ropes };
}

function turnOff(turn: Turn): Turn {
  if (turn.kind !== "ratchet") return turn;
  const { treadFriction: _tread, engageLoad: _engage, ...wheel } = turn;
  return { ...wheel, kind: "sheave" };
}

/** What the catalogue says of the law of the line; where it has no spread, what is known of any line. */
function priorOf(line: Line, { load, uncertainInputs }: LineRequest): LawBands {
  const { ratio, drag } = lineBands(line, load, factorBands(uncertainInputs));
  const anyLine = unknownLine();
  const known = (band: Band, any: Band): Band =>
    band.high - band.low > 1e-9
      ? band
      : { value: band.value, low: Math.min(band.value, any.low), high: Math.max(band.value, any.high) };
  return { ratio: known(ratio, anyLine.ratio), drag: known(drag, anyLine.drag) };
}

/** Bands of the factor on each cause, from the uncertain inputs that turn it. */
function factorBands(uncertainInputs: readonly UncertainInput[]): Partial<Record<FactorName, Band>> {
  const bands: Partial<Record<FactorName, Band>> = {};
  for (const cause of factorNames) {
    const turning = uncertainInputs
      .flatMap((uncertainInput) => [uncertainInput, ...(uncertainInput.along ?? [])])
      .filter(({ turns }) => turns === cause);
    if (turning.length === 0 || cause === "tread") continue;
    const shares = Object.fromEntries(
      turning.map(({ record }, index) => [String(index), times(1 / record.value, record)]),
    );
    bands[cause] = bandOf(shares, (values) => Object.values(values).reduce((product, one) => product * one, 1));
  }
  return bands;
}

/** Measured drag over its middle [-]: 5th and 95th percentile, cut at none. */
function dragShare({ posterior: { drag } }: LineCalibration): Band {
  if (!(drag.value > 0)) return { value: 1, low: 1, high: 1 };
  const half = (ninetyFifth * drag.standardError) / drag.value;
  return { value: 1, low: Math.max(0, 1 - half), high: 1 + half };
}

/** A draw from a range that ends near nothing may fall below it; there is no less than no friction. */
function drawnFactors({ loss, drag }: { readonly loss: number; readonly drag: number }) {
  return { lossFactor: Math.max(0, loss), dragFactor: Math.max(0, drag) };
}

function times(factor: number, { value, low, high }: Band): Band {
  return { value: factor * value, low: factor * low, high: factor * high };
}

function factorWords({ lossFactor, dragFactor, extra }: Omit<CalibratedLine, "line">): string {
  const drag = dragFactor > 0 ? ` and ${figures(dragFactor, 2)} times its drag` : "";
  const more = extra === undefined ? "" : ", and one turn more at the hand end for what no factor reaches";
  return `That is ${figures(lossFactor, 2)} times the friction of the catalogue${drag}${more}.`;
}
