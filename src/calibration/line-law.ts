import { ReevingError } from "../quantity/errors.js";
import type { Line } from "../reeving/line.js";
import { prepareLine } from "../reeving/line.js";
import { type FactorName, type Factors, scaledLine } from "../reeving/scaled.js";
import { type Band, bandOf } from "../sources/band.js";
import type { LawBands } from "./measured-law.js";

/** Ratio and drag of a line as its model gives them. */
export interface LineLaw {
  /** k [-] */
  readonly ratio: number;
  /** c [N] */
  readonly drag: number;
  /** Metres hauled for each metre that the load moves [-]. */
  readonly velocityRatio: number;
}

/**
 * Ratio and drag of a line at the hand, from its model at two loads.
 *
 *     k = VR · (T_haul(2 W) − T_haul(W)) / W,   c = T_haul(W) − k W / VR
 *
 * @param line  rope and stations [m, rad, N]
 * @param load  W [N], above 0: about the load of interest
 * @returns ratio [-], drag [N], velocity ratio [-]
 * @throws ReevingError for a line with a ratchet or a closed cleat, which loses differently each way
 * Source: statics. Example: lineLaw({ rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1, drag: 2 }] }, 100).drag → 2
 */
export function lineLaw(line: Line, load: number): LineLaw {
  refuseOneWay(line);
  const prepared = prepareLine(line);
  const once = prepared.handForces(load);
  const ratio = (once.velocityRatio * (prepared.handForces(2 * load).hauling - once.hauling)) / load;
  return { ratio, drag: once.hauling - (ratio * load) / once.velocityRatio, velocityRatio: once.velocityRatio };
}

/**
 * What a line's coefficients say of its ratio and drag before it is measured.
 *
 * @param line  rope and stations [m, rad, N]
 * @param load  about the load of interest [N]
 * @param factors  band of the factor on each cause [-], 1 in the middle
 * @returns bands of ratio [-] and drag [N]
 * @throws ReevingError for a line with a ratchet or a closed cleat
 * Source: statics. Example: lineBands({ rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1 }] }, 100, { bearing: { value: 1, low: 0.5, high: 2 } }).ratio.high → 1.2
 */
export function lineBands(line: Line, load: number, factors: Readonly<Partial<Record<FactorName, Band>>>): LawBands {
  const of = (part: "ratio" | "drag") =>
    bandOf(factors as Record<string, Band>, (values) => lineLaw(scaledLine(line, values as Factors), load)[part]);
  return { ratio: of("ratio"), drag: of("drag") };
}

function refuseOneWay({ stations }: Line): void {
  const turns = stations.flatMap((station) =>
    station.kind === "tackle" ? station.reeving.ropes.flatMap(({ turns }) => turns.map(({ turn }) => turn)) : [station],
  );
  const wrong = turns.find((turn) => turn.kind === "ratchet" || (turn.kind === "cleat" && turn.closed));
  if (wrong === undefined) return;
  throw new ReevingError({
    quantity: `station "${wrong.name}"`,
    value: `a ${wrong.kind === "cleat" ? "closed cleat" : "ratchet"}`,
    allowed: "a line that loses the same both ways",
    advice: "Read the line with its ratchets switched off and its cleats open, and describe it so.",
  });
}
