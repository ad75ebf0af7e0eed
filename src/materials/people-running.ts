import { coefficient } from "../sources/coefficient.js";

/**
 * Pull that a hand keeps on a rope that runs through it [N].
 *
 * Least, mean and most of the persons tested stand for the ends of the range and its middle: no load was found that
 * everybody keeps. Measured on rescue rope; a thinner line, wet or gloved, is not known.
 */
export const runningRopeHold = coefficient({
  value: 209,
  unit: "N",
  low: 46,
  high: 425,
  status: "published",
  source: "mauthner-grip",
  place: "least 46, mean 209, most 425 N of the persons tested; rescue rope, no diameter and no speed told",
});
