import { heldLines } from "../materials/held-lines.js";
import { figures } from "../quantity/print.js";
import type { Band } from "../sources/band.js";
import type { Boat, BoatLine } from "./boat.js";
import { type Demand, demand, exactly } from "./demand.js";
import type { ReadyLine } from "./ready.js";

/**
 * Thinnest that a line may be where the hand works it: its own limit, that of the boat for lines held by hand, or the custom of its kind.
 *
 * @param boat  boat with its limits
 * @param line  one of its lines
 * @returns diameter with its range [m]; a limit of the file has none
 */
export function leastDiameterOf({ limits }: Pick<Boat, "limits">, line: BoatLine): Band {
  const set = line.limits?.leastDiameter ?? (line.heldBy === "hand" ? limits.leastDiameter : undefined);
  if (set !== undefined) return { value: set, low: set, high: set };
  if (line.kind === "sheet") return line.heldBy === "hand" ? heldLines.heldSheet : heldLines.cleatedSheet;
  return line.heldBy === "hand" ? heldLines.heldLine : heldLines.hauledLine;
}

const millimetres = (length: number) => `${figures(1000 * length)} mm`;

/** Whether the line is thick enough where the hand works it. */
export function judgeDiameter(boat: Boat, { line, pieces }: ReadyLine): Demand {
  const { diameter } = pieces.at(-1)!.rope;
  const least = leastDiameterOf(boat, line);
  const isCustom = least.low !== least.high;
  const likely = isCustom ? ` by custom (${millimetres(least.low)} to ${millimetres(least.high)})` : "";
  return demand({
    subject: "diameter in the hand",
    consequence: "comfort",
    ground: isCustom ? "custom" : "computed",
    margin: exactly(diameter / least.value),
    reason: `the line is ${millimetres(diameter)} where the hand works it; ${millimetres(least.value)} are asked for${likely}`,
  });
}
