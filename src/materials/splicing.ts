import { coefficient } from "../sources/coefficient.js";

/** Lengths and minutes of splices and tapers. */
export const splicing = {
  /** Length that a single braid is buried in itself or in the next, taper included, over its diameter [-]. */
  bury: coefficient({
    value: 60,
    unit: "1",
    low: 45,
    high: 75,
    status: "from memory",
    place: "slippery HMPE single braid, lock-stitched; pull a splice to narrow it",
  }),
  /** Length over which the cut end of a cover is thinned and hidden in the core, over the rope diameter [-]. */
  coverTaper: coefficient({
    value: 20,
    unit: "1",
    low: 12,
    high: 35,
    status: "from memory",
    place: "a few strands at a time, so that no step catches in a block",
  }),
  /** Time for one taper or splice [s]. */
  taperTime: coefficient({
    value: 15 * 60,
    unit: "s",
    low: 10 * 60,
    high: 30 * 60,
    status: "common practice",
    place: "about a quarter of an hour for a taper; the first one takes longer",
  }),
} as const;
