import { angle, length, pure, type VocabularyEntry } from "./vocabulary-entry.js";

/** Quantities of the size of blocks and winches. */
export const sizeQuantities = {
  // Size of blocks and winches
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
  drumRadius: length("drum radius", "r_d", 1, "mm", "36 mm", "middle of a winch to the rope on its drum"),
  handleLength: length("handle length", "L_h", 2, "mm", "200 mm", "middle of a winch to the hand on its handle"),
  gearRatio: pure("gear ratio", "i", 0.1, 1000, "3", "turns of the handle for one turn of the drum"),
  powerRatio: pure("power ratio", "R_w", 0.01, 10000, "15", "load on a winch over force on its handle, without loss"),
  leadAngle: angle("lead angle", "λ_l", 1.5, "5 deg", "angle between the line and the plane of the sheave"),
} as const satisfies Record<string, VocabularyEntry>;
