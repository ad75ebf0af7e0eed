import { type Coefficient, coefficient } from "../sources/coefficient.js";

/** A fibre that ropes are made of. */
export interface Fibre {
  readonly name: string;
  /** Mass of a cubic metre of fibre [kg/m³]. */
  readonly density: Coefficient;
  /** Break load of yarn over its linear density [N/(kg/m)]; a million times the value in N/tex. */
  readonly tenacity: Coefficient;
  /** Stiffness of yarn over its linear density [N/(kg/m)]. */
  readonly modulus: Coefficient;
}

const perTex = 1e6;

function fibre(name: string, gravity: [number, number, number], tenacity: number, modulus: number): Fibre {
  const place = `${name}; the table calls its values approximate, hence a spread of a tenth`;
  const record = (low: number, value: number, high: number, unit: string) =>
    coefficient({ value, unit, low, high, status: "published", source: "fibre-yarn-table", place });
  const yarn = (value: number) => record(0.9 * value * perTex, value * perTex, 1.1 * value * perTex, "N/(kg/m)");
  const [low, middle, high] = gravity;
  return {
    name,
    density: record(1000 * low, 1000 * middle, 1000 * high, "kg/m^3"),
    tenacity: yarn(tenacity),
    modulus: yarn(modulus),
  };
}

/** Yarn properties of the fibres used in small-boat ropes. */
export const fibres = {
  polyamide: fibre("polyamide", [1.13, 1.14, 1.15], 0.84, 4),
  polyester: fibre("polyester", [1.37, 1.38, 1.39], 0.84, 10),
  polypropylene: fibre("polypropylene multifilament", [0.9, 0.91, 0.92], 0.66, 3.5),
  aramid: fibre("para-aramid, standard", [1.43, 1.44, 1.45], 2.03, 49),
  aramidHighModulus: fibre("para-aramid, high modulus", [1.43, 1.44, 1.45], 2.08, 78),
  hmpe: fibre("HMPE, grade 1", [0.94, 0.955, 0.97], 2.65, 124),
  hmpeHighModulus: fibre("HMPE, grade 2", [0.94, 0.955, 0.97], 3.1, 175),
  lcp: fibre("LCP", [1.4, 1.41, 1.42], 2.01, 46),
  pbo: fibre("PBO", [1.55, 1.56, 1.57], 2.54, 177),
} as const satisfies Record<string, Fibre>;

/** Name of a fibre in the table. */
export type FibreName = keyof typeof fibres;
