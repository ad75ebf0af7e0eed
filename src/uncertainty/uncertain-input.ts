import { normalDeviate } from "../numerics/normal-quantile.js";
import { mostDimensions, sobolPoints } from "../numerics/sobol-sequence.js";
import { ValueError } from "../quantity/errors.js";
import { type FactorName, factorNames } from "../reeving/scaled.js";
import type { Band } from "../sources/band.js";
import { type Bounds, drawer } from "./distribution.js";

/** What an uncertain input turns: the coefficients of a cause, all stations together, or the load. */
export type InputTarget = FactorName | "load";

/** One thing that an uncertain input turns, and how far. */
interface Turned {
  readonly turns: InputTarget;
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
export interface UncertainInput extends Turned {
  /** Words for a reader, such as `friction of the bearings`. */
  readonly name: string;
  /** What goes with it: turned by the same draw, each as far as its own record says. */
  readonly along?: readonly TurnedAlong[];
}

/** What turning the uncertain inputs does to each case: factors, 1 in the middle. */
export type InputFactors = Readonly<Partial<Record<InputTarget, Float64Array>>>;

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

/** Refuses uncertain inputs that cannot be drawn. */
export function checkInputs(uncertainInputs: readonly UncertainInput[]): void {
  if (uncertainInputs.length > mostDimensions) {
    throw new ValueError({
      quantity: "number of uncertain numbers",
      value: String(uncertainInputs.length),
      allowed: `at most ${mostDimensions}`,
      advice: "Leave out those that hardly matter.",
    });
  }
  const names = uncertainInputs.map(({ name }) => name);
  for (const uncertainInput of uncertainInputs) {
    const { name, along = [] } = uncertainInput;
    if (names.filter((other) => other === name).length > 1) throw refusedInput(name, "named twice", "each name once");
    for (const turned of [uncertainInput, ...along]) checkTurned(name, turned);
  }
}

function checkTurned(name: string, { turns, record }: Turned): void {
  if (turns !== "load" && !factorNames.includes(turns))
    throw refusedInput(name, `turns "${turns}"`, [...factorNames, "load"].join(", "));
  if (!(record.value > 0)) throw refusedInput(name, `middle value ${record.value}`, "a middle value above 0");
  if (!(record.low >= 0)) throw refusedInput(name, `low end ${record.low}`, "a low end of 0 or more");
}

function refusedInput(name: string, value: string, allowed: string): ValueError {
  return new ValueError({
    quantity: `uncertain number "${name}"`,
    value,
    allowed,
    advice: "An uncertain input multiplies what the line already has.",
  });
}

/**
 * Makes uncertain inputs ready to be turned: each column of points is turned into factors once, however often it is asked for.
 *
 *     factor of a target = Π over its uncertain inputs of x(u) / middle value
 *
 * @param uncertainInputs  uncertain numbers
 * @returns function from columns of even points between 0 and 1, one for each uncertain input, to factors [-] by target, a column each
 */
export function turner(uncertainInputs: readonly UncertainInput[]): (columns: readonly Float64Array[]) => InputFactors {
  const all = uncertainInputs.flatMap((uncertainInput, place) =>
    [uncertainInput, ...(uncertainInput.along ?? [])].map((turned) => ({
      place,
      turns: turned.turns,
      turn: remembered(turnOf(turned)),
    })),
  );
  return (columns) => {
    const factors: Partial<Record<InputTarget, Float64Array>> = {};
    for (const { place, turns, turn } of all) {
      const one = turn(columns[place]!);
      const known = factors[turns];
      factors[turns] = known === undefined ? one : known.map((factor, i) => factor * one[i]!);
    }
    return factors;
  };
}

function turnOf({ record, bounds, falls }: TurnedAlong): (points: Float64Array) => Float64Array {
  const draw = drawer(record, { minimum: 0, ...bounds });
  const sign = falls === true ? -1 : 1;
  return (points) => {
    const factors = new Float64Array(points.length);
    for (let i = 0; i < points.length; i++) factors[i] = draw(sign * normalDeviate(points[i]!)) / record.value;
    return factors;
  };
}

/** A function of a column that works out each column once, as long as somebody holds it. */
function remembered(work: (column: Float64Array) => Float64Array): (column: Float64Array) => Float64Array {
  const results = new WeakMap<Float64Array, Float64Array>();
  return (column) => {
    const result = results.get(column) ?? work(column);
    results.set(column, result);
    return result;
  };
}

/** A sample of all uncertainInputs: one even set of points, one dimension an uncertain input. */
export function sampleInputs(
  uncertainInputs: readonly UncertainInput[],
  { samples = defaultSamples, seed = defaultSeed }: SampleOptions,
): InputFactors {
  checkInputs(uncertainInputs);
  return turner(uncertainInputs)(
    sobolPoints({ dimensions: Math.max(1, uncertainInputs.length), count: samples, seed }),
  );
}

/** Factors on the causes of a line, without that on its load. */
export function factorsOfLine(factors: InputFactors): Partial<Record<FactorName, Float64Array>> {
  const { load: _load, ...causes } = factors;
  return causes;
}
