import type { SourceId } from "../sources/bibliography.js";
import type { MeasuredPoint } from "../uncertainty/coverage.js";
import { canyoning, hmpeKnots, prattley, rescuePulleys, roller, stockman, thinBars, timber } from "./braid-points.js";
import { ballSheave, ballStuds, lineham, receipts } from "./hemp-points.js";
import { once } from "./once.js";

/** What one person measured, with the bands foretold for it. */
export interface MeasuredSet {
  readonly id: string;
  readonly name: string;
  readonly source: SourceId;
  readonly place: string;
  readonly points: readonly MeasuredPoint[];
}

interface LazySet extends Omit<MeasuredSet, "points"> {
  readonly points: () => readonly MeasuredPoint[];
}

const lazySets: readonly LazySet[] = [
  {
    id: "ball-sheave",
    name: "Wooden sheave, hemp cord",
    source: "ball-mechanics",
    place: "art. 168",
    points: once(ballSheave),
  },
  {
    id: "ball-studs",
    name: "Hemp over iron studs",
    source: "ball-mechanics",
    place: "art. 156",
    points: once(ballStuds),
  },
  {
    id: "receipts",
    name: "Tackles of 1 to 6 parts",
    source: "workshop-receipts",
    place: "taps, part 6",
    points: once(receipts),
  },
  {
    id: "lineham",
    name: "Test blocks",
    source: "lineham-mechanics",
    place: "Appendix II, by experiment",
    points: once(lineham),
  },
  {
    id: "thin-bars",
    name: "Low-stretch rope over thin steel bars",
    source: "delaney-2022",
    place: "p. 88",
    points: once(thinBars),
  },
  { id: "timber", name: "Low-stretch rope over timber", source: "delaney-2022", place: "p. 88", points: once(timber) },
  {
    id: "roller",
    name: "Cord on a pine roller",
    source: "knot-guild-roller",
    place: "first post: it holds at 14 and slips at 19",
    points: once(roller),
  },
  {
    id: "rescue",
    name: "Rescue pulleys and karabiners",
    source: "delaney-devices",
    place: "p. 90; 1 kN",
    points: once(rescuePulleys),
  },
  {
    id: "prattley",
    name: "Wheel and bar, 9 mm rope",
    source: "prattley-2016",
    place: "averages of five pulls",
    points: once(prattley),
  },
  {
    id: "stockman",
    name: "Bare HMPE over karabiners",
    source: "stockman-tests",
    place: "results",
    points: once(stockman),
  },
  {
    id: "canyon",
    name: "Raising and lowering, 11 lbf",
    source: "canyon-friction",
    place: "readings at the anchor, less the load",
    points: once(canyoning),
  },
  {
    id: "hmpe-knots",
    name: "Knots in HMPE cord",
    source: "hmpe-knot-tests",
    place: "quoted tests",
    points: once(hmpeKnots),
  },
];

/**
 * The measured sets that stand against the bands, with the bands foretold for them.
 *
 * No point is among them that set the spread of a record: bars of 43 to 60 mm set the bending of braided rope and the
 * friction of rings, and concrete has no record that another source set.
 *
 * @returns sets with their points
 * Example: measuredSets().length > 6 → true
 */
export function measuredSets(): MeasuredSet[] {
  return lazySets.map((set) => ({ ...set, points: set.points() }));
}
