import type { Boat, BoatLine } from "../boat/boat.js";
import type { LineTrial } from "../boat/trials.js";
import { figures } from "../quantity/print.js";

/** The cover begins so far before the cleat, that the cleat never gets hold of the thin part [m]. */
const clearance = 0.5;

/** A taper counts as so far from a line without one. */
const away = 0.5;

/** Rope from the sail to the cleat, hauled in [m]; nothing where a distance is left out. */
function wayToCleat({ path }: BoatLine): number | undefined {
  let way = 0;
  for (const station of path) {
    if (station.distance === undefined) return undefined;
    way += station.distance;
    if (station.kind === "cleat") return way;
    if (station.kind === "tackle" && station.length === undefined) return undefined;
    if (station.kind === "tackle") way += station.parts * station.length!;
  }
  return undefined;
}

/**
 * Ways to make a halyard of one rope thin where it runs: bare braid from the sail to shortly before the cleat, spliced to the rope that
 * the hand works. None where the distances of the line are not known.
 */
export function taperedWays({ catalogue }: Boat, one: LineTrial): LineTrial[] {
  const { line } = one;
  const [whole] = line.rope;
  const way = wayToCleat(line);
  if (line.kind !== "halyard" || line.rope.length > 1 || whole === undefined || way === undefined) return [];
  const thin = Math.floor(10 * (way - clearance) + 1e-9) / 10;
  if (thin < 1 || whole.length - thin < 1) return [];
  const { diameter, construction } = catalogue.ropes[whole.rope]!;
  if (construction === "bareBraid") return [];
  return Object.entries(catalogue.ropes)
    .filter(([, rope]) => rope.construction === "bareBraid" && rope.diameter < diameter)
    .map(([rope, other]) => ({
      words: `${one.words === "" ? "" : `${one.words}, `}${rope} for the first ${figures(thin)} m`,
      away: one.away + away + Math.log(diameter / other.diameter),
      line: {
        ...line,
        rope: [
          { rope, length: thin },
          { ...whole, length: Math.round(100 * (whole.length - thin)) / 100 },
        ],
      },
    }));
}
