import { formula } from "./formula.js";

const cam = {
  camAngle: "camAngle",
  pivotShare: "pivotShare",
  pivotFriction: { quantity: "bearingFriction", sign: "μ_p", words: "friction at the pivot of the cam" },
} as const;

const horn = { turnCount: "turnCount", frictionCoefficient: "frictionCoefficient" } as const;

const wedge = {
  squeeze: { quantity: "tension", sign: "S", words: "force across the wedge" },
  slopeAngle: "slopeAngle",
  frictionCoefficient: "frictionCoefficient",
} as const;

/** Formulas of cleats, horns, wedges, and of what rubs and wears. */
export const cleatFormulas = {
  frictionAngle: formula({
    id: "friction-angle",
    title: "Steepest angle at which friction alone holds",
    text: "atan(frictionCoefficient)",
    symbols: { frictionCoefficient: "frictionCoefficient" },
    result: { quantity: "slopeAngle", sign: "φ", words: "angle of friction" },
    source: "statics",
    valid: "dry friction",
    mirrors: "frictionAngle",
  }),
  lockingAngle: formula({
    id: "locking-angle",
    title: "Angle that the friction of a cam cleat has to beat",
    text: "camAngle + asin(pivotShare * sin(atan(pivotFriction)))",
    symbols: cam,
    result: { quantity: "camAngle", sign: "ψ'", words: "cam angle with the friction of the pivot" },
    source: "statics",
    valid: "jaws that move alike",
    mirrors: "lockingAngle",
  }),
  lockingFriction: formula({
    id: "locking-friction",
    title: "Least friction with which a cam cleat locks",
    text: "tan(camAngle + asin(pivotShare * sin(atan(pivotFriction))))",
    symbols: cam,
    result: "frictionCoefficient",
    source: "statics",
    valid: "jaws that move alike",
    mirrors: "lockingFriction",
  }),
  camGrip: formula({
    id: "cam-grip",
    title: "Load at which a cam cleat that does not lock slips",
    text: "2 * frictionCoefficient * gripPreload / (sin(lockingAngle) - frictionCoefficient * cos(lockingAngle))",
    symbols: {
      frictionCoefficient: "frictionCoefficient",
      gripPreload: { quantity: "gripPreload", words: "force of one spring at the rope" },
      lockingAngle: { quantity: "camAngle", sign: "ψ'", words: "cam angle with the friction of the pivot" },
    },
    result: "holdLoad",
    source: "statics",
    valid: "friction below the tangent of the angle: above it the cleat locks",
    mirrors: "camGrip",
  }),
  hornHold: formula({
    id: "horn-hold",
    title: "Load that turns round a horn hold",
    text: "tail * exp(2 * pi * turnCount * frictionCoefficient)",
    symbols: { tail: { quantity: "tension", sign: "T_tail", words: "tension left in the tail" }, ...horn },
    result: "holdLoad",
    source: "euler-1769",
    valid: "turns side by side; turns that cross hold more",
    mirrors: "hornHold",
  }),
  tailNeeded: formula({
    id: "tail-needed",
    title: "Tension that the tail needs",
    text: "loadTension / exp(2 * pi * turnCount * frictionCoefficient)",
    symbols: { loadTension: "loadTension", ...horn },
    result: { quantity: "tension", sign: "T_tail", words: "tension in the tail" },
    source: "euler-1769",
    valid: "turns side by side",
    mirrors: "tailNeeded",
  }),
  turnsToHold: formula({
    id: "turns-to-hold",
    title: "Turns that hold a load",
    text: "log(loadTension / tail) / (2 * pi * frictionCoefficient)",
    symbols: {
      loadTension: "loadTension",
      tail: { quantity: "tension", sign: "T_tail", words: "tension left in the tail" },
      frictionCoefficient: "frictionCoefficient",
    },
    result: "turnCount",
    source: "euler-1769",
    valid: "a load above the tension in the tail",
    mirrors: "turnsToHold",
  }),
  wedgeDrive: formula({
    id: "wedge-drive",
    title: "Force that drives a wedge in",
    text: "squeeze * tan(slopeAngle + atan(frictionCoefficient))",
    symbols: wedge,
    result: { quantity: "tension", sign: "F", words: "driving force" },
    source: "statics",
    valid: "slope and angle of friction together below a quarter turn",
    mirrors: "wedgeDrive",
  }),
  wear: formula({
    id: "wear",
    title: "Wear of a cover on a locked tread",
    text: "harshness * wearFactor * (24 / strands)^exponent",
    symbols: {
      harshness: "harshness",
      wearFactor: "wearFactor",
      strands: "strands",
      exponent: { quantity: "exponent", sign: "p", words: "power of the coarseness" },
    },
    result: "wearRate",
    source: "brown-burgoyne-1999",
    valid: "comparing pairs under the same load and slide",
    mirrors: "wearRate",
  }),
  chafe: formula({
    id: "chafe",
    title: "Fraying of one line that runs on another",
    text: "frailty * sqrt(own * other) / reference",
    symbols: {
      frailty: "frailty",
      own: { quantity: "frictionCoefficient", sign: "μ_1", words: "friction of the fibre on itself" },
      other: { quantity: "frictionCoefficient", sign: "μ_2", words: "friction of the other fibre on itself" },
      reference: { quantity: "frictionCoefficient", sign: "μ_ref", words: "friction of polyester on itself" },
    },
    result: "chafeRate",
    source: "brown-burgoyne-1999",
    valid: "comparing pairs of clean lines",
    mirrors: "chafeRate",
  }),
} as const;
