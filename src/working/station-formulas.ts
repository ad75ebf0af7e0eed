import { formula } from "./formula.js";

/** Parts of a turn: bending, then bearing or sliding, then what drags at any load. */
const turnSymbols = {
  turnRatio: { quantity: "tensionRatio", sign: "k_turn", words: "ratio of the bearing, or of sliding" },
  bendRatio: { quantity: "tensionRatio", sign: "k_bend", words: "ratio of the bent rope" },
  bendDrag: { quantity: "constantDrag", sign: "c_bend", words: "drag of the bent rope" },
  constantDrag: "constantDrag",
} as const;

const handSide = { quantity: "handTension", words: "pull on the hand's side" } as const;

const shortContact = {
  wrapAngle: "wrapAngle",
  ropeDiameter: "ropeDiameter",
  fullContact: {
    quantity: "loadRatio",
    sign: "n_full",
    words: "contact from which it is fully bent, in rope diameters",
  },
} as const;

/** Formulas of a station of a line, cause by cause. */
export const stationFormulas = {
  hauledTurn: formula({
    id: "hauled-turn",
    title: "Pull behind a turn that hauls",
    text: "turnRatio * (bendRatio * loadTension + bendDrag) + constantDrag",
    symbols: { ...turnSymbols, loadTension: "loadTension" },
    result: "haulingForce",
    source: "statics",
    valid: "a line that just comes in",
    mirrors: "prepareLine",
  }),
  easedTurn: formula({
    id: "eased-turn",
    title: "Pull behind a turn that eases",
    text: "(loadTension - turnRatio * bendDrag - constantDrag) / (turnRatio * bendRatio)",
    symbols: { ...turnSymbols, loadTension: "loadTension" },
    result: "easingForce",
    source: "statics",
    valid: "a line that just goes out: a load above what the turn drags",
    mirrors: "prepareLine",
  }),
  runOutTurn: formula({
    id: "run-out-turn",
    title: "Load that a turn asks for before the line goes out",
    text: "turnRatio * (bendRatio * handTension + bendDrag) + constantDrag",
    symbols: { ...turnSymbols, handTension: handSide },
    result: "runOutLoad",
    source: "statics",
    valid: "a line that just goes out",
    mirrors: "prepareLine",
  }),
  runOutMeasured: formula({
    id: "run-out-measured",
    title: "Load that a measured turn asks for before the line goes out",
    text: "tensionRatio * handTension + constantDrag",
    symbols: { tensionRatio: "tensionRatio", handTension: handSide, constantDrag: "constantDrag" },
    result: "runOutLoad",
    source: "statics",
    valid: "a line that just goes out",
    mirrors: "prepareLine",
  }),
  shortBend: formula({
    id: "short-bend",
    title: "Bending on a contact too short to bend the rope fully",
    text: "1 + bendingCoefficient * wrapAngle * ropeDiameter / (2 * fullContact)",
    symbols: { ...shortContact, bendingCoefficient: "bendingCoefficient" },
    result: "tensionRatio",
    source: "common practice",
    valid: "a contact shorter than that",
    mirrors: "bendingLaw",
  }),
  shortBendDrag: formula({
    id: "short-bend-drag",
    title: "Drag of bending on a contact too short to bend the rope fully",
    text: "(bendingDrag + bendingDragOfSize * ropeDiameter^2) * wrapAngle * ropeDiameter / (2 * fullContact)",
    symbols: { ...shortContact, bendingDrag: "bendingDrag", bendingDragOfSize: "bendingDragOfSize" },
    result: "constantDrag",
    source: "common practice",
    valid: "a contact shorter than that",
    mirrors: "bendingLaw",
  }),
  coverFriction: formula({
    id: "cover-friction",
    title: "Friction of a cover on a surface",
    text: "surface * strands * fibre * water",
    symbols: {
      surface: {
        quantity: "frictionCoefficient",
        sign: "μ_24",
        words: "friction of 24 dry strands of polyester on it",
      },
      strands: { quantity: "rangeFactor", sign: "f_strands", words: "number of strands, over 24" },
      fibre: { quantity: "rangeFactor", sign: "f_fibre", words: "fibre, over polyester" },
      water: { quantity: "rangeFactor", sign: "f_wet", words: "wet over dry" },
    },
    result: "frictionCoefficient",
    source: "common practice",
    valid: "clean rope; the order is sure, the steps are judged",
    mirrors: "coverFriction",
  }),
} as const;
