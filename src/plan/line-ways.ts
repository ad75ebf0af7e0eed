import type { Boat, BoatLine, BoatStation } from "../boat/boat.js";
import { placedStations } from "../boat/pieces.js";
import { type LineTrial, lineTrials } from "../boat/trials.js";

/** The name of what nothing was changed about. */
export const asItIs = "as it is";

/** Most ways of one kind that are looked at: ropes alone, hardware alone, all together. */
const most = { ropes: 14, hardware: 11, all: 40 };

/**
 * Ways to make a line: as it is, with another rope, with other hardware at one place, and with both; nearest first, 40 at most.
 *
 * Ropes and hardware that do not fit each other are left out. Parts of a purchase stay, since their number changes the lengths.
 */
export function waysOf(boat: Boat, line: BoatLine): LineTrial[] {
  const trials = lineTrials(boat, line).filter((one) => sameParts(line, one.line));
  const [ropes, hardware] = [trials.filter(changesRope(line)), trials.filter((one) => !changesRope(line)(one))];
  const pairs = ropes.flatMap((rope) =>
    hardware.map((other): LineTrial => {
      const changed = { ...line, rope: rope.line.rope, path: other.line.path };
      return { words: `${rope.words}, ${other.words}`, away: rope.away + other.away, line: changed };
    }),
  );
  const fitting = (some: readonly LineTrial[]) => some.filter((one) => fits(boat, one.line));
  const single = [...fitting(ropes).slice(0, most.ropes), ...fitting(hardware).slice(0, most.hardware)];
  const paired = fitting(pairs).sort((one, other) => one.away - other.away);
  return [{ words: asItIs, away: 0, line }, ...single, ...paired].slice(0, most.all);
}

const changesRope = (line: BoatLine) => (trial: LineTrial) => trial.line.rope !== line.rope;

function sameParts(line: BoatLine, other: BoatLine): boolean {
  const parts = (station: BoatStation) => (station.kind === "tackle" ? station.parts : 0);
  return line.path.every((station, at) => parts(station) === parts(other.path[at]!));
}

/** Whether each rope goes through its hardware. */
function fits({ catalogue }: Boat, line: BoatLine): boolean {
  return placedStations(line).every(({ station, piece }) => {
    const { diameter } = catalogue.ropes[line.rope[piece]!.rope]!;
    if (station.kind === "ring") return diameter <= catalogue.rings[station.ring]!.opening;
    if (station.kind !== "cleat") return diameter <= catalogue.blocks[station.block]!.groove;
    const { thinnest, thickest } = catalogue.cleats[station.cleat]!;
    return diameter >= thinnest && diameter <= thickest;
  });
}
