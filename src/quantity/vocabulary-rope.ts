import { angle, force, length, pure, type VocabularyEntry } from "./vocabulary-entry.js";

/** Quantities of strength, stretch, creep and cleats. */
export const ropeQuantities = {
  // Strength, stretch and creep
  breakLoad: force("break load", "F_b", "4 kN", "tension at which a new, straight rope breaks"),
  workingLoad: force("working load", "F_w", "600 N", "largest tension that is planned for"),
  safetyFactor: pure("safety factor", "SF", 1, 100, "5", "break load over working load"),
  retainedStrength: pure(
    "retained strength",
    "η_s",
    0,
    1.2,
    "0.9",
    "break load with a splice, knot, bend, age or water over that of the new, straight, dry rope",
  ),
  conversion: pure("strength conversion", "η_c", 0, 1, "0.5", "strength of a rope over the strength of all its yarns"),
  fillFactor: pure("fill factor", "φ", 0.05, 1, "0.7", "area of fibre over the area of the circle round the rope"),
  specificStrength: {
    label: "specific strength",
    symbol: "σ_m",
    unit: "N/(kg/m)",
    shownUnit: "N/(kg/m)",
    minimum: 0,
    maximum: 1e9,
    example: "840000 N/(kg/m)",
    meaning: "break load over linear density; a million times the value in N/tex",
  },
  stress: {
    label: "stress",
    symbol: "σ",
    unit: "Pa",
    shownUnit: "MPa",
    minimum: 0,
    maximum: 1e12,
    example: "1160 MPa",
    meaning: "tension over the area of the fibre",
  },
  axialStiffness: {
    label: "axial stiffness",
    symbol: "EA",
    unit: "N",
    shownUnit: "kN",
    minimum: 1,
    maximum: 1e9,
    example: "50 kN",
    meaning: "tension over strain of a worked rope",
  },
  strain: pure("strain", "ε_s", 0, 1, "0.01", "stretch over length"),
  stretch: length("stretch", "ΔL", 100, "mm", "20 mm", "length that a rope gains under tension"),
  duration: {
    label: "duration",
    symbol: "t_d",
    unit: "s",
    shownUnit: "s",
    minimum: 0,
    maximum: 1e9,
    example: "3600 s",
    meaning: "time that something lasts",
  },

  // Cleats
  camAngle: angle(
    "cam angle",
    "ψ",
    Math.PI / 2,
    "9 deg",
    "angle between the jaw at the rope and the line to its pivot",
  ),
  grooveAngle: angle("groove angle", "β", Math.PI, "40 deg", "angle between the two walls of a V groove"),
  turnCount: pure("turns", "N", 0, 30, "2", "whole turns of a rope round a horn or post"),
} as const satisfies Record<string, VocabularyEntry>;
