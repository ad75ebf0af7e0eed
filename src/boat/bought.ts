import type { Boat, BoatLine } from "./boat.js";
import { hardwareAt, piecesAt } from "./budget.js";
import { thingAt } from "./suits.js";

/**
 * What has to be bought to make one line into another: ropes that it had not, or not as long, and hardware beyond what it had.
 *
 * @param boat  boat with its catalogue
 * @param before  line as it is
 * @param after  line as it shall be
 * @returns price in the currency of the file
 */
export function boughtFor(boat: Pick<Boat, "catalogue">, before: BoatLine, after: BoatLine): number {
  const ropes = after.rope
    .filter(({ rope, length }) => !before.rope.some((had) => had.rope === rope && had.length >= length))
    .reduce((sum, { rope, length }) => sum + length * boat.catalogue.ropes[rope]!.price.amount, 0);
  const had = countsOf(before);
  const hardware = [...countsOf(after)].reduce((sum, [name, { count, station }]) => {
    const more = Math.max(0, count - (had.get(name)?.count ?? 0));
    return sum + more * hardwareAt(boat, station).price.amount;
  }, 0);
  return (after.count ?? 1) * (ropes + hardware);
}

function countsOf({ path }: BoatLine) {
  const counts = new Map<string, { readonly count: number; readonly station: BoatLine["path"][number] }>();
  for (const station of path) {
    const name = `${station.kind === "tackle" ? "block" : station.kind} ${thingAt(station)}`;
    counts.set(name, { count: (counts.get(name)?.count ?? 0) + piecesAt(station), station });
  }
  return counts;
}
