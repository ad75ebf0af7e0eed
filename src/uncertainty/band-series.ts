import { type BandCurve, bandOverLoads, type UncertainLine } from "./line-band.js";
import type { LineBandOptions } from "./uncertain-input.js";

/** Ends of a band as plain lists, for a figure. */
interface ListedBand {
  readonly low: number[];
  readonly high: number[];
}

/** Medians of hauling and easing over loads with their 90 % bands, as a series of a figure takes them. */
export interface BandSeries {
  readonly name: string;
  readonly x: readonly number[];
  readonly hauling: number[];
  readonly easing: number[];
  readonly bands: { readonly hauling: ListedBand; readonly easing: ListedBand };
}

/** A line to be charted under a name. */
export interface BandSeriesInput extends UncertainLine {
  readonly name: string;
  /** [N] */
  readonly loads: readonly number[];
  readonly options?: LineBandOptions;
}

/**
 * A line as a series of a figure: medians with their 90 % bands in place of single curves.
 *
 * @param name  words at the end of the curves
 * @param line  rope and stations
 * @param uncertainInputs  uncertain numbers
 * @param loads  [N], each 0 or more
 * @param options  samples, seed, and what stands in the middle
 * @returns medians and bands [N]
 * @throws as for bands over loads
 * Source: common practice. Example: bandSeries({ name: "lead", line: { rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1 }] }, uncertainInputs: [], loads: [100] }).hauling[0] → 110
 */
export function bandSeries({ name, loads, options, ...uncertain }: BandSeriesInput): BandSeries {
  const { hauling, easing } = bandOverLoads(uncertain, loads, options);
  return {
    name,
    x: loads,
    hauling: [...hauling.median],
    easing: [...easing.median],
    bands: { hauling: listed(hauling), easing: listed(easing) },
  };
}

function listed({ low, high }: BandCurve): ListedBand {
  return { low: [...low], high: [...high] };
}
