import type { BoatLine, TackleStation } from "./boat.js";
import { placedStations } from "./pieces.js";

/** Other numbers of parts that a tackle may have: those of the file, or one or two more or fewer. */
export function otherParts({ parts, otherParts: named }: TackleStation): number[] {
  const near = [-2, -1, 1, 2].map((more) => parts + more).filter((one) => one >= 2 && one <= 12);
  return (named ?? near).filter((one) => one !== parts);
}

/**
 * A line with another number of parts at a tackle; its rope gets longer or shorter by as much as the parts take, all let out.
 *
 *     L' = L + (n' − n) · length of one part, let out;   where that is not known L / (n + 1)
 */
export function withParts(line: BoatLine, at: number, parts: number): BoatLine {
  const station = line.path[at]!;
  if (station.kind !== "tackle") return line;
  const index = placedStations(line)[at]!.piece;
  const piece = line.rope[index]!;
  const each = station.letOut ?? piece.length / (station.parts + 1);
  const length = Math.round(100 * (piece.length + (parts - station.parts) * each)) / 100;
  return {
    ...line,
    rope: line.rope.with(index, { ...piece, length: Math.max(0.1, length) }),
    path: line.path.with(at, { ...station, parts }),
  };
}
