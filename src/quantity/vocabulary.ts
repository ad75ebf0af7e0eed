import { crewQuantities } from "./vocabulary-crew.js";
import { angle, force, length, pure, type VocabularyEntry } from "./vocabulary-entry.js";
import { gripQuantities } from "./vocabulary-grip.js";
import { heatQuantities } from "./vocabulary-heat.js";
import { motionQuantities } from "./vocabulary-motion.js";
import { ropeQuantities } from "./vocabulary-rope.js";
import { sizeQuantities } from "./vocabulary-size.js";
import { windQuantities } from "./vocabulary-wind.js";
import { workingQuantities } from "./vocabulary-working.js";

/**
 * Every quantity that appears in more than one place, under its trade name.
 * Parsing, guards, axis titles, tables and the glossary read this file.
 */
export const vocabulary = {
  // Tension along a line
  tension: force("tension", "T", "120 N", "pull carried by the rope at one place"),
  loadTension: force("load-side tension", "T_load", "200 N", "tension on the side of a station towards the sail"),
  handTension: force("hand force", "T_hand", "80 N", "tension at the hand end of the line"),
  haulingForce: force("hauling force", "T_haul", "90 N", "hand force at which the line just comes in"),
  easingForce: force("easing force", "T_ease", "60 N", "hand force at which the line just goes out"),
  deadBand: force(
    "dead band",
    "ΔT",
    "30 N",
    "hauling force less easing force: the range in which the line stays where it is",
  ),
  runOutLoad: force("run-out load", "T_out", "5 N", "least load at which the line goes out by itself, hand open"),
  blockLoad: force("block load", "F_block", "300 N", "vector sum of the tensions that meet at a block"),
  constantDrag: force(
    "constant drag",
    "c",
    "0.5 N",
    "loss at a turn that does not depend on load: seals, grit, rope weight",
  ),
  holdLoad: force("hold load", "T_hold", "400 N", "load at which a closed cleat lets the line slip"),
  engageLoad: force("engage load", "F_on", "100 N", "block load above which a load-sensing ratchet grips"),

  // Loss at a turn
  tensionRatio: pure(
    "tension ratio",
    "k",
    1,
    1e12,
    "1.09",
    "tension on the pulled side of a turn over tension on the other",
  ),
  frictionCoefficient: pure("friction coefficient", "μ", 0, 4, "0.15", "sliding friction force over normal force"),
  bearingFriction: pure("bearing friction", "μ_b", 0, 1, "0.1", "friction coefficient between sheave and pin"),
  bendingCoefficient: {
    label: "bending coefficient",
    symbol: "c_b",
    unit: "1/m",
    shownUnit: "1/mm",
    minimum: 0,
    maximum: 2000,
    example: "20 1/m",
    meaning: "bending loss at a full turn over d²/D",
  },
  wrapAngle: angle(
    "wrap angle",
    "θ",
    63,
    "180 deg",
    "angle over which the rope touches the surface, up to ten turns; whole fives above 20 rad are taken for degrees",
  ),
  grooveRatio: pure("groove ratio", "g", 0.5, 20, "1.2", "width of the groove over diameter of the rope"),
  diameterRatio: pure(
    "sheave ratio",
    "D/d",
    0.1,
    1000,
    "6",
    "groove-bottom diameter of a sheave over diameter of the rope",
  ),
  efficiency: pure("efficiency", "η", 0, 1, "0.85", "work got out over work put in"),
  velocityRatio: pure("velocity ratio", "VR", 1e-6, 1e6, "4", "metres hauled for each metre that the load moves"),
  lineCount: pure("lines through one station", "n", 1, 8, "2", "how many lines share a station"),

  // Sizes
  ropeDiameter: length("rope diameter", "d", 0.2, "mm", "6 mm", "diameter of the rope under light tension"),
  sheaveDiameter: length(
    "sheave diameter",
    "D",
    5,
    "mm",
    "40 mm",
    "diameter of a sheave or ring at the bottom of its groove",
  ),
  pinRadius: length("pin radius", "r", 1, "mm", "4 mm", "radius of the pin, or of the circle on which the balls run"),
  grooveWidth: length("groove width", "b", 0.5, "mm", "8 mm", "width of the groove at half the rope's height"),
  lineLength: length("length", "L", 1000, "m", "12 m", "length of a line or a part of it"),
  coordinate: {
    label: "place on the boat",
    symbol: "p",
    unit: "m",
    shownUnit: "m",
    minimum: -100,
    maximum: 100,
    example: "1.2 m",
    meaning: "how far a place lies ahead, to lee, or up, from any point of the boat",
  },
  linearDensity: {
    label: "linear density",
    symbol: "m'",
    unit: "kg/m",
    shownUnit: "g/m",
    minimum: 1e-7,
    maximum: 50,
    example: "8 g/m",
    meaning: "mass of a metre of rope",
  },
  mass: {
    label: "mass",
    symbol: "m",
    unit: "kg",
    shownUnit: "g",
    minimum: 0,
    maximum: 1e5,
    example: "250 g",
    meaning: "mass of a part",
  },

  ...ropeQuantities,
  ...gripQuantities,
  ...heatQuantities,
  ...windQuantities,
  ...motionQuantities,
  ...sizeQuantities,
  ...crewQuantities,
  ...workingQuantities,
} as const satisfies Record<string, VocabularyEntry>;

/** Name of a quantity in the vocabulary. */
export type QuantityName = keyof typeof vocabulary;
