/** One recurring quantity: one name, one meaning, one symbol, one SI unit, and the values that can exist at all. */
export interface VocabularyEntry {
  /** Words for axis titles and tables, lower case. */
  readonly label: string;
  readonly symbol: string;
  /** SI unit of the number inside the library; "1" for a pure number. */
  readonly unit: string;
  /** Unit a reader sees first. */
  readonly shownUnit: string;
  /** Smallest and largest value that is physically possible. */
  readonly minimum: number;
  readonly maximum: number;
  /** A value as a person would type it. */
  readonly example: string;
  readonly meaning: string;
}

/** A dimensionless entry: pure numbers share unit and shown unit. */
function pure(
  label: string,
  symbol: string,
  minimum: number,
  maximum: number,
  example: string,
  meaning: string,
): VocabularyEntry {
  return { label, symbol, unit: "1", shownUnit: "1", minimum, maximum, example, meaning };
}

/** A force in newtons, 0 to 1 MN: no rope of a small boat carries more. */
function force(label: string, symbol: string, example: string, meaning: string): VocabularyEntry {
  return { label, symbol, unit: "N", shownUnit: "N", minimum: 0, maximum: 1e6, example, meaning };
}

/** A length in metres that must be above zero, shown in the given unit. */
function length(
  label: string,
  symbol: string,
  maximum: number,
  shownUnit: string,
  example: string,
  meaning: string,
): VocabularyEntry {
  return { label, symbol, unit: "m", shownUnit, minimum: 1e-6, maximum, example, meaning };
}

/** A speed in metres a second. */
function speed(
  label: string,
  symbol: string,
  minimum: number,
  maximum: number,
  example: string,
  meaning: string,
): VocabularyEntry {
  return { label, symbol, unit: "m/s", shownUnit: "kn", minimum, maximum, example, meaning };
}

/** An angle in radians, shown in degrees. */
function angle(label: string, symbol: string, maximum: number, example: string, meaning: string): VocabularyEntry {
  return { label, symbol, unit: "rad", shownUnit: "deg", minimum: 0, maximum, example, meaning };
}

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
  frictionCoefficient: pure("friction coefficient", "μ", 0, 2, "0.15", "sliding friction force over normal force"),
  bearingFriction: pure("bearing friction", "μ_b", 0, 1, "0.1", "friction coefficient between sheave and pin"),
  bendingCoefficient: {
    label: "bending coefficient",
    symbol: "c_b",
    unit: "1/m",
    shownUnit: "1/mm",
    minimum: 0,
    maximum: 500,
    example: "20 1/m",
    meaning: "bending loss at a full turn over d²/D",
  },
  wrapAngle: angle("wrap angle", "θ", 200, "180 deg", "angle over which the rope touches the surface"),
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

  // Wind and sail
  windSpeed: speed("true wind speed", "V_T", 0, 60, "12 kn", "wind over the ground at a stated height"),
  apparentWindSpeed: speed("apparent wind speed", "V_A", 0, 100, "15 kn", "wind felt on the moving boat"),
  boatSpeed: speed("boat speed", "V_B", -30, 60, "6 kn", "speed of the boat through the water, astern below zero"),
  trueWindAngle: angle("true wind angle", "β_T", Math.PI, "90 deg", "angle from the bow to the true wind"),
  apparentWindAngle: angle("apparent wind angle", "β_A", Math.PI, "45 deg", "angle from the bow to the apparent wind"),
  heelAngle: angle("heel angle", "φ", Math.PI / 2, "15 deg", "angle of the mast from upright"),
  temperature: {
    label: "air temperature",
    symbol: "t",
    unit: "K",
    shownUnit: "degC",
    minimum: 173.15,
    maximum: 373.15,
    example: "15 degC",
    meaning: "temperature of the air or of a part",
  },
  pressure: {
    label: "air pressure",
    symbol: "p",
    unit: "Pa",
    shownUnit: "Pa",
    minimum: 0,
    maximum: 2e5,
    example: "101325 Pa",
    meaning: "static pressure of the air",
  },
  airDensity: {
    label: "air density",
    symbol: "ρ",
    unit: "kg/m^3",
    shownUnit: "kg/m^3",
    minimum: 0,
    maximum: 5,
    example: "1.225 kg/m^3",
    meaning: "mass of a cubic metre of air",
  },
  dynamicPressure: {
    label: "dynamic pressure",
    symbol: "q",
    unit: "Pa",
    shownUnit: "Pa",
    minimum: 0,
    maximum: 1e5,
    example: "61 Pa",
    meaning: "half the air density times the square of the wind speed",
  },
  beaufort: pure("Beaufort number", "B", 0, 12, "4", "force of the wind on the Beaufort scale, fractions allowed"),
  gustFactor: pure("gust factor", "G", 1, 5, "1.3", "speed of a gust over the mean wind"),
  gustDuration: {
    label: "gust duration",
    symbol: "t",
    unit: "s",
    shownUnit: "s",
    minimum: 0.1,
    maximum: 3600,
    example: "3 s",
    meaning: "time over which the speed of a gust is averaged",
  },
  shearExponent: pure("shear exponent", "a", 0, 1, "0.11", "exponent with which the wind grows with height"),
  height: length("height", "z", 500, "m", "5 m", "height above the water"),
  roughnessLength: length("roughness length", "z0", 10, "m", "0.0002 m", "height at which the log law gives no wind"),
  sailArea: {
    label: "sail area",
    symbol: "A",
    unit: "m^2",
    shownUnit: "m^2",
    minimum: 1e-4,
    maximum: 2000,
    example: "7 m^2",
    meaning: "area of a sail",
  },
  sailForce: force("sail force", "F_sail", "233 N", "aerodynamic force of the air on a sail"),
  sheetLoad: force("sheet load", "T_sheet", "90 N", "tension that the sail puts into its sheet"),
  liftCoefficient: pure("lift coefficient", "C_L", -3, 3, "1.4", "lift over dynamic pressure and area"),
  dragCoefficient: pure("drag coefficient", "C_D", 0, 3, "0.1", "drag over dynamic pressure and area"),
  loadCoefficient: pure("load coefficient", "C", 0, 5, "1.2", "load over dynamic pressure and sail area"),
  aspectRatio: pure("aspect ratio", "AR", 0.1, 50, "4", "square of the effective height of a rig over its sail area"),
  edgeLoad: {
    label: "edge load",
    symbol: "w",
    unit: "N/m",
    shownUnit: "N/m",
    minimum: 0,
    maximum: 1e4,
    example: "10 N/m",
    meaning: "wind load on a metre of a sail's edge",
  },
  sag: length("sag", "s", 20, "m", "0.25 m", "depth of an edge below the straight line between its corners"),
  boomAngle: angle("boom angle", "δ", Math.PI / 2, "10 deg", "angle of the boom from the centreline, to leeward"),
  sheetAngle: angle("sheet angle", "α", Math.PI, "90 deg", "angle between sheet and boom, seen from above"),
  sheetSlope: angle("sheet slope", "ε", Math.PI / 2, "60 deg", "angle of the sheet above the level"),
  clewAngle: angle(
    "clew angle",
    "κ",
    Math.PI,
    "80 deg",
    "angle at the clew between two edges, or edge and sheet or boom",
  ),
  lever: length("lever arm", "x", 50, "m", "2 m", "distance from the gooseneck along the boom"),
  share: pure("share", "s", 0, 1, "0.5", "part of a whole"),
} as const satisfies Record<string, VocabularyEntry>;

/** Name of a quantity in the vocabulary. */
export type QuantityName = keyof typeof vocabulary;
