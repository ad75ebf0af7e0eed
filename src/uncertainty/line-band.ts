import { quantilesInPlace } from "../numerics/order-statistics.js";
import { within } from "../quantity/guard.js";
import { type Line, prepareLine } from "../reeving/line.js";
import { factorNames, scaledLine } from "../reeving/scaled.js";
import type { Band } from "../sources/band.js";
import { type SampledAnswers, sampledAnswers } from "./sampled-answers.js";
import { type LineBandOptions, sampleInputs, type UncertainInput } from "./uncertain-input.js";

/** Median and ends of the 90 % band at each load. */
export interface BandCurve {
  readonly low: Float64Array;
  /** Median of the sample; the line at its own middle where that was asked for. */
  readonly median: Float64Array;
  readonly high: Float64Array;
}

/** Bands of what the hand feels, at each load. */
export interface LineBands {
  /** [N] */
  readonly loads: Float64Array;
  readonly hauling: BandCurve;
  readonly easing: BandCurve;
  readonly deadBand: BandCurve;
}

/** A line with the numbers behind it that are not sure. */
export interface UncertainLine {
  readonly line: Line;
  readonly uncertainInputs: readonly UncertainInput[];
}

const ends = [0.05, 0.5, 0.95] as const;

/**
 * Median and 90 % band of the hand forces of a line over many loads.
 *
 *     each uncertain input is drawn once a sample, by an even sequence; the batch solver answers; exact 5th, 50th and 95th percentile
 *
 * @param line  rope and stations [m, rad, N]
 * @param uncertainInputs  uncertain numbers; none gives a band without width
 * @param loads  [N], each 0 or more
 * @param options  samples [-], 10,000 when absent, seed [-], and what stands in the middle
 * @returns bands of hauling, easing and dead band [N]
 * @throws ReevingError or ValueError for a line, a load, an uncertain input or a sample that cannot exist
 * Source: common practice. Example: bandOverLoads({ line: { rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1 }] }, uncertainInputs: [] }, [100]).hauling.median[0] → 110
 */
export function bandOverLoads(
  { line, uncertainInputs }: UncertainLine,
  loads: readonly number[] | Float64Array,
  options: LineBandOptions = {},
): LineBands {
  const factors = sampleInputs(uncertainInputs, uncertainInputs.length === 0 ? { ...options, samples: 1 } : options);
  const samples = Object.values(factors)[0]?.length ?? 1;
  for (const load of loads) within("loadTension", load);
  const answers = sampledAnswers(line, factors, samples);
  const own = options.ownMiddle === true ? prepareLine(line) : undefined;
  const curveOf = (quantity: keyof SampledAnswers): BandCurve => {
    const quantilesAt = answers[quantity];
    const curve = { low: column(loads), median: column(loads), high: column(loads) };
    const found = new Float64Array(ends.length);
    for (let at = 0; at < loads.length; at++) {
      quantilesAt(loads[at]!, ends, found);
      curve.low[at] = found[0]!;
      curve.median[at] = own?.handForces(loads[at]!)[quantity] ?? found[1]!;
      curve.high[at] = found[2]!;
    }
    return curve;
  };
  return {
    loads: Float64Array.from(loads),
    hauling: curveOf("hauling"),
    easing: curveOf("easing"),
    deadBand: curveOf("deadBand"),
  };
}

function column(loads: { readonly length: number }): Float64Array {
  return new Float64Array(loads.length);
}

/**
 * Median and 90 % band of the hand forces at one load.
 *
 * @param line  line and its uncertain numbers
 * @param load  [N], 0 or more
 * @param options  samples and seed
 * @returns bands of hauling, easing and dead band [N]
 * @throws as for many loads
 * Source: common practice. Example: bandAtLoad({ line: { rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1 }] }, uncertainInputs: [] }, 100).hauling.value → 110
 */
export function bandAtLoad(uncertain: UncertainLine, load: number, options: LineBandOptions = {}): HandBands {
  const { hauling, easing, deadBand } = bandOverLoads(uncertain, [load], options);
  const first = ({ low, median, high }: BandCurve): Band => ({ value: median[0]!, low: low[0]!, high: high[0]! });
  return { hauling: first(hauling), easing: first(easing), deadBand: first(deadBand) };
}

/** Bands of the hand forces at one load [N]. */
export interface HandBands {
  readonly hauling: Band;
  readonly easing: Band;
  readonly deadBand: Band;
}

const runOutSamples = 1000;

/**
 * Median and 90 % band of the least load at which a line goes out by itself.
 *
 * @param line  line and its uncertain numbers; an uncertain input that turns the load has no say here
 * @param options  samples [-], 1,000 when absent, seed [-], and what stands in the middle
 * @returns band of the run-out load [N]
 * @throws as for bands over loads
 * Source: common practice. Example: runOutBand({ line: { rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1, drag: 2 }] }, uncertainInputs: [] }).value → 2
 */
export function runOutBand({ line, uncertainInputs }: UncertainLine, options: LineBandOptions = {}): Band {
  const factors = sampleInputs(uncertainInputs, { samples: runOutSamples, ...options });
  const causes = factorNames.filter((name) => factors[name] !== undefined);
  const samples = causes.length === 0 ? 1 : factors[causes[0]!]!.length;
  const values = Float64Array.from({ length: samples }, (_, i) => {
    const drawn = Object.fromEntries(causes.map((name) => [name, factors[name]![i]!]));
    return prepareLine(scaledLine(line, drawn)).runOutLoad();
  });
  const found = new Float64Array(ends.length);
  quantilesInPlace(values, ends, found);
  const value = options.ownMiddle === true ? prepareLine(line).runOutLoad() : found[1]!;
  return { low: found[0]!, value, high: found[2]! };
}
