import { practice } from "../materials/practice.js";
import type { StiffnessLaw } from "../materials/stiffness.js";
import { within } from "../quantity/guard.js";
import { checkedLaw, type Law } from "./law.js";

/** The three coefficients of a stiffness law as plain numbers. */
export interface Stiffness {
  /** [1/m] */
  readonly tensionTerm: number;
  /** [N/m] */
  readonly constantTerm: number;
  /** [N/m³] */
  readonly diameterTerm: number;
}

/**
 * The middle values of a stiffness law of the materials.
 *
 * @param law  records of the three terms [1/m, N/m, N/m³]
 * @returns their values [1/m, N/m, N/m³]
 * Source: britannica-1911, form of the law.
 */
export function stiffnessOf(law: StiffnessLaw): Stiffness {
  return {
    tensionTerm: law.tensionTerm.value,
    constantTerm: law.constantTerm.value,
    diameterTerm: law.diameterTerm.value,
  };
}

/** A rope bent round something. */
export interface BendingInput {
  readonly ropeDiameter: number;
  /** Diameter at the bottom of the groove, or of the bar [m]. */
  readonly sheaveDiameter: number;
  readonly wrapAngle: number;
  readonly stiffness: Stiffness;
}

/**
 * Loss of a rope that is bent when it runs on and straightened when it runs off.
 *
 *     T_pulled = (1 + b · C · d²/D) · T + b · (A + B · d²) · d²/D,   D = D_groove + d
 *
 * The loss does not grow with the wrap angle: a rope is bent once and straightened once, however far it lies on.
 * Only a contact shorter than about one rope diameter bends it less: b = min(1, contact length / full-bend contact).
 *
 * @param ropeDiameter  d [m], above 0
 * @param sheaveDiameter  groove bottom or bar [m], above 0
 * @param wrapAngle  θ [rad], 0 to 63
 * @param stiffness  C [1/m], A [N/m], B [N/m³], each 0 or more
 * @returns ratio [-] and drag [N]
 * @throws ValueError outside these ranges
 * Source: britannica-1911, eq. 68; the factor b is a modelling choice of this library. Example: bendingLaw({ ropeDiameter: 0.0254, sheaveDiameter: 0.2794, wrapAngle: Math.PI, stiffness: { tensionTerm: 4.5354, constantTerm: 0, diameterTerm: 0 } }).ratio → 1.0096
 */
export function bendingLaw({ ropeDiameter, sheaveDiameter, wrapAngle, stiffness }: BendingInput): Law {
  const d = within("ropeDiameter", ropeDiameter);
  const pitch = within("sheaveDiameter", sheaveDiameter) + d;
  const contact = within("wrapAngle", wrapAngle) * (pitch / 2);
  const bent = Math.min(1, contact / (practice.fullBendContact.value * d));
  const scale = (bent * d * d) / pitch;
  return checkedLaw({
    ratio: 1 + within("bendingCoefficient", stiffness.tensionTerm) * scale,
    drag: (stiffness.constantTerm + stiffness.diameterTerm * d * d) * scale,
  });
}
