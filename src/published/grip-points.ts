import { gripStrength, type Person } from "../crew/grip-strength.js";
import { meanNorms, protocolFactor, type Sex } from "../materials/people-grip.js";
import { convert } from "../quantity/parse.js";
import { type Band, bandOf } from "../sources/band.js";
import type { MeasuredPoint } from "../uncertainty/coverage.js";
import { point } from "./loss-bands.js";

/** The norm that foretells all other samples. */
const norm = "mathiowetz-1985";
const kilograms = (value: number) => convert(value, "kgf", "N");

/** Mean grip of another sample of such people, measured in another way. */
const meanOfSample = (person: Person): Band =>
  bandOf({ protocol: protocolFactor }, ({ protocol }) => protocol * gripStrength({ norm, ...person }).mean.value);

/** Grip of one such person, measured in another way. */
const ofOnePerson = (person: Person): Band =>
  bandOf(
    { person: gripStrength({ norm, ...person }).mean, protocol: protocolFactor },
    (values) => values.person * values.protocol,
  );

const sample = (sex: Sex, age: number, measured: number, halfStep: number, who: string): MeasuredPoint =>
  point(`mean grip [N], ${sex}, ${who}`, measured, halfStep, meanOfSample({ sex, age }));

/** Means of a German sample, group by group of five years. */
export const germanGrip = (): MeasuredPoint[] => {
  const { firstAges, groups } = meanNorms["steiber-2016"];
  return (["men", "women"] as const).flatMap((sex) =>
    groups[sex].right.map(([mean], index) => {
      const first = firstAges[index]!;
      return sample(sex, first + 2, kilograms(mean), kilograms(0.05), `${first} to ${first + 4} years`);
    }),
  );
};

/** Means of recruits of 20 to 25 years. */
export const recruits = (): MeasuredPoint[] => [
  sample("men", 22, 541, 0.5, "20 to 25 years"),
  sample("women", 22, 329, 0.5, "20 to 25 years"),
];

/** Medians of twelve British studies at the ages of the greatest grip. */
export const britishGrip = (): MeasuredPoint[] => [
  sample("men", 34, kilograms(51), kilograms(0.5), "29 to 39 years, median"),
  sample("women", 34, kilograms(31), kilograms(0.5), "26 to 42 years, median"),
];

/** Means of two groups of eleven people in a laboratory. */
export const laboratoryGrip = (): MeasuredPoint[] => [
  sample("men", 24.1, 480.2, 0.05, "eleven people"),
  sample("women", 23.5, 341.5, 0.05, "eleven people"),
];

/** Six young adults one by one; their ages are not told. */
export const sixPeople = (): MeasuredPoint[] =>
  (
    [
      ["women", 30],
      ["women", 32],
      ["men", 43],
      ["women", 30],
      ["men", 40],
      ["men", 42],
    ] as const
  ).map(([sex, grip], index) =>
    point(`grip [N] of person ${index + 1}, ${sex}`, kilograms(grip), kilograms(0.5), ofOnePerson({ sex, age: 25 })),
  );
