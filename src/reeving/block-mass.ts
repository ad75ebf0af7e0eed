import type { MassLaw } from "../materials/block-sizes.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";

/** One value of what a mass law leaves open: m_0 [kg] and n [-]. */
export type MassValues = Record<"referenceMass" | "exponent", number>;

/**
 * Mass by a law from one value of each of its coefficients.
 *
 * @param law  mass law
 * @param diameter  D [m], above 0
 * @param values  m_0 [kg] and n [-]
 * @returns mass [kg]
 */
export function massAt(law: MassLaw, diameter: number, values: MassValues): number {
  const size = within("sheaveDiameter", diameter) / law.referenceDiameter;
  return values.referenceMass * size ** values.exponent;
}

/**
 * Mass of a block or ring from its size.
 *
 *     m = m_0 · (D / D_0)^n
 *
 * @param law  m_0 [kg], D_0 [m], n [-]
 * @param diameter  D [m], above 0
 * @returns mass with its range [kg]
 * @throws ValueError outside this range
 * Source: common practice, bodies of one shape; the coefficients come from memory. Example: blockMass(massLaws.block, 0.04).value → 0.04
 */
export function blockMass(law: MassLaw, diameter: number): Band {
  const { referenceMass, exponent } = law;
  return bandOf({ referenceMass, exponent }, (values) => massAt(law, diameter, values));
}
