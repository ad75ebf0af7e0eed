import { stockman } from "./braid-points.js";
import { lineham, receipts } from "./hemp-points.js";
import { magazineLoops, olderTable, thinBraid } from "./knot-points.js";
import type { LazySet } from "./measured-set.js";
import { once } from "./once.js";

/** A set that lay outside so far that a range was widened for it: it can no longer witness for the bands. */
interface WideningSet extends LazySet {
  /** What was widened. */
  readonly widened: string;
}

/** Sets that made a range wider. */
export const wideningSets: readonly WideningSet[] = [
  {
    id: "receipts",
    name: "Tackles of 1 to 6 parts",
    source: "workshop-receipts",
    place: "taps, part 6",
    widened: "stiffness of hemp and friction of plain bearings",
    points: once(receipts),
  },
  {
    id: "lineham",
    name: "Test blocks",
    source: "lineham-mechanics",
    place: "Appendix II, by experiment",
    widened: "stiffness of hemp and friction of plain bearings",
    points: once(lineham),
  },
  {
    id: "stockman",
    name: "Bare HMPE over karabiners",
    source: "stockman-tests",
    place: "results",
    widened: "a bare HMPE core in bending and in friction",
    points: once(stockman),
  },
  {
    id: "magazine-loops",
    name: "Bowlines in four ropes",
    source: "knot-test-2017",
    place: "p. 70",
    widened: "what a bowline leaves",
    points: once(magazineLoops),
  },
  {
    id: "thin-braid",
    name: "Knots in a thin braid",
    source: "knot-test-forum",
    place: "first post",
    widened: "what a bowline and any other knot leave",
    points: once(thinBraid),
  },
  {
    id: "older-knots",
    name: "Knots, an older table",
    source: "jacobson-knots",
    place: "chapter 2",
    widened: "what a bowline and two half hitches leave",
    points: once(olderTable),
  },
];
