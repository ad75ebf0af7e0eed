import type { Boat, BoatLine } from "../boat/boat.js";
import { leastDiameterOf } from "../boat/hand-diameter.js";
import { suitsWork } from "../boat/suits.js";
import { type LineTrial, lineTrials, partTrials, together } from "../boat/trials.js";
import { coversHeld } from "./covers-held.js";
import { taperedWays } from "./tapered-ways.js";

/** The name of what nothing was changed about. */
export const asItIs = "as it is";

/** Most ways of one kind that are worked out. */
const most = {
  ropes: 10,
  thinRopes: 4,
  hardware: 9,
  cleats: 7,
  tapers: 7,
  parts: 5,
  pairs: 10,
  ropesAndParts: 6,
  hardwareAndParts: 8,
  both: 6,
};

/**
 * Ways to make a line: as it is, with another rope, tapered, other hardware at one or two places, more or fewer parts, and with some of these together.
 *
 * Ropes and hardware that do not fit each other are left out; of ropes that are thinner or barer than the hand likes only a few are
 * tried, to tell what the hand costs. More parts take more rope and more blocks.
 */
export function waysOf(boat: Boat, line: BoatLine): LineTrial[] {
  const trials = lineTrials(boat, line).filter(({ crew }) => crew === undefined);
  const parts = line.path.flatMap((_, at) => partTrials(line, at));
  const ropes = trials.filter((one) => one.line.path === line.path);
  const hardware = trials.filter((one) => one.line.path !== line.path && !changesParts(line, one.line));
  const suited = ropes.filter((one) => suitsHand(boat, line, one.line));
  const thin = ropes.filter((one) => !suited.includes(one));
  const fitting = (some: readonly LineTrial[], count: number) => {
    const all = some.filter((one) => suitsWork(boat, one.line, line));
    return all.sort((one, other) => one.away - other.away).slice(0, count);
  };
  const pairs = suited.flatMap((rope) => hardware.map((other) => together(line, rope, other)));
  const both = hardware.flatMap((one, index) =>
    hardware.slice(index + 1).flatMap((other) => (sharesStation(line, one, other) ? [] : [together(line, one, other)])),
  );
  const inParts = (some: readonly LineTrial[]) =>
    some.flatMap((one) =>
      one.line.path.flatMap((_, at) =>
        partTrials(one.line, at).map((more) => ({
          words: `${one.words}, ${more.words}`,
          away: one.away + more.away,
          line: more.line,
        })),
      ),
    );
  const share = Math.ceil(most.hardware / Math.max(1, line.path.length)) + 1;
  const near = line.path.flatMap((station, at) =>
    fitting(
      hardware.filter((one) => one.line.path[at] !== station),
      station.kind === "cleat" ? most.cleats : share,
    ),
  );
  const found = [
    { words: asItIs, away: 0, line },
    ...fitting(suited, most.ropes),
    ...near,
    ...fitting(parts, most.parts),
    ...fitting(pairs, most.pairs),
    ...fitting(inParts(fitting(suited, most.ropes)), most.ropesAndParts),
    ...fitting(inParts(near), most.hardwareAndParts),
    ...fitting(both, most.both),
    ...fitting(
      [{ words: "", away: 0, line }, ...fitting(suited, most.ropes)].flatMap((one) => taperedWays(boat, one)),
      most.tapers,
    ),
    ...fitting(thin, most.thinRopes),
  ];
  const names = new Set<string>();
  return found.filter(({ words }) => !names.has(words) && names.add(words));
}

function sharesStation(line: BoatLine, one: LineTrial, other: LineTrial): boolean {
  return line.path.some((station, at) => one.line.path[at] !== station && other.line.path[at] !== station);
}

function changesParts(line: BoatLine, other: BoatLine): boolean {
  return line.path.some((station, at) => {
    const now = other.path[at]!;
    return station.kind === "tackle" && now.kind === "tackle" && station.parts !== now.parts;
  });
}

/** Thick enough for the hand, and covered where it is held, or at least as good as now. */
function suitsHand(boat: Boat, line: BoatLine, other: BoatLine): boolean {
  const diameter = ({ rope }: BoatLine) => boat.catalogue.ropes[rope.at(-1)!.rope]!.diameter;
  const least = Math.min(leastDiameterOf(boat, line).value, diameter(line));
  return diameter(other) >= least - 1e-9 && coversHeld(boat, other) >= coversHeld(boat, line);
}
