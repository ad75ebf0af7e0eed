import { compileBatch } from "../reeving/batch.js";
import type { UncertainLine } from "./line-band.js";
import { type Sensitivity, type SensitivityInput, sensitivityOf } from "./sensitivity.js";
import { checkInputs, factorsOfLine, turner } from "./uncertain-input.js";

/** What of the hand forces is asked about. */
export type HandQuantity = "hauling" | "easing" | "deadBand";

/** One uncertain input and how much of the variance of a hand force it makes. */
export interface InputSensitivity extends Sensitivity {
  readonly name: string;
}

/** A line at a load, and what is asked about. */
export interface LineSensitivityInput extends UncertainLine {
  /** [N] */
  readonly load: number;
  readonly quantity: HandQuantity;
  readonly options?: Pick<SensitivityInput, "samples" | "repeats" | "seed">;
}

/**
 * Which of the uncertain numbers behind a line moves what the hand feels, most first.
 *
 * @param line  rope and stations
 * @param uncertainInputs  uncertain numbers, 1 to 12
 * @param load  [N], 0 or more
 * @param quantity  hauling force, easing force or dead band
 * @returns uncertain inputs with their share of the variance [-], largest total order first
 * @throws as for bands over loads
 * Source: saltelli-2010. Example: lineSensitivity({ line: { rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1 }] }, uncertainInputs: [{ name: "loss", turns: "bearing", record: { value: 1, low: 0.5, high: 2 } }], load: 100, quantity: "hauling" })[0].name → "loss"
 */
export function lineSensitivity({
  line,
  uncertainInputs,
  load,
  quantity,
  options = {},
}: LineSensitivityInput): InputSensitivity[] {
  checkInputs(uncertainInputs);
  const solver = compileBatch(line);
  const turn = turner(uncertainInputs);
  const model: SensitivityInput["model"] = (columns, results) => {
    const factors = turn(columns);
    const loads = new Float64Array(results.length).fill(load);
    if (factors.load) for (let i = 0; i < loads.length; i++) loads[i]! *= factors.load[i]!;
    const easing = quantity === "easing" ? results : new Float64Array(results.length);
    const hauling = quantity === "easing" ? new Float64Array(results.length) : results;
    solver.solve({ load: loads, factors: factorsOfLine(factors) }, { hauling, easing });
    if (quantity === "deadBand") for (let i = 0; i < results.length; i++) results[i]! -= easing[i]!;
  };
  const { inputs } = sensitivityOf({ dimensions: uncertainInputs.length, model, ...options });
  return inputs
    .map((sensitivity, index) => ({ name: uncertainInputs[index]!.name, ...sensitivity }))
    .sort((one, other) => other.total.value - one.total.value);
}
