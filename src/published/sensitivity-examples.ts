import { type SensitivityResult, sensitivityOf } from "../uncertainty/sensitivity.js";
import { once } from "./once.js";
import { publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";

/** So many that the sampling error stays below what is allowed. */
const sampling = { samples: 65_536, repeats: 8 } as const;

/** f = sin x₁ + a sin² x₂ + b x₃⁴ sin x₁, inputs even from −π to π. */
const ishigami = once(() =>
  sensitivityOf({
    ...sampling,
    dimensions: 3,
    model: ([first, second, third], results) => {
      const angle = (u: number) => Math.PI * (2 * u - 1);
      for (let i = 0; i < results.length; i++) {
        const wave = Math.sin(angle(first![i]!));
        results[i] = wave + 7 * Math.sin(angle(second![i]!)) ** 2 + 0.1 * angle(third![i]!) ** 4 * wave;
      }
    },
  }),
);

const weights = [0, 0.5, 3, 9, 99, 99] as const;

/** g = Π (|4 x − 2| + a) / (1 + a), inputs even from 0 to 1. */
const product = once(() =>
  sensitivityOf({
    ...sampling,
    dimensions: weights.length,
    model: (columns, results) => {
      for (let i = 0; i < results.length; i++) {
        results[i] = weights.reduce((g, a, j) => (g * (Math.abs(4 * columns[j]![i]! - 2) + a)) / (1 + a), 1);
      }
    },
  }),
);

function indexRow(input: {
  readonly name: string;
  readonly result: () => SensitivityResult;
  readonly order: "first" | "total";
  readonly index: number;
  readonly printed: string;
  readonly allowed: number;
}): CheckRow {
  const { name, result, order, index, printed, allowed } = input;
  return {
    ...publishedRow(
      "sensitivity-examples",
      `${name}-${order}-${index + 1}`,
      `${order === "first" ? "first-order" : "total"} index of input ${index + 1}, ${name} function`,
      printed,
      "1",
      `expected indices; allowed: five standard errors of ${sampling.repeats} times ${sampling.samples} points, at most`,
      () => result().inputs[index]![order].value,
    ),
    readingError: allowed,
  };
}

/** Printed index of each input, and what its sampling error may be. */
type Printed = readonly (readonly [printed: string, allowed: number])[];

const table = (name: string, result: () => SensitivityResult, order: "first" | "total", printed: Printed): CheckRow[] =>
  printed.map(([text, allowed], index) => indexRow({ name, result, order, index, printed: text, allowed }));

const rows: readonly CheckRow[] = [
  ...table("ishigami", ishigami, "first", [
    ["0.3139", 1e-4],
    ["0.4424", 5e-5],
    ["0.0", 1e-4],
  ]),
  ...table("ishigami", ishigami, "total", [
    ["0.55758886", 5e-6],
    ["0.44241114", 5e-6],
    ["0.24368366", 1e-5],
  ]),
  ...table("sobol", product, "first", [
    ["0.586781190", 1.4e-4],
    ["0.260791640", 8e-5],
    ["0.0366738244", 2e-5],
    ["0.00586781190", 1.5e-5],
    ["0.0000586781190", 2.5e-6],
    ["0.0000586781190", 2.5e-6],
  ]),
  ...table("sobol", product, "total", [
    ["0.690085892", 1.6e-4],
    ["0.356173364", 7e-5],
    ["0.0563335422", 1.1e-5],
    ["0.00917057664", 3.5e-6],
    ["0.0000920083854", 6e-7],
    ["0.0000920083854", 6e-7],
  ]),
];

/** Sensitivity indices of functions that are known in closed form. */
export const sensitivityExamples: CheckSet = { topic: "bands", rows };
