import {
  type Hand,
  type MeanNorm,
  meanNorms,
  percentileNorm,
  protocolFactor,
  type Sex,
} from "../materials/people-grip.js";
import { normalQuantile, normalShare } from "../numerics/normal.js";
import { monotoneCurve } from "../numerics/pchip.js";
import { OutsideModelError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { type Coefficient, coefficient } from "../sources/coefficient.js";
import { insideModel } from "../wind/validity.js";

/** Norms with a mean and a deviation for each age group. */
export type MeanNormName = keyof typeof meanNorms;

/** Norms of grip: two with mean and deviation, one with percentiles. */
export type GripNormName = MeanNormName | "tomkinson-2025";

/** A person of the norms. */
export interface Person {
  readonly sex: Sex;
  /** [year] */
  readonly age: number;
  /** Right when absent. */
  readonly hand?: Hand;
}

/** Grip of the people of one age group. */
export interface GripStrength {
  /** Mean, with the 5th and 95th percentile of the people [N]. */
  readonly mean: Coefficient;
  /** Standard deviation [N]. */
  readonly deviation: number;
}

function insideAges(age: number, first: number, last: number, norm: string): number {
  return insideModel({
    quantity: "age",
    value: within("age", age),
    unit: "year",
    minimum: first,
    maximum: last,
    advice: `The norm ${norm} holds people of ${first} to ${last} years only: measure the grip of this person, or take another norm.`,
  });
}

/**
 * Grip of one hand by age and sex, with the spread of the people.
 *
 *     F_max = mean of the age group,   range = mean ± 1.645 · standard deviation
 *
 * @param norm  which norm
 * @param sex  women or men
 * @param age  a [year], 20 to 90 (mathiowetz-1985) or 20 to 74 (steiber-2016)
 * @param hand  right when absent; steiber-2016 does not tell hands apart
 * @returns mean [N] as a record with the 5th and 95th percentile of the people, and standard deviation [N]
 * @throws OutsideModelError for an age outside the norm
 * Valid for rested hands of the general population on a handle; another way of measuring shifts all of it (protocolFactor).
 * Source: mathiowetz-1985, steiber-2016, tables by age and sex.
 * Example: gripStrength({ norm: "mathiowetz-1985", sex: "women", age: 27 }).mean.value → 331.4
 */
export function gripStrength({ norm, ...person }: Person & { readonly norm: MeanNormName }): GripStrength {
  const table: MeanNorm = meanNorms[norm];
  const { sex, hand = "right" } = person;
  const age = insideAges(person.age, table.firstAges[0]!, table.lastAge, norm);
  const index = table.firstAges.findLastIndex((first) => first <= age);
  const [mean, deviation] = table.groups[sex][hand][index]!;
  const next = table.firstAges[index + 1];
  const spread = normalQuantile(0.95) * deviation;
  return {
    mean: coefficient({
      value: mean * table.unit,
      unit: "N",
      low: (mean - spread) * table.unit,
      high: (mean + spread) * table.unit,
      status: "published",
      source: table.source,
      place: `${sex}, ${table.firstAges[index]} to ${next === undefined ? table.lastAge : next - 1} years, ${hand} hand; range of the people from the standard deviation`,
    }),
    deviation: deviation * table.unit,
  };
}

/** Grip at each printed percentile at an age [N]: between the middles of the age groups in proportion. */
function percentilesAt({ sex, age }: Person): number[] {
  const { firstAges, unit } = percentileNorm;
  insideAges(age, firstAges[0], firstAges[firstAges.length - 1]! + 4, percentileNorm.source);
  const rows = percentileNorm[sex];
  const middles = firstAges.map((first) => first + 2.5);
  const place = Math.min(Math.max(age, middles[0]!), middles[middles.length - 1]!);
  const after = Math.max(
    1,
    middles.findIndex((middle) => middle >= place),
  );
  const part = (place - middles[after - 1]!) / (middles[after]! - middles[after - 1]!);
  return rows[after]!.map((value, index) => unit * (part * value + (1 - part) * rows[after - 1]![index]!));
}

function percentileShare(person: Person, force: number): Band {
  const { percents } = percentileNorm;
  const grips = percentilesAt(person);
  const least = grips[0]!;
  const most = grips[grips.length - 1]!;
  if (!(force >= least && force <= most)) {
    throw new OutsideModelError({
      quantity: "grip force",
      value: `${force} N`,
      allowed: `${Math.round(least)} to ${Math.round(most)} N, the 5th to the 95th percentile of these people`,
      advice: "Take a norm with mean and deviation for the few who are weaker or stronger.",
    });
  }
  const below = monotoneCurve({ positions: grips, values: percents });
  return sharesOf(needed(force), (grip) => 1 - below(Math.min(Math.max(grip, least), most)) / 100);
}

/** Grip in the norm's way of measuring that stands for a grip force [N]. */
function needed(force: number): Band {
  return bandOf({ protocol: protocolFactor }, ({ protocol }) => force / protocol);
}

/** Share of people at the middle and the ends of what is needed: more is needed, fewer can. */
export function sharesOf({ value, low, high }: Band, shareAt: (grip: number) => number): Band {
  return { value: shareAt(value), low: shareAt(high), high: shareAt(low) };
}

/**
 * Share of people who can grip with at least a force.
 *
 *     1 − Φ((F / p − mean) / deviation), or between printed percentiles along a monotone curve; p the factor of the protocol
 *
 * @param norm  which norm
 * @param sex  women or men
 * @param age  a [year], in the range of the norm
 * @param hand  right when absent
 * @param force  F_g, grip force of one hand [N], 0 to 1e6
 * @returns share [-], 0 to 1, with the range that other ways of measuring grip give
 * @throws ValueError for an impossible force; OutsideModelError for an age outside the norm, or for a force outside the percentiles of tomkinson-2025
 * Valid for rested hands. The range of tomkinson-2025 stays between 5 and 95 %, beyond which its table says nothing.
 * Source: mathiowetz-1985, steiber-2016, tomkinson-2025.
 * Example: gripShare({ norm: "mathiowetz-1985", sex: "men", age: 30, force: 442 }).value → 0.842
 */
export function gripShare({
  norm,
  force,
  ...person
}: Person & { readonly norm: GripNormName; readonly force: number }): Band {
  within("gripForce", force);
  if (norm === "tomkinson-2025") return percentileShare(person, force);
  const { mean, deviation } = gripStrength({ norm, ...person });
  return sharesOf(needed(force), (grip) => 1 - normalShare((grip - mean.value) / deviation));
}
