import { fibreHeat, type HeatFibre, type Thermal, yarnFill } from "../materials/thermal.js";
import type { Coefficient } from "../sources/coefficient.js";
import type { Solid } from "./effusivity.js";

/** Records of a pressed yarn. */
export interface YarnRecords {
  readonly fibreConductivity: Coefficient;
  readonly fibreDensity: Coefficient;
  readonly fibreSpecificHeat: Coefficient;
  readonly yarnFill: Coefficient;
}

/** The records that make up a yarn of a fibre. */
export function yarnRecords(fibre: HeatFibre): YarnRecords {
  const { conductivity, density, specificHeat }: Thermal = fibreHeat[fibre];
  return { fibreConductivity: conductivity, fibreDensity: density, fibreSpecificHeat: specificHeat, yarnFill };
}

/** A pressed yarn from one value of each record: air lowers density and conductivity alike. */
export function yarnSolid(values: Readonly<Record<keyof YarnRecords, number>>): Solid {
  return {
    conductivity: values.yarnFill * values.fibreConductivity,
    density: values.yarnFill * values.fibreDensity,
    specificHeat: values.fibreSpecificHeat,
  };
}
