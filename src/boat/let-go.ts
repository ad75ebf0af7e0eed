import { cleats } from "../materials/cleats.js";
import { type LetGo, letGo } from "../reeving/let-go.js";
import type { Boat } from "./boat.js";
import { cleatIn, gustAt } from "./cleat-hold.js";
import { coverOf } from "./pieces.js";
import type { ReadyLine } from "./ready.js";

/**
 * What it takes whoever works a line to let it go in a gust.
 *
 * @param boat  boat: its catalogue has the type of the cleat
 * @param ready  line of it
 * @returns effort [N] at the cleat that holds the line, or none where a hand holds it; share of what that hand pulls; how; whether it then runs through the hand
 */
export function letGoOf(boat: Boat, ready: ReadyLine): LetGo {
  const { hand, line, loads, pieces } = ready;
  const held = line.heldBy === "cleat" ? cleatIn(ready) : undefined;
  if (held === undefined) {
    const cover = coverOf(pieces.at(-1)!.rope, boat.conditions.wet);
    return letGo({ cleat: { kind: "hand" }, cover, tension: loads.gust, hand });
  }
  const { at, station, piece } = held;
  const cleat = cleats[boat.catalogue.cleats[station.cleat]!.type];
  const { turns = 0, eights = 0 } = station;
  const cover = coverOf(piece.rope, boat.conditions.wet);
  return letGo({ cleat, cover, turns, eights, tension: gustAt(ready, at), hand });
}
