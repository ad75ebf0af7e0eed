import { cleats, gripRecords } from "../materials/cleats.js";
import { camSlipLoad } from "../reeving/cam-cleat.js";
import { hornSlipLoad } from "../reeving/horn.js";
import { jammerSlipLoad } from "../reeving/jammer.js";
import type { SlipLoad } from "../reeving/slip-load.js";
import { veeSlipLoad } from "../reeving/vee-cleat.js";
import { breakLoad } from "../rope/break-load.js";
import type { Band } from "../sources/band.js";
import type { Boat, BoatLine, CleatStation } from "./boat.js";
import { coverOf } from "./pieces.js";
import type { ReadyLine, ReadyPiece } from "./ready.js";

/** The cleat of a line and the rope in it. */
export interface HeldPlace {
  /** Place among the stations of the line. */
  readonly at: number;
  readonly station: CleatStation;
  readonly piece: ReadyPiece;
}

/** The cleat of a line, where it has one. */
export function cleatIn({ placed, pieces }: ReadyLine): HeldPlace | undefined {
  const at = placed.findIndex(({ station }) => station.kind === "cleat");
  const found = placed[at];
  if (found?.station.kind !== "cleat") return undefined;
  return { at, station: found.station, piece: pieces[found.piece]! };
}

/**
 * Whether a locking hitch finishes a line on its horn: as the file says, and otherwise on what stays set, where a crossing is there to lie on.
 *
 * @param line  line of the boat: sheets and vangs are kept free to be let go
 * @param station  its cleat
 * @returns true for a hitch
 * Source: common practice. Example: isHitched({ kind: "sheet" }, { eights: 2 }) → false
 */
export function isHitched(
  { kind }: Pick<BoatLine, "kind">,
  { hitch, eights = 0 }: Pick<CleatStation, "hitch" | "eights">,
): boolean {
  return hitch ?? ((kind === "halyard" || kind === "control") && eights >= 1);
}

/**
 * Load at which a line slips through its closed cleat.
 *
 * @param boat  boat: its catalogue has type, size and rated load of the cleat
 * @param ready  line of it
 * @param place  cleat of that line, and the rope in it
 * @returns slip load with its range [N], whether it locks, and what gives way first
 */
export function slipLoadIn(
  { catalogue, conditions }: Boat,
  { line }: ReadyLine,
  { station, piece }: HeldPlace,
): SlipLoad {
  const size = catalogue.cleats[station.cleat]!;
  const cleat = cleats[size.type];
  const { diameter: ropeDiameter } = piece.rope;
  const rope = { size, ropeDiameter, cover: coverOf(piece.rope, conditions.wet), breakLoad: breakLoad(piece.make) };
  switch (cleat.kind) {
    case "cam":
      return camSlipLoad({ cleat, ...rope });
    case "vee":
      return veeSlipLoad({ cleat, ...rope });
    case "jammer":
      return jammerSlipLoad({ cleat, ...rope });
    case "horn": {
      const { turns = 0, eights = 0 } = station;
      return hornSlipLoad({ cleat, ...rope, turns, eights, hitch: isHitched(line, station), tail: gripRecords.tail });
    }
  }
}

/** Tension that a gust brings to a station of a line, friction on the way helping [N]. */
export function gustAt({ over, loads }: ReadyLine, at: number): Band {
  return over(
    { gust: loads.gust },
    (run, { gust }) => run.state(Math.max(0, gust!), "easing").stations[at]!.loadTension,
  );
}
