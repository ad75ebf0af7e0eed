import { angle, type VocabularyEntry } from "./vocabulary-entry.js";

/** Quantities of the size of blocks. */
export const sizeQuantities = {
  // Size of blocks
  frictionMoment: {
    label: "friction moment",
    symbol: "M_f",
    unit: "N m",
    shownUnit: "N mm",
    minimum: 0,
    maximum: 1e5,
    example: "126 N mm",
    meaning: "moment that a bearing sets against turning",
  },
  sealFriction: {
    label: "seal friction",
    symbol: "q_s",
    unit: "N/m",
    shownUnit: "N/mm",
    minimum: 0,
    maximum: 1e5,
    example: "0.01 N/mm",
    meaning: "friction of a lip seal for each length of its lip",
  },
  groovePressure: {
    label: "groove pressure",
    symbol: "p_g",
    unit: "Pa",
    shownUnit: "MPa",
    minimum: 0,
    maximum: 1e10,
    example: "4.9 MPa",
    meaning: "pull of a rope on its groove over the rope's diameter times the length that lies on",
  },
  leadAngle: angle("lead angle", "λ_l", 1.5, "5 deg", "angle between the line and the plane of the sheave"),
} as const satisfies Record<string, VocabularyEntry>;
