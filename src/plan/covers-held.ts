import type { Boat, BoatLine } from "../boat/boat.js";
import { placedStations } from "../boat/pieces.js";

/** Whether the rope in the hand, and that in a cleat, has a cover or is one braid over another: 1, or 0 where either is bare. */
export function coversHeld({ catalogue }: Boat, line: BoatLine): 0 | 1 {
  const inCleats = placedStations(line).filter(({ station }) => station.kind === "cleat");
  const held = [line.rope.length - 1, ...inCleats.map(({ piece }) => piece)];
  return held.every((piece) => catalogue.ropes[line.rope[piece]!.rope]!.construction !== "bareBraid") ? 1 : 0;
}
