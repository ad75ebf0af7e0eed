import { normalDeviate } from "../numerics/normal-quantile.js";
import { mostDimensions, sobolPoints } from "../numerics/sobol-sequence.js";
import { ValueError } from "../quantity/errors.js";
import { type FactorName, factorNames } from "../reeving/scaled.js";
import type { Band } from "../sources/band.js";
import { type Bounds, drawer } from "./distribution.js";

/** What a knob turns: the coefficients of a cause, all stations together, or the load. */
export type KnobTarget = FactorName | "load";

/** One thing that a knob turns, and how far. */
interface Turned {
  readonly turns: KnobTarget;
  /** The record; only its size over its middle value counts. */
  readonly record: Band;
  /** What the record's number cannot go beyond. */
  readonly bounds?: Bounds;
}

/** What is turned by the draw of another. */
interface TurnedAlong extends Turned {
  /** Whether it goes down as the other goes up. */
  readonly falls?: boolean;
}

/**
 * One uncertain number behind a line.
 *
 * It is drawn once for the whole line: the same rope, the same make of bearing, the same surface at every station.
 */
export interface Knob extends Turned {
  /** Words for a reader, such as `friction of the bearings`. */
  readonly name: string;
  /** What goes with it: turned by the same draw, each as far as its own record says. */
  readonly along?: readonly TurnedAlong[];
}

/** What turning the knobs does to each case: factors, 1 in the middle. */
export type KnobFactors = Readonly<Partial<Record<KnobTarget, Float64Array>>>;

/** How a sample is taken. */
export interface SampleOptions {
  /** Points; 10,000 when absent. */
  readonly samples?: number;
  /** The same seed gives the same sample; 1 when absent. */
  readonly seed?: number;
}

/** How the band of a line is taken. */
export interface LineBandOptions extends SampleOptions {
  /** Whether the middle is the line with every record at its own middle, in place of the median of the sample. */
  readonly ownMiddle?: boolean;
}

const defaultSamples = 10_000;
export const defaultSeed = 1;

/** Refuses knobs that cannot be drawn. */
export function checkKnobs(knobs: readonly Knob[]): void {
  if (knobs.length > mostDimensions) {
    throw new ValueError({
      quantity: "number of uncertain numbers",
      value: String(knobs.length),
      allowed: `at most ${mostDimensions}`,
      advice: "Leave out those that hardly matter.",
    });
  }
  const names = knobs.map(({ name }) => name);
  for (const knob of knobs) {
    const { name, along = [] } = knob;
    if (names.filter((other) => other === name).length > 1) throw refusedKnob(name, "named twice", "each name once");
    for (const turned of [knob, ...along]) checkTurned(name, turned);
  }
}

function checkTurned(name: string, { turns, record }: Turned): void {
  if (turns !== "load" && !factorNames.includes(turns))
    throw refusedKnob(name, `turns "${turns}"`, [...factorNames, "load"].join(", "));
  if (!(record.value > 0)) throw refusedKnob(name, `middle value ${record.value}`, "a middle value above 0");
  if (!(record.low >= 0)) throw refusedKnob(name, `low end ${record.low}`, "a low end of 0 or more");
}

function refusedKnob(name: string, value: string, allowed: string): ValueError {
  return new ValueError({
    quantity: `uncertain number "${name}"`,
    value,
    allowed,
    advice: "A knob multiplies what the line already has.",
  });
}

/**
 * Fills the factors of every case from columns of even points.
 *
 *     factor of a target = Π over its knobs of x(u) / middle value
 *
 * @param knobs  uncertain numbers
 * @param columns  a column of points for each knob, values between 0 and 1
 * @returns factors [-] by target, a column each
 */
export function factorsOf(knobs: readonly Knob[], columns: readonly Float64Array[]): KnobFactors {
  const factors: Partial<Record<KnobTarget, Float64Array>> = {};
  const turn = ({ turns, record, bounds, falls }: TurnedAlong, points: Float64Array) => {
    const draw = drawer(record, { minimum: 0, ...bounds });
    const known = factors[turns];
    const factor = known ?? new Float64Array(points.length).fill(1);
    const sign = falls === true ? -1 : 1;
    for (let i = 0; i < points.length; i++) factor[i]! *= draw(sign * normalDeviate(points[i]!)) / record.value;
    factors[turns] = factor;
  };
  knobs.forEach((knob, index) => {
    for (const turned of [knob, ...(knob.along ?? [])]) turn(turned, columns[index]!);
  });
  return factors;
}

/** A sample of all knobs: one even set of points, one dimension a knob. */
export function sampleKnobs(
  knobs: readonly Knob[],
  { samples = defaultSamples, seed = defaultSeed }: SampleOptions,
): KnobFactors {
  checkKnobs(knobs);
  return factorsOf(knobs, sobolPoints({ dimensions: Math.max(1, knobs.length), count: samples, seed }));
}

/** Factors on the causes of a line, without that on its load. */
export function factorsOfLine(factors: KnobFactors): Partial<Record<FactorName, Float64Array>> {
  const { load: _load, ...causes } = factors;
  return causes;
}
